import { type ErosiveBurningFit, fitErosiveBurning, type SimulatedFiring } from '../../ballistics';
import type { ReducedFiring } from '../../firing';
import { MeopError } from '../../units';
import type { Motor } from '../document';
import { motorRegression } from '../motor-grain';
import type { RegressionCache } from '../regression-cache';
import { simulationInput } from '../simulation-input';

// Enough for the shape of the pressure: tests of the fit find the truth with as many.
const stations = 24;

/** What a firing shows of erosive burning. */
export interface ErosionCalibration {
  readonly fit: ErosiveBurningFit;
  /** The change of the document, where the factor differs by more than chance. */
  readonly reason: string | undefined;
}

/**
 * The augmentation factor of erosive burning that a firing shows; `undefined` where the port is wide, the pressure saturated or
 * the law without effect, since the record then does not determine it.
 */
export function erosionCalibration(
  motor: Motor,
  predicted: SimulatedFiring,
  { record, clipping }: ReducedFiring,
  cache: RegressionCache,
): ErosionCalibration | undefined {
  if (predicted.portModel !== 'coupled' || record.pressure === undefined || clipping.pressure !== undefined)
    return undefined;
  const input = simulationInput(motor, motorRegression(motor, 'none', cache));
  const law = input.erosiveBurning;
  if (law === undefined || law.law === 'none') return undefined;
  try {
    // A prediction states the pressure ahead of the nozzle; transducers are in the forward closure.
    const measuredAt = record.origin === 'predicted' ? 'nozzle' : 'head end';
    const fit = fitErosiveBurning({ record, motor: { ...input, stations }, measuredAt });
    const given = Number(law.augmentationFactor ?? 1);
    const { augmentationFactor: found, standardError } = fit;
    const differs = Math.abs(found - given) > Math.max(0.1, 1.96 * standardError);
    return {
      fit,
      reason: differs
        ? `propellant.erosiveBurning.augmentationFactor: ${given.toPrecision(3)} would become ${found.toPrecision(3)} ± ${(1.96 * standardError).toPrecision(2)} by the start of the pressure, with a burn law from firings without erosive burning`
        : undefined,
    };
  } catch (error) {
    if (error instanceof MeopError && (error.code === 'not-determined' || error.code === 'not-converged'))
      return undefined;
    throw error;
  }
}
