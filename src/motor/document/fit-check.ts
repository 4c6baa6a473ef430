import { MeopError } from '../../units';
import type { Measured, Partly } from './document-types';
import type { MotorParts } from './motor-schema';
import { type DocumentProblem, givenAt, type Path, problemOf } from './problems';

/** A document as far as it could be read. */
export interface ReadDocument {
  /** As it was given, migrated. */
  readonly json: unknown;
  /** What could be read of it. */
  readonly parts: Partly<MotorParts>;
  /** Whether all that was given at a path could be read, one field of it aside. */
  readonly isSound: (path: Path, aside?: string) => boolean;
}

/** Where a check notes what is wrong. */
export interface Findings {
  readonly problems: DocumentProblem[];
  /** Whether anything was given at a path, right or wrong. */
  readonly isGiven: (path: Path) => boolean;
  readonly note: (path: Path, facts: Finding) => void;
  /** Notes what a lower layer refuses, at the field of a part that it names, else at the part. */
  readonly tried: (at: Path, make: () => unknown) => void;
  /** Notes what does not fit; nothing where a value could not be read. */
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

/** The SI value of what could be read. */
export const si = (measured: Measured | undefined): number | undefined => measured?.value.si;

/** What follows from two measures, where both could be read. */
export function both<R>(
  a: number | undefined,
  b: number | undefined,
  use: (a: number, b: number) => R,
): R | undefined {
  return a === undefined || b === undefined ? undefined : use(a, b);
}

/** What follows from a size that cannot be is not reported. */
export const positive = (size: number | undefined): number | undefined =>
  size !== undefined && size > 0 ? size : undefined;

export const mm = (size: number | undefined): string =>
  size === undefined ? '?' : `${Number((size * 1000).toPrecision(6))} mm`;
