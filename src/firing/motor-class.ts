import { force, impulse, procedure } from '../units';

/** Letter class of a motor by total impulse. */
export interface MotorClass {
  /** `'1/8A'` to `'1/2A'`, then `'A'` to `'Z'`, then `'AA'` and on. */
  readonly letter: string;
  /** Highest total impulse of the class, N·s. */
  readonly upperBound: number;
  /** Highest total impulse of the class below, N·s; zero for the lowest class. */
  readonly lowerBound: number;
  /**
   * Position of the impulse between the two bounds in per cent: 0 just above the class below, 100 at the upper bound.
   */
  readonly percentOfRange: number;
  /** Total impulse/upper bound of the class, in per cent. */
  readonly percentOfClass: number;
  /** Source and provenance of this part of the table. */
  readonly basis: string;
}

/** Top of the class `step` doublings above 1/8A, N·s. */
const topOf = (step: number): number => 0.3125 * 2 ** step;

// Classes begin one in the last printed place above the one below: 2.51, 0.626 and 0.3126 N·s. Hence 2.504 N·s is still
// class A.
function isWithin(impulse: number, step: number): boolean {
  const places = 10 ** Math.max(2, 4 - step);
  return Math.round(impulse * places) / places <= topOf(step);
}

const totalImpulse = /* @__PURE__ */ impulse('I', 'total impulse', { above: 0, example: '371 N*s' });

/**
 * Returns the letter class of a total impulse. The bounds double from class to class; class A ends at 2.5 N·s. The table
 * gives bounds to 0.01 N·s (below 1/2A to 0.001 and 0.0001), so the impulse is rounded to that before it is classified.
 *
 * @example motorClass('4679 N*s').letter // => 'L'
 */
export const motorClass = /* @__PURE__ */ procedure({
  name: 'motorClass',
  title: 'Letter class of a motor by total impulse',
  source:
    'NFPA 1125, Code for the Manufacture of Model Rocket and High Power Rocket Motors, table of motor classes (A to O as published; the fractions below 1/2A, and letters beyond O by the same doubling, quoted from memory, not verified)',
  subject: totalImpulse,
  inputs: {},
  gives: 'the letter, the bounds of its class, and the position between them',
  example: "motorClass('4679 N*s')",
  run: ({ si }): MotorClass => {
    let step = 0;
    while (!isWithin(si, step)) step++;
    const upperBound = topOf(step);
    const lowerBound = step === 0 ? 0 : upperBound / 2;
    return {
      letter: step < 3 ? `1/${2 ** (3 - step)}A` : letters(step - 3),
      upperBound,
      lowerBound,
      percentOfRange: Math.min(100, Math.max(0, (100 * (si - lowerBound)) / (upperBound - lowerBound))),
      percentOfClass: (100 * si) / upperBound,
      basis:
        step >= 2 && step <= 17
          ? 'NFPA 1125, table of motor classes'
          : 'doubling of the NFPA 1125 table beyond its printed letters, quoted from memory, not verified',
    };
  },
});

function letters(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26) - 1) + last;
}

/**
 * Whether a motor is a model rocket motor: at most 160 N·s total impulse and at most 80 N average thrust.
 *
 * @example isModelRocketMotor({ totalImpulse: '120 N*s', averageThrust: '79.9 N' }) // => true
 */
export const isModelRocketMotor = /* @__PURE__ */ procedure({
  name: 'isModelRocketMotor',
  title: 'Limits of a model rocket motor',
  source: 'NFPA 1122 and 1125, limits of a model rocket motor (quoted from memory, not verified)',
  inputs: { totalImpulse, averageThrust: force('F', 'average thrust', { min: 0, example: '79.9 N' }) },
  gives: 'whether the motor is a model rocket motor',
  example: { totalImpulse: '120 N*s', averageThrust: '79.9 N' },
  run: ({ totalImpulse: total, averageThrust }): boolean => total.si <= 160 && averageThrust.si <= 80,
});
