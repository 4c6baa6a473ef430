import { newtonBracketed } from '../numerics';
import { angle, formula, fromSiValue, procedure, unitOf } from '../units';
import { gamma, machFromOne } from './gas-inputs';

const report1135 = 'NACA Report 1135 (1953), Prandtl-Meyer expansion';

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

function prandtlMeyerAngleSi(mach: number, gamma: number): number {
  const root = Math.sqrt((gamma + 1) / (gamma - 1));
  const s = Math.sqrt((mach - 1) * (mach + 1));
  // Far from Mach 1 the textbook form loses nothing. Near it each arctangent is written as its argument less a remainder:
  // the arguments cancel exactly.
  if (s > 4) return root * Math.atan(s / root) - Math.atan(s);
  return beyondArctan(s) - root * beyondArctan(s / root);
}

/**
 * Turning angle of a sonic flow expanded to a Mach number.
 *
 * @example prandtlMeyerAngle({ mach: 2.4, gamma: 1.4 }).in('deg') // => 36.7465
 */
export const prandtlMeyerAngle = /* @__PURE__ */ formula({
  name: 'prandtlMeyerAngle',
  title: 'Prandtl-Meyer angle',
  equation: 'ν = √((γ + 1) / (γ − 1))·arctan(√((γ − 1) / (γ + 1)·(M² − 1))) − arctan(√(M² − 1))',
  source: report1135,
  inputs: { mach: machFromOne, gamma },
  output: angle('ν', 'Prandtl-Meyer angle'),
  example: { mach: 2.4, gamma: 1.4 },
  si: ({ mach, gamma }) => prandtlMeyerAngleSi(mach, gamma),
});

/**
 * Prandtl-Meyer angle of an expansion from Mach 1 into a vacuum.
 *
 * @example maximumPrandtlMeyerAngle({ gamma: 1.4 }).in('deg') // => 130.4540769
 */
export const maximumPrandtlMeyerAngle = /* @__PURE__ */ formula({
  name: 'maximumPrandtlMeyerAngle',
  title: 'Maximum Prandtl-Meyer angle',
  equation: 'ν_max = π / 2·(√((γ + 1) / (γ − 1)) − 1)',
  source: `${report1135}, limit of infinite Mach number`,
  inputs: { gamma },
  output: angle('ν_max', 'maximum Prandtl-Meyer angle'),
  example: { gamma: 1.4 },
  si: ({ gamma }) => (Math.PI / 2) * (Math.sqrt((gamma + 1) / (gamma - 1)) - 1),
});

function machFromPrandtlMeyerAngleSi(nu: number, gamma: number): number {
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

/**
 * Mach number that a sonic flow reaches in turning through an angle, solved in a bracket.
 *
 * @example machFromPrandtlMeyerAngle({ angle: '28 deg', gamma: 1.4 }) // => 2.059272
 */
export const machFromPrandtlMeyerAngle = /* @__PURE__ */ procedure({
  name: 'machFromPrandtlMeyerAngle',
  title: 'Mach number from the Prandtl-Meyer angle',
  source: report1135,
  inputs: { angle: angle('ν', 'Prandtl-Meyer angle, below its maximum', { min: 0 }), gamma },
  gives: 'the Mach number',
  example: { angle: '28 deg', gamma: 1.4 },
  checks: [
    ({ angle, gamma }) => {
      const maximum = maximumPrandtlMeyerAngle.si({ gamma });
      if (angle.si < maximum) return undefined;
      const limit = fromSiValue(maximum, 'angle', unitOf('deg')).format({ figures: 6 });
      return { path: 'angle', given: angle, expected: `below ${limit}, the expansion to vacuum` };
    },
  ],
  run: ({ angle, gamma }) => machFromPrandtlMeyerAngleSi(angle.si, gamma),
  si: ({ angle, gamma }: { readonly angle: number; readonly gamma: number }): number =>
    machFromPrandtlMeyerAngleSi(angle, gamma),
});
