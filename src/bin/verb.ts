import type { ReportFormat } from '../motor';

/** Options of the verbs, as parsed. */
export interface VerbOptions {
  readonly format: ReportFormat;
  /** True for one line of JSON per motor. */
  readonly json: boolean;
  readonly motor: string | undefined;
  readonly log: string | undefined;
  readonly ambient: string | undefined;
}

/** Formats of a verb that writes a report. */
export const reportFormats: readonly ReportFormat[] = ['text', 'markdown', 'html', 'csv', 'json'];

/** A verb of the command. */
export interface Verb {
  readonly name: string;
  /** Arguments after the name. */
  readonly takes: string;
  /** Description in one line, for the list of verbs. */
  readonly does: string;
  /** Options in addition to the common ones. */
  readonly options: readonly (keyof VerbOptions)[];
  /** Supported formats. */
  readonly formats: readonly ReportFormat[];
  /** Runs the verb and returns the exit code. */
  run(files: readonly string[], options: VerbOptions): Promise<number>;
}

/** An invalid command line: exit code 2. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}
