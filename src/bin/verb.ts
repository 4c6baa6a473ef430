import type { ReportFormat } from '../motor';

/** The options of the verbs, as given. */
export interface VerbOptions {
  readonly format: ReportFormat;
  /** One line of JSON for each motor. */
  readonly json: boolean;
  readonly motor: string | undefined;
  readonly log: string | undefined;
  readonly ambient: string | undefined;
}

/** Formats of a verb that reports on something. */
export const reportFormats: readonly ReportFormat[] = ['text', 'markdown', 'html', 'csv', 'json'];

/** One thing that the command does. */
export interface Verb {
  readonly name: string;
  /** What comes after the name. */
  readonly takes: string;
  /** One line for the list of verbs. */
  readonly does: string;
  /** Options beside those that all have. */
  readonly options: readonly (keyof VerbOptions)[];
  /** What it can write. */
  readonly formats: readonly ReportFormat[];
  /** Runs it; the number is the exit code. */
  run(files: readonly string[], options: VerbOptions): Promise<number>;
}

/** A command line that is not understood: exit code 2. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}
