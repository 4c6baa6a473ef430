/**
 * A function under a name, with properties; getters remain getters, so that costly properties are computed on
 * demand.
 */
export function withFacts<F extends object, T extends object>(made: F, name: string, facts: T): F & T {
  Object.defineProperties(made, Object.getOwnPropertyDescriptors(facts));
  Object.defineProperty(made, 'name', { value: name });
  return made as F & T; // true: every property of the facts was just defined
}
