// Types of the API from the server's own description. Without arguments: fails when the checked-in
// file is stale. With --write: writes it. The description comes from `cargo run --example openapi`,
// or from the file named by OPENAPI_JSON.
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import openapiTS, { astToString } from 'openapi-typescript';

const target = new URL('../src/api/schema.d.ts', import.meta.url);

function description() {
  if (process.env.OPENAPI_JSON) return readFileSync(process.env.OPENAPI_JSON, 'utf8');
  const cargo = ['run', '--quiet', '--package', 'server', '--example', 'openapi'];
  const cwd = new URL('../..', import.meta.url);
  return execFileSync('cargo', cargo, { cwd, encoding: 'utf8', maxBuffer: 64e6, stdio: ['ignore', 'pipe', 'inherit'] });
}

const head = '// Made by `npm run gen:api` from the OpenAPI description of the server. Do not edit.\n\n';
const wanted = head + astToString(await openapiTS(JSON.parse(description())));
if (process.argv.includes('--write')) {
  writeFileSync(target, wanted);
} else if (readFileSync(target, 'utf8') !== wanted) {
  console.error('src/api/schema.d.ts does not match the server: run `npm run gen:api` and commit the result');
  process.exit(1);
}
