import { throatDiameter } from '../../firing/motor-inputs';
import { linearInterpolant, median } from '../../numerics';
import {
  fromSiArray,
  fromSiValue,
  length,
  MeopError,
  optional,
  procedure,
  type Quantity,
  type Series,
  unitOf,
  type Values,
} from '../../units';
import { burnLaw, temperatureFactorSi } from '../burn-law';
import { bandAt, bandRateSi } from '../burn-law-band';
import type { Grain, Regression } from '../grain';
import { grainTemperature } from '../motor-inputs';
import { castDensity, deliveredVelocity } from '../propellant-inputs';
import { ambientAt, grainInput, pressureOf, pressureRecord, regressionOf } from './firing-inputs';

/** The burning area implied by a pressure trace, and its excess over that of the flaw-free grain. */
export interface ImpliedArea {
  readonly time: Series<'time'>;
  /** Burning area/throat area. */
  readonly areaRatio: Series<'dimensionless'>;
  readonly burningArea: Series<'area'>;
  /** Burned depth. */
  readonly depth: Series<'length'>;
  /** Burning area of the flaw-free grain at that depth; undefined where no grain is given. */
  readonly flawFreeArea: Series<'area'> | undefined;
  readonly excess: Series<'area'> | undefined;
  readonly flaw: EquivalentFlaw | undefined;
  /** Minimum excess that is reported as a flaw: a twentieth of the flaw-free area, or more where noise exceeds it. */
  readonly detectableExcess: Quantity<'area'> | undefined;
  readonly cautions: readonly string[];
}

/** Flaws equivalent to the excess area. */
export interface EquivalentFlaw {
  /** Upper tenth of the excess, as means over fortieths of the burn. */
  readonly maxExcess: Quantity<'area'>;
  /** Maximum excess/flaw-free area at that time. */
  readonly maxExcessFraction: number;
  /** Time from which the excess remains above a twentieth of the flaw-free area. */
  readonly from: Quantity<'time'>;
  readonly atDepth: Quantity<'length'>;
  /** A crack has two faces: half of the excess is its area. */
  readonly crackArea: Quantity<'area'>;
  /** Depth of a crack along the whole grain; undefined where the grain's length is not known. */
  readonly fullLengthCrackDepth: Quantity<'length'> | undefined;
  /** A debonded patch of the outer wall burns on one face. */
  readonly debondArea: Quantity<'area'>;
}

const at = { procedure: 'impliedBurningArea', path: '' };

/** Throat diameter after the firing. */
export const finalThroatDiameter = length('d_t,2', 'throat diameter after the firing', {
  example: '12.4 mm',
});

const areaInputs = {
  ...pressureRecord,
  law: burnLaw,
  density: castDensity,
  characteristicVelocity: deliveredVelocity,
  throatDiameter: optional({
    ...throatDiameter,
    meaning: `${throatDiameter.meaning}; that of the record if omitted`,
  }),
  finalThroatDiameter: optional(finalThroatDiameter),
  grainTemperature: optional(grainTemperature),
  flawFreeGrain: optional(grainInput),
};
type Given = Values<typeof areaInputs>;

/**
 * Burning area from pressure, K = p / (ρ·c*·r(p)) at each sample, and its excess over the flaw-free grain at the same
 * burned depth: the additional surface exposed by flaws, and when.
 *
 * Quasi-steady: gas stored in the chamber is neglected, so rise and tail-off are excluded. An error of c*, density or burn law
 * shifts the whole curve; a flaw changes its shape.
 *
 * @throws MeopError `missing-field`, `no-pulse`
 * @example impliedBurningArea({ record: firing({ origin: 'measured', time: series([0, 1, 2, 3, 4], 's'), pressure: series([0.1, 2, 2, 2, 0.1], 'MPa') }), ambientPressure: '0.1 MPa', law: saintRobert({ referenceRate: '5 mm/s', referencePressure: '2 MPa', exponent: 0.3 }), density: '1800 kg/m^3', characteristicVelocity: '900 m/s', throatDiameter: '10 mm' }).areaRatio.at(1).si.toFixed(1) // => '246.9'
 */
