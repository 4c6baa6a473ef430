import { MeopError, type Quantity, type QuantityInput, readInput } from '../units';

/** The letter class of a motor by total impulse. */
export interface MotorClass {
  /** `'1/8A'` to `'1/2A'`, then `'A'` to `'Z'`, then `'AA'` and on. */
  readonly letter: string;
  /** Highest total impulse of the class, N·s. */
  readonly upperBound: number;
  /** Highest total impulse of the class below, N·s; zero for the least class. */
  readonly lowerBound: number;
  /** How far the impulse is between the two, in per cent: 0 just above the class below, 100 at the top. */
  readonly percentOfRange: number;
  /** The impulse as a share of the class's upper bound, in per cent. */
  readonly percentOfClass: number;
  /** Where this part of the table is published, and how well it is known. */
  readonly basis: string;
}

/** Top of the class `step` doublings above 1/8A, N·s. */
const topOf = (step: number): number => 0.3125 * 2 ** step;

// Classes begin one in the last printed place above the one below: 2.51, 0.626 and 0.3126 N·s. So 2.504 N·s is still A.
function isWithin(impulse: number, step: number): boolean {
  const places = 10 ** Math.max(2, 4 - step);
  return Math.round(impulse * places) / places <= topOf(step);
}

/**
 * Letter class by total impulse: bounds double from class to class, A ending at 2.5 N·s.
 *
 * The table gives bounds to 0.01 N·s (below 1/2A to 0.001 and 0.0001), so the impulse is rounded to that before it is
 * classed.
 *
 * Source: NFPA 1125, Code for the Manufacture of Model Rocket and High Power Rocket Motors, table of motor classes
 * (A to O as published; the fractions below 1/2A, and letters beyond O by the same doubling, from memory).
 *
 * @throws MeopError `out-of-domain` where the impulse is not above zero
 * @example motorClass('4679 N*s').letter // => 'L'
 */
export function motorClass(totalImpulse: QuantityInput<'impulse'>): MotorClass {
  const impulse = readInput('impulse', 'totalImpulse', totalImpulse, 'motorClass').si;
  if (!(impulse > 0))
    throw new MeopError(
      'out-of-domain',
      `motorClass: totalImpulse: ${String(totalImpulse)} given; a total impulse above 0 N·s is expected`,
      'totalImpulse',
      { value: totalImpulse, expected: 'above 0' },
    );
  let step = 0;
  while (!isWithin(impulse, step)) step++;
  const upperBound = topOf(step);
  const lowerBound = step === 0 ? 0 : upperBound / 2;
  return {
    letter: step < 3 ? `1/${2 ** (3 - step)}A` : letters(step - 3),
    upperBound,
    lowerBound,
    percentOfRange: Math.min(100, Math.max(0, (100 * (impulse - lowerBound)) / (upperBound - lowerBound))),
    percentOfClass: (100 * impulse) / upperBound,
    basis:
      step >= 2 && step <= 17
        ? 'NFPA 1125, table of motor classes'
        : 'doubling of the NFPA 1125 table beyond its printed letters, from memory',
  };
}

function letters(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26) - 1) + last;
}

/**
 * Whether a motor is still a model rocket motor: at most 160 N·s and at most 80 N on average.
 *
 * Source: NFPA 1122 and 1125, limits of a model rocket motor (from memory).
 *
 * @example isModelRocketMotor({ totalImpulse: '120 N*s', averageThrust: '79.9 N' }) // => true
 */
export function isModelRocketMotor({
  totalImpulse,
  averageThrust,
}: {
  readonly totalImpulse: QuantityInput<'impulse'>;
  readonly averageThrust: QuantityInput<'force'> | Quantity<'force'>;
}): boolean {
  const impulse = readInput('impulse', 'totalImpulse', totalImpulse, 'isModelRocketMotor').si;
  const thrust = readInput('force', 'averageThrust', averageThrust, 'isModelRocketMotor').si;
  return impulse <= 160 && thrust <= 80;
}
