import { fromSiArray, type Series } from '../units';
import type { PortAtStation } from './grain';
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
  /** Static pressure at each station over chamber pressure (the stagnation pressure that drives the nozzle). */
  readonly staticPressureRatio: readonly Float64Array[];
  /** Port area at the aft station over throat area. */
  readonly portToThroat: Float64Array;
  /** Pressure at the head end over chamber pressure: what a gauge in the forward closure reads too much. */
  readonly headPressureRatio: Float64Array;
  readonly cautions: readonly string[];
}

/** What is seen in practice as the onset of erosive burning in composite propellants: 2 lb/(in²·s). */
const fluxOfPractice = 1400;

/** Stations at which there is a port from the start; what rounding leaves of a closed one is none. */
export function openStations(stations: readonly PortAtStation[]): readonly PortAtStation[] {
  return stations.filter(({ area }) => area.si[0] > 1e-9 * area.max().si);
}

/**
 * Works out the flow along the port from the samples of a run. The stations see the gas made ahead of them, shared out
 * by the perimeter that burns; their areas are in step with `depth`. Pressure and Mach number follow from the momentum balance of a port of even area.
 */
export function portDiagnosis(
  m: MotorModel,
  stations: readonly PortAtStation[],
  depth: Float64Array,
  samples: RunSamples,
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
    cautions: portCautions(m, samples, portToThroat, headRatio, flux[open.length - 1]),
  };
}

/** Where the model of one pressure for the whole chamber stops being true. */
function portCautions(
  m: MotorModel,
  { time, massFlow }: RunSamples,
  portToThroat: Float64Array,
  headRatio: Float64Array,
  aftFlux: Float64Array,
): readonly string[] {
  const flowing = massFlow.findIndex((flow) => flow > 0);
  if (flowing < 0) return [];
  const least = portToThroat[flowing];
  const until = (above: number): string => {
    const i = portToThroat.findIndex((value, at) => at >= flowing && value >= above);
    return i < 0 ? 'the end' : `${time[i].toPrecision(3)} s`;
  };
  const excess = `${(100 * (headRatio[flowing] - 1)).toFixed(1)} %`;
  const cautions: string[] = [];
  if (least <= 1)
    cautions.push(
      `the port is no larger than the throat until ${until(1)}: it chokes first and sets the flow, so the pressure at the head end is higher than predicted`,
    );
  else if (least < 2)
    cautions.push(
      `port-to-throat area ratio ${least.toPrecision(3)} at the start: the head end reads ${excess} above the pressure that drives the nozzle, and one pressure for the whole chamber is a coarse model until ${until(2)}`,
    );
  if (least > 1 && least <= 4 && m.erosive === undefined)
    cautions.push(
      `port-to-throat area ratio at or below 4 until ${until(4)}: erosive burning is to be expected and is not in this prediction (rule of thumb in textbooks)`,
    );
  const most = aftFlux.reduce((a, b) => Math.max(a, b), 0);
  if (most > fluxOfPractice && m.erosive === undefined)
    cautions.push(
      `mass flux up to ${most.toFixed(0)} kg/(m²·s) in the port, above the ${fluxOfPractice} from which erosive burning is seen in composite propellants (engineering practice, no published source)`,
    );
  return cautions;
}
