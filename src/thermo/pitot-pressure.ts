import { formula, ratio } from '../units';
import { gamma, machAhead } from './gas-inputs';
import { pitotPressureRatioSi } from './normal-shock-kernels';

/**
 * Reading of a Pitot tube in supersonic flow divided by the static pressure upstream of its shock (Rayleigh's
 * formula). Solved for `mach` it converts the two readings to a Mach number.
 *
 * @example pitotPressureRatio({ mach: 2, gamma: 1.4 }) // => 5.640441
 */
export const pitotPressureRatio = /* @__PURE__ */ formula({
  name: 'pitotPressureRatio',
  title: 'Pitot/static pressure ratio in supersonic flow',
  equation: 'p02/p1 = ((γ + 1) / 2·M1²)^(γ / (γ − 1))·((γ + 1) / (2·γ·M1² − (γ − 1)))^(1 / (γ − 1))',
  source: 'NACA Report 1135 (1953), normal shock in a perfect gas (Rayleigh)',
  inputs: { mach: machAhead, gamma },
  output: ratio('p02/p1', 'Pitot/upstream static pressure ratio'),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => pitotPressureRatioSi(mach, gamma),
});
