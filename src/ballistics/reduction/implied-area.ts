import type { Firing } from '../../firing';
import { ambientSi } from '../../firing/ambient';
import { analysedRecord } from '../../firing/analysis/analysed-record';
import { median } from '../../numerics';
import {
  fromSiArray,
  fromSiValue,
  MeopError,
  type Quantity,
  type QuantityInput,
  readInput,
  type Series,
  unitOf,
} from '../../units';
import { type BurnLaw, temperatureFactorSi } from '../burn-law';
import { bandAt, bandRateSi } from '../burn-law-band';
import { type Grain, type Regression, regress } from '../grain';

/** What {@link impliedBurningArea} needs to know beside the pressure. */
export interface ImpliedAreaInput {
  readonly record: Firing;
  /** Pressure around the motor. Default: that of the record; one of the two is needed. */
  readonly ambientPressure?: QuantityInput<'absolute pressure'>;
  readonly law: BurnLaw;
  readonly density: QuantityInput<'density'>;
  /** Delivered. */
  readonly characteristicVelocity: QuantityInput<'speed'>;
  /** Default: that of the record. */
  readonly throatDiameter?: QuantityInput<'length'>;
  readonly finalThroatDiameter?: QuantityInput<'length'>;
  readonly grainTemperature?: QuantityInput<'temperature'>;
  /** The grain as it should have been; with it the excess and what it amounts to are told. */
  readonly flawFreeGrain?: Grain | Regression;
}

/** The burning area that a pressure trace implies, and what is over that of the sound grain. */
export interface ImpliedArea {
  readonly time: Series<'time'>;
  /** Burning over throat area. */
  readonly areaRatio: Series<'dimensionless'>;
  readonly burningArea: Series<'area'>;
  /** Burned depth. */
  readonly depth: Series<'length'>;
  /** Of the sound grain at that depth; undefined where none was given. */
  readonly flawFreeArea: Series<'area'> | undefined;
  readonly excess: Series<'area'> | undefined;
  readonly flaw: EquivalentFlaw | undefined;
  /** The least excess that would have been told as a flaw: a twentieth of the sound area, or more where noise hides it. */
  readonly detectableExcess: Quantity<'area'> | undefined;
  readonly cautions: readonly string[];
}

/** What the excess area amounts to. */
export interface EquivalentFlaw {
  /** Upper tenth of the excess, as means over fortieths of the burn. */
  readonly maxExcess: Quantity<'area'>;
  /** As a share of the sound area then. */
  readonly maxExcessFraction: number;
  /** When the excess first stays above a twentieth of the sound area. */
  readonly from: Quantity<'time'>;
  readonly atDepth: Quantity<'length'>;
  /** A crack has two faces: half of the excess is its area. */
  readonly crackArea: Quantity<'area'>;
  /** Depth of a crack along the whole grain; undefined where the grain's length is not known. */
  readonly fullLengthCrackDepth: Quantity<'length'> | undefined;
  /** A debonded patch of the outer wall burns on one face. */
  readonly debondArea: Quantity<'area'>;
}

const caller = 'impliedBurningArea';

/**
 * Burning area from pressure: K = p / (ρ·c*·r(p)), moment by moment, and its excess over the sound grain at the same
 * burned depth: how much extra surface flaws exposed, and when.
 *
 * Quasi-steady: gas stored in the chamber is neglected, so rise and tail are left out. An error of c*, density or burn law
 * shifts the whole curve; a flaw shows as a change of it.
 *
 * Source: equilibrium of burning and outflow, Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11.
 *
 * @throws MeopError `missing-field`, `no-pulse`
 * @example impliedBurningArea({ record: firing({ origin: 'measured', time: series([0, 1, 2, 3, 4], 's'), pressure: series([0.1, 2, 2, 2, 0.1], 'MPa') }), ambientPressure: '0.1 MPa', law: saintRobert({ referenceRate: '5 mm/s', referencePressure: '2 MPa', exponent: 0.3 }), density: '1800 kg/m^3', characteristicVelocity: '900 m/s', throatDiameter: '10 mm' }).areaRatio.at(1).si.toFixed(1) // => '246.9'
 */
