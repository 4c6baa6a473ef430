import { formula, gaugePressure, length, ratio, stress } from '../../units';

/**
 * Thickness of a flat closure by the attachment factor of the pressure vessel code. In σ = C·p·d²/t² a plate has the factor
 * 3·(3 + ν)/32 simply supported (0.309 at ν = 0.3) and 3/16 clamped: 0.30 is the simply supported plate. Code values, seen in a
 * manual: 0.30 retained by a ring or thread (with a factor of 4 on the lock), 0.33 integral, 0.17 forged with a generous corner.
 *
 * @example flatClosureThickness({ pressure: '7 MPa', sealDiameter: '50 mm', allowable: '90 MPa', attachmentFactor: 0.3, weldEfficiency: 1 }).in('mm').toFixed(3) // => '7.638'
 */
export const flatClosureThickness = /* @__PURE__ */ formula({
  name: 'flatClosureThickness',
  title: 'Thickness of a flat closure',
  equation: 't = d·√(C·p / (S·η))',
  source:
    'ASME Boiler and Pressure Vessel Code, section VIII, division 1, UG-34(c)(2) (equation from memory; factors seen in the Pressure Vessel Design Manual, page 66)',
  inputs: {
    pressure: gaugePressure('p', 'design pressure', { min: 0 }),
    sealDiameter: length('d', 'diameter of the seal'),
    allowable: stress('S', 'allowable stress: strength over its factor of safety', { above: 0 }),
    attachmentFactor: ratio('C', 'attachment factor of the edge', { above: 0, example: 0.3 }),
    weldEfficiency: ratio('η', 'efficiency of a weld in the plate, 1 without one', {
      above: 0,
      max: 1,
      example: 1,
    }),
  },
  output: length('t', 'thickness'),
  example: {
    pressure: '7 MPa',
    sealDiameter: '50 mm',
    allowable: '90 MPa',
    attachmentFactor: 0.3,
    weldEfficiency: 1,
  },
  si: ({ pressure, sealDiameter, allowable, attachmentFactor, weldEfficiency }) =>
    sealDiameter * Math.sqrt((attachmentFactor * pressure) / (allowable * weldEfficiency)),
});
