import { findRoot } from '../numerics';
import {
  angle,
  choice,
  formula,
  fromSiValue,
  MeopError,
  optional,
  procedure,
  type Quantity,
  ratio,
  unitOf,
} from '../units';
import { gamma } from './gas-inputs';
import {
  machBehindShockSi,
  shockDensityRatioSi,
  shockPressureRatioSi,
  shockStagnationPressureRatioSi,
} from './normal-shock-kernels';

const report1135 = 'NACA Report 1135 (1953), oblique shock in a perfect gas';
const mach = /* @__PURE__ */ ratio('M', 'Mach number ahead of the shock', { above: 1, example: 2 });

function deflectionSi(mach: number, shockAngle: number, gamma: number): number {
  const normal = mach * Math.sin(shockAngle);
  return Math.atan2(
    2 * Math.cos(shockAngle) * (normal - 1) * (normal + 1),
    Math.sin(shockAngle) * (mach * mach * (gamma + Math.cos(2 * shockAngle)) + 2),
  );
}

/**
 * Angle through which an oblique shock turns the flow.
 *
 * @example obliqueShockDeflection({ mach: 2, shockAngle: '39.3139 deg', gamma: 1.4 }).in('deg') // => 10.0000
 */
export const obliqueShockDeflection = /* @__PURE__ */ formula({
  name: 'obliqueShockDeflection',
  title: 'Deflection of an oblique shock',
  equation: 'θ = arctan(2·cot(β)·(M²·sin²(β) − 1) / (M²·(γ + cos(2·β)) + 2))',
  source: report1135,
  inputs: {
    mach,
    shockAngle: angle('β', 'angle between the shock and the flow ahead', { above: 0, max: Math.PI / 2 }),
    gamma,
  },
  output: angle('θ', 'deflection'),
  example: { mach: 2, shockAngle: '39.3 deg', gamma: 1.4 },
  requires: [
    ({ mach, shockAngle }) =>
      mach * Math.sin(shockAngle) >= 1 ||
      'the shock angle is below the Mach angle, the minimum at this Mach number',
  ],
  si: ({ mach, shockAngle, gamma }) => deflectionSi(mach, shockAngle, gamma),
});

/**
 * Shock angle at the maximum deflection of the flow; a larger deflection detaches the shock.
 *
 * @example detachmentShockAngle({ mach: 2, gamma: 1.4 }).in('deg') // => 64.6688
 */
export const detachmentShockAngle = /* @__PURE__ */ formula({
  name: 'detachmentShockAngle',
  title: 'Shock angle at detachment',
  equation:
    'β_max = arcsin(√(1 / (γ·M²)·((γ + 1) / 4·M² − 1 + √((γ + 1)·(1 + (γ − 1) / 2·M² + (γ + 1) / 16·M⁴)))))',
  source: report1135,
  inputs: { mach, gamma },
  output: angle('β_max', 'shock angle at the maximum deflection'),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => {
    const m2 = mach * mach;
    const root = Math.sqrt((gamma + 1) * (1 + ((gamma - 1) / 2) * m2 + ((gamma + 1) / 16) * m2 * m2));
    return Math.asin(Math.sqrt(Math.min(1, (((gamma + 1) / 4) * m2 - 1 + root) / (gamma * m2))));
  },
});

/** An attached oblique shock: every ratio is downstream/upstream. */
export interface ObliqueShock {
  readonly branch: 'weak' | 'strong';
  readonly shockAngle: Quantity<'angle'>;
  readonly deflection: Quantity<'angle'>;
  readonly machBehind: number;
  readonly pressureRatio: number;
  readonly temperatureRatio: number;
  readonly densityRatio: number;
  readonly stagnationPressureRatio: number;
  /** Maximum deflection at this Mach number; beyond it the shock detaches. */
  readonly maximumDeflection: Quantity<'angle'>;
}

/**
 * Oblique shock of a deflection, on its weak or strong solution, each in its own bracket.
 *
 * @example obliqueShock({ mach: 2, gamma: 1.4, deflection: '10 deg' }).shockAngle.in('deg') // => 39.31393
 */
export const obliqueShock = /* @__PURE__ */ procedure({
  name: 'obliqueShock',
  title: 'Oblique shock of a deflection',
  source: report1135,
  inputs: {
    mach,
    gamma,
    deflection: angle('θ', 'angle through which the wall turns the flow', { min: 0 }),
    branch: optional(choice('weak or strong solution; the weak one is usual', ['weak', 'strong']), 'weak'),
  },
  gives: 'shock angle and the ratios across the attached shock',
  example: { mach: 2, gamma: 1.4, deflection: '10 deg' },
  run: ({ mach, gamma, deflection, branch }): ObliqueShock => {
    const wanted = deflection.si;
    const detached = detachmentShockAngle.si({ mach, gamma });
    const maximum = deflectionSi(mach, detached, gamma);
    const degrees = (si: number): Quantity<'angle'> => fromSiValue(si, 'angle', unitOf('deg'));
    if (wanted > maximum)
      throw new MeopError({
        code: 'no-solution',
        procedure: 'obliqueShock',
        path: 'deflection',
        given: deflection,
        expected: `at most ${degrees(maximum).format({ figures: 6 })} at Mach ${mach}`,
        remedy: 'A larger deflection detaches the shock',
      });
    const ends =
      branch === 'weak'
        ? { lower: Math.atan2(1, Math.sqrt((mach - 1) * (mach + 1))), upper: detached }
        : { lower: detached, upper: Math.PI / 2 };
    const beta =
      wanted === 0
        ? branch === 'weak'
          ? ends.lower
          : ends.upper
        : wanted === maximum
          ? detached
          : findRoot((angle) => deflectionSi(mach, angle, gamma) - wanted, ends).root;
    const normal = Math.max(1, mach * Math.sin(beta));
    return {
      branch,
      shockAngle: degrees(beta),
      deflection: degrees(wanted),
      machBehind: machBehindShockSi(normal, gamma) / Math.sin(beta - wanted),
      pressureRatio: shockPressureRatioSi(normal, gamma),
      temperatureRatio: shockPressureRatioSi(normal, gamma) / shockDensityRatioSi(normal, gamma),
      densityRatio: shockDensityRatioSi(normal, gamma),
      stagnationPressureRatio: shockStagnationPressureRatioSi(normal, gamma),
      maximumDeflection: degrees(maximum),
    };
  },
});
