import { MeopError } from '../units';

/**
 * Refuses a field that a calculation does not know. Where most fields may be left out, one that is misspelt would go unheard and
 * its default be taken; in TypeScript the compiler says so, at a prompt nobody does.
 *
 * @throws MeopError `unknown-field` naming the nearest
 */
export function refuseUnknownFields(
  context: string,
  given: object,
  known: Readonly<Record<string, true>>,
): void {
  for (const field of Object.keys(given)) {
    if (Object.hasOwn(known, field)) continue;
    const names = Object.keys(known);
    const nearest = names
      .map((name) => [name, alike(name.toLowerCase(), field.toLowerCase())] as const)
      .reduce((a, b) => (b[1] > a[1] ? b : a), ['', 0]);
    throw new MeopError(
      'unknown-field',
      `${context}: there is no field '${field}'${nearest[1] > 0 ? ` ('${nearest[0]}' is the nearest)` : ''}; known are ${names.join(', ')}`,
      field,
      { expected: names.join(', ') },
    );
  }
}

/** How many letters two names share from their starts and from their ends; none that share fewer than three. */
function alike(a: string, b: string): number {
  let [start, end] = [0, 0];
  const most = Math.min(a.length, b.length);
  while (start < most && a[start] === b[start]) start++;
  while (end < most - start && a[a.length - 1 - end] === b[b.length - 1 - end]) end++;
  return start + end < 3 ? 0 : start + end - Math.abs(a.length - b.length) / 100;
}
