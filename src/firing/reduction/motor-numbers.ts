import { fromSiValue, type Quantity, unitFor, unitOf } from '../../units';
import type { AnalysedRecord } from '../analysis/analysed-record';
import type { AnalysedTrace } from '../analysis/analysed-trace';
import { type MotorClass, motorClass } from '../motor-class';
import { type Estimate, estimate } from '../saturation/recovery';
import type { ReductionInputsSi } from './reduction-inputs';

/** What a cleaned record says of the motor. A number is undefined where a channel or a fact for it is missing. */
export interface MotorNumbers {
  /** Over the action: between the 2 % points of thrust, or higher up where the zero afterwards is another. */
  readonly totalImpulse: Estimate<'impulse'> | undefined;
  readonly motorClass: MotorClass | undefined;
  readonly specificImpulse: Quantity<'specific impulse'> | undefined;
  /** Between the 10 % points of thrust. */
  readonly averageThrust: Quantity<'force'> | undefined;
  readonly peakThrust: Estimate<'force'> | undefined;
  /** Between the 10 % points of thrust; of pressure where there is no thrust. */
  readonly burnTime: Quantity<'time'> | undefined;
  /** Between the 5 % points. */
  readonly burnTime5: Quantity<'time'> | undefined;
  /** Of absolute pressure, over the action. */
  readonly pressureIntegral: Estimate<'pressure integral'> | undefined;
  readonly peakPressure: Estimate<'absolute pressure'> | undefined;
  /** Mean throat area times the pressure integral over the propellant burned. */
  readonly characteristicVelocity: Quantity<'speed'> | undefined;
  /** Impulse over throat area and pressure integral, over the action. */
  readonly thrustCoefficient: number | undefined;
  /** Delivered over theoretical c*, and thrust coefficient over theoretical: where the losses are. */
  readonly combustionEfficiency: number | undefined;
  readonly nozzleEfficiency: number | undefined;
  readonly cautions: readonly string[];
}

/** What clipping leaves unknown of the integral of a channel, SI. */
export interface ClippedIntegral {
  /** Half of the recovered band's area. */
  readonly either: number;
  /** What may be missing above the limit, where nothing recovered it. */
  readonly above: number;
}

/** Standard deviations as shares: of thrust and pressure integrals by their zero, and of their calibrations. */
export interface NumberErrors {
  readonly thrustClipped: ClippedIntegral;
  readonly pressureClipped: ClippedIntegral;
  readonly thrustZero: number;
  readonly pressureZero: number;
  readonly calibration: number;
}

/**
 * Kernel: the numbers of a cleaned record.
 *
 * Sources: Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), definitions of I, I_s, c* and C_F; NFPA 1125
 * for the 5 % points (from memory); combination of uncertainties by root sum of squares, JCGM 100:2008.
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
      'the record begins or ends within the burn: impulse and times are those of the part recorded',
    );
  const impulse = thrust?.integral;
  if (errors.thrustClipped.above > 0)
    cautions.push(
      'thrust is clipped and could not be recovered: impulse, class and averages are at least what is given',
    );
  if (errors.pressureClipped.above > 0)
    cautions.push(
      'pressure is clipped and could not be recovered: its integral and c* are at least what is given, the thrust coefficient at most',
    );
  // c* counts pressure from vacuum.
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
      `a mean thrust coefficient of ${coefficient.toFixed(2)} points to a wrong calibration, unit or throat${slipOf(coefficient, 1.1, 1.8)}`,
    );
  const inSeconds = specific === undefined ? undefined : specific / standardGravity;
  if (inSeconds !== undefined && (inSeconds < 30 || inSeconds > 320))
    cautions.push(
      `a specific impulse of ${inSeconds.toPrecision(3)} s is none of a solid motor: thrust's unit or calibration, or the propellant mass, is wrong${slipOf(inSeconds, 80, 280)}`,
    );
  const ideal = facts.idealCharacteristicVelocity;
  const combustion = velocity !== undefined && ideal ? velocity / ideal : undefined;
  if (combustion !== undefined && combustion > 1.02)
    cautions.push(
      `c* comes out ${(100 * combustion).toFixed(0)} % of the theoretical: mass, throat or pressure calibration is wrong`,
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

// What the thrust comes out too large by where one unit is taken for another.
const slips: readonly (readonly [number, string])[] = [
  [1000 / standardGravity, 'grams-force were taken for newtons'],
  [1 / standardGravity, 'kilograms-force were taken for newtons'],
  [1 / 4.4482216152605, 'pounds-force were taken for newtons'],
  [4.4482216152605, 'newtons were taken for pounds-force'],
  [standardGravity, 'newtons were taken for kilograms-force'],
];

/** The mistaken unit that would make a figure plausible, as text; empty where none or several would. */
function slipOf(value: number, least: number, most: number): string {
  const fits = slips.filter(([factor]) => value / factor >= least && value / factor <= most);
  return fits.length === 1 ? `; it would be ${(value / fits[0][0]).toPrecision(3)} if ${fits[0][1]}` : '';
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
  // A zero that is not the same afterwards must not be counted as burning.
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
