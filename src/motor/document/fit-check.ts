import { type DocumentProblem, pathText } from './problems';
import { rawAt, rawSi } from './raw-value';

export type Path = readonly (string | number)[];

/** Adds a problem if a condition is false; nothing if it is unknown because a value could not be read. */
export type Need = (holds: boolean | undefined, path: Path, message: string) => void;

/** Data and functions for checks between parts of a document. */
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

/** A number if it is positive; a check is skipped for an impossible value. */
export const positive = (si: number | undefined): number | undefined =>
  si !== undefined && si > 0 ? si : undefined;

/** A relation of two values, where both could be read. */
export function both<R>(
  a: number | undefined,
  b: number | undefined,
  use: (a: number, b: number) => R,
): R | undefined {
  return a === undefined || b === undefined ? undefined : use(a, b);
}

export const mm = (si: number | undefined): string =>
  si === undefined ? '?' : `${Number((si * 1000).toPrecision(6))} mm`;
