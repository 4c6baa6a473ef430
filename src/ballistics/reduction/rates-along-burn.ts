import type { Firing } from '../../firing';
import { ambientSi } from '../../firing/ambient';
import { analysedRecord } from '../../firing/analysis/analysed-record';
import { MeopError, type QuantityInput, readInput } from '../../units';
import { type Grain, type Regression, regress } from '../grain';

/** One firing of a known grain: the rate at every moment of the burn. */
export interface TraceInput {
  readonly record: Firing;
  readonly grain: Grain | Regression;
  /** Pressure around the motor. Default: that of the record; one of the two is needed. */
  readonly ambientPressure?: QuantityInput<'absolute pressure'>;
  /** Free volume of the empty chamber; without it the gas stored in the chamber is not counted. */
  readonly chamberVolume?: QuantityInput<'volume'>;
  readonly gamma?: number;
  readonly throatDiameter?: QuantityInput<'length'>;
  readonly finalThroatDiameter?: QuantityInput<'length'>;
  /** Density as cast; with it c* is told as well. */
  readonly density?: QuantityInput<'density'>;
}

/** Burning rate and pressure along one firing, SI. */
export interface RatesAlongBurn {
  readonly time: Float64Array;
  readonly pressure: Float64Array;
  readonly rate: Float64Array;
  readonly depth: Float64Array;
  readonly cautions: readonly string[];
}

const means = 120;

/**
 * Rate along the burn of a known grain. What has left through the throat is in proportion to the integral of p·A_t, all of
 * it being the propellant cast; the volume gone gives the depth, and the flow over density and burning area the rate. No
 * trace is differentiated but for the gas stored in the chamber.
 *
 * Source: mass balance of the chamber, Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11.
 */
export function ratesAlongBurn(input: TraceInput): RatesAlongBurn {
  const record = analysedRecord(input.record);
  const trace = record.traces.pressure;
  if (trace === undefined)
    throw new MeopError(
      'missing-field',
      'fitBurnLaw: trace.record: the record has no pressure',
      'trace.record',
    );
  const regression: Regression = 'si' in input.grain ? input.grain : regress(input.grain);
  const { time, values: pressure } = trace;
  const ambient = ambientSi(record, input.ambientPressure, 'fitBurnLaw: trace');
  const edges = trace.edges(0.01, ambient);
  const from = Math.max(0, edges.first - 1);
  const to = Math.min(time.length - 1, edges.last + 1);
  const total = throatIntegral(time, pressure, from, to, input);
  const all = total.running[total.running.length - 1];
  const cast = regression.castVolume.si;
  // Gas that fills the room which propellant leaves, as volume of propellant: p·V/(R·T) / ρ.
  const stored = storage(input, all, cast);
  const { burnout } = regression.si;
  const volume: number[] = [];
  const times: number[] = [];
  const pressures: number[] = [];
  for (let i = from; i <= to; i++) {
    const left = (cast * total.running[i - from]) / all;
    volume.push(left + stored(pressure[i], left));
    times.push(time[i]);
    pressures.push(pressure[i]);
  }
  const result = {
    time: [] as number[],
    pressure: [] as number[],
    rate: [] as number[],
    depth: [] as number[],
  };
  const n = times.length;
  const width = Math.max(1, Math.floor(n / (2 * means)));
  const strideBy = Math.max(1, Math.floor(n / means));
  for (let k = width; k + width < n; k += strideBy) {
    const gone = volume[k];
    const depth = depthOf(regression, cast - gone);
    // Lighting and the last sliver do not follow the table.
    if (depth < 0.06 * burnout || depth > 0.94 * Math.min(burnout, regression.web.si)) continue;
    const flow = (volume[k + width] - volume[k - width]) / (times[k + width] - times[k - width]);
    const rate = flow / regression.si.areaAt(depth);
    if (!(rate > 0)) continue;
    result.time.push(times[k]);
    result.pressure.push(pressures[k]);
    result.rate.push(rate);
    result.depth.push(depth);
  }
  if (result.time.length < 8)
    throw new MeopError(
      'too-few-points',
      `fitBurnLaw: trace: only ${result.time.length} moments between lighting and burnout are usable; sample faster`,
      'trace.record',
    );
  return {
    time: Float64Array.from(result.time),
    pressure: Float64Array.from(result.pressure),
    rate: Float64Array.from(result.rate),
    depth: Float64Array.from(result.depth),
    cautions: [
      ...(record.cautions.length > 0 ? ['the record itself carries cautions'] : []),
      ...(input.chamberVolume === undefined
        ? ['gas stored in the chamber is not counted: give chamberVolume']
        : []),
    ],
  };
}

/** Running integral of p·A_t, the area going from first to last with the integral of p. */
function throatIntegral(
  time: Float64Array,
  pressure: Float64Array,
  from: number,
  to: number,
  input: TraceInput,
): { readonly running: Float64Array } {
  const first =
    input.throatDiameter &&
    readInput('length', 'trace.throatDiameter', input.throatDiameter, 'fitBurnLaw').si;
  const last =
    input.finalThroatDiameter &&
    readInput('length', 'trace.finalThroatDiameter', input.finalThroatDiameter, 'fitBurnLaw').si;
  const growth = first && last ? (last / first) ** 2 - 1 : 0;
  const running = new Float64Array(to - from + 1);
  for (let i = 1; i < running.length; i++) {
    const k = from + i;
    running[i] = running[i - 1] + 0.5 * (pressure[k] + pressure[k - 1]) * (time[k] - time[k - 1]);
  }
  const all = running[running.length - 1];
  return { running: growth === 0 ? running : running.map((v) => v + (growth * v * v) / (2 * all)) };
}

function storage(
  input: TraceInput,
  pressureIntegral: number,
  cast: number,
): (pressure: number, gone: number) => number {
  const { chamberVolume, throatDiameter } = input;
  if (chamberVolume === undefined || throatDiameter === undefined) return () => 0;
  const room = readInput('volume', 'trace.chamberVolume', chamberVolume, 'fitBurnLaw').si;
  const throat = readInput('length', 'trace.throatDiameter', throatDiameter, 'fitBurnLaw').si;
  const g = input.gamma ?? 1.2;
  const vandenkerckhove = Math.sqrt(g) * (2 / (g + 1)) ** ((g + 1) / (2 * (g - 1)));
  // ρ·c* = A_t·∫p dt / V, and R·T = (Γ·c*)²: the density of the gas over that of the propellant is p·(ρ/(ρ·c*)²)/Γ²,
  // which needs the propellant's own density: taken as 1750 kg/m³ where it is not given.
  const density =
    input.density === undefined
      ? 1750
      : readInput('density', 'trace.density', input.density, 'fitBurnLaw').si;
  const impulsePerVolume = ((Math.PI / 4) * throat * throat * pressureIntegral) / cast;
  const perPascal = density / (vandenkerckhove * impulsePerVolume) ** 2;
  return (pressure, gone) => pressure * perPascal * (room - cast + gone);
}

/** Depth at which a volume of propellant is left; bisection on a falling cubic. */
function depthOf(regression: Regression, left: number): number {
  const { burnout, volumeAt } = regression.si;
  let low = 0;
  let high = burnout;
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (volumeAt(middle) > left) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
