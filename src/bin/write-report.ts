import process from 'node:process';
import { type Reportable, type ReportInput, report, reportPage } from '../motor';
import { MeopError } from '../units';
import type { VerbOptions } from './verb';

/** Writes a report according to the options: one line of JSON, or a format. */
export async function writeReport(
  subject: Reportable,
  { format, json }: VerbOptions,
  matter: ReportInput = {},
): Promise<void> {
  if (json) return write(`${JSON.stringify(JSON.parse(report(subject, { ...matter, format: 'json' })))}\n`);
  if (format !== 'html') return write(report(subject, { ...matter, format }));
  try {
    return write(await reportPage(subject, matter));
  } catch (error) {
    if (!(error instanceof MeopError && error.code === 'no-plot-engine')) throw error;
    process.stderr.write(`the page contains no plots: ${error.statement}\n`);
    return write(report(subject, { ...matter, format }));
  }
}

/** Writes to standard output, and waits if the reader is slow. */
export function write(text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    process.stdout.write(text, (error) => (error ? reject(error) : resolve()));
  });
}
