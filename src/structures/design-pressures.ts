import { fromSiValue, type Quantity, type QuantityInput } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readPositive } from '../units/refusal';
import type { DesignFactors } from './factor-sets';
import { type Margin, margin } from './margin';

/** The pressures that a case is designed to. */
export interface DesignPressures {
  readonly meop: Quantity<'gauge pressure'>;
  readonly proof: Quantity<'gauge pressure'>;
  /** No yield up to here. */
  readonly yield: Quantity<'gauge pressure'>;
  /** No burst up to here. */
  readonly burst: Quantity<'gauge pressure'>;
}

const designPressuresFields: FieldsOf<Parameters<typeof designPressures>[0]> = {
  meop: 'required',
  factors: 'required',
};

/**
 * Proof, yield and burst pressures from the maximum expected operating pressure (MEOP): the highest pressure the case can
 * see in service, hot grain, scatter and ignition peak included, not the nominal peak.
 *
 * @throws MeopError `out-of-domain`
 * @example designPressures({ meop: '700 psi', factors: designFactors('ground test') }).burst.in('psi') // => 1400
 */
export function designPressures(options: {
  readonly meop: QuantityInput<'gauge pressure'>;
  readonly factors: Pick<DesignFactors, 'yieldFactor' | 'ultimateFactor' | 'proofFactor'>;
}): DesignPressures {
  requireFields('designPressures', options, designPressuresFields);
  const { meop, factors } = options;
  const { si, unit } = positive('designPressures', 'meop', meop);
  const times = (factor: number): Quantity<'gauge pressure'> =>
    fromSiValue(si * factor, 'gauge pressure', unit);
  return {
    meop: times(1),
    proof: times(factors.proofFactor),
    yield: times(factors.yieldFactor),
    burst: times(factors.ultimateFactor),
  };
}

const proofCheckFields: FieldsOf<Parameters<typeof proofCheck>[0]> = {
  proofPressure: 'required',
  yieldPressure: 'required',
  cautions: 'optional',
};

/**
 * Whether the case stays elastic at its proof test: the margin of the yield pressure over the proof pressure, factor 1.
 *
 * @throws MeopError `out-of-domain`
 * @example proofCheck({ proofPressure: '1500 psi', yieldPressure: '2250 psi' }).marginOfSafety // => 0.5
 */
export function proofCheck(options: {
  readonly proofPressure: QuantityInput<'gauge pressure'>;
  /** Of the cold case, as tested. */
  readonly yieldPressure: QuantityInput<'gauge pressure'>;
  readonly cautions?: readonly string[];
}): Margin {
  requireFields('proofCheck', options, proofCheckFields);
  const { proofPressure, yieldPressure, cautions = [] } = options;
  const proof = positive('proofCheck', 'proofPressure', proofPressure);
  const limit = positive('proofCheck', 'yieldPressure', yieldPressure);
  return margin({
    mode: 'yield at the proof test',
    applied: fromSiValue(proof.si, 'gauge pressure', proof.unit),
    allowable: fromSiValue(limit.si, 'gauge pressure', limit.unit),
    factor: 1,
    source: 'A proof test must leave no permanent set (common practice in every pressure-vessel standard)',
    cautions,
  });
}

const enginePartPressuresFields: FieldsOf<Parameters<typeof enginePartPressures>[0]> = {
  normal: 'required',
  maximum: 'required',
  possible: 'required',
};

/**
 * Pressures that a static pressure part of an aircraft engine must hold: a rule with several cases, of which the greatest
 * counts. Not a motor-case rule.
 *
 * Source: 14 CFR 33.64.
 *
 * @example enginePartPressures({ normal: '2.0 MPa', maximum: '2.6 MPa', possible: '3.2 MPa' }).burst.in('MPa') // => 3.9
 */
export function enginePartPressures(options: {
  /** Normal working pressure. */
  readonly normal: QuantityInput<'gauge pressure'>;
  /** Maximum working pressure. */
  readonly maximum: QuantityInput<'gauge pressure'>;
  /** Maximum possible pressure. */
  readonly possible: QuantityInput<'gauge pressure'>;
}): Pick<DesignPressures, 'yield' | 'burst'> {
  requireFields('enginePartPressures', options, enginePartPressuresFields);
  const { normal, maximum, possible } = options;
  const { si: usual, unit } = positive('enginePartPressures', 'normal', normal);
  const working = positive('enginePartPressures', 'maximum', maximum).si;
  const worst = positive('enginePartPressures', 'possible', possible).si;
  const above = 35e3; // 5 psi in the rule
  const show = (...pressures: readonly number[]): Quantity<'gauge pressure'> =>
    fromSiValue(Math.max(...pressures), 'gauge pressure', unit);
  return {
    yield: show(1.1 * working, 1.33 * usual, usual + above),
    burst: show(1.15 * worst, 1.5 * working, worst + above),
  };
}

const positive = (context: string, field: string, value: QuantityInput<'gauge pressure'>) =>
  readPositive('gauge pressure', field, value, context);
