import hardware from '../cases/hardware.json';
import type { Case } from '../cases/read-case';
import cases from '../cases/structures.json';

const ofStructures: readonly Case[] = cases;
const all: readonly Case[] = [...cases, ...hardware];

/** A case of tests/cases/structures.json or hardware.json; each has its source and provenance beside its numbers. */
export function structuresCase(id: string): Case {
  const found = all.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no case ${id}`);
  return found;
}

/** Every case of the topics given in tests/cases/structures.json. */
export const casesOf = (...topics: readonly string[]): readonly Case[] =>
  ofStructures.filter(({ topic }) => topics.includes(topic));

/** A number that the case expects, under its name. */
export function expected(one: Case, name: string): number {
  const value = one.expected[name];
  if (typeof value !== 'number') throw new Error(`${one.id} expects no number ${name}`);
  return value;
}
