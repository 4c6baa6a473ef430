import {
  formula,
  fromSiValue,
  gaugePressure,
  named,
  procedure,
  type Quantity,
  stress,
  unitFor,
} from '../../units';
import { type Allowable, allowableOf } from '../materials/allowable';
import { materials } from '../materials/material-table';
import { exposure, partTemperature } from '../materials/part-temperature';
import { hasWall, radii } from './cylinder';

const isWall = (r: { readonly insideRadius: number; readonly outsideRadius: number }): true | string =>
  r.outsideRadius > r.insideRadius || 'the outside radius must be more than the inside radius';
const squares = ({
  insideRadius: a,
  outsideRadius: b,
}: {
  readonly insideRadius: number;
  readonly outsideRadius: number;
}): number => (b - a) * (b + a);

/**
 * Pressure at which the bore of a closed cylinder first yields, by distortion energy.
 *
 * @example yieldPressure({ yieldStrength: '276 MPa', insideRadius: '38.1 mm', outsideRadius: '44.45 mm' }).in('MPa') // => 42.27617889
 */
export const yieldPressure = /* @__PURE__ */ formula({
  name: 'yieldPressure',
  title: 'Pressure of first yield, closed cylinder',
  equation: 'p_y = S_y·(r_o² − r_i²) / (√3·r_o²)',
  source: 'Lamé with the von Mises criterion at the bore, closed ends (exact closed form)',
  inputs: { yieldStrength: stress('S_y', 'yield strength', { above: 0 }), ...radii },
  output: gaugePressure('p_y', 'pressure of first yield'),
  example: { yieldStrength: '241 MPa', insideRadius: '38.1 mm', outsideRadius: '44.45 mm' },
  requires: [isWall],
  si: ({ yieldStrength, ...r }) => (yieldStrength * squares(r)) / (Math.sqrt(3) * r.outsideRadius ** 2),
});

/**
 * Pressure at which the hoop stress at the bore alone reaches the yield strength, as often in hand calculations. It is
 * the lower of the two up to r_o/r_i = 1.17; in a thicker wall von Mises yields first ({@link yieldPressure}).
 *
 * @example hoopYieldPressure({ yieldStrength: '100 MPa', insideRadius: '1 in', outsideRadius: '2 in' }).in('MPa') // => 60
 */
export const hoopYieldPressure = /* @__PURE__ */ formula({
  name: 'hoopYieldPressure',
  title: 'Pressure at which the bore hoop stress is the yield strength',
  equation: 'p_h = S_y·(r_o² − r_i²) / (r_o² + r_i²)',
  source: 'Lamé with the maximum-stress criterion at the bore (exact closed form)',
  inputs: { yieldStrength: stress('S_y', 'yield strength', { above: 0 }), ...radii },
  output: gaugePressure('p_h', 'pressure of hoop yield'),
  example: { yieldStrength: '241 MPa', insideRadius: '38.1 mm', outsideRadius: '44.45 mm' },
  requires: [isWall],
  si: ({ yieldStrength, ...r }) =>
    (yieldStrength * squares(r)) / (r.outsideRadius ** 2 + r.insideRadius ** 2),
});

/**
 * Pressure at which the whole wall has yielded, without strain hardening.
 *
 * @example collapsePressure({ yieldStrength: '100 MPa', insideRadius: '1 in', outsideRadius: '2 in' }).in('MPa') // => 80.03774225
 */
export const collapsePressure = /* @__PURE__ */ formula({
  name: 'collapsePressure',
  title: 'Pressure of full plastic yield, closed cylinder',
  equation: 'p_c = 2 / √3·S_y·ln(r_o / r_i)',
  source: 'Perfectly plastic thick cylinder, von Mises criterion (textbook form, from memory)',
  inputs: { yieldStrength: stress('S_y', 'yield strength', { above: 0 }), ...radii },
  output: gaugePressure('p_c', 'pressure of full plastic yield'),
  example: { yieldStrength: '241 MPa', insideRadius: '38.1 mm', outsideRadius: '44.45 mm' },
  requires: [isWall],
  si: ({ yieldStrength, insideRadius: a, outsideRadius: b }) =>
    (2 / Math.sqrt(3)) * yieldStrength * Math.log1p((b - a) / a),
});

/** Yield pressures of a case at its temperature. */
export interface YieldPressures {
  /** First yield at the bore, von Mises, closed ends. */
  readonly firstYield: Quantity<'gauge pressure'>;
  /** Bore hoop stress equal to the yield strength. */
  readonly hoopYield: Quantity<'gauge pressure'>;
  /** The whole wall yielded. */
  readonly fullYield: Quantity<'gauge pressure'>;
  /** The yield strength used, with its basis and source. */
  readonly yieldStrength: Allowable;
  readonly cautions: readonly string[];
}

/**
 * Pressures at which a case starts to yield at a wall temperature.
 *
 * @throws MeopError `no-allowable` where the material has no minimum yield strength
 * @example yieldPressuresAtTemperature({ material: '6061-T6 drawn tube', insideRadius: '1.5 in', outsideRadius: '1.75 in', temperature: '200 degC' }).firstYield.in('psi').toFixed(0) // => '3715'
 */
export const yieldPressuresAtTemperature = /* @__PURE__ */ procedure({
  name: 'yieldPressuresAtTemperature',
  title: 'Yield pressures of a case at its wall temperature',
  source: yieldPressure.source,
  inputs: {
    material: named('material of the case', materials, { example: '6061-T6 drawn tube' }),
    ...radii,
    temperature: partTemperature,
    exposure,
  },
  checks: [hasWall],
  gives: 'the pressures of first, hoop and full yield',
  example: { material: '6061-T6 drawn tube', insideRadius: '1.5 in', outsideRadius: '1.75 in' },
  run: ({ insideRadius, outsideRadius, ...part }): YieldPressures => {
    const strength = allowableOf({
      ...part,
      property: 'yield',
      edgeRatio: undefined,
      direction: 'least',
      basis: 'minimum',
    });
    const given = { yieldStrength: strength.value, insideRadius, outsideRadius };
    const unit = unitFor('gauge pressure', unitFor('length', insideRadius.unit).us ? 'psi' : 'MPa');
    const show = (p: Quantity<'gauge pressure'>): Quantity<'gauge pressure'> =>
      fromSiValue(p.si, 'gauge pressure', unit);
    return {
      firstYield: show(yieldPressure(given)),
      hoopYield: show(hoopYieldPressure(given)),
      fullYield: show(collapsePressure(given)),
      yieldStrength: strength,
      cautions: strength.cautions,
    };
  },
});
