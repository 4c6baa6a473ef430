import {
  fromSiValue,
  gaugePressure,
  list,
  optional,
  procedure,
  type Quantity,
  unitFor,
  words,
} from '../units';
import { completed, reviewFactors } from './factors-of-safety';
import { type Margin, margin } from './margin';
import { meop } from './operating-pressure';

/** The pressures that a case is designed for. */
export interface DesignPressures {
  readonly meop: Quantity<'gauge pressure'>;
  readonly proof: Quantity<'gauge pressure'>;
  /** Pressure up to which the case does not yield. */
  readonly yield: Quantity<'gauge pressure'>;
  /** Pressure up to which the case does not burst. */
  readonly burst: Quantity<'gauge pressure'>;
}

const pressure = (symbol: string, meaning: string, example: `${number} MPa`) =>
  gaugePressure(symbol, meaning, { above: 0, example });

/**
 * Proof, yield and burst pressures from the maximum expected operating pressure (MEOP).
 *
 * @example designPressures({ meop: '700 psi', factors: { set: 'ground test' } }).burst.in('psi') // => 1400
 */
export const designPressures = /* @__PURE__ */ procedure({
  name: 'designPressures',
  title: 'Proof, yield and burst pressures of a case',
  source: 'Definition of the factors of safety',
  inputs: {
    meop,
    factors: reviewFactors,
  },
  gives: 'the pressures that the case is designed for',
  example: { meop: '700 psi', factors: { set: 'ground test' } },
  run: ({ meop: { si, unit }, factors: given }): DesignPressures => {
    const factors = completed(given ?? {});
    const times = (factor: number): Quantity<'gauge pressure'> =>
      fromSiValue(si * factor, 'gauge pressure', unitFor('gauge pressure', unit));
    return {
      meop: times(1),
      proof: times(factors.proofFactor),
      yield: times(factors.yieldFactor),
      burst: times(factors.ultimateFactor),
    };
  },
});

/**
 * Margin of safety of the yield pressure at the proof test, with a factor of 1: the case must remain elastic.
 *
 * @example proofCheck({ proofPressure: '1500 psi', yieldPressure: '2250 psi' }).marginOfSafety // => 0.5
 */
export const proofCheck = /* @__PURE__ */ procedure({
  name: 'proofCheck',
  title: 'Margin against yield at the proof test',
  source: 'A proof test must leave no permanent set (engineering practice of every pressure-vessel standard)',
  inputs: {
    proofPressure: pressure('p_p', 'proof pressure', '7.5 MPa'),
    yieldPressure: pressure('p_y', 'yield pressure of the case at the temperature of the test', '9 MPa'),
    cautions: optional(list('cautions of the yield pressure', words('caution'), { min: 0 }), []),
  },
  gives: 'the margin of safety',
  example: { proofPressure: '1500 psi', yieldPressure: '2250 psi' },
  run: ({ proofPressure, yieldPressure, cautions }): Margin =>
    margin({
      mode: 'yield at the proof test',
      applied: proofPressure,
      allowable: yieldPressure,
      factor: 1,
      source: proofCheck.source,
      cautions,
    }),
});

/**
 * Pressures that a static pressure part of an aircraft engine must withstand: the maximum of several cases. Not a rule for
 * motor cases.
 *
 * @example enginePartPressures({ normal: '2.0 MPa', maximum: '2.6 MPa', possible: '3.2 MPa' }).burst.in('MPa') // => 3.9
 */
export const enginePartPressures = /* @__PURE__ */ procedure({
  name: 'enginePartPressures',
  title: 'Yield and burst pressures of a static pressure part of an aircraft engine',
  source: '14 CFR 33.64',
  inputs: {
    normal: pressure('p_n', 'normal working pressure', '2 MPa'),
    maximum: pressure('p_max', 'maximum working pressure', '2.6 MPa'),
    possible: pressure('p_pos', 'maximum possible pressure', '3.2 MPa'),
  },
  gives: 'the pressures that the part must withstand',
  example: { normal: '2.0 MPa', maximum: '2.6 MPa', possible: '3.2 MPa' },
  run: ({
    normal: { si: usual, unit },
    maximum: { si: working },
    possible: { si: worst },
  }): Pick<DesignPressures, 'yield' | 'burst'> => {
    const above = 35e3; // 5 psi in the rule
    const show = (...pressures: readonly number[]): Quantity<'gauge pressure'> =>
      fromSiValue(Math.max(...pressures), 'gauge pressure', unitFor('gauge pressure', unit));
    return {
      yield: show(1.1 * working, 1.33 * usual, usual + above),
      burst: show(1.15 * worst, 1.5 * working, worst + above),
    };
  },
});
