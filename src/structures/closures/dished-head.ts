import { formula, gaugePressure, length, ratio, stress } from '../../units';

const source = (which: string): string =>
  `ASME Boiler and Pressure Vessel Code, section VIII, division 1, ${which} (from memory)`;
const pressure = gaugePressure('p', 'pressure on the concave side', { min: 0, example: '7 MPa' });
const thickness = length('t', 'minimum thickness of the head', { example: '3 mm' });
const insideDiameter = length('D', 'inside diameter of the head at its skirt', { example: '75 mm' });
const crownRadius = length('L', 'inside radius of the crown', { example: '75 mm' });
const knuckleRadius = length('r', 'inside radius of the knuckle', { example: '7.5 mm' });

/** @example torisphericalFactor({ crownRadius: '75 mm', knuckleRadius: '7.5 mm' }).toFixed(4) // => '1.5406' */
export const torisphericalFactor = /* @__PURE__ */ formula({
  name: 'torisphericalFactor',
  title: 'Stress factor of a torispherical head',
  equation: 'M = (3 + √(L / r)) / 4',
  source: source('appendix 1-4(d)'),
  inputs: { crownRadius, knuckleRadius },
  output: ratio('M', 'stress factor; 1 for a hemisphere'),
  requires: [
    ({ crownRadius: crown, knuckleRadius: knuckle }) =>
      knuckle <= crown || 'the knuckle radius must be at most the crown radius',
  ],
  valid: [
    ({ crownRadius: crown, knuckleRadius: knuckle }) =>
      crown / knuckle <= 50 / 3 || 'The code requires a knuckle of at least 6 % of the crown radius.',
  ],
  si: ({ crownRadius: crown, knuckleRadius: knuckle }) => (3 + Math.sqrt(crown / knuckle)) / 4,
});

/** @example torisphericalHeadStress({ pressure: '7 MPa', crownRadius: '75 mm', thickness: '3 mm', stressFactor: 1.54 }).in('MPa') // => 135.45 */
export const torisphericalHeadStress = /* @__PURE__ */ formula({
  name: 'torisphericalHeadStress',
  title: 'Stress of a hemispherical or torispherical head',
  equation: 'σ = p·(L·M / (2·t) + 0.1)',
  source: source('UG-32(e) and appendix 1-4(d), t = p·L·M/(2·S·E − 0.2·p)'),
  inputs: {
    pressure,
    crownRadius,
    thickness,
    stressFactor: ratio('M', 'stress factor; 1 for a hemisphere', { min: 1, example: 1.54 }),
  },
  output: stress('σ', 'stress of the code, membrane with the bending of the knuckle'),
  valid: [
    ({ crownRadius: crown, thickness: t }) =>
      t / crown >= 0.002 || 'The head is thin (t/L < 0.002). The knuckle can buckle below this stress.',
  ],
  si: ({ pressure: p, crownRadius: crown, thickness: t, stressFactor }) =>
    p * ((crown * stressFactor) / (2 * t) + 0.1),
});

/** @example ellipsoidalFactor({ insideDiameter: '75 mm', depth: '18.75 mm' }) // => 1 */
export const ellipsoidalFactor = /* @__PURE__ */ formula({
  name: 'ellipsoidalFactor',
  title: 'Stress factor of an ellipsoidal head',
  equation: 'K = (2 + (D / (2·h))²) / 6',
  source: source('appendix 1-4(c)'),
  inputs: {
    insideDiameter,
    depth: length('h', 'inside depth of the head without its skirt', { example: '18.75 mm' }),
  },
  output: ratio('K', 'stress factor; 1 for 2:1'),
  valid: [
    ({ insideDiameter: d, depth: h }) => {
      const axes = d / (2 * h);
      return (axes >= 1 && axes <= 3) || 'The factor is valid for ratios of the axes from 1 to 3.';
    },
  ],
  si: ({ insideDiameter: d, depth: h }) => (2 + (d / (2 * h)) ** 2) / 6,
});

/** @example ellipsoidalHeadStress({ pressure: '7 MPa', insideDiameter: '75 mm', thickness: '3 mm', stressFactor: 1 }).in('MPa') // => 88.2 */
export const ellipsoidalHeadStress = /* @__PURE__ */ formula({
  name: 'ellipsoidalHeadStress',
  title: 'Stress of an ellipsoidal head',
  equation: 'σ = p·(D·K / (2·t) + 0.1)',
  source: source('UG-32(d) and appendix 1-4(c), t = p·D·K/(2·S·E − 0.2·p)'),
  inputs: {
    pressure,
    insideDiameter,
    thickness,
    stressFactor: ratio('K', 'stress factor; 1 for 2:1', { above: 0, example: 1 }),
  },
  output: stress('σ', 'stress of the code, membrane with the bending of the knuckle'),
  si: ({ pressure: p, insideDiameter: d, thickness: t, stressFactor }) =>
    p * ((d * stressFactor) / (2 * t) + 0.1),
});
