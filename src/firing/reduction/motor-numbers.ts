import { fromSiValue, type Quantity, unitFor, unitOf } from '../../units';
import type { AnalysedRecord } from '../analysis/analysed-record';
import type { AnalysedTrace } from '../analysis/analysed-trace';
import { type MotorClass, motorClass } from '../motor-class';
import { type Estimate, estimate } from '../saturation/recovery';
import type { ReductionInputsSi } from './reduction-inputs';

/**
 * Performance of the motor from a cleaned record. A number is undefined where a channel or an input for it is missing.
 */
export interface MotorNumbers {
  /** Total impulse between the 2 % points of thrust, or at a higher threshold where the zero has shifted. */
  readonly totalImpulse: Estimate<'impulse'> | undefined;
  readonly motorClass: MotorClass | undefined;
  readonly specificImpulse: Quantity<'specific impulse'> | undefined;
  /** Average thrust between the 10 % points of thrust. */
  readonly averageThrust: Quantity<'force'> | undefined;
  readonly peakThrust: Estimate<'force'> | undefined;
  /** Burn time between the 10 % points of thrust, or of pressure where there is no thrust. */
  readonly burnTime: Quantity<'time'> | undefined;
  /** Burn time between the 5 % points. */
  readonly burnTime5: Quantity<'time'> | undefined;
  /** Integral of absolute pressure between its 2 % points, as for the total impulse. */
  readonly pressureIntegral: Estimate<'pressure integral'> | undefined;
  readonly peakPressure: Estimate<'absolute pressure'> | undefined;
  /** Mean throat area·pressure integral/mass of propellant burned. */
  readonly characteristicVelocity: Quantity<'speed'> | undefined;
  /** Impulse/(throat area·pressure integral). */
  readonly thrustCoefficient: number | undefined;
  /** Delivered/theoretical c*, and delivered/theoretical thrust coefficient. */
  readonly combustionEfficiency: number | undefined;
  readonly nozzleEfficiency: number | undefined;
  readonly cautions: readonly string[];
}

/** Uncertainty of the integral of a channel due to clipping, SI. */
export interface ClippedIntegral {
  /** Half of the area of the confidence interval of the reconstruction. */
  readonly either: number;
  /** Integral that may be missing above the limit, where the channel was not reconstructed. */
  readonly above: number;
}

/** Relative standard deviations: of the thrust and pressure integrals by their zeros, and of the calibrations. */
export interface NumberErrors {
  readonly thrustClipped: ClippedIntegral;
  readonly pressureClipped: ClippedIntegral;
  readonly thrustZero: number;
  readonly pressureZero: number;
  readonly calibration: number;
}

/**
 * Kernel: performance from a cleaned record.
 *
 * Sources: Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), definitions of I, I_s, c* and C_F; NFPA 1125
 * for the 5 % points (quoted from memory, not verified); combination of uncertainties by root sum of squares, JCGM
 * 100:2008.
 */
