// Starts and stops the real program. COUNTERPOISE_BIN names it, COUNTERPOISE_ARGS what it is asked
// (default: serve the demo job); without them the built program of this workspace is taken.
import { spawn, type ChildProcess } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const BIN = process.env.COUNTERPOISE_BIN ?? `${ROOT}target/debug/counterpoise`;
const ARGS = process.env.COUNTERPOISE_ARGS?.split(' ').filter(Boolean) ?? ['serve', 'examples/demo-job'];
const START_MS = 120_000;

export interface Served {
  /** Where it serves, with a final slash. */
  address: string;
  stop: () => Promise<void>;
}

/** Starts the program, by default on any free port, and waits until it says where it serves. */
export async function serve(port = '0'): Promise<Served> {
  const child = spawn(BIN, [...ARGS, '--port', port], { cwd: ROOT, stdio: ['ignore', 'pipe', 'pipe'] });
  const address = await saidAddress(child);
  return { address, stop: () => stop(child) };
}

function saidAddress(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    const listen = (chunk: Buffer) => {
      said += chunk.toString();
      const found = /http:\/\/127\.0\.0\.1:\d+\//.exec(said);
      if (found) resolve(found[0]);
    };
    child.stdout?.on('data', listen);
    child.stderr?.on('data', listen);
    child.on('error', reject);
    child.on('exit', (code) => reject(new Error(`the server ended with ${code}:\n${said}`)));
    setTimeout(() => reject(new Error(`the server did not say where it serves:\n${said}`)), START_MS).unref();
  });
}

function stop(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    child.on('exit', () => resolve());
    child.kill('SIGTERM');
  });
}
