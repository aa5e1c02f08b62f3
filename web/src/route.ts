// Where in the plan the reader is: the part of the address after `#`.
export type Route = { at: 'overview' } | { at: 'lift'; id: string };

export function parseRoute(hash: string): Route {
  const found = /^#\/lifts\/([^/]+)$/.exec(hash);
  const id = found?.[1] === undefined ? undefined : decode(found[1]);
  return id === undefined ? { at: 'overview' } : { at: 'lift', id };
}

export function liftAddress(id: string): string {
  return `#/lifts/${encodeURIComponent(id)}`;
}

export const OVERVIEW_ADDRESS = '#/';

function decode(text: string): string | undefined {
  try {
    return decodeURIComponent(text);
  } catch {
    return undefined;
  }
}
