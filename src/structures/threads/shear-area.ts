import { area, formula, length, ratio, stress } from '../../units';

const engagement = length('L', 'length of engaged full thread');
const pitch = length('P', 'pitch');
const source =
  "FED-STD-H28/2 and Machinery's Handbook, 24th ed., shear areas of external and internal threads";

// Each thread shears on the circle that the crests of the other reach, of diameter d; `bite` is the difference of diameters
// between it and the pitch circle of the thread that shears.
const shearArea = (engagement: number, pitch: number, d: number, bite: number): number =>
  Math.PI * engagement * d * (0.5 + bite / (Math.sqrt(3) * pitch));

const overlapping = (pitch: number, bite: number): true | string =>
  pitch / 2 + bite / Math.sqrt(3) > 0 || 'the threads do not overlap: the hole is larger than the screw';

/**
 * Shear area of the threads of the screw, at the minor diameter of the hole.
 *
 * @example externalThreadShearArea({ engagement: '1 in', pitch: '1/20 in', internalMinorMax: '0.2070 in', externalPitchMin: '0.2127 in' }).in('in^2').toFixed(3) // => '0.368'
 */
export const externalThreadShearArea = /* @__PURE__ */ formula({
  name: 'externalThreadShearArea',
  title: 'Shear area of the external thread',
  equation: 'A_e = π·L·K_n·(1/2 + (E_s − K_n) / (√3·P))',
  source,
  inputs: {
    engagement,
    pitch,
    internalMinorMax: length('K_n', 'maximum minor diameter of the tapped hole'),
    externalPitchMin: length('E_s', 'minimum pitch diameter of the screw'),
  },
  output: area('A_e', 'shear area of the external thread'),
  example: {
    engagement: '0.25 in',
    pitch: '1/20 in',
    internalMinorMax: '0.2070 in',
    externalPitchMin: '0.2127 in',
  },
  requires: [({ pitch: p, internalMinorMax: k, externalPitchMin: e }) => overlapping(p, e - k)],
  si: ({ engagement: l, pitch: p, internalMinorMax: k, externalPitchMin: e }) => shearArea(l, p, k, e - k),
});

/**
 * Shear area of the threads of the tapped hole, at the major diameter of the screw.
 *
 * @example internalThreadShearArea({ engagement: '1 in', pitch: '1/20 in', externalMajorMin: '0.2408 in', internalPitchMax: '0.2224 in' }).in('in^2').toFixed(3) // => '0.539'
 */
export const internalThreadShearArea = /* @__PURE__ */ formula({
  name: 'internalThreadShearArea',
  title: 'Shear area of the internal thread',
  equation: 'A_n = π·L·D_s·(1/2 + (D_s − E_n) / (√3·P))',
  source,
  inputs: {
    engagement,
    pitch,
    externalMajorMin: length('D_s', 'minimum major diameter of the screw'),
    internalPitchMax: length('E_n', 'maximum pitch diameter of the tapped hole'),
  },
  output: area('A_n', 'shear area of the internal thread'),
  example: {
    engagement: '0.25 in',
    pitch: '1/20 in',
    externalMajorMin: '0.2408 in',
    internalPitchMax: '0.2224 in',
  },
  requires: [({ pitch: p, externalMajorMin: d, internalPitchMax: e }) => overlapping(p, d - e)],
  si: ({ engagement: l, pitch: p, externalMajorMin: d, internalPitchMax: e }) => shearArea(l, p, d, d - e),
});

/**
 * Engagement at which the screw breaks before its own threads strip, screw and hole of equal strength; times the ratio of
 * stripping loads where the hole is weaker ({@link threadStripping}).
 *
 * @example equalStrengthEngagement({ tensileStressArea: '0.0318 in^2', pitch: '1/20 in', internalMinorMax: '0.2070 in', externalPitchMin: '0.2127 in' }).in('in').toFixed(3) // => '0.173'
 */
export const equalStrengthEngagement = /* @__PURE__ */ formula({
  name: 'equalStrengthEngagement',
  title: 'Engagement at which the screw breaks first, equal strengths',
  equation: 'L_e = 2·A_s / (π·K_n·(1/2 + (E_s − K_n) / (√3·P)))',
  source: `${source} (shear strength assumed half the tensile strength)`,
  inputs: {
    tensileStressArea: area('A_s', 'tensile stress area'),
    pitch,
    internalMinorMax: length('K_n', 'maximum minor diameter of the tapped hole'),
    externalPitchMin: length('E_s', 'minimum pitch diameter of the screw'),
  },
  output: length('L_e', 'length of engagement'),
  example: {
    tensileStressArea: '0.0318 in^2',
    pitch: '1/20 in',
    internalMinorMax: '0.2070 in',
    externalPitchMin: '0.2127 in',
  },
  requires: [({ pitch: p, internalMinorMax: k, externalPitchMin: e }) => overlapping(p, e - k)],
  si: ({ tensileStressArea: a, pitch: p, internalMinorMax: k, externalPitchMin: e }) =>
    (2 * a) / shearArea(1, p, k, e - k),
});

/**
 * Ratio of the loads at which the screw's threads and those of the hole strip. Above 1 the hole strips first: lengthen the
 * engagement of equal strength ({@link equalStrengthEngagement}) by this ratio.
 *
 * @example strippingRatio({ externalArea: '0.368 in^2', internalArea: '0.539 in^2', screwStrength: '150 ksi', holeStrength: '42 ksi' }).toFixed(3) // => '2.438'
 */
export const strippingRatio = /* @__PURE__ */ formula({
  name: 'strippingRatio',
  title: 'Ratio of the stripping loads of screw and hole',
  equation: 'J = A_e·S_s / (A_n·S_h)',
  source: "FED-STD-H28/2 and Machinery's Handbook, 24th ed., length of engagement for unequal strengths",
  inputs: {
    externalArea: area('A_e', 'shear area of the external thread'),
    internalArea: area('A_n', 'shear area of the internal thread over the same engagement'),
    screwStrength: stress('S_s', 'tensile strength of the screw', { above: 0 }),
    holeStrength: stress('S_h', 'tensile strength of the tapped part', { above: 0 }),
  },
  output: ratio('J', 'stripping load of the screw/that of the hole'),
  example: {
    externalArea: '0.368 in^2',
    internalArea: '0.539 in^2',
    screwStrength: '150 ksi',
    holeStrength: '42 ksi',
  },
  si: ({ externalArea, internalArea, screwStrength, holeStrength }) =>
    (externalArea * screwStrength) / (internalArea * holeStrength),
});
