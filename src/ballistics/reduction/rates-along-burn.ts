import { analysedRecord } from '../../firing/analysis/analysed-record';
import { throatDiameter } from '../../firing/motor-inputs';
import { gamma } from '../../thermo/gas-inputs';
import { inputs, MeopError, optional, type Values, volume } from '../../units';
import type { Regression } from '../grain';
import { castDensity } from '../propellant-inputs';
import { ambientAt, grainInput, pressureOf, pressureRecord, regressionOf } from './firing-inputs';
import { finalThroatDiameter } from './implied-area';

/** One firing of a known grain, from which the burning rate follows at each moment of the burn. */
export const traceInputs = inputs(
  {
    ...pressureRecord,
    grain: grainInput,
    chamberVolume: optional(
      volume('V', 'volume of the empty chamber; without it, gas stored in the chamber is neglected'),
    ),
    gamma: optional(gamma, 1.2),
    throatDiameter: optional(throatDiameter),
    finalThroatDiameter: optional(finalThroatDiameter),
    density: optional(castDensity),
  },
  { meaning: 'one firing of a known grain' },
);

type Given = Values<typeof traceInputs.fields>;

/** Burning rate and pressure along one firing, SI. */
export interface RatesAlongBurn {
  readonly time: Float64Array;
  readonly pressure: Float64Array;
  readonly rate: Float64Array;
  readonly depth: Float64Array;
  readonly cautions: readonly string[];
}

const means = 120;

const at = { procedure: 'fitBurnLaw', path: 'trace' };

/**
 * Rate along the burn of a known grain. The outflow is proportional to the integral of p·A_t, and its total is the
 * propellant cast; the volume burned gives the depth, and flow/(density·burning area) the rate. No
 * trace is differentiated, except for the gas stored in the chamber.
 *
 * Source: mass balance of the chamber, Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11.
 */
export function ratesAlongBurn(input: Given): RatesAlongBurn {
  const record = analysedRecord(input.record);
  const trace = pressureOf(input.record, at);
  const regression = regressionOf(input.grain);
  const { time, values: pressure } = trace;
  const ambient = ambientAt(input.record, input.ambientPressure, at);
  const edges = trace.edges(0.01, ambient);
  const from = Math.max(0, edges.first - 1);
  const to = Math.min(time.length - 1, edges.last + 1);
  const total = throatIntegral(time, pressure, from, to, input);
  const all = total.running[total.running.length - 1];
  const cast = regression.castVolume.si;
  // Gas that fills the volume of the burned propellant, as volume of propellant: p·V/(R·T) / ρ.
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
    // Ignition and the last sliver do not follow the table.
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
    throw new MeopError({
      code: 'too-few-points',
      procedure: at.procedure,
      path: 'trace.record',
      problem: `${result.time.length} moments between ignition and burnout are usable; at least 8 are required`,
      remedy: 'Use a record with a higher sample rate',
    });
  return {
    time: Float64Array.from(result.time),
    pressure: Float64Array.from(result.pressure),
    rate: Float64Array.from(result.rate),
    depth: Float64Array.from(result.depth),
    cautions: [
      ...(record.cautions.length > 0 ? ['the record has cautions'] : []),
      ...(input.chamberVolume === undefined
        ? ['chamberVolume not specified; gas stored in the chamber is neglected']
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
  input: Given,
): { readonly running: Float64Array } {
  const first = input.throatDiameter?.si;
  const last = input.finalThroatDiameter?.si;
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
  input: Given,
  pressureIntegral: number,
  cast: number,
): (pressure: number, gone: number) => number {
  const { chamberVolume, throatDiameter } = input;
  if (chamberVolume === undefined || throatDiameter === undefined) return () => 0;
  const room = chamberVolume.si;
  const throat = throatDiameter.si;
  const g = input.gamma;
  const vandenkerckhove = Math.sqrt(g) * (2 / (g + 1)) ** ((g + 1) / (2 * (g - 1)));
  // ρ·c* = A_t·∫p dt / V, and R·T = (Γ·c*)²: gas density/propellant density is p·(ρ/(ρ·c*)²)/Γ²,
  // which requires the density of the propellant: 1750 kg/m³ is assumed where it is not given.
  const density = input.density?.si ?? 1750;
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
