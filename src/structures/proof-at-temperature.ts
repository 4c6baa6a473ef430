import { formula, gaugePressure, ratio, stress } from '../units';

const source = 'ASME BPVC Section VIII Division 1, UG-99(b)';

const strengths = {
  strengthCold: stress('S_t', 'strength at the temperature of the test', { above: 0, example: '240 MPa' }),
  strengthHot: stress('S_h', 'strength at the temperature in service', { above: 0, example: '180 MPa' }),
};

/** @example stressRatio({ strengthCold: '240 MPa', strengthHot: '180 MPa' }) // => 1.333333 */
export const stressRatio = /* @__PURE__ */ formula({
  name: 'stressRatio',
  title: 'Stress ratio: strength at the proof test/strength in service',
  equation: 'SR = S_t / S_h',
  source,
  inputs: strengths,
  output: ratio('SR', 'stress ratio'),
  si: ({ strengthCold, strengthHot }) => strengthCold / strengthHot,
});

const ofTest = {
  meop: gaugePressure('p', 'maximum expected operating pressure', { above: 0, example: '8 MPa' }),
  ratio: ratio('SR', 'stress ratio', { above: 0, example: 1.25 }),
};

/**
 * Pressure of a proof test at room temperature that shows the factor on the strength in service. A part that yields at this pressure
 * cannot be proved at room temperature.
 *
 * @example hotProofPressure({ meop: '8 MPa', factor: 1.3, ratio: 1.25 }).in('MPa') // => 13
 */
export const hotProofPressure = /* @__PURE__ */ formula({
  name: 'hotProofPressure',
  title: 'Pressure of a proof test at room temperature for a part that is hot in service',
  equation: 'p_t = PF·p·SR',
  source,
  inputs: {
    meop: ofTest.meop,
    factor: ratio('PF', 'proof factor: 1.3 in UG-99(b)', { above: 0, example: 1.3 }),
    ratio: ofTest.ratio,
  },
  output: gaugePressure('p_t', 'pressure of the test'),
  si: ({ meop, factor, ratio: of }) => factor * meop * of,
});

/** @example hotProofFactor({ proofPressure: '12 MPa', meop: '8 MPa', ratio: 1.25 }) // => 1.2 */
export const hotProofFactor = /* @__PURE__ */ formula({
  name: 'hotProofFactor',
  title: 'Factor on the strength in service that a proof test at room temperature shows',
  equation: 'PF_h = p_t / (p·SR)',
  source,
  inputs: {
    proofPressure: gaugePressure('p_t', 'pressure of the test', { above: 0, example: '12 MPa' }),
    ...ofTest,
  },
  output: ratio('PF_h', 'factor on the strength in service'),
  si: ({ proofPressure, meop, ratio: of }) => proofPressure / (meop * of),
});
