import type { RunEnd } from './motor-model';

/** What a run leaves behind when nothing is recorded: plain SI numbers, written over by the next run. */
export interface RunResult {
  end: RunEnd;
  /** Time at which the run ended [s]. */
  endTime: number;
  /** Burnt depth at the end [m]. */
  endDepth: number;
  endPressure: number;
  /** Pressure of the gas that the chamber holds at the end: at the head of a port [Pa]. */
  endHeadPressure: number;
  endThroatRadius: number;
  /** Gas constant times gas temperature at the end [J/kg]. */
  endGasEnergy: number;
  /** Time at which the last propellant burned; NaN where some is left. */
  burnoutTime: number;
  burnoutPressure: number;
  peakPressure: number;
  peakTime: number;
  peakDepth: number;
  peakThrust: number;
  /** ∫F dt [N·s] */
  totalImpulse: number;
  /** ∫p dt [Pa·s] */
  pressureIntegral: number;
  /** ∫ṁ dt through the nozzle [kg] */
  massThroughNozzle: number;
  /** Mass not accounted for/mass turned over: burned, from the igniter and in the chamber at the start. */
  massError: number;
  /** Minimum and maximum pressure between 5 % and 95 % of the burnout depth [Pa]. */
  minBurnPressure: number;
  maxBurnPressure: number;
  /** Steps accepted and rejected, and evaluations of the slopes. */
  steps: number;
  rejected: number;
  evaluations: number;
}

/** A result to be filled. */
export function emptyResult(): RunResult {
  return {
    end: 'not converged',
    endTime: 0,
    endDepth: 0,
    endPressure: 0,
    endHeadPressure: 0,
    endThroatRadius: 0,
    endGasEnergy: 0,
    burnoutTime: Number.NaN,
    burnoutPressure: Number.NaN,
    peakPressure: 0,
    peakTime: 0,
    peakDepth: 0,
    peakThrust: 0,
    totalImpulse: 0,
    pressureIntegral: 0,
    massThroughNozzle: 0,
    massError: 0,
    minBurnPressure: Number.POSITIVE_INFINITY,
    maxBurnPressure: 0,
    steps: 0,
    rejected: 0,
    evaluations: 0,
  };
}

/** Brings a result back to its empty state; field by field, as this is done for each of thousands of runs. */
export function clearResult(result: RunResult): void {
  result.end = 'not converged';
  result.endTime = 0;
  result.endDepth = 0;
  result.endPressure = 0;
  result.endHeadPressure = 0;
  result.endThroatRadius = 0;
  result.endGasEnergy = 0;
  result.burnoutTime = Number.NaN;
  result.burnoutPressure = Number.NaN;
  result.peakPressure = 0;
  result.peakTime = 0;
  result.peakDepth = 0;
  result.peakThrust = 0;
  result.totalImpulse = 0;
  result.pressureIntegral = 0;
  result.massThroughNozzle = 0;
  result.massError = 0;
  result.minBurnPressure = Number.POSITIVE_INFINITY;
  result.maxBurnPressure = 0;
  result.steps = 0;
  result.rejected = 0;
  result.evaluations = 0;
}
