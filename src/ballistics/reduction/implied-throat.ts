import { linearFit } from '../../numerics';
import { fromSiArray, MeopError, procedure, type Series, type Values } from '../../units';
import { burnLaw } from '../burn-law';
import { bandAt, bandRateSi } from '../burn-law-band';
import { castDensity, deliveredVelocity } from '../propellant-inputs';
import { ambientAt, grainInput, pressureOf, pressureRecord, regressionOf } from './firing-inputs';

/** Throat diameter during a burn, from the pressure and the known burning area. */
export interface ImpliedThroat {
  readonly time: Series<'time'>;
  readonly throatDiameter: Series<'length'>;
  /** Relative increase of the throat area from start to end of the burn, by a line through the diameters. */
  readonly growth: number;
}

const at = { procedure: 'impliedThroat', path: '' };

const throatInputs = {
  ...pressureRecord,
  law: burnLaw,
  density: castDensity,
  characteristicVelocity: deliveredVelocity,
  grain: grainInput,
};
type Given = Values<typeof throatInputs>;

/**
 * Throat diameter during a burn where grain, burn law and c* are known: A_t = A_b·ρ·c*·r(p) / p at the depth burned. An equal
 * relative error of the burning area has the same effect on the pressure.
 *
 * @throws MeopError `missing-field`, `no-pulse`, `too-few-points`
 * @example impliedThroat({ record: firing({ origin: 'measured', time: series(Array.from({ length: 40 }, (_, i) => i / 10), 's'), pressure: series(Array.from({ length: 40 }, (_, i) => (i > 2 && i < 37 ? 2 : 0.1)), 'MPa') }), ambientPressure: '0.1 MPa', law: saintRobert({ referenceRate: '5 mm/s', referencePressure: '2 MPa', exponent: 0.3 }), density: '1800 kg/m^3', characteristicVelocity: '900 m/s', grain: internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' }) }).growth > 0 // => true
 */
export const impliedThroat = /* @__PURE__ */ procedure({
  name: at.procedure,
  title: 'Throat erosion from a pressure trace',
  source:
    'equilibrium of gas generation and outflow, Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11',
  inputs: throatInputs,
  gives: 'the throat diameter over time and the growth of its area',
  example:
    "impliedThroat({ record: firing({ origin: 'measured', time: series(Array.from({ length: 40 }, (_, i) => i / 10), 's'), pressure: series(Array.from({ length: 40 }, (_, i) => (i > 2 && i < 37 ? 2 : 0.1)), 'MPa') }), ambientPressure: '0.1 MPa', law: saintRobert({ referenceRate: '5 mm/s', referencePressure: '2 MPa', exponent: 0.3 }), density: '1800 kg/m^3', characteristicVelocity: '900 m/s', grain: internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' }) })",
  run: throatOverTime,
});

function throatOverTime(given: Given): ImpliedThroat {
  const { record, law } = given;
  const trace = pressureOf(record, at);
  const flux = given.density.si * given.characteristicVelocity.si;
  const regression = regressionOf(given.grain);
  const { time, values: pressure } = trace;
  const edges = trace.edges(0.1, ambientAt(record, given.ambientPressure, at));
  const times: number[] = [];
  const diameters: number[] = [];
  let depth = 0;
  let before = 0;
  for (let i = edges.first; i <= edges.last; i++) {
    const p = pressure[i];
    const rate = bandRateSi(law.bands[bandAt(law.bands, p)], p);
    if (i > edges.first) depth += 0.5 * (rate + before) * (time[i] - time[i - 1]);
    before = rate;
    if (depth < 0.05 * regression.si.burnout || depth > 0.95 * regression.web.si) continue;
    times.push(time[i]);
    diameters.push(Math.sqrt(((4 / Math.PI) * regression.si.areaAt(depth) * flux * rate) / p));
  }
  if (times.length < 8)
    throw new MeopError({
      code: 'too-few-points',
      procedure: at.procedure,
      path: 'record',
      problem: `${times.length} samples between ignition and burnout are usable; at least 8 are required`,
    });
  // At the ends of the burn the area does not follow the regression; a line through the middle is extrapolated to them.
  const middle = (edges.start + edges.end) / 2;
  const { coefficients } = linearFit({
    columns: [times.map(() => 1), times.map((t) => t - middle)],
    observations: diameters,
    robust: 'huber',
  });
  const diameterAt = (t: number): number => coefficients[0] + coefficients[1] * (t - middle);
  return {
    time: fromSiArray('time', Float64Array.from(times), 's'),
    throatDiameter: fromSiArray('length', Float64Array.from(diameters), 'mm'),
    growth: (diameterAt(edges.end) / diameterAt(edges.start)) ** 2 - 1,
  };
}
