import { type PartId, partAt } from '../structures/failure-mode/part-name';

/** A line about a part of the motor, before it is written: that of both ends is written once. */
export interface PartLine {
  readonly end?: 'head' | 'aft' | undefined;
  /** What it is about; undefined where the text says so. */
  readonly about?: string | undefined;
  readonly text: string;
}

/** Lines about a part. */
export const linesOf = (part: PartId, texts: readonly string[]): readonly PartLine[] => {
  const { end, name } = partAt(part);
  return texts.map((text) => ({ end, about: name, text }));
};

/** The lines as people read them: 'head and aft joint: …' where both ends have the same. */
export function written(lines: readonly PartLine[], separator = ': '): readonly string[] {
  const key = ({ about, text }: PartLine): string => JSON.stringify([about, text]);
  const at = (end: 'head' | 'aft'): ReadonlySet<string> =>
    new Set(lines.filter((line) => line.end === end).map(key));
  const [head, aft] = [at('head'), at('aft')];
  const texts = lines.flatMap((line) => {
    const isBoth = head.has(key(line)) && aft.has(key(line));
    if (line.end === 'aft' && isBoth) return [];
    const whose = line.end !== undefined && isBoth ? 'head and aft' : line.end;
    const about = [whose, line.about].filter((word) => word !== undefined).join(' ');
    return [about === '' ? line.text : `${about}${separator}${line.text}`];
  });
  return [...new Set(texts)];
}
