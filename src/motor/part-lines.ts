import { type PartId, partAt } from '../structures/failure-mode/part-name';

/** A line about a part of the motor, before it is written; equal lines of both ends are merged. */
export interface PartLine {
  readonly end?: 'head' | 'aft' | undefined;
  /** The subject; undefined where the text contains it. */
  readonly about?: string | undefined;
  readonly text: string;
}

/** Lines about a part. */
export const linesOf = (part: PartId, texts: readonly string[]): readonly PartLine[] => {
  const { end, name } = partAt(part);
  return texts.map((text) => ({ end, about: name, text }));
};

/** The lines as printed: 'head and aft joint: …' where both ends have the same line. */
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
