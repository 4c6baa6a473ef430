/** Lines of both ends that say the same are one: 'head joint: …' and 'aft joint: …' become 'head and aft joint: …'. */
export function mergeHeadAftLines(lines: readonly string[]): readonly string[] {
  const aft = new Set(lines.filter((line) => line.startsWith('aft ')).map((line) => line.slice(4)));
  const both = new Set(
    lines.flatMap((line) => (line.startsWith('head ') && aft.has(line.slice(5)) ? [line.slice(5)] : [])),
  );
  return lines.flatMap((line) => {
    if (line.startsWith('aft ') && both.has(line.slice(4))) return [];
    return line.startsWith('head ') && both.has(line.slice(5)) ? [`head and aft ${line.slice(5)}`] : [line];
  });
}
