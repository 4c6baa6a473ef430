import { type Firing, type FiringEvent, firing } from '../firing';
import { fromSiArray, fromSiValue, MeopError, procedure, type Quantity, type Series, unitOf } from '../units';
import { barelyStable, effectiveBands } from './effective-bands';
import { nozzleCautions } from './nozzle-cautions';
import { type PortFlow, portDiagnosis } from './port-diagnosis';
import { outsideRemedy, rangeCautions, rangeText, sensitivityUnknown } from './rate-by-law';
import { type GivenMotor, type ReadMotor, readMotor } from './read-motor';
import { simulateInputs } from './simulate-inputs';
import { chamberWorkspace } from './simulation/chamber-workspace';
import { mostMassLost, runMass } from './simulation/mass-error';
import type { MotorModel, RunEnd } from './simulation/motor-model';
import { runChamber } from './simulation/run-chamber';
import { emptyResult, type RunResult } from './simulation/run-result';
import { type RunSamples, sampleRecorder } from './simulation/sample-recorder';
import { igniterMassUntil } from './transient/igniter-flow';
import { transientCautions } from './transient-cautions';

/** Mass balance of a simulation. */
export interface MassBalance {
  /** Propellant burned. */
  readonly burned: Quantity<'mass'>;
  readonly igniterGas: Quantity<'mass'>;
  readonly throughNozzle: Quantity<'mass'>;
  /** Gas in the chamber at the end minus gas at the start. */
  readonly storedGas: Quantity<'mass'>;
  /**
   * Mass not accounted for/mass turned over: burned, from the igniter and in the chamber at the start. A run that loses
   * more than 1e-4 of it is an error.
   */
  readonly relativeError: number;
}

/** A predicted firing, with results of the simulation in addition to the record. */
export interface SimulatedFiring extends Firing {
  readonly origin: 'predicted';
  readonly pressure: Series<'absolute pressure'>;
  readonly thrust: Series<'force'>;
  readonly massFlow: Series<'mass flow'>;
  readonly burningArea: Series<'area'>;
  readonly web: Series<'length'>;
  readonly throatDiameter: Series<'length'>;
  readonly propellantMass: Series<'mass'>;
  readonly ambientPressure: Quantity<'absolute pressure'>;
  /** How the run ended. */
  readonly end: RunEnd;
  readonly peakPressure: Quantity<'absolute pressure'>;
  readonly timeOfPeakPressure: Quantity<'time'>;
  readonly totalImpulse: Quantity<'impulse'>;
  readonly pressureIntegral: Quantity<'pressure integral'>;
  /** Time at which the last propellant burned; `undefined` where propellant is left. */
  readonly burnoutTime: Quantity<'time'> | undefined;
  /** Flow along the port; `undefined` for a grain without one. */
  readonly portFlow: PortFlow | undefined;
  readonly balance: MassBalance;
  readonly counts: { readonly steps: number; readonly rejected: number; readonly evaluations: number };
}

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

