import { type DocumentProblem, pathText } from './problems';
import { rawAt, rawSi } from './raw-value';

export type Path = readonly (string | number)[];

/** Notes what does not hold; nothing where it cannot be told, since a measure cannot be read. */
export type Need = (holds: boolean | undefined, path: Path, message: string) => void;

/** What a check of how parts go together asks and says of a document. */
export interface FitCheck {
  readonly problems: DocumentProblem[];
  readonly length: (...path: Path) => number | undefined;
  readonly need: Need;
}

export function fitCheck(json: unknown): FitCheck {
  const problems: DocumentProblem[] = [];
  return {
    problems,
    length: (...path) => rawSi(json, path, 'length'),
    need: (holds, path, message) => {
      if (holds === false)
        problems.push({ path: pathText(path), code: 'does-not-fit', message, value: rawAt(json, path) });
    },
  };
}

/** What follows from a measure that cannot be is not said. */
export const positive = (si: number | undefined): number | undefined =>
  si !== undefined && si > 0 ? si : undefined;

/** What follows from two measures, where both can be read. */
export function both<R>(
  a: number | undefined,
  b: number | undefined,
  use: (a: number, b: number) => R,
): R | undefined {
  return a === undefined || b === undefined ? undefined : use(a, b);
}

export const mm = (si: number | undefined): string =>
  si === undefined ? '?' : `${Number((si * 1000).toPrecision(6))} mm`;
