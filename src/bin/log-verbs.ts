import { type ReductionInputs, readLog, reduceFiring } from '../firing';
import { compare, parseMotor, reductionInputs } from '../motor';
import { quantity } from '../units';
import { readText } from './documents';
import { reportFormats, UsageError, type Verb, type VerbOptions } from './verb';
import { writeReport } from './write-report';

/** Verbs for logs of firings. */
export const logVerbs: readonly Verb[] = [
  {
    name: 'reduce',
    takes: '--motor MOTOR.json | --ambient PRESSURE  [LOG.csv]',
    does: 'Reduce the log of a firing to motor performance',
    options: ['motor', 'ambient'],
    formats: reportFormats,
    async run(files, options) {
      const [log] = oneLog(files);
      const facts = await factsFrom(options);
      await writeReport(reduceFiring(readLog(await readText(log)), facts), options);
      return 0;
    },
  },
  {
    name: 'compare',
    takes: '--motor MOTOR.json  [LOG.csv]',
    does: 'Compare a firing log with the prediction; assess model and hardware',
    options: ['motor'],
    formats: reportFormats,
    async run(files, options) {
      const [log] = oneLog(files);
      if (options.motor === undefined)
        throw new UsageError('compare: missing --motor MOTOR.json (document of the motor that was fired)');
      const motor = parseMotor(await readText(options.motor));
      const measured = reduceFiring(readLog(await readText(log)), reductionInputs(motor));
      await writeReport(compare(motor, { firing: measured }), options);
      return 0;
    },
  },
];

function oneLog(files: readonly string[]): readonly [string] {
  const [log = '-', ...others] = files;
  if (others.length > 0) throw new UsageError(`only one log is allowed, got ${files.length}`);
  return [log];
}

async function factsFrom({ motor, ambient }: VerbOptions): Promise<ReductionInputs> {
  if (motor !== undefined) return reductionInputs(parseMotor(await readText(motor)));
  if (ambient !== undefined) return { ambientPressure: quantity('absolute pressure', ambient) };
  throw new UsageError(
    "reduce: ambient pressure required: pass --motor MOTOR.json or --ambient PRESSURE (for example '101.3 kPa')",
  );
}
