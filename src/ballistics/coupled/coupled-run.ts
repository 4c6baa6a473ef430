// A coupled run from the inputs of a simulation.
import { fromSiArray } from '../../units';
import type { ErosionLaw } from '../port/erosion-law';
import type { PortFlow } from '../port-diagnosis';
import type { GivenMotor, ReadMotor } from '../read-motor';
import type { MadeRun } from '../simulated-firing';
import { columnPath } from './column-cells';
import type { CoupledModel, CoupledResult } from './coupled-model';
import { type CoupledSamples, coupledRecorder } from './coupled-samples';
import { runCoupled } from './run-coupled';

// A step of the coupled run is of second order: this many times the tolerance of the lumped run costs what it is worth.
const coarser = 100;

/** The coupled model of what a simulation was given. */
export function coupledModel(
  { chamber, momentumFactor, entranceLoss, stations }: GivenMotor,
  { model: motor, regression }: ReadMotor,
  erosion: ErosionLaw,
): CoupledModel {
  const segments = regression.layout();
  const radius = Math.max(...segments.map((segment) => segment.radius));
  const grainArea = Math.PI * radius * radius;
  const inside =
    chamber.innerDiameter === undefined ? grainArea : (Math.PI / 4) * chamber.innerDiameter.si ** 2;
  const last = segments[segments.length - 1];
  const free = motor.chamberVolume / inside - (last.position + last.length);
  return {
    motor,
    segments,
    erosion,
    momentumFactor,
    entranceLoss,
    stations,
    chamberArea: Math.max(grainArea, Math.min(inside, 1.2 * grainArea)),
    // Gas that leaves the last bore into a free length of more than its radius passes a plenum.
    hasPlenum: 0.5 * free > radius,
    tolerance: Math.min(1e-3, coarser * motor.tolerance),
  };
}

/** Runs a motor with the coupled model, recorded. */
export function coupledRun(
  input: GivenMotor,
  motor: ReadMotor,
  erosion: ErosionLaw,
): Omit<MadeRun, 'choice'> & { readonly tolerance: number } {
  const model = coupledModel(input, motor, erosion);
  const recorder = coupledRecorder();
  const result = runCoupled(model, recorder.record);
  const samples = recorder.samples();
  const { position } = columnPath(model.segments, model.stations, model.chamberArea, model.hasPlenum, 0);
  return {
    result,
    samples,
    portFlow: flowOf(model, result, samples, position),
    coupled: { samples, peakHeadPressure: result.peakHeadPressure },
    tolerance: model.tolerance,
  };
}

/** Cautions on a tight port, by its state when gas first flows. */
function tightness({
  aftArea,
  throatRadius,
  massFlow,
  headPressure,
  pressure,
}: CoupledSamples): readonly string[] {
  // The first samples are those of the chamber before it fills.
  const i = massFlow.findIndex(
    (flow, k) => flow > 0 && k > 0 && headPressure[k] <= 1.001 * headPressure[k - 1],
  );
  const at = i < 0 ? massFlow.findIndex((flow) => flow > 0) : i;
  if (at < 0) return [];
  const ratio = aftArea[at] / (Math.PI * throatRadius[at] ** 2);
  if (ratio <= 1)
    return [
      'the port area does not exceed the throat area at the start; the port chokes instead of the throat and determines the flow',
    ];
  if (ratio >= 2) return [];
  const excess = `${(100 * (headPressure[at] / pressure[at] - 1)).toFixed(1)} %`;
  return [
    `port-to-throat area ratio ${ratio.toPrecision(3)} at the start; the head-end pressure is ${excess} above the stagnation pressure at the nozzle`,
  ];
}

function flowOf(
  { erosion }: CoupledModel,
  result: CoupledResult,
  samples: CoupledSamples,
  position: Float64Array,
): PortFlow {
  const { pressure, headPressure, throatRadius, flux, mach, pressureAt, aftArea } = samples;
  const ratio = (values: Float64Array): Float64Array =>
    values.map((p, i) => (pressure[i] > 0 ? p / pressure[i] : 1));
  return {
    position: fromSiArray('length', position),
    massFlux: flux.map((values) => fromSiArray('mass flux', values)),
    mach,
    staticPressureRatio: pressureAt.map(ratio),
    portToThroat: aftArea.map((area, i) => area / (Math.PI * throatRadius[i] ** 2)),
    headPressureRatio: ratio(headPressure),
    cautions: [
      ...tightness(samples),
      ...(Number.isNaN(result.chokedUntil)
        ? []
        : [
            `the port, not the throat, limits the flow until ${result.chokedUntil.toPrecision(3)} s; the head-end pressure is that at which the port passes the flow`,
          ]),
      ...(erosion.law === 'none'
        ? []
        : [
            'Laws of erosive burning differ by as much as the effect they describe; compare the results of two of them and of none.',
          ]),
    ],
  };
}
