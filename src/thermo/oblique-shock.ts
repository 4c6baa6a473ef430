import { findRoot } from '../numerics';
import {
  angle,
  formula,
  fromSiValue,
  MeopError,
  type Quantity,
  type QuantityInput,
  ratio,
  readInput,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readNotNegative, refusal } from '../units/refusal';
import {
  machBehindShockSi,
  shockDensityRatioSi,
  shockPressureRatioSi,
  shockStagnationPressureRatioSi,
} from './normal-shock-kernels';

const procedure = 'obliqueShock';

const report1135 = 'NACA Report 1135 (1953), oblique shock in a perfect gas';

function deflectionSi(mach: number, shockAngle: number, gamma: number): number {
  const normal = mach * Math.sin(shockAngle);
  return Math.atan2(
    2 * Math.cos(shockAngle) * (normal - 1) * (normal + 1),
    Math.sin(shockAngle) * (mach * mach * (gamma + Math.cos(2 * shockAngle)) + 2),
  );
}

/**
 * Angle through which an oblique shock turns the stream.
 *
 * @throws MeopError `out-of-domain` where the shock angle is below the Mach angle
 * @example obliqueShockDeflection({ mach: 2, shockAngle: '39.3139 deg', gamma: 1.4 }).in('deg') // => 10.0000
 */
export const obliqueShockDeflection = /* @__PURE__ */ formula({
  name: 'obliqueShockDeflection',
  title: 'Deflection of an oblique shock',
  equation: 'θ = arctan(2·cot(β)·(M²·sin²(β) − 1) / (M²·(γ + cos(2·β)) + 2))',
  source: report1135,
  inputs: {
    mach: ratio('M', 'Mach number ahead of the shock', { above: 1 }),
    shockAngle: angle('β', 'angle between the shock and the stream ahead', { above: 0, max: Math.PI / 2 }),
    gamma: ratio('γ', 'ratio of specific heats', { above: 1 }),
  },
  output: angle('θ', 'deflection'),
  example: { mach: 2, shockAngle: '39.3 deg', gamma: 1.4 },
  requires: [
    ({ mach, shockAngle }) =>
      mach * Math.sin(shockAngle) >= 1 ||
      'the shock angle is below the Mach angle: no shock is so oblique at this Mach number',
  ],
  si: ({ mach, shockAngle, gamma }) => deflectionSi(mach, shockAngle, gamma),
});

/**
 * Shock angle at which an oblique shock turns the stream furthest; a larger deflection detaches it.
 *
 * @throws MeopError `out-of-domain` for a Mach number not above 1
 * @example detachmentShockAngle({ mach: 2, gamma: 1.4 }).in('deg') // => 64.6688
 */
export const detachmentShockAngle = /* @__PURE__ */ formula({
  name: 'detachmentShockAngle',
  title: 'Shock angle at detachment',
  equation:
    'β_max = arcsin(√(1 / (γ·M²)·((γ + 1) / 4·M² − 1 + √((γ + 1)·(1 + (γ − 1) / 2·M² + (γ + 1) / 16·M⁴)))))',
  source: report1135,
  inputs: {
    mach: ratio('M', 'Mach number ahead of the shock', { above: 1 }),
    gamma: ratio('γ', 'ratio of specific heats', { above: 1 }),
  },
  output: angle('β_max', 'shock angle at the greatest deflection'),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => {
    const m2 = mach * mach;
    const root = Math.sqrt((gamma + 1) * (1 + ((gamma - 1) / 2) * m2 + ((gamma + 1) / 16) * m2 * m2));
    return Math.asin(Math.sqrt(Math.min(1, (((gamma + 1) / 4) * m2 - 1 + root) / (gamma * m2))));
  },
});

/** An attached oblique shock: every ratio is behind over ahead. */
export interface ObliqueShock {
  readonly branch: 'weak' | 'strong';
  readonly shockAngle: Quantity<'angle'>;
  readonly deflection: Quantity<'angle'>;
  readonly machBehind: number;
  readonly pressureRatio: number;
  readonly temperatureRatio: number;
  readonly densityRatio: number;
  readonly stagnationPressureRatio: number;
  /** The greatest deflection at this Mach number; beyond it the shock detaches. */
  readonly greatestDeflection: Quantity<'angle'>;
}

/** What {@link obliqueShock} needs. */
export interface ObliqueShockOptions {
  /** Mach number ahead, above 1. */
  readonly mach: number;
  /** Ratio of specific heats, above 1. */
  readonly gamma: number;
  /** Angle through which the wall turns the stream, from 0. */
  readonly deflection: QuantityInput<'angle'>;
  /** The weak solution is the one that is nearly always seen; default `weak`. */
  readonly branch?: 'weak' | 'strong';
}

const obliqueShockFields: FieldsOf<ObliqueShockOptions> = {
  mach: 'required',
  gamma: 'required',
  deflection: 'required',
  branch: 'optional',
};

/**
 * Oblique shock that turns a stream through an angle: weak or strong solution, each in its own bracket.
 *
 * Source: NACA Report 1135 (1953), oblique shock.
 *
 * @throws MeopError `out-of-domain`; `no-solution` where the shock is detached, naming the greatest deflection
 * @example obliqueShock({ mach: 2, gamma: 1.4, deflection: '10 deg' }).shockAngle.in('deg') // => 39.31393
 */
export function obliqueShock(options: ObliqueShockOptions): ObliqueShock {
  requireFields(procedure, options, obliqueShockFields);
  const { branch = 'weak' } = options;
  const mach = readInput('dimensionless', 'mach', options.mach, procedure).si;
  const gamma = readInput('dimensionless', 'gamma', options.gamma, procedure).si;
  const wanted = readNotNegative('angle', 'deflection', options.deflection, procedure).si;
  if (!(mach > 1)) throw refusal(procedure, 'mach', options.mach, 'above 1');
  if (!(gamma > 1)) throw refusal(procedure, 'gamma', options.gamma, 'above 1');
  if (branch !== 'weak' && branch !== 'strong')
    throw refusal(procedure, 'branch', branch, "'weak' or 'strong'");
  const detached = detachmentShockAngle.si({ mach, gamma });
  const greatest = deflectionSi(mach, detached, gamma);
  const degrees = (si: number): Quantity<'angle'> => fromSiValue(si, 'angle', unitOf('deg'));
  if (wanted > greatest)
    throw new MeopError(
      'no-solution',
      `obliqueShock: deflection: ${String(options.deflection)} given; at Mach ${mach} at most ${degrees(greatest).format({ figures: 6 })} is possible: the shock is detached`,
      'deflection',
      { value: options.deflection, expected: `at most ${degrees(greatest).format({ figures: 6 })}` },
    );
  const ends =
    branch === 'weak'
      ? { lower: Math.atan2(1, Math.sqrt((mach - 1) * (mach + 1))), upper: detached }
      : { lower: detached, upper: Math.PI / 2 };
  const beta =
    wanted === 0
      ? branch === 'weak'
        ? ends.lower
        : ends.upper
      : wanted === greatest
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
    greatestDeflection: degrees(greatest),
  };
}