export function impliedBurningArea(input: ImpliedAreaInput): ImpliedArea {
  const { record, law } = input;
  const trace = analysedRecord(record).traces.pressure;
  if (trace === undefined)
    throw new MeopError('missing-field', `${caller}: record: no pressure in it`, 'record');
  const read = (kind: 'density' | 'speed', field: 'density' | 'characteristicVelocity'): number =>
    readInput(kind, field, input[field], caller).si;
  const flux = read('density', 'density') * read('speed', 'characteristicVelocity');
  const throat = throatOf(input);
  const warmth =
    input.grainTemperature === undefined
      ? 1
      : temperatureFactorSi(
          law,
          readInput('temperature', 'grainTemperature', input.grainTemperature, caller).si,
        );
  const { time, values: pressure } = trace;
  const edges = trace.edges(0.1, ambientSi(record, input.ambientPressure, caller));
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
  const regression =
    input.flawFreeGrain && ('si' in input.flawFreeGrain ? input.flawFreeGrain : regress(input.flawFreeGrain));
  const sound = regression && depth.map((w) => (w < regression.si.burnout ? regression.si.areaAt(w) : 0));
  const excess = sound && area.map((a, k) => a - sound[k]);
  const times = time.slice(edges.first, edges.last + 1);
  const found = excess && sound && equivalent(times, depth, sound, excess, input.flawFreeGrain);
  if (regression) {
    const reached = depth[count - 1] / regression.burnout.si;
    if (Math.abs(reached - 1) > 0.08)
      cautions.push(
        `by this burn law the burn reaches ${(100 * reached).toFixed(0)} % of the grain's depth: law, web or edges are off, and the excess with them`,
      );
  }
  return {
    time: fromSiArray('time', times, 's'),
    areaRatio: fromSiArray('dimensionless', ratio),
    burningArea: fromSiArray('area', area, 'cm^2'),
    depth: fromSiArray('length', depth, 'mm'),
    flawFreeArea: sound && fromSiArray('area', sound, 'cm^2'),
    excess: excess && fromSiArray('area', excess, 'cm^2'),
    flaw: found?.flaw,
    detectableExcess: found && fromSiValue(found.least, 'area', unitOf('cm^2')),
    cautions,
  };
}

/** Throat area by the share of the pressure integral that has passed. */
function throatOf(input: ImpliedAreaInput): (share: number) => number {
  const first =
    input.throatDiameter === undefined
      ? input.record.initialThroatDiameter?.si
      : readInput('length', 'throatDiameter', input.throatDiameter, caller).si;
  if (first === undefined || !(first > 0))
    throw new MeopError(
      'missing-field',
      `${caller}: throatDiameter: neither given nor in the record`,
      'throatDiameter',
    );
  const last =
    input.finalThroatDiameter === undefined
      ? first
      : readInput('length', 'finalThroatDiameter', input.finalThroatDiameter, caller).si;
  return (share) => (Math.PI / 4) * (first * first + share * (last * last - first * first));
}

const blocks = 40;

/** The excess in the middle of the burn as one flaw; none where its means stay within a twentieth of the sound area or their noise. */
function equivalent(
  time: Float64Array,
  depth: Float64Array,
  sound: Float64Array,
  excess: Float64Array,
  grain: Grain | Regression | undefined,
): { readonly flaw: EquivalentFlaw | undefined; readonly least: number } {
  const n = excess.length;
  // Pressure needs a moment to follow after lighting, and the tail-off has no burning area left.
  const from = Math.floor(0.06 * n);
  const to = Math.floor(0.9 * n);
  // Of single samples the highest are the noise's: means are compared.
  const count = Math.max(1, Math.min(blocks, to - from));
  const edge = (k: number): number => from + Math.floor((k * (to - from)) / count);
  const means = (values: Float64Array): Float64Array =>
    Float64Array.from({ length: count }, (_, k) => {
      const part = values.subarray(edge(k), edge(k + 1));
      return part.reduce((sum, value) => sum + value, 0) / Math.max(1, part.length);
    });
  const over = means(excess);
  const whole = means(sound);
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
  const least = Math.max(0.05 * whole[peak], 4 * noise);
  if (!(share > 0.05 && top > least)) return { flaw: undefined, least };
  let first = peak;
  while (first > 0 && over[first - 1] > Math.max(0.05 * whole[first - 1], 2 * noise)) first--;
  // What is there in the first mean may have been there from lighting.
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
  return { flaw, least };
}
