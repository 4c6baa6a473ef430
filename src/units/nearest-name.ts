/** The known name nearest to a misspelled one; undefined where none is near. */
export function nearestName(given: string, known: readonly string[]): string | undefined {
  const wanted = given.toLowerCase();
  const furthest = Math.max(1, Math.min(3, Math.floor(given.length / 3)));
  let best: string | undefined;
  let least = furthest + 1;
  for (const name of known) {
    const distance = editDistance(wanted, name.toLowerCase(), least);
    if (distance < least) [best, least] = [name, distance];
  }
  return best;
}

/** Levenshtein distance, abandoned at `limit`. */
function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) >= limit) return limit;
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++)
      next.push(Math.min(next[j - 1] + 1, row[j] + 1, row[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1)));
    row = next;
  }
  return row[b.length];
}