function simulatedFiring(input: GivenMotor): SimulatedFiring {
  const motor = readMotor(input, { procedure: 'simulate', path: '' });
  const { model, regression } = motor;
  const result = emptyResult();
  const recorder = sampleRecorder(samplesPerStep);
  runChamber(model, chamberWorkspace(), result, recorder);
  if (result.end === 'not converged') throw notConverged(model, result);
  checkRange(input, result);
  const samples = recorder.samples();
  const portFlow = portDiagnosis(model, regression.portArea, regression.si.depth, samples);
  const cautions = [
    ...endCautions(motor, result, samples),
    ...nozzleCautions(model, result),
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
  ];
  const record = firing({
    ...(input.title === undefined ? {} : { title: input.title }),
    origin: 'predicted',
    time: fromSiArray('time', samples.time),
    pressure: fromSiArray('absolute pressure', samples.pressure),
    thrust: fromSiArray('force', samples.thrust),
    massFlow: fromSiArray('mass flow', samples.massFlow),
    burningArea: fromSiArray('area', samples.burningArea, 'cm^2'),
    web: fromSiArray('length', samples.depth),
    ...(portFlow === undefined ? {} : { portMassFlux: portFlow.massFlux[portFlow.massFlux.length - 1] }),
    throatDiameter: fromSiArray(
      'length',
      samples.throatRadius.map((r) => 2 * r),
    ),
    propellantMass: fromSiArray(
      'mass',
      samples.volume.map((v) => model.density * v),
    ),
    ambientPressure: quantity(model.ambientPressure, 'absolute pressure', 'kPa'),
    loadedMass: quantity(model.density * model.table.volume[0], 'mass', 'kg'),
    initialThroatDiameter: quantity(2 * model.throatRadius, 'length', 'mm'),
    events: eventsOf(motor, samples),
    cautions: [...new Set(cautions)],
    history: [
      `simulated: ${motor.grainText}; tolerance ${model.tolerance}, ${result.steps} steps; tail-off ${model.tailOff.law === 'heat-loss' ? 'with heat loss' : model.tailOff.law}`,
    ],
  });
  return Object.assign(record, {
    origin: 'predicted' as const,
    ambientPressure: quantity<'absolute pressure'>(model.ambientPressure, 'absolute pressure', 'kPa'),
    end: result.end,
    peakPressure: quantity<'absolute pressure'>(result.peakPressure, 'absolute pressure', 'MPa'),
    timeOfPeakPressure: quantity<'time'>(result.peakTime, 'time', 's'),
    totalImpulse: quantity<'impulse'>(result.totalImpulse, 'impulse', 'N*s'),
    pressureIntegral: quantity<'pressure integral'>(result.pressureIntegral, 'pressure integral', 'MPa*s'),
    burnoutTime: Number.isNaN(result.burnoutTime)
      ? undefined
      : quantity<'time'>(result.burnoutTime, 'time', 's'),
    portFlow,
    balance: balanceOf(model, result, samples),
    counts: { steps: result.steps, rejected: result.rejected, evaluations: result.evaluations },
  });
}

function notConverged(
  model: MotorModel,
  { endTime, endPressure, endThroatRadius, massError }: RunResult,
): MeopError {
  const at = `${endTime.toPrecision(6)} s (pressure ${(endPressure / 1e6).toPrecision(4)} MPa)`;
  const lost = Math.abs(massError) > mostMassLost;
  return new MeopError({
    code: 'not-converged',
    procedure: 'simulate',
    path: 'tolerance',
    problem: lost
      ? `the run ${massError > 0 ? 'loses' : 'gains'} ${(100 * Math.abs(massError)).toPrecision(3)} % of its mass until ${at}, more than the ${100 * mostMassLost} % allowed`
      : `no step satisfies the tolerance ${model.tolerance} at ${at}`,
    remedy: lost
      ? endThroatRadius > 3 * model.throatRadius
        ? `Check the throat erosion: the throat grows to a diameter of ${(2000 * endThroatRadius).toPrecision(3)} mm`
        : 'Decrease the tolerance, or check the inputs for an implausible value'
      : 'Increase the tolerance, or check the inputs for an implausible value',
  });
}

const quantity = <
  K extends 'absolute pressure' | 'time' | 'impulse' | 'pressure integral' | 'mass' | 'length',
>(
  si: number,
  kind: K,
  unit: string,
): Quantity<K> => fromSiValue<K>(si, kind, unitOf(unit));

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

function balanceOf(m: MotorModel, result: RunResult, samples: RunSamples): MassBalance {
  const last = samples.volume.length - 1;
  const left = Number.isNaN(result.burnoutTime) ? samples.volume[last] : 0;
  const { burned, igniter, atStart, atEnd } = runMass(m, result, left);
  return {
    burned: quantity(burned, 'mass', 'kg'),
    igniterGas: quantity(igniterMassUntil(m, result.endTime), 'mass', 'kg'),
    throughNozzle: quantity(result.massThroughNozzle, 'mass', 'kg'),
    storedGas: quantity(atEnd - atStart, 'mass', 'kg'),
    relativeError:
      (burned + igniter + atStart - atEnd - result.massThroughNozzle) / (burned + igniter + atStart),
  };
}

