import { fromSiArray, type Series } from '../units';
import type { PortAtStation } from './grain';
import type { ErosionLaw } from './port/erosion-law';
import { portStagnationPressureRatio } from './port-flow';
import { portEndMach, portMachAt } from './port-mach';
import type { MotorModel } from './simulation/motor-model';
import type { RunSamples } from './simulation/sample-recorder';

/** The flow along the port at every sample of a firing, station by station from head to aft. */
export interface PortFlow {
  /** Where the stations are, from the head end. */
  readonly position: Series<'length'>;
  /** Mass flux at each station, in step with the firing's time. */
  readonly massFlux: readonly Series<'mass flux'>[];
  /** Mach number at each station. */
  readonly mach: readonly Float64Array[];
  /** Static pressure at each station/chamber pressure (the stagnation pressure at the nozzle). */
  readonly staticPressureRatio: readonly Float64Array[];
  /** Port area at the aft station/throat area. */
  readonly portToThroat: Float64Array;
  /** Pressure at the head end/chamber pressure: the relative excess measured in the forward closure. */
  readonly headPressureRatio: Float64Array;
  readonly cautions: readonly string[];
}

/** Onset of erosive burning in composite propellants in practice: 2 lb/(in²·s). */
const fluxOfPractice = 1400;

/** Stations with a port from the start; the rounding error of a closed station does not count as a port. */
export function openStations(stations: readonly PortAtStation[]): readonly PortAtStation[] {
  return stations.filter(({ area }) => area.si[0] > 1e-9 * area.max().si);
}

/**
 * Computes the flow along the port from the samples of a run. Each station passes the gas generated ahead of it, distributed
 * by the burning perimeter; their areas correspond to `depth`. Pressure and Mach number follow from the momentum balance of a port
 * of constant area.
 */
export function portDiagnosis(
  m: MotorModel,
  stations: readonly PortAtStation[],
  depth: Float64Array,
  samples: RunSamples,
  erosion: ErosionLaw = { law: 'none' },
): PortFlow | undefined {
  const open = openStations(stations);
  if (open.length === 0) return undefined;
  const n = samples.time.length;
  const columns = () => open.map(() => new Float64Array(n));
  const flux = columns();
  const mach = columns();
  const ratio = columns();
  const portToThroat = new Float64Array(n);
  const headRatio = new Float64Array(n);
  const areas = open.map(() => 0);
  const perimeters = open.map(() => 0);
  let k = 0;
  for (let i = 0; i < n; i++) {
    const y = samples.depth[i];
    while (k < depth.length - 2 && y > depth[k + 1]) k++;
    const u = Math.max(0, Math.min(1, (y - depth[k]) / (depth[k + 1] - depth[k])));
    let around = 0;
    for (let s = 0; s < open.length; s++) {
      const { area, perimeter } = open[s];
      areas[s] = area.si[k] + u * (area.si[k + 1] - area.si[k]);
      perimeters[s] = perimeter.si[k] + u * (perimeter.si[k + 1] - perimeter.si[k]);
      around += perimeters[s];
    }
    const throat = Math.PI * samples.throatRadius[i] ** 2;
    portToThroat[i] = areas[open.length - 1] / throat;
    const endMach = samples.massFlow[i] > 0 ? portEndMach(portToThroat[i], m.gamma) : 0;
    headRatio[i] = 1 / portStagnationPressureRatio.si({ mach: endMach, gamma: m.gamma });
    const head = headRatio[i] * samples.pressure[i];
    let ahead = 0;
    for (let s = 0; s < open.length; s++) {
      const part = around > 0 ? perimeters[s] / around : 1 / open.length;
      flux[s][i] = (samples.massFlow[i] * (ahead + 0.5 * part)) / areas[s];
      ahead += part;
      mach[s][i] = portMachAt(flux[s][i], head, m.gasEnergy, m.gamma);
      ratio[s][i] = headRatio[i] / (1 + m.gamma * mach[s][i] ** 2);
    }
  }
  return {
    position: fromSiArray(
      'length',
      Float64Array.from(open, ({ position }) => position.si),
    ),
    massFlux: flux.map((values) => fromSiArray('mass flux', values)),
    mach,
    staticPressureRatio: ratio,
    portToThroat,
    headPressureRatio: headRatio,
    cautions: portCautions(samples, portToThroat, headRatio, flux[open.length - 1], erosion),
  };
}

/** Cautions where the model of one pressure for the whole chamber is not valid. */
function portCautions(
  { time, massFlow }: RunSamples,
  portToThroat: Float64Array,
  headRatio: Float64Array,
  aftFlux: Float64Array,
  erosion: ErosionLaw,
): readonly string[] {
  const flowing = massFlow.findIndex((flow) => flow > 0);
  if (flowing < 0) return [];
  const initial = portToThroat[flowing];
  const until = (above: number): string => {
    const i = portToThroat.findIndex((value, at) => at >= flowing && value >= above);
    return i < 0 ? 'the end' : `${time[i].toPrecision(3)} s`;
  };
  const excess = `${(100 * (headRatio[flowing] - 1)).toFixed(1)} %`;
  const cautions: string[] = [];
  if (initial <= 1)
    cautions.push(
      `the port area does not exceed the throat area until ${until(1)}; the port chokes instead of the throat and determines the flow, so the head-end pressure is higher than predicted`,
    );
  else if (initial < 2)
    cautions.push(
      `port-to-throat area ratio ${initial.toPrecision(3)} at the start; the head-end pressure is ${excess} above the stagnation pressure at the nozzle, and one pressure for the whole chamber is a coarse model until ${until(2)}`,
    );
  if (initial > 1 && initial <= 4 && erosion.law === 'none')
    cautions.push(
      `port-to-throat area ratio at or below 4 until ${until(4)}; erosive burning is likely and is not included in this prediction (rule of thumb in textbooks)`,
    );
  const max = aftFlux.reduce((a, b) => Math.max(a, b), 0);
  if (max > fluxOfPractice && erosion.law === 'none')
    cautions.push(
      `the mass flux in the port reaches ${max.toFixed(0)} kg/(m²·s), above the ${fluxOfPractice} at which erosive burning begins in composite propellants (engineering practice, no published source)`,
    );
  return cautions;
}
