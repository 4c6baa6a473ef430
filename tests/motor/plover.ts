import { readFileSync } from 'node:fs';

/** The document of the motor whose closures are held by a ring and by a thread. */
export const plover = readFileSync('examples/motors/plover-50.json', 'utf8');

export type Json = { [key: string]: Json };
/** The document with one value changed, or left out. */
export const withChange = (path: string, value: unknown): Json => {
  const json: Json = JSON.parse(plover);
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  const owner = keys.reduce<Json>((node, key) => node[key], json);
  if (value === undefined) delete owner[last];
  else owner[last] = value as Json;
  return json;
};
