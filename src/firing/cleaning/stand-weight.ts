import { cumulativeTrapezoid } from '../../numerics';
import { angle, choice, MeopError, optional, procedure } from '../../units';
import { analysedRecord } from '../analysis/analysed-record';
import { analysedTrace } from '../analysis/analysed-trace';
import { valueAt } from '../analysis/trace-values';
import { exampleFiring, type Firing, firingInput } from '../firing';
import { propellantMass } from '../motor-inputs';
import { baselineValue, step, traceOf } from './step';

const gravity = 9.80665;

/**
 * Corrects the thrust of a vertical stand, tared with the loaded motor, for the weight of the burned propellant: the
 * zero falls (nozzle up) or rises (nozzle down) by it. Propellant is assumed to burn in proportion to the integral of
 * pressure, or of thrust where there is no pressure.
 *
 * @example correctStandWeight(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6], 's'), thrust: series([0, 0, 10, 10, 0, 0, 0], 'N') }), { stand: 'nozzle up', propellantMass: '1 kg' }).thrust.at(-1).in('N').toFixed(5) // => '9.80665'
 */
export const correctStandWeight = /* @__PURE__ */ procedure({
  name: 'correctStandWeight',
  title: 'Weight of the burned propellant on a vertical stand',
  source: 'weight = mass times 9.80665 m/s² (exact by definition); mass burned in proportion to the integral',
  subject: firingInput,
  inputs: {
    stand: choice(
      'orientation of the motor: with the nozzle up thrust presses on the cell, as weight does; with the nozzle down it unloads it',
      ['nozzle up', 'nozzle down'],
    ),
    propellantMass: optional(propellantMass),
  },
  gives: 'the record with corrected thrust',
  example: `correctStandWeight(${exampleFiring}, { stand: 'nozzle up', propellantMass: '1 kg' })`,
  run: (given, options): Firing => {
    const record = analysedRecord(given);
    const time = record.time.si;
    const thrust = traceOf(record, 'thrust', 'correctStandWeight');
    const mass = (options.propellantMass ?? record.loadedMass)?.si;
    if (mass === undefined)
      throw new MeopError({
        code: 'missing-field',
        procedure: 'correctStandWeight',
        path: 'propellantMass',
        expected: `${propellantMass.meaning}; the record has no loadedMass`,
      });
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
  },
});

/**
 * Converts thrust measured along an inclined axis to the axis of the motor: divides by the cosine of the angle between
 * them.
 *
 * @example correctThrustAxis(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6], 's'), thrust: series([0, 0, 10, 10, 0, 0, 0], 'N') }), { angle: '30 deg' }).thrust.max().in('N').toFixed(4) // => '11.5470'
 */
export const correctThrustAxis = /* @__PURE__ */ procedure({
  name: 'correctThrustAxis',
  title: 'Thrust measured along an inclined axis',
  source: 'definition: division by the cosine of the angle',
  subject: firingInput,
  inputs: {
    angle: angle('α', 'angle between the axis of the load cell and that of the motor', {
      above: -Math.PI / 4,
      below: Math.PI / 4,
      example: '10 deg',
    }),
  },
  gives: 'the record with thrust along the axis of the motor',
  example: `correctThrustAxis(${exampleFiring}, { angle: '10 deg' })`,
  run: (given, options): Firing => {
    const angleSi = options.angle.si;
    const record = analysedRecord(given);
    const { time, values } = traceOf(record, 'thrust', 'correctThrustAxis');
    const factor = 1 / Math.cos(angleSi);
    const turned = values.map((value) => value * factor);
    return step(
      record,
      { channels: { thrust: analysedTrace(time, turned) } },
      `thrust axis: divided by cos ${((angleSi * 180) / Math.PI).toPrecision(3)}°`,
    );
  },
});
