// What happens in a simulated firing, and how it ends, in words.
import type { FiringEvent } from '../firing';
import { fromSiValue, type Quantity, unitOf } from '../units';
import type { ReadMotor } from './read-motor';
import type { RunEnd } from './simulation/motor-model';
import type { RunResult } from './simulation/run-result';
import type { RunSamples } from './simulation/sample-recorder';

const quantity = <K extends 'time' | 'length'>(si: number, kind: K, unit: string): Quantity<K> =>
  fromSiValue<K>(si, kind, unitOf(unit));

/** The events of a run, named by what its depths mean. */
export function eventsOf({ model, landings }: ReadMotor, samples: RunSamples): readonly FiringEvent[] {
  const { burnout } = model.table;
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-5 * burnout;
  const found = samples.marks.flatMap(({ crossing, time, depth }): FiringEvent[] => {
    const at = { time: quantity<'time'>(time, 'time', 's') };
    if (crossing === 'closure') return [{ name: 'nozzle closure opens', ...at }];
    if (crossing === 'ignition') return [{ name: 'remaining surface ignites', ...at }];
    if (crossing === 'limit') return [{ name: 'pressure limit', ...at }];
    if (crossing === 'stop') return [{ name: 'stop pressure', ...at }];
    const reached = { ...at, depth: quantity<'length'>(depth, 'length', 'mm') };
    if (near(depth, burnout)) return [{ name: 'burnout', ...reached }];
    const named = landings.filter((landing) => near(landing.depth, depth));
    if (named.length > 0) return named.map(({ name }) => ({ name, ...reached }));
    return [{ name: 'burning area jumps', ...reached }];
  });
  const end = samples.time[samples.time.length - 1];
  const blocked = [
    { name: 'throat partly blocked', time: model.blockedFrom },
    { name: 'throat free again', time: model.blockedUntil },
  ].filter(({ time }) => model.blockedFraction > 0 && time <= end);
  return [
    ...found,
    ...blocked.map(({ name, time }) => ({ name, time: quantity<'time'>(time, 'time', 's') })),
  ].sort((a, b) => a.time.si - b.time.si);
}

/** Cautions on how the run ended. */
export function endCautions(
  { model, hasBurst, hasTimeLimit }: ReadMotor,
  result: RunResult,
  samples: RunSamples,
): readonly string[] {
  const when = `at ${result.endTime.toPrecision(4)} s`;
  const atEnd = `${(result.endPressure / 1e6).toPrecision(3)} MPa`;
  const held =
    model.nozzleClosureBurstPressure > 0 && !samples.marks.some(({ crossing }) => crossing === 'closure');
  const limit = `${(model.pressureLimit / 1e6).toPrecision(4)} MPa`;
  const ways: Readonly<Record<RunEnd, readonly string[]>> = {
    'burned out': [],
    'stop pressure': [
      `the pressure had fallen to the stop pressure of ${(model.stopPressure / 1e6).toPrecision(3)} MPa ${when} with propellant left: slivers, or extinction`,
    ],
    'pressure limit': [
      hasBurst
        ? `the chamber bursts ${when}: its pressure reaches the burst pressure of ${limit}${held ? ' with the nozzle closure still closed' : ''}`
        : held
          ? `the nozzle closure was still closed ${when}, when the pressure reached ${limit}; there the gas is a fifth as dense as the propellant and the model is no longer valid`
          : `the pressure diverges ${when}: at ${limit} the gas is a fifth as dense as the propellant and the model is no longer valid; there is no equilibrium at a lower pressure`,
    ],
    'closure held': [
      `all propellant had burned ${when} with the nozzle closure still closed; the chamber remains at ${(result.endPressure / 1e6).toPrecision(4)} MPa`,
    ],
    'time limit': [
      Number.isFinite(result.burnoutTime)
        ? `the run ended ${when} with the chamber still at ${atEnd}: all propellant had burned at ${result.burnoutTime.toPrecision(4)} s`
        : hasTimeLimit
          ? `the motor had not burned out at the time limit: it burns at ${atEnd} ${when}`
          : `the motor had not burned out when the run ended ${when}: it burns at ${atEnd}, barely ignited`,
    ],
    'throat closed': [`deposits have closed the throat ${when}`],
    'not converged': [],
  };
  return ways[result.end];
}
