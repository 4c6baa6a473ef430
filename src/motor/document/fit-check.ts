import { MeopError } from '../../units';
import type { Measured, Partly } from './document-types';
import type { MotorParts } from './motor-schema';
import { type DocumentProblem, givenAt, type Path, problemOf } from './problems';

/** A document, as far as it could be parsed. */
export interface ReadDocument {
  /** As given, after migration. */
  readonly json: unknown;
  /** The parsed part. */
  readonly parts: Partly<MotorParts>;
  /** True if everything given at a path could be parsed, except for one field. */
  readonly isSound: (path: Path, aside?: string) => boolean;
}

/** Collects the errors of a check. */
export interface Findings {
  readonly problems: DocumentProblem[];
  /** True if any value was given at a path. */
  readonly isGiven: (path: Path) => boolean;
  readonly note: (path: Path, facts: Finding) => void;
  /** Records an error of a lower layer, at the field that it names or else at the part. */
  readonly tried: (at: Path, make: () => unknown) => void;
  /** Records a conflict; nothing where a value could not be parsed. */
  readonly need: (fits: boolean | undefined, path: Path, expected: string, remedy?: string) => void;
}

interface Finding {
  readonly code: string;
  readonly expected?: string;
  readonly remedy?: string | undefined;
  readonly problem?: string;
}

export function findings(json: unknown): Findings {
  const problems: DocumentProblem[] = [];
  const note = (path: Path, facts: Finding): void => {
    const given = givenAt(json, path);
    problems.push(problemOf(new MeopError({ ...facts, ...(given !== undefined && { given }) }), path));
  };
  const isGiven = (path: Path): boolean => givenAt(json, path) !== undefined;
  return {
    problems,
    tried: (at, make) => {
      try {
        make();
      } catch (error) {
        if (!(error instanceof MeopError)) throw error;
        const field = [...at, ...(error.path?.split('.') ?? [])];
        const path = isGiven(field) ? field : at;
        problems.push(problemOf(error, path, givenAt(json, path)));
      }
    },
    isGiven,
    note,
    need: (fits, path, expected, remedy) => {
      if (fits === false) note(path, { code: 'does-not-fit', expected, remedy });
    },
  };
}

/** The SI value, if parsed. */
export const si = (measured: Measured | undefined): number | undefined => measured?.value.si;

/** A relation of two values, where both could be parsed. */
export function both<R>(
  a: number | undefined,
  b: number | undefined,
  use: (a: number, b: number) => R,
): R | undefined {
  return a === undefined || b === undefined ? undefined : use(a, b);
}

/** A number if it is positive; a check is skipped for an impossible value. */
export const positive = (size: number | undefined): number | undefined =>
  size !== undefined && size > 0 ? size : undefined;

export const mm = (size: number | undefined): string =>
  size === undefined ? '?' : `${Number((size * 1000).toPrecision(6))} mm`;
