import { MeopError, procedure } from '../units';
import { mostLostInPort } from './coupled/coupled-model';
import { coupledRun } from './coupled/coupled-run';
import { largestAugmentation, portChoice } from './coupled/port-choice';
import { barelyStable, effectiveBands } from './effective-bands';
import { defaultErosion, erosionLawOf } from './erosive-inputs';
import { nozzleCautions } from './nozzle-cautions';
import { portDiagnosis } from './port-diagnosis';
import { outsideRemedy, rangeCautions, rangeText, sensitivityUnknown } from './rate-by-law';
import { type GivenMotor, type ReadMotor, readMotor } from './read-motor';
import { simulateInputs } from './simulate-inputs';
import { firingOf, type MadeRun, type SimulatedFiring } from './simulated-firing';
import { chamberWorkspace } from './simulation/chamber-workspace';
import { mostMassLost } from './simulation/mass-error';
import type { MotorModel } from './simulation/motor-model';
import { runChamber } from './simulation/run-chamber';
import { emptyResult, type RunResult } from './simulation/run-result';
import { sampleRecorder } from './simulation/sample-recorder';
import { endCautions } from './simulation-events';
import { transientCautions } from './transient-cautions';

/** Samples kept of each step: enough for a straight line between them to be within 1e-4 of the curve. */
const samplesPerStep = 8;

/**
 * Predicts a firing: chamber pressure, thrust and all other traces from ignition to the end of the tail-off.
 *
 * The chamber has one pressure and one gas temperature; gas fills the volume of the burned propellant; the
 * nozzle may be unchoked at the start and at the end; the throat may erode. Times at which the burning area jumps, the closure
 * opens or the propellant is consumed are computed exactly. The same input gives the same bits.
 *
 * Where the pressure diverges, the chamber bursts, the closure never opens or the motor does not burn out in time, the
 * firing ends there, with a caution that states time and reason.
 *
 * @throws MeopError `no-propellant`, `no-ignition`, `no-port`, `not-converged`;
 * `out-of-range` where the burn law does not allow pressures outside its characterisation
 * @example simulate({ propellant: publishedPropellant('potassium nitrate/sucrose'), grain: tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' }), nozzle: { throatDiameter: '8 mm', expansionRatio: 5 }, chamber: { innerDiameter: '50 mm', length: '110 mm' }, ambient: '1 atm' }).end // => 'burned out'
 */
export const simulate = /* @__PURE__ */ procedure({
  name: 'simulate',
  title: 'Simulation of a firing',
  source:
    'mass balance of the chamber, Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11-12',
  inputs: simulateInputs,
  gives: 'the predicted firing: pressure, thrust and all other traces, with the mass balance',
  example:
    "simulate({ propellant: publishedPropellant('potassium nitrate/sucrose'), grain: tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' }), nozzle: { throatDiameter: '8 mm', expansionRatio: 5 }, chamber: { innerDiameter: '50 mm', length: '110 mm' }, ambient: '1 atm' })",
  run: simulatedFiring,
});

/** Augmentation below which erosive burning is not mentioned. */
const worthSaying = 1.02;

function simulatedFiring(input: GivenMotor): SimulatedFiring {
  const motor = readMotor(input, { procedure: 'simulate', path: '' });
  const { model, regression } = motor;
  const run = runOf(input, motor);
  const { result, samples, portFlow } = run;
  checkRange(input, result);
  return firingOf(input, motor, run, [
    ...endCautions(motor, result, samples),
    ...nozzleCautions(
      model,
      run.coupled === undefined ? result : { ...result, maxBurnPressure: result.peakPressure },
    ),
    ...transientCautions(model, samples),
    ...input.propellant.cautions,
    ...regression.cautions,
    ...(input.grainTemperature !== undefined && input.propellant.law.temperatureSensitivity === undefined
      ? [sensitivityUnknown]
      : []),
    ...rangeCautions(
      input.propellant.law,
      result.minBurnPressure,
      Math.max(result.maxBurnPressure, result.peakPressure),
    ),
    ...barelyStable(maxExponent(input, result)),
    ...(portFlow?.cautions ?? []),
  ]);
}

