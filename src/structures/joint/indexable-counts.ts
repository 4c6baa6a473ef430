// Source: engineering practice, no published source; the 24 holes of a plate for direct indexing are from memory.
const plate = 'divides the 24 holes of a direct indexing plate';
const counts: Readonly<Partial<Record<number, string>>> = {
  2: plate,
  3: plate,
  4: plate,
  6: plate,
  8: plate,
  12: plate,
  16: 'a strip of paper around the case folds into it by halves',
  24: plate,
};

/** Why a number of holes is easy to divide and to count on the case; `undefined` where it needs a calculated index. */
export const indexing = (count: number): string | undefined => counts[count];
