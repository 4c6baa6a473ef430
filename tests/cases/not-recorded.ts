/** Why values stand in the report without ours, and the cases it holds for. */
const reasons: readonly (readonly [string, readonly string[]])[] = [
  ['ropes of an inch and more are not in this library', ['clip-efficiency']],
  ['an input of the check', ['segment-neutral-length', 'port-mass-flux']],
  ['the areas before and after it are checked, the depth itself is not', ['star5-three-phases']],
  ['the curve is flat there: its own test holds it within 2 %', ['motor-segment']],
  ['checked for the other reference motor', ['motor-end-burner']],
  [
    'arithmetic of the source on the values checked, or on values it shares with another case',
    ['equilibrium-throat-for-50bar'],
  ],
  ['the library has nothing that gives it', ['temperature-pressure-ratio']],
];

/** Why a value of a case has no record. */
export const notRecorded = (id: string): string =>
  reasons.find(([, ids]) => ids.includes(id))?.[0] ?? 'no test compares it';