/** Runs the lumped model, and the coupled one where it is specified or needed. */
function runOf(input: GivenMotor, motor: ReadMotor): MadeRun {
  const { model, regression } = motor;
  const erosion = erosionLawOf(input.erosiveBurning ?? { law: 'none' });
  if (input.portModel === 'lumped' && erosion.law !== 'none')
    throw new MeopError({
      code: 'inconsistent',
      procedure: 'simulate',
      path: 'portModel',
      given: input.portModel,
      expected: 'automatic or coupled: a law of erosive burning needs the flow along the port',
      remedy: 'Omit portModel, or omit erosiveBurning',
    });
  const result = emptyResult();
  const recorder = sampleRecorder(samplesPerStep);
  runChamber(model, chamberWorkspace(), result, recorder);
  checkConverged(model, result, model.tolerance, mostMassLost);
  const samples = recorder.samples();
  const flow = portDiagnosis(model, regression.portArea, regression.si.depth, samples, erosion);
  if (flow === undefined && erosion.law !== 'none')
    throw new MeopError({
      code: 'no-port',
      procedure: 'simulate',
      path: 'erosiveBurning',
      problem: 'erosive burning requires a grain with a port',
    });
  const port = { motor: model, stations: regression.portArea, depth: regression.si.depth, samples, flow };
  const choice =
    input.portModel === 'automatic'
      ? portChoice(port, erosion)
      : { model: input.portModel, reason: 'as specified' };
  // What a law would add is said where none is in use.
  const missing = erosion.law === 'none' ? withoutErosion(largestAugmentation(port, defaultErosion)) : [];
  const made =
    choice.model === 'lumped'
      ? { result, samples, portFlow: flow, coupled: undefined, tolerance: model.tolerance }
      : coupledRun(input, motor, erosion);
  if (choice.model === 'coupled') checkConverged(model, made.result, made.tolerance, mostLostInPort);
  const portFlow = made.portFlow && { ...made.portFlow, cautions: [...made.portFlow.cautions, ...missing] };
  return { ...made, portFlow, choice };
}

const withoutErosion = (augmented: number): readonly string[] =>
  augmented > worthSaying
    ? [
        `erosive burning is not included; by the law of Mukunda and Paul the burn rate at the aft end would be up to ${(100 * (augmented - 1)).toPrecision(2)} % higher. Give erosiveBurning`,
      ]
    : [];

function checkConverged(
  model: MotorModel,
  { end, endTime, endPressure, endThroatRadius, massError }: RunResult,
  tolerance: number,
  mostLost: number,
): void {
  const lost = Math.abs(massError) > mostLost;
  if (end !== 'not converged' && !lost) return;
  const at = `${endTime.toPrecision(6)} s (pressure ${(endPressure / 1e6).toPrecision(4)} MPa)`;
  throw new MeopError({
    code: 'not-converged',
    procedure: 'simulate',
    path: 'tolerance',
    problem: lost
      ? `the run ${massError > 0 ? 'loses' : 'gains'} ${(100 * Math.abs(massError)).toPrecision(3)} % of its mass until ${at}, more than the ${100 * mostLost} % allowed`
      : `no step satisfies the tolerance ${tolerance} at ${at}`,
    remedy: lost
      ? endThroatRadius > 3 * model.throatRadius
        ? `Check the throat erosion: the throat grows to a diameter of ${(2000 * endThroatRadius).toPrecision(3)} mm`
        : 'Decrease the tolerance, or check the inputs for an implausible value'
      : 'Increase the tolerance, or check the inputs for an implausible value',
  });
}

/** Maximum exponent of the bands within the pressure range of the burn. */
function maxExponent({ propellant: { law } }: GivenMotor, result: RunResult): number {
  const { minBurnPressure: min, maxBurnPressure: max } = result;
  const used = effectiveBands(law).filter((band) => band.from <= max && band.to >= min);
  return Math.max(0, ...used.map(({ exponent }) => exponent));
}

function checkRange({ propellant: { law } }: GivenMotor, result: RunResult): void {
  const { from, to } = law.characterised;
  if (law.outside !== 'error') return;
  const max = Math.max(result.maxBurnPressure, result.peakPressure);
  if (result.minBurnPressure >= from && max <= to) return;
  throw new MeopError({
    code: 'out-of-range',
    procedure: 'simulate',
    path: 'propellant',
    problem: `the pressure varies from ${result.minBurnPressure / 1e6} to ${max / 1e6} MPa and leaves the characterised range of the burn law, ${rangeText(law)}`,
    remedy: outsideRemedy,
  });
}
