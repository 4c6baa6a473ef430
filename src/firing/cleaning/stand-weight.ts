import { cumulativeTrapezoid } from '../../numerics';
import { MeopError, type QuantityInput, readInput } from '../../units';
import { analysedRecord } from '../analysis/analysed-record';
import { analysedTrace } from '../analysis/analysed-trace';
import { valueAt } from '../analysis/trace-values';
import type { Firing } from '../firing';
import { baselineValue, step, traceOf } from './step';

const gravity = 9.80665;

/** Options of {@link correctStandWeight}. */
export interface StandWeightOptions {
  /** `'nozzle up'`: thrust presses on the cell, as weight does; `'nozzle down'`: thrust unloads it. */
  readonly stand: 'nozzle up' | 'nozzle down';
  /** Mass of propellant burned. Default: the mass loaded. */
  readonly propellantMass?: QuantityInput<'mass'>;
}

/**
 * Corrects the thrust of a vertical stand, tared with the loaded motor, for the weight of the burned propellant: the
 * zero falls (nozzle up) or rises (nozzle down) by it. Propellant is assumed to burn in proportion to the integral of
 * pressure, or of thrust where there is no pressure.
 *
 * @throws MeopError `missing-field`, `no-pulse`
 * @example correctStandWeight(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6], 's'), thrust: series([0, 0, 10, 10, 0, 0, 0], 'N') }), { stand: 'nozzle up', propellantMass: '1 kg' }).thrust.at(-1).in('N').toFixed(5) // => '9.80665'
 */
export function correctStandWeight(firing: Firing, options: StandWeightOptions): Firing {
  const record = analysedRecord(firing);
  const time = record.time.si;
  const thrust = traceOf(record, 'thrust', 'correctStandWeight');
  const mass =
    options.propellantMass === undefined
      ? record.loadedMass?.si
      : readInput('mass', 'propellantMass', options.propellantMass, 'correctStandWeight').si;
  if (mass === undefined)
    throw new MeopError(
      'missing-field',
      'correctStandWeight: missing required field propellantMass (mass of propellant burned; the record has no loadedMass)',
      'propellantMass',
    );
  const rest = baselineValue(record, record.pressure ? 'pressure' : 'thrust', 'correctStandWeight');
  const leading = record.traces.pressure ?? thrust;
  const edges = leading.edges(0.02, rest);
  const running = cumulativeTrapezoid(
    time,
    leading.values.map((value, i) => (i >= edges.first && i <= edges.last ? Math.max(0, value - rest) : 0)),
  );
  const total = running[running.length - 1];
  const sign = options.stand === 'nozzle up' ? 1 : -1;
  const weight = mass * gravity;
  const corrected = thrust.values.map((value, i) => value + sign * weight * (running[i] / total));
  const impulse = weight * (edges.end - valueAt(running, time, total / 2));
  return step(
    record,
    { channels: { thrust: analysedTrace(time, corrected) } },
    `stand weight (${options.stand}): ${mass.toPrecision(4)} kg burned, zero shifted by ${(sign * weight).toPrecision(4)} N from ignition to burnout, about ${(sign * impulse).toPrecision(3)} N·s within the burn`,
  );
}

/**
 * Converts thrust measured along an inclined axis to the axis of the motor: divides by the cosine of the angle between
 * them.
 *
 * @throws MeopError `out-of-domain` for 45° or more
 * @example correctThrustAxis(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6], 's'), thrust: series([0, 0, 10, 10, 0, 0, 0], 'N') }), { angle: '30 deg' }).thrust.max().in('N').toFixed(4) // => '11.5470'
 */
export function correctThrustAxis(
  firing: Firing,
  options: { readonly angle: QuantityInput<'angle'> },
): Firing {
  const angle = readInput('angle', 'angle', options.angle, 'correctThrustAxis').si;
  if (!(Math.abs(angle) < Math.PI / 4))
    throw new MeopError(
      'out-of-domain',
      `correctThrustAxis: angle must be less than 45°, got ${String(options.angle)}`,
      'angle',
      {
        value: options.angle,
      },
    );
  const record = analysedRecord(firing);
  const { time, values } = traceOf(record, 'thrust', 'correctThrustAxis');
  const factor = 1 / Math.cos(angle);
  const turned = values.map((value) => value * factor);
  return step(
    record,
    { channels: { thrust: analysedTrace(time, turned) } },
    `thrust axis: divided by cos ${((angle * 180) / Math.PI).toPrecision(3)}°`,
  );
}
