import { type Firing, firing } from '../firing';
import { fromSiArray, fromSiValue, type Quantity, type Series, unitOf } from '../units';
import type { CoupledSamples } from './coupled/coupled-samples';
import type { PortChoice } from './coupled/port-choice';
import type { PortFlow } from './port-diagnosis';
import type { GivenMotor, ReadMotor } from './read-motor';
import { runMass } from './simulation/mass-error';
import type { MotorModel, RunEnd } from './simulation/motor-model';
import type { RunResult } from './simulation/run-result';
import type { RunSamples } from './simulation/sample-recorder';
import { eventsOf } from './simulation-events';
import { igniterMassUntil } from './transient/igniter-flow';

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
   * more than 1e-4 of it, or 5e-3 where the port is coupled, is an error.
   */
  readonly relativeError: number;
}

/** A predicted firing, with results of the simulation in addition to the record. */
export interface SimulatedFiring extends Firing {
  readonly origin: 'predicted';
  /** Stagnation pressure at the nozzle. */
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
  /** Model of the port that was used, and the reason for it. */
  readonly portModel: 'lumped' | 'coupled';
  readonly portModelReason: string;
  /** Static pressure at the head end, which a gauge in the forward closure reads. */
  readonly headPressure: Series<'absolute pressure'>;
  readonly peakHeadPressure: Quantity<'absolute pressure'>;
  /** Depth burned at each station of `portFlow`, where the port is coupled; otherwise `web` holds everywhere. */
  readonly stationWeb: readonly Series<'length'>[] | undefined;
  readonly balance: MassBalance;
  readonly counts: { readonly steps: number; readonly rejected: number; readonly evaluations: number };
}

/** A run of either model of the port, recorded. */
export interface MadeRun {
  readonly result: RunResult;
  readonly samples: RunSamples;
  readonly portFlow: PortFlow | undefined;
  readonly choice: PortChoice;
  readonly coupled: { readonly samples: CoupledSamples; readonly peakHeadPressure: number } | undefined;
}

const tailOffName = {
  isothermal: 'isothermal',
  adiabatic: 'adiabatic',
  'heat-loss': 'with heat loss',
} as const;

/** The record of a run. */
export function firingOf(
  input: GivenMotor,
  motor: ReadMotor,
  run: MadeRun,
  cautions: readonly string[],
): SimulatedFiring {
  const { model } = motor;
  const { result, samples, portFlow, choice, coupled } = run;
  const head =
    coupled?.samples.headPressure ??
    samples.pressure.map((p, i) => p * (portFlow?.headPressureRatio[i] ?? 1));
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
      `simulated: ${motor.grainText}; tolerance ${model.tolerance}, ${result.steps} steps; tail-off ${tailOffName[model.tailOff.law]}`,
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
    portModel: choice.model,
    portModelReason: choice.reason,
    headPressure: fromSiArray('absolute pressure', head),
    peakHeadPressure: quantity<'absolute pressure'>(
      Math.max(result.peakPressure, coupled?.peakHeadPressure ?? head.reduce((a, b) => Math.max(a, b), 0)),
      'absolute pressure',
      'MPa',
    ),
    stationWeb: coupled?.samples.depthAt.map((values) => fromSiArray('length', values)),
    balance: balanceOf(model, result, samples),
    counts: { steps: result.steps, rejected: result.rejected, evaluations: result.evaluations },
  });
}

const quantity = <
  K extends 'absolute pressure' | 'time' | 'impulse' | 'pressure integral' | 'mass' | 'length',
>(
  si: number,
  kind: K,
  unit: string,
): Quantity<K> => fromSiValue<K>(si, kind, unitOf(unit));

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