function eventsOf({ model, landings }: ReadMotor, samples: RunSamples): readonly FiringEvent[] {
  const { burnout } = model.table;
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-5 * burnout;
  const found = samples.marks.flatMap(({ crossing, time, depth }): FiringEvent[] => {
    const at = { time: quantity<'time'>(time, 'time', 's') };
    if (crossing === 'closure') return [{ name: 'nozzle closure opens', ...at }];
    if (crossing === 'ignition') return [{ name: 'remaining surface ignites', ...at }];
    if (crossing === 'limit') return [{ name: 'pressure limit', ...at }];
    if (crossing === 'stop') return [{ name: 'stop pressure', ...at }];
    const reached = { ...at, depth: quantity<'length'>(depth, 'length', 'mm') };
    if (near(depth, burnout)) return [{ name: 'burnout', ...reached }];
    const named = landings.filter((landing) => near(landing.depth, depth));
    if (named.length > 0) return named.map(({ name }) => ({ name, ...reached }));
    return [{ name: 'burning area jumps', ...reached }];
  });
  if (model.blockedFraction === 0) return found;
  const end = samples.time[samples.time.length - 1];
  const blocked = [
    { name: 'throat partly blocked', time: model.blockedFrom },
    { name: 'throat free again', time: model.blockedUntil },
  ];
  return [
    ...found,
    ...blocked
      .filter(({ time }) => time <= end)
      .map(({ name, time }) => ({ name, time: quantity<'time'>(time, 'time', 's') })),
  ].sort((a, b) => a.time.si - b.time.si);
}

function endCautions(
  { model, hasBurst, hasTimeLimit }: ReadMotor,
  result: RunResult,
  samples: RunSamples,
): readonly string[] {
  const when = `at ${result.endTime.toPrecision(4)} s`;
  const atEnd = `${(result.endPressure / 1e6).toPrecision(3)} MPa`;
  const held =
    model.nozzleClosureBurstPressure > 0 && !samples.marks.some(({ crossing }) => crossing === 'closure');
  const limit = `${(model.pressureLimit / 1e6).toPrecision(4)} MPa`;
  const ways: Readonly<Record<RunEnd, readonly string[]>> = {
    'burned out': [],
    'stop pressure': [
      `the pressure had fallen to the stop pressure of ${(model.stopPressure / 1e6).toPrecision(3)} MPa ${when} with propellant left: slivers, or extinction`,
    ],
    'pressure limit': [
      hasBurst
        ? `the chamber bursts ${when}: its pressure reaches the burst pressure of ${limit}${held ? ' with the nozzle closure still closed' : ''}`
        : held
          ? `the nozzle closure was still closed ${when}, when the pressure reached ${limit}; there the gas is a fifth as dense as the propellant and the model is no longer valid`
          : `the pressure diverges ${when}: at ${limit} the gas is a fifth as dense as the propellant and the model is no longer valid; there is no equilibrium at a lower pressure`,
    ],
    'closure held': [
      `all propellant had burned ${when} with the nozzle closure still closed; the chamber remains at ${(result.endPressure / 1e6).toPrecision(4)} MPa`,
    ],
    'time limit': [
      Number.isFinite(result.burnoutTime)
        ? `the run ended ${when} with the chamber still at ${atEnd}: all propellant had burned at ${result.burnoutTime.toPrecision(4)} s`
        : hasTimeLimit
          ? `the motor had not burned out at the time limit: it burns at ${atEnd} ${when}`
          : `the motor had not burned out when the run ended ${when}: it burns at ${atEnd}, barely ignited`,
    ],
    'throat closed': [`deposits have closed the throat ${when}`],
    'not converged': [],
  };
  return ways[result.end];
}
