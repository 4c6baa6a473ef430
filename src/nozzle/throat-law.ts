import {
  absolutePressure,
  fromSiArray,
  MeopError,
  optional,
  procedure,
  ratio,
  type Series,
  speed,
  time,
  type VariantValue,
  variants,
} from '../units';
import { pressureTrace, recessionRate, sameLength, throatDiameter } from './nozzle-inputs';

const heatingTime = /* @__PURE__ */ time('t_h', 'time under gas before the wall is hot enough to recede', {
  min: 0,
  example: '1 s',
});

const laws = {
  constant: { rate: recessionRate },
  'pressure power': {
    referenceRate: /* @__PURE__ */ speed('v_ref', 'radial recession rate at the reference pressure', {
      example: '0.1 mm/s',
    }),
    referencePressure: /* @__PURE__ */ absolutePressure('p_ref', 'reference pressure of that rate', {
      example: '5 MPa',
    }),
    exponent: /* @__PURE__ */ ratio('m', 'pressure exponent of the recession rate', { example: 0.8 }),
    heatingTime: /* @__PURE__ */ optional(heatingTime, 0),
  },
  'after heating': { rate: recessionRate, heatingTime },
};

/** How the throat wall recedes: each law gives a radial rate; a negative rate is slag deposition. */
const throatLaw = /* @__PURE__ */ variants('law', 'throat erosion law', laws, {
  example: { law: 'constant', rate: '0.1 mm/s' },
});

/** Throat over a burn. */
export interface ThroatHistory {
  readonly time: Series<'time'>;
  readonly diameter: Series<'length'>;
  readonly area: Series<'area'>;
  /** Growth of the area from start to end, as a fraction of the area at the start. */
  readonly areaGrowth: number;
}

/**
 * Throat diameter over a pressure trace by an erosion law: the trapezoidal rule on the rate, split where the wall becomes hot
 * enough. In a motor, pressure and throat affect each other: there the simulation integrates the law together with the pressure.
 *
 * @example throatHistory({ throatDiameter: '12 mm', law: { law: 'constant', rate: '0.1 mm/s' }, time: series([0, 3], 's'), chamberPressure: seriesOf('absolute pressure', [5, 5], 'MPa') }).diameter.at(-1).in('mm') // => 12.6
 */
export const throatHistory = /* @__PURE__ */ procedure({
  name: 'throatHistory',
  title: 'Throat diameter over a pressure trace',
  source: 'Trapezoidal rule on the erosion law; the diameter grows at twice the radial rate',
  inputs: { throatDiameter, law: throatLaw, ...pressureTrace },
  gives: 'diameter and area of the throat over time',
  example:
    "throatHistory({ throatDiameter: '12 mm', law: { law: 'constant', rate: '0.1 mm/s' }, time: series([0, 3], 's'), chamberPressure: seriesOf('absolute pressure', [5, 5], 'MPa') })",
  checks: [
    sameLength,
    ({ time: { si: t } }) => {
      const i = t.findIndex((one, at) => at > 0 && !(one > t[at - 1]));
      return i < 0 ? undefined : { path: `time.${i}`, given: `${t[i]} s`, expected: `above ${t[i - 1]} s` };
    },
  ],
  run: ({ throatDiameter, law, time, chamberPressure }): ThroatHistory => {
    const { heated, reference, rate, exponent } = numbersOf(law);
    const rateAt = (pressure: number): number =>
      exponent === 0 ? rate : rate * (pressure / reference) ** exponent;
    const t = time.si;
    const p = chamberPressure.si;
    const diameter = new Float64Array(t.length);
    diameter[0] = throatDiameter.si;
    for (let i = 1; i < t.length; i++) {
      const step = t[i] - t[i - 1];
      // Only the share of the step after the wall is hot counts.
      const hot = Math.min(1, Math.max(0, (t[i] - t[0] - heated) / step));
      const before = p[i] + hot * (p[i - 1] - p[i]);
      const mean = 0.5 * (rateAt(before) + rateAt(p[i]));
      if (!Number.isFinite(mean))
        throw new MeopError({
          code: 'out-of-domain',
          procedure: 'throatHistory',
          path: 'chamberPressure',
          given: `${before} Pa and ${p[i]} Pa`,
          note: `at ${t[i]} s`,
          expected: `above 0 Pa, since the law raises it to the power ${exponent}`,
        });
      diameter[i] = diameter[i - 1] + 2 * mean * hot * step;
      if (!(diameter[i] > 0))
        throw new MeopError({
          code: 'out-of-domain',
          procedure: 'throatHistory',
          path: 'law',
          given: law,
          problem: `the deposit closes the throat at ${t[i]} s`,
          remedy: 'Check the rate of the law',
        });
    }
    const area = diameter.map((d) => (Math.PI / 4) * d ** 2);
    area[0] = (Math.PI / 4) * diameter[0] * diameter[0];
    return {
      time,
      diameter: fromSiArray('length', diameter, 'mm'),
      area: fromSiArray('area', area, 'mm^2'),
      areaGrowth: area[t.length - 1] / area[0] - 1,
    };
  },
});

/** A law in SI numbers: rate·(p/reference)^exponent once heated. */
function numbersOf(law: VariantValue<'law', typeof laws>) {
  const heated = law.law === 'constant' ? 0 : law.heatingTime.si;
  if (law.law !== 'pressure power') return { heated, reference: 1, rate: law.rate.si, exponent: 0 };
  const { referenceRate, referencePressure, exponent } = law;
  return { heated, reference: referencePressure.si, rate: referenceRate.si, exponent };
}
