import { force, formula, gaugePressure, length } from '../units';

/**
 * Force that the gas puts on a closure; the pressure acts on the diameter of the seal, not on that of the case.
 *
 * @example closureForce({ pressure: '1000 psi', sealDiameter: '2 in' }).in('lbf') // => 3141.592654
 */
export const closureForce = /* @__PURE__ */ formula({
  name: 'closureForce',
  title: 'Force on a closure',
  equation: 'F = p·π·D² / 4',
  source: 'Statics: pressure times the sealed area (engineering practice, no published source)',
  inputs: {
    pressure: gaugePressure('p', 'pressure difference across the closure'),
    sealDiameter: length('D', 'diameter of the seal'),
  },
  output: force('F', 'force on the closure'),
  example: { pressure: '1000 psi', sealDiameter: '2 in' },
  si: ({ pressure, sealDiameter }) => (pressure * Math.PI * sealDiameter * sealDiameter) / 4,
});
