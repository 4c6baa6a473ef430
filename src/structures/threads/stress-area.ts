import { area, formula, length } from '../../units';

/**
 * Tensile stress area of an ISO metric thread: the area of the mean of pitch and root diameters.
 *
 * @example tensileStressArea({ diameter: '10 mm', pitch: '1.5 mm' }).in('mm^2') // => 57.98959311
 */
export const tensileStressArea = /* @__PURE__ */ formula({
  name: 'tensileStressArea',
  title: 'Tensile stress area of an ISO metric thread',
  equation: 'A_s = π/4·(d − 0.9382·P)²',
  source: 'ISO 898-1, nominal stress area (with the exact 13·√3/24 = 0.938194 for 0.9382)',
  inputs: {
    diameter: length('d', 'nominal (major) diameter'),
    pitch: length('P', 'pitch'),
  },
  output: area('A_s', 'tensile stress area'),
  example: { diameter: '10 mm', pitch: '1.5 mm' },
  requires: [({ diameter, pitch }) => pitch < diameter || 'the pitch must be less than the diameter'],
  si: ({ diameter, pitch }) => (Math.PI / 4) * (diameter - metricStress * pitch) ** 2,
  solve: {
    diameter: (stressed, { pitch }) => Math.sqrt((4 * stressed) / Math.PI) + metricStress * pitch,
    pitch: (stressed, { diameter }) => (diameter - Math.sqrt((4 * stressed) / Math.PI)) / metricStress,
  },
});
const metricStress = (13 * Math.sqrt(3)) / 24;

/** @example unifiedStressArea({ diameter: '1/4 in', pitch: '1/20 in' }).in('in^2') // => 0.03182091806 */
export const unifiedStressArea = /* @__PURE__ */ formula({
  name: 'unifiedStressArea',
  title: 'Tensile stress area of a unified inch thread',
  equation: 'A_s = π/4·(D − 0.9743·P)²',
  source: "ASME B1.1, tensile stress area, as in Shigley's Mechanical Engineering Design, 9th ed., table 8-2",
  inputs: {
    diameter: length('D', 'nominal (major) diameter'),
    pitch: length('P', 'pitch, 1/(threads per inch)'),
  },
  output: area('A_s', 'tensile stress area'),
  example: { diameter: '1/4 in', pitch: '1/20 in' },
  requires: [({ diameter, pitch }) => pitch < diameter || 'the pitch must be less than the diameter'],
  si: ({ diameter, pitch }) => (Math.PI / 4) * (diameter - 0.9743 * pitch) ** 2,
  solve: {
    diameter: (stressed, { pitch }) => Math.sqrt((4 * stressed) / Math.PI) + 0.9743 * pitch,
    pitch: (stressed, { diameter }) => (diameter - Math.sqrt((4 * stressed) / Math.PI)) / 0.9743,
  },
});

/**
 * Root area of a thread, which shears where threads lie in the shear plane.
 *
 * @example rootArea({ rootDiameter: '8.16 mm' }).in('mm^2') // => 52.29620795
 */
export const rootArea = /* @__PURE__ */ formula({
  name: 'rootArea',
  title: 'Root area of a thread',
  equation: 'A_r = π/4·d_r²',
  source: "Shigley's Mechanical Engineering Design, 9th ed., section 8-1 and tables 8-1 and 8-2",
  inputs: { rootDiameter: length('d_r', 'root (minor) diameter of the external thread') },
  output: area('A_r', 'root area'),
  example: { rootDiameter: '8.16 mm' },
  si: ({ rootDiameter }) => (Math.PI / 4) * rootDiameter * rootDiameter,
});
