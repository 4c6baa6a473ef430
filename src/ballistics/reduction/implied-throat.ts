import type { Firing } from '../../firing';
import { ambientSi } from '../../firing/ambient';
import { analysedRecord } from '../../firing/analysis/analysed-record';
import { linearFit } from '../../numerics';
import { fromSiArray, MeopError, type QuantityInput, readInput, type Series } from '../../units';
import type { BurnLaw } from '../burn-law';
import { bandAt, bandRateSi } from '../burn-law-band';
import { type Grain, type Regression, regress } from '../grain';

/** The throat over a burn, from the pressure and the known burning area. */
export interface ImpliedThroat {
  readonly time: Series<'time'>;
  readonly throatDiameter: Series<'length'>;
  /** Area at the end over area at the start, as a share more, by a line through the diameters. */
  readonly growth: number;
}

/**
 * Throat erosion from pressure where grain, law and c* are known: A_t = A_b·ρ·c*·r(p) / p at the depth burned. It cannot be
 * told from a burning area that is off by the same share.
 *
 * Source: equilibrium of burning and outflow, Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11.
 *
 * @throws MeopError `missing-field`, `no-pulse`
 * @example impliedThroat({ record: firing({ origin: 'measured', time: series(Array.from({ length: 40 }, (_, i) => i / 10), 's'), pressure: series(Array.from({ length: 40 }, (_, i) => (i > 2 && i < 37 ? 2 : 0.1)), 'MPa') }), ambientPressure: '0.1 MPa', law: saintRobert({ referenceRate: '5 mm/s', referencePressure: '2 MPa', exponent: 0.3 }), density: '1800 kg/m^3', characteristicVelocity: '900 m/s', grain: internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' }) }).growth > 0 // => true
 */
export function impliedThroat(input: {
  readonly record: Firing;
  /** Pressure around the motor. Default: that of the record; one of the two is needed. */
  readonly ambientPressure?: QuantityInput<'absolute pressure'>;
  readonly law: BurnLaw;
  readonly density: QuantityInput<'density'>;
  readonly characteristicVelocity: QuantityInput<'speed'>;
  readonly grain: Grain | Regression;
}): ImpliedThroat {
  const trace = analysedRecord(input.record).traces.pressure;
  if (trace === undefined)
    throw new MeopError('missing-field', 'impliedThroat: record: no pressure in it', 'record');
  const flux =
    readInput('density', 'density', input.density, 'impliedThroat').si *
    readInput('speed', 'characteristicVelocity', input.characteristicVelocity, 'impliedThroat').si;
  const regression = 'si' in input.grain ? input.grain : regress(input.grain);
  const { time, values: pressure } = trace;
  const edges = trace.edges(0.1, ambientSi(input.record, input.ambientPressure, 'impliedThroat'));
  const times: number[] = [];
  const diameters: number[] = [];
  let depth = 0;
  let before = 0;
  for (let i = edges.first; i <= edges.last; i++) {
    const p = pressure[i];
    const rate = bandRateSi(input.law.bands[bandAt(input.law.bands, p)], p);
    if (i > edges.first) depth += 0.5 * (rate + before) * (time[i] - time[i - 1]);
    before = rate;
    if (depth < 0.05 * regression.si.burnout || depth > 0.95 * regression.web.si) continue;
    times.push(time[i]);
    diameters.push(Math.sqrt(((4 / Math.PI) * regression.si.areaAt(depth) * flux * rate) / p));
  }
  if (times.length < 8)
    throw new MeopError(
      'too-few-points',
      'impliedThroat: record: too few samples between lighting and burnout',
      'record',
    );
  // The ends of the burn follow no table; a line through the middle is drawn out to them.
  const middle = (edges.start + edges.end) / 2;
  const { coefficients } = linearFit({
    columns: [times.map(() => 1), times.map((t) => t - middle)],
    observations: diameters,
    robust: 'huber',
  });
  const at = (t: number): number => coefficients[0] + coefficients[1] * (t - middle);
  return {
    time: fromSiArray('time', Float64Array.from(times), 's'),
    throatDiameter: fromSiArray('length', Float64Array.from(diameters), 'mm'),
    growth: (at(edges.end) / at(edges.start)) ** 2 - 1,
  };
}