export function motorNumbers(
  record: AnalysedRecord,
  facts: ReductionInputsSi,
  errors: NumberErrors,
  peaks: Pick<MotorNumbers, 'peakPressure' | 'peakThrust'>,
): MotorNumbers {
  const cautions: string[] = [];
  const { ambient, meanThroatArea, propellantMass } = facts;
  const thrust = record.traces.thrust && action(record.traces.thrust, 0);
  const pressure = record.traces.pressure && action(record.traces.pressure, ambient);
  if (thrust?.cut || pressure?.cut)
    cautions.push(
      'The record begins or ends within the burn. Impulse and times are those of the recorded part.',
    );
  const impulse = thrust?.integral;
  if (errors.thrustClipped.above > 0)
    cautions.push(
      'thrust: the channel is clipped and could not be reconstructed. Impulse, class and averages are lower bounds.',
    );
  if (errors.pressureClipped.above > 0)
    cautions.push(
      'pressure: the channel is clipped and could not be reconstructed. Its integral and c* are lower bounds, the thrust coefficient an upper bound.',
    );
  // c* uses absolute pressure.
  const overPressure = pressure && pressure.integral + ambient * (pressure.to - pressure.from);
  const edges = thrust ?? pressure;
  const specific = impulse !== undefined && propellantMass ? impulse / propellantMass : undefined;
  const velocity =
    overPressure && meanThroatArea && propellantMass
      ? (overPressure * meanThroatArea) / propellantMass
      : undefined;
  const coefficient =
    impulse !== undefined && overPressure && meanThroatArea
      ? impulse / (overPressure * meanThroatArea)
      : undefined;
  if (coefficient !== undefined && (coefficient < 0.9 || coefficient > 1.9))
    cautions.push(
      `The mean thrust coefficient of ${coefficient.toFixed(2)} is outside the usual range of 0.9 to 1.9. Check calibration, units and throat.${unitErrorOf(coefficient, 1.1, 1.8)}`,
    );
  const inSeconds = specific === undefined ? undefined : specific / standardGravity;
  if (inSeconds !== undefined && (inSeconds < 30 || inSeconds > 320))
    cautions.push(
      `The specific impulse of ${inSeconds.toPrecision(3)} s is outside the range of solid motors (30 to 320 s). Check the unit and calibration of thrust, and the propellant mass.${unitErrorOf(inSeconds, 80, 280)}`,
    );
  const ideal = facts.idealCharacteristicVelocity;
  const combustion = velocity !== undefined && ideal ? velocity / ideal : undefined;
  if (combustion !== undefined && combustion > 1.02)
    cautions.push(
      `The characteristic velocity is ${(100 * combustion).toFixed(0)} % of the theoretical one (allowed ≤ 102 %). Check mass, throat and pressure calibration.`,
    );
  const nozzle =
    coefficient !== undefined && facts.idealThrustCoefficient
      ? coefficient / facts.idealThrustCoefficient
      : undefined;
  const seconds = (si: number | undefined): Quantity<'time'> | undefined =>
    si === undefined ? undefined : fromSiValue(si, 'time', unitOf('s'));
  return {
    totalImpulse:
      impulse === undefined
        ? undefined
        : within('impulse', impulse, errors.thrustZero, errors.calibration, errors.thrustClipped),
    motorClass:
      impulse === undefined
        ? undefined
        : motorClass(fromSiValue<'impulse'>(impulse, 'impulse', unitOf('N*s'))),
    specificImpulse:
      specific === undefined
        ? undefined
        : fromSiValue(specific, 'specific impulse', unitFor('specific impulse', 's')),
    averageThrust: thrust && fromSiValue(thrust.integral10 / thrust.burnTime, 'force', unitOf('N')),
    ...peaks,
    burnTime: seconds(edges?.burnTime),
    burnTime5: seconds(edges?.burnTime5),
    pressureIntegral:
      overPressure === undefined
        ? undefined
        : within(
            'pressure integral',
            overPressure,
            errors.pressureZero,
            errors.calibration,
            errors.pressureClipped,
          ),
    characteristicVelocity:
      velocity === undefined ? undefined : fromSiValue(velocity, 'speed', unitOf('m/s')),
    thrustCoefficient: coefficient,
    combustionEfficiency: combustion,
    nozzleEfficiency: nozzle,
    cautions,
  };
}

const standardGravity = 9.80665;

// Factor by which thrust is too large for each unit error.
const unitErrors: readonly (readonly [number, string])[] = [
  [1000 / standardGravity, 'grams-force were read as newtons'],
  [1 / standardGravity, 'kilograms-force were read as newtons'],
  [1 / 4.4482216152605, 'pounds-force were read as newtons'],
  [4.4482216152605, 'newtons were read as pounds-force'],
  [standardGravity, 'newtons were read as kilograms-force'],
];

/** The unit error that would make a value plausible, as text; empty where none or several would. */
function unitErrorOf(value: number, least: number, most: number): string {
  const fits = unitErrors.filter(([factor]) => value / factor >= least && value / factor <= most);
  return fits.length === 1 ? ` It would be ${(value / fits[0][0]).toPrecision(3)} if ${fits[0][1]}.` : '';
}

function within<K extends 'impulse' | 'pressure integral'>(
  kind: K,
  value: number,
  zero: number,
  calibration: number,
  { either, above }: ClippedIntegral,
): Estimate<K> {
  const half = Math.hypot(1.96 * value * zero, 1.96 * value * calibration, either);
  return estimate(kind, value, value - half, value + half + above);
}

interface Action {
  readonly from: number;
  readonly to: number;
  readonly integral: number;
  readonly integral10: number;
  readonly burnTime: number;
  readonly burnTime5: number;
  readonly cut: boolean;
}

function action(trace: AnalysedTrace, rest: number): Action {
  const ten = trace.edges(0.1, rest);
  const five = trace.edges(0.05, rest);
  // A shifted zero after the burn must not count as burning.
  const { after = rest } = trace.baseline();
  const unrest = (1.5 * Math.abs(after - rest)) / ten.peak;
  const least = Math.min(0.1, Math.max(0.02, unrest));
  const two = trace.edges(least, rest);
  return {
    from: two.start,
    to: two.end,
    integral: trace.integral(least, rest),
    integral10: trace.integral(0.1, rest),
    burnTime: ten.end - ten.start,
    burnTime5: five.end - five.start,
    cut: ten.startCut || ten.endCut,
  };
}