export const impliedBurningArea = /* @__PURE__ */ procedure({
  name: at.procedure,
  title: 'Burning area from a pressure trace',
  source:
    'equilibrium of gas generation and outflow, Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11',
  inputs: areaInputs,
  gives: 'burning area over time and, with a flaw-free grain, its excess and the equivalent flaws',
  example:
    "impliedBurningArea({ record: firing({ origin: 'measured', time: series([0, 1, 2, 3, 4], 's'), pressure: series([0.1, 2, 2, 2, 0.1], 'MPa') }), ambientPressure: '0.1 MPa', law: saintRobert({ referenceRate: '5 mm/s', referencePressure: '2 MPa', exponent: 0.3 }), density: '1800 kg/m^3', characteristicVelocity: '900 m/s', throatDiameter: '10 mm' })",
  run: areaOverTime,
});

function areaOverTime(given: Given): ImpliedArea {
  const { record, law, flawFreeGrain } = given;
  const trace = pressureOf(record, at);
  const flux = given.density.si * given.characteristicVelocity.si;
  const throat = throatOf(given);
  const warmth =
    given.grainTemperature === undefined ? 1 : temperatureFactorSi(law, given.grainTemperature.si);
  const { time, values: pressure } = trace;
  const edges = trace.edges(0.1, ambientAt(record, given.ambientPressure, at));
  const count = edges.last - edges.first + 1;
  const ratio = new Float64Array(count);
  const area = new Float64Array(count);
  const depth = new Float64Array(count);
  let total = 0;
  for (let i = edges.first + 1; i <= edges.last; i++)
    total += 0.5 * (pressure[i] + pressure[i - 1]) * (time[i] - time[i - 1]);
  let passed = 0;
  let before = 0;
  for (let k = 0; k < count; k++) {
    const i = edges.first + k;
    const p = pressure[i];
    const rate = bandRateSi(law.bands[bandAt(law.bands, p)], p) * warmth;
    if (k > 0) {
      const step = time[i] - time[i - 1];
      passed += 0.5 * (p + pressure[i - 1]) * step;
      depth[k] = depth[k - 1] + 0.5 * (rate + before) * step;
    }
    before = rate;
    ratio[k] = p / (flux * rate);
    area[k] = ratio[k] * throat(passed / total || 0);
  }
  const cautions: string[] = [];
  const regression = flawFreeGrain && regressionOf(flawFreeGrain);
  const flawFree = regression && depth.map((w) => (w < regression.si.burnout ? regression.si.areaAt(w) : 0));
  const excess = flawFree && area.map((a, k) => a - flawFree[k]);
  const times = time.slice(edges.first, edges.last + 1);
  // A prediction has its samples where its steps are short: shares of the burn are shares of time.
  const [evenTime = times, ...even] = evenInTime(times, [depth, flawFree, excess]);
  const [evenDepth, evenFree, evenExcess] = even;
  const found =
    evenDepth &&
    evenFree &&
    evenExcess &&
    equivalent(evenTime, evenDepth, evenFree, evenExcess, flawFreeGrain);
  if (regression) {
    const reached = depth[count - 1] / regression.burnout.si;
    if (Math.abs(reached - 1) > 0.08)
      cautions.push(
        `with this burn law, the burn reaches ${(100 * reached).toFixed(0)} % of the depth of the grain; burn law, web or edges of the burn are in error, and so is the excess area`,
      );
  }
  return {
    time: fromSiArray('time', times, 's'),
    areaRatio: fromSiArray('dimensionless', ratio),
    burningArea: fromSiArray('area', area, 'cm^2'),
    depth: fromSiArray('length', depth, 'mm'),
    flawFreeArea: flawFree && fromSiArray('area', flawFree, 'cm^2'),
    excess: excess && fromSiArray('area', excess, 'cm^2'),
    flaw: found?.flaw,
    detectableExcess: found && fromSiValue(found.min, 'area', unitOf('cm^2')),
    cautions,
  };
}

