import { newtonBracketed } from '../numerics';
import {
  angle,
  formula,
  fromSiValue,
  type Quantity,
  type QuantityInput,
  ratio,
  readInput,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { refusal } from '../units/refusal';

const procedure = 'machFromPrandtlMeyerAngle';

/** `x − arctan x` without the cancellation at small x: the argument is halved until a short series serves. */
function beyondArctan(x: number): number {
  if (x >= 2) return x - Math.atan(x);
  if (x <= 0.2) {
    const s = -x * x;
    let term = x;
    let sum = 0;
    // 13 terms of x³/3 − x⁵/5 + …, smallest first.
    for (let n = 27; n >= 3; n -= 2) sum = sum * s + 1 / n;
    term *= -s;
    return term * sum;
  }
  // arctan x = 2·arctan y with y = x/(1+√(1+x²)); what is left over is x³/(1+√(1+x²))², a sum of positive terms.
  const r = 1 + Math.sqrt(1 + x * x);
  return (x * x * x) / (r * r) + 2 * beyondArctan(x / r);
}

/**
 * Prandtl-Meyer angle in radians; plain numbers, unchecked (`mach` ≥ 1).
 *
 * @example prandtlMeyerAngleSi(2, 1.4) // => 0.460413682
 */
export function prandtlMeyerAngleSi(mach: number, gamma: number): number {
  const root = Math.sqrt((gamma + 1) / (gamma - 1));
  const s = Math.sqrt((mach - 1) * (mach + 1));
  // Far from Mach 1 the textbook form loses nothing. Near it each arctangent is written as its argument less a remainder:
  // the arguments cancel exactly.
  if (s > 4) return root * Math.atan(s / root) - Math.atan(s);
  return beyondArctan(s) - root * beyondArctan(s / root);
}

/**
 * Prandtl-Meyer angle: how far a sonic stream has turned in expanding to a Mach number.
 *
 * @throws MeopError `out-of-domain` for a Mach number below 1
 * @example prandtlMeyerAngle({ mach: 2.4, gamma: 1.4 }).in('deg') // => 36.7465
 */
export const prandtlMeyerAngle = /* @__PURE__ */ formula({
  name: 'prandtlMeyerAngle',
  title: 'Prandtl-Meyer angle',
  equation: 'ν = √((γ + 1) / (γ − 1))·arctan(√((γ − 1) / (γ + 1)·(M² − 1))) − arctan(√(M² − 1))',
  source: 'NACA Report 1135 (1953), Prandtl-Meyer expansion',
  inputs: {
    mach: ratio('M', 'Mach number', { min: 1 }),
    gamma: ratio('γ', 'ratio of specific heats', { above: 1 }),
  },
  output: angle('ν', 'Prandtl-Meyer angle'),
  example: { mach: 2.4, gamma: 1.4 },
  si: ({ mach, gamma }) => prandtlMeyerAngleSi(mach, gamma),
});

/**
 * Greatest Prandtl-Meyer angle: expansion from Mach 1 into a vacuum.
 *
 * @example maximumPrandtlMeyerAngle({ gamma: 1.4 }).in('deg') // => 130.4540769
 */
export const maximumPrandtlMeyerAngle = /* @__PURE__ */ formula({
  name: 'maximumPrandtlMeyerAngle',
  title: 'Greatest Prandtl-Meyer angle',
  equation: 'ν_max = π / 2·(√((γ + 1) / (γ − 1)) − 1)',
  source: 'NACA Report 1135 (1953), Prandtl-Meyer expansion, limit of infinite Mach number',
  inputs: { gamma: ratio('γ', 'ratio of specific heats', { above: 1 }) },
  output: angle('ν_max', 'greatest Prandtl-Meyer angle'),
  example: { gamma: 1.4 },
  si: ({ gamma }) => (Math.PI / 2) * (Math.sqrt((gamma + 1) / (gamma - 1)) - 1),
});

/**
 * Mach number at a Prandtl-Meyer angle in radians; plain numbers, unchecked (0 ≤ `nu` < the greatest angle).
 *
 * @example machFromPrandtlMeyerAngleSi(0.460413682, 1.4) // => 2
 */
export function machFromPrandtlMeyerAngleSi(nu: number, gamma: number): number {
  if (nu === 0) return 1;
  const t = (gamma - 1) / 2;
  const lambda2 = (gamma + 1) / (gamma - 1);
  // Solved for w = s/(s+c), s = √(M²−1): w runs over (0, 1) while Mach runs over (1, ∞).
  const c = 1 + Math.sqrt(lambda2);
  const w = newtonBracketed(
    (x, out) => {
      const s = (c * x) / (1 - x);
      const root = Math.sqrt(lambda2);
      out[0] = beyondArctan(s) - root * beyondArctan(s / root) - nu;
      // dν/ds = s²·(1 − 1/λ²)/((1 + s²)·(1 + s²/λ²)); ds/dw = c/(1−w)².
      const slope = (s * s * (1 - 1 / lambda2)) / ((1 + s * s) * (1 + (s * s) / lambda2));
      out[1] = (slope * c) / ((1 - x) * (1 - x));
    },
    0,
    1,
    { trend: 'rising', guess: Math.min(0.9, Math.cbrt((3 * nu * (1 + t)) / 2) / c) },
  );
  const s = (c * w) / (1 - w);
  return Math.hypot(1, s);
}

/** What {@link machFromPrandtlMeyerAngle} needs. */
export interface MachFromPrandtlMeyerAngleOptions {
  /** Prandtl-Meyer angle, from 0 to below {@link maximumPrandtlMeyerAngle}. */
  readonly angle: QuantityInput<'angle'>;
  /** Ratio of specific heats, above 1. */
  readonly gamma: number;
}

const machFromPrandtlMeyerAngleFields: FieldsOf<MachFromPrandtlMeyerAngleOptions> = {
  angle: 'required',
  gamma: 'required',
};

/**
 * Mach number that a sonic stream reaches in turning through an angle.
 *
 * Source: NACA Report 1135 (1953), Prandtl-Meyer expansion, solved in a bracket.
 *
 * @throws MeopError `out-of-domain` for an angle below 0 or not below the greatest angle, which the message names
 * @example machFromPrandtlMeyerAngle({ angle: '28 deg', gamma: 1.4 }) // => 2.059272
 */
export function machFromPrandtlMeyerAngle(options: MachFromPrandtlMeyerAngleOptions): number {
  requireFields(procedure, options, machFromPrandtlMeyerAngleFields);
  const { angle, gamma } = options;
  const nu = readInput('angle', 'angle', angle, procedure).si;
  const g = readInput('dimensionless', 'gamma', gamma, procedure).si;
  if (!(g > 1)) throw refusal(procedure, 'gamma', gamma, 'above 1');
  const greatest = maximumPrandtlMeyerAngle.si({ gamma: g });
  if (!(nu >= 0 && nu < greatest)) {
    const limit: Quantity<'angle'> = fromSiValue(greatest, 'angle', unitOf('deg'));
    throw refusal(
      procedure,
      'angle',
      angle,
      `from 0 deg to below ${limit.format({ figures: 6 })}`,
      'beyond that the stream has expanded to vacuum',
    );
  }
  return machFromPrandtlMeyerAngleSi(nu, g);
}
