import { findRoot } from '../numerics';
import { formula, ratio } from '../units';
import { isentropicPressureRatioSi } from './isentropic-kernels';
import { machBehindShockSi, shockPressureRatioSi } from './normal-shock-kernels';

/**
 * Stagnation pressure behind a normal shock over static pressure ahead; plain numbers, unchecked (`mach` ≥ 1).
 *
 * @example pitotPressureRatioSi(2, 1.4) // => 5.640441
 */
export function pitotPressureRatioSi(mach: number, gamma: number): number {
  // By way of the subsonic state behind the shock, where no power is large.
  return shockPressureRatioSi(mach, gamma) / isentropicPressureRatioSi(machBehindShockSi(mach, gamma), gamma);
}

/**
 * What a Pitot tube reads in a supersonic stream, over the static pressure ahead of the shock that stands before it
 * (Rayleigh's formula). Solved for `mach` it turns the two readings into a Mach number.
 *
 * @throws MeopError `out-of-domain` for a Mach number below 1
 * @example pitotPressureRatio({ mach: 2, gamma: 1.4 }) // => 5.640441
 */
export const pitotPressureRatio = /* @__PURE__ */ formula({
  name: 'pitotPressureRatio',
  title: 'Pitot pressure over static pressure in supersonic flow',
  equation: 'p02/p1 = ((γ + 1) / 2·M1²)^(γ / (γ − 1))·((γ + 1) / (2·γ·M1² − (γ − 1)))^(1 / (γ − 1))',
  source: 'NACA Report 1135 (1953), normal shock in a perfect gas (Rayleigh)',
  inputs: {
    mach: ratio('M1', 'Mach number ahead of the shock', { min: 1 }),
    gamma: ratio('γ', 'ratio of specific heats', { above: 1 }),
  },
  output: ratio('p02/p1', 'Pitot pressure over static pressure ahead'),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => pitotPressureRatioSi(mach, gamma),
  solve: {
    mach: (value, { gamma }) => {
      if (!(value >= pitotPressureRatioSi(1, gamma))) return Number.NaN;
      // The ratio exceeds p2/p1, which alone would need a Mach number of at most this.
      const upper = Math.sqrt(1 + ((gamma + 1) / (2 * gamma)) * (value - 1));
      return findRoot((mach) => Math.log(pitotPressureRatioSi(mach, gamma) / value), { lower: 1, upper })
        .root;
    },
  },
});
