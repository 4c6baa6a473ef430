import { fromSiValue, inputs, list, optional, procedure, type Quantity, time, unitOf } from '../units';
import { readMotor } from './read-motor';
import { simulateInputs } from './simulate-inputs';
import { type ChamberWorkspace, chamberWorkspace } from './simulation/chamber-workspace';
import type { MotorModel } from './simulation/motor-model';
import { runChamber } from './simulation/run-chamber';
import { emptyResult } from './simulation/run-result';
import { sampleRecorder } from './simulation/sample-recorder';
import { transientCautions } from './transient-cautions';

/** Ignition of a motor for one time of flame spread. */
export interface IgnitionOfSpread {
  readonly flameSpreadTime: Quantity<'time'>;
  /** Maximum pressure in the first 10 % of the burned depth. */
  readonly ignitionPeak: Quantity<'absolute pressure'>;
  /** Time from 10 % to 90 % of that pressure. */
  readonly riseTime: Quantity<'time'>;
  readonly maxRiseRate: Quantity<'pressure rate'>;
  /** Maximum pressure of the whole firing. */
  readonly peakPressure: Quantity<'absolute pressure'>;
}

/** Ignition of a motor over a range of times of flame spread. */
export interface IgnitionBand {
  /** By increasing time of flame spread. */
  readonly spreads: readonly IgnitionOfSpread[];
  /** Minimum and maximum of the ignition peak. */
  readonly ignitionPeak: readonly [low: Quantity<'absolute pressure'>, high: Quantity<'absolute pressure'>];
  /** Minimum and maximum of the pressure of the whole firing. */
  readonly peakPressure: readonly [low: Quantity<'absolute pressure'>, high: Quantity<'absolute pressure'>];
  /** Hang-fire, several stable pressures, low characteristic length and venting, for the motor as given. */
  readonly cautions: readonly string[];
}

/** Times of flame spread of small motors [s] (quoted from memory, not verified). */
const usualSpreads = [0.002, 0.005, 0.01, 0.02, 0.05, 0.1];

/**
 * Ignition of a motor for a range of times of flame spread, which are rarely known; other inputs of the ignition remain. The
 * chamber has one pressure.
 *
 * @example ignitionBand({ motor: { propellant: publishedPropellant('potassium nitrate/sucrose'), grain: tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' }), nozzle: { throatDiameter: '8 mm', expansionRatio: 5 }, chamber: { innerDiameter: '50 mm', length: '110 mm' }, ambient: '1 atm' } }).spreads.length // => 6
 */
export const ignitionBand = /* @__PURE__ */ procedure({
  name: 'ignitionBand',
  title: 'Ignition over a range of flame spread',
  source: 'simulate, for each time of flame spread',
  inputs: {
    motor: inputs(simulateInputs, { meaning: 'motor, as for simulate' }),
    spreadTimes: optional(
      list(
        'times of flame spread; 2, 5, 10, 20, 50 and 100 ms if omitted',
        time('t_f', 'time of flame spread', { min: 0, example: '10 ms' }),
      ),
    ),
  },
  gives: 'the pressure peak and the rise of the pressure at ignition for each time, and their bands',
  example:
    "ignitionBand({ motor: { propellant: publishedPropellant('potassium nitrate/sucrose'), grain: tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' }), nozzle: { throatDiameter: '8 mm', expansionRatio: 5 }, chamber: { innerDiameter: '50 mm', length: '110 mm' }, ambient: '1 atm' } })",
  run: ({ motor, spreadTimes }): IgnitionBand => {
    const { model } = readMotor(motor, { procedure: 'ignitionBand', path: 'motor' });
    const times = spreadTimes?.map(({ si }) => si) ?? usualSpreads;
    const workspace = chamberWorkspace();
    const spreads = [...times]
      .sort((a, b) => a - b)
      .map((flameSpreadTime) => ignitionOf({ ...model, flameSpreadTime }, workspace));
    const band = (of: (one: IgnitionOfSpread) => Quantity<'absolute pressure'>) => {
      const sorted = spreads.map(of).sort((a, b) => a.si - b.si);
      return [sorted[0], sorted[sorted.length - 1]] as const;
    };
    return {
      spreads,
      ignitionPeak: band((one) => one.ignitionPeak),
      peakPressure: band((one) => one.peakPressure),
      cautions: cautionsOf(model, workspace),
    };
  },
});

function cautionsOf(m: MotorModel, w: ChamberWorkspace): readonly string[] {
  const recorder = sampleRecorder(8);
  runChamber(m, w, emptyResult(), recorder);
  return transientCautions(m, recorder.samples());
}

function ignitionOf(m: MotorModel, w: ChamberWorkspace): IgnitionOfSpread {
  const result = emptyResult();
  const recorder = sampleRecorder(8);
  runChamber(m, w, result, recorder);
  const { time: t, pressure, depth } = recorder.samples();
  const end = depth.findIndex((y) => y > 0.1 * m.table.burnout);
  const start = pressure.subarray(0, end < 0 ? pressure.length : end);
  const peak = Math.max(...start);
  const reached = (share: number): number => {
    const k = start.findIndex((p) => p >= share * peak);
    if (k <= 0) return t[0];
    return t[k - 1] + ((share * peak - start[k - 1]) / (start[k] - start[k - 1])) * (t[k] - t[k - 1]);
  };
  let rise = 0;
  for (let i = 1; i < start.length; i++) rise = Math.max(rise, (start[i] - start[i - 1]) / (t[i] - t[i - 1]));
  const pascals = (si: number) => fromSiValue<'absolute pressure'>(si, 'absolute pressure', unitOf('MPa'));
  const seconds = (si: number) => fromSiValue<'time'>(si, 'time', unitOf('ms'));
  return {
    flameSpreadTime: seconds(m.flameSpreadTime),
    ignitionPeak: pascals(peak),
    riseTime: seconds(reached(0.9) - reached(0.1)),
    maxRiseRate: fromSiValue(rise, 'pressure rate', unitOf('MPa/s')),
    peakPressure: pascals(result.peakPressure),
  };
}