/** Throat area by the fraction of the pressure integral. */
function throatOf(given: Given): (fraction: number) => number {
  const first = given.throatDiameter?.si ?? given.record.initialThroatDiameter?.si;
  if (first === undefined || !(first > 0))
    throw new MeopError({
      code: 'missing-field',
      procedure: at.procedure,
      path: 'throatDiameter',
      expected: `${throatDiameter.meaning}; the record has none`,
    });
  const last = given.finalThroatDiameter?.si ?? first;
  return (fraction) => (Math.PI / 4) * (first * first + fraction * (last * last - first * first));
}

/** Columns at as many times, equally spaced: the times, then each column. */
function evenInTime(
  time: Float64Array,
  columns: readonly (Float64Array | undefined)[],
): readonly (Float64Array | undefined)[] {
  const n = time.length;
  const [from, to] = [time[0], time[n - 1]];
  const even = time.map((_, i) => Math.min(to, from + ((to - from) * i) / Math.max(1, n - 1)));
  return [even, ...columns.map((column) => column && even.map(linearInterpolant(time, column).at))];
}

const blocks = 40;

/** The excess in the middle of the burn as one flaw; none where its means are within a twentieth of the flaw-free area or their noise. */
function equivalent(
  time: Float64Array,
  depth: Float64Array,
  flawFree: Float64Array,
  excess: Float64Array,
  grain: Grain | Regression | undefined,
): { readonly flaw: EquivalentFlaw | undefined; readonly min: number } {
  const n = excess.length;
  // Pressure follows ignition with a delay, and no burning area is left in the tail-off.
  const from = Math.floor(0.06 * n);
  const to = Math.floor(0.9 * n);
  // The highest single samples are noise: means are compared.
  const count = Math.max(1, Math.min(blocks, to - from));
  const edge = (k: number): number => from + Math.floor((k * (to - from)) / count);
  const means = (values: Float64Array): Float64Array =>
    Float64Array.from({ length: count }, (_, k) => {
      const part = values.subarray(edge(k), edge(k + 1));
      return part.reduce((sum, value) => sum + value, 0) / Math.max(1, part.length);
    });
  const over = means(excess);
  const whole = means(flawFree);
  // The median second difference is 0.6745·√6 standard deviations.
  const bends = Array.from({ length: Math.max(0, to - from - 2) }, (_, i) =>
    Math.abs(excess[from + i] - 2 * excess[from + i + 1] + excess[from + i + 2]),
  );
  const noise =
    bends.length === 0 ? 0 : median(bends) / (0.6745 * Math.sqrt(6)) / Math.sqrt((to - from) / count);
  const tenth = Math.max(1, Math.floor(count / 10));
  const top =
    over
      .slice()
      .sort()
      .slice(-tenth)
      .reduce((a, b) => a + b, 0) / tenth;
  let peak = 0;
  for (let k = 0; k < count; k++) if (over[k] > over[peak]) peak = k;
  const share = whole[peak] > 0 ? top / whole[peak] : 0;
  const min = Math.max(0.05 * whole[peak], 4 * noise);
  if (!(share > 0.05 && top > min)) return { flaw: undefined, min };
  let first = peak;
  while (first > 0 && over[first - 1] > Math.max(0.05 * whole[first - 1], 2 * noise)) first--;
  // An excess in the first mean may have existed from ignition.
  const start = first === 0 ? 0 : edge(first);
  const of = (si: number): Quantity<'area'> => fromSiValue(si, 'area', unitOf('cm^2'));
  const length = grain && 'length' in grain ? grain.length.si : undefined;
  const flaw: EquivalentFlaw = {
    maxExcess: of(top),
    maxExcessFraction: share,
    from: fromSiValue(time[start], 'time', unitOf('s')),
    atDepth: fromSiValue(depth[start], 'length', unitOf('mm')),
    crackArea: of(top / 2),
    fullLengthCrackDepth:
      length === undefined ? undefined : fromSiValue(top / 2 / length, 'length', unitOf('mm')),
    debondArea: of(top),
  };
  return { flaw, min };
}
