import process from 'node:process';
import { readLog, reduceFiring } from '../firing';
import {
  compare,
  flawEnvelope,
  type Motor,
  meop,
  parseMotor,
  predict,
  type Reportable,
  type ReportInput,
  reductionInputs,
  review,
} from '../motor';
import { MeopError } from '../units';
import { documents, messageIn, readText } from './documents';
import { progress } from './progress';
import { reportFormats, type Verb, type VerbOptions } from './verb';
import { write, writeReport } from './write-report';

type Work = (motor: Motor, options: VerbOptions) => Promise<readonly [Reportable, ReportInput?]>;

/** Runs an action on each input motor. An error is reported, and the command continues with the next motor. */
async function forEachMotor(files: readonly string[], options: VerbOptions, work: Work): Promise<number> {
  let code = 0;
  const told = progress();
  for await (const { source, read } of documents(files)) {
    try {
      const [subject, matter] = await work(parseMotor(read()), options);
      await writeReport(subject, options, matter);
    } catch (error) {
      if (!(error instanceof MeopError)) throw error;
      code = 1;
      await tellFailure(source, error, options);
    }
    told.step();
  }
  told.end();
  return code;
}

/** With --json the error is written to the line of its motor, so that input and output lines correspond. */
async function tellFailure(source: string, error: MeopError, { json }: VerbOptions): Promise<void> {
  const message = messageIn(source, error);
  if (json) await write(`${JSON.stringify({ source, error: { code: error.code, message } })}\n`);
  else process.stderr.write(`${source}: ${message}\n`);
}

const motorVerb = (
  name: string,
  does: string,
  work: Work,
  takes = '[MOTOR.json …]',
  options: Verb['options'] = [],
): Verb => ({
  name,
  takes,
  does,
  options,
  formats: reportFormats,
  run: (files, given) => forEachMotor(files, given, work),
});

/** Verbs for motor documents to analyse. */
export const motorVerbs: readonly Verb[] = [
  motorVerb('predict', 'Simulate the firing at nominal values', async (motor) => [predict(motor)]),
  motorVerb('pressure', 'Compute MEOP: nominal, worst case, percentile, sensitivities', async (motor) => [
    meop(motor),
  ]),
  motorVerb(
    'review',
    'Evaluate margins at MEOP, failure sequence, seals, instruments, stand; with --log also a firing',
    async (motor, { log }) => {
      if (log === undefined) return [review(motor)];
      const measured = reduceFiring(readLog(await readText(log)), reductionInputs(motor));
      return [review(motor), { comparison: compare(motor, { firing: measured }) }];
    },
    '[--log LOG.csv] [MOTOR.json …]',
    ['log'],
  ),
  motorVerb(
    'flaws',
    'Compute the critical crack, debond and void size of each failure mode',
    async (motor) => [flawEnvelope(motor)],
  ),
];
