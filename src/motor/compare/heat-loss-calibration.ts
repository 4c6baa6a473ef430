import type { ReducedFiring } from '../../firing';
import { fromSiValue, unitOf } from '../../units';
import type { Motor } from '../document';
import { heatLossOf } from '../heat-loss-of';
import type { RegressionCache } from '../regression-cache';
import { withValues } from '../varied-motor';

const path = ['heatLoss', 'heatTransferCoefficient'] as const;

// As for the other constants: smaller differences of c* are not worth a change.
const worthwhile = 0.005;

/**
 * States the heat-transfer coefficient that explains the delivered characteristic velocity of a firing, as the alternative to
 * another efficiency of the propellant: the record alone does not separate them. `undefined` where no coefficient does.
 */
export function heatLossCalibration(
  motor: Motor,
  measured: ReducedFiring,
  expected: ReducedFiring,
  cache: RegressionCache,
): string | undefined {
  const given = motor.heatLoss?.heatTransferCoefficient.value;
  const [found, wanted] = [measured.characteristicVelocity, expected.characteristicVelocity];
  if (given === undefined || found === undefined || wanted === undefined) return undefined;
  if (measured.clipping.pressure !== undefined || Math.abs(found.si / wanted.si - 1) < worthwhile)
    return undefined;
  const efficiencyAt = (si: number): number =>
    heatLossOf(withValues(motor, [{ path, si }]), cache)?.efficiency ?? 1;
  const target = (efficiencyAt(given.si) * found.si) / wanted.si;
  // The efficiency falls as the coefficient rises.
  let [low, high] = [0.01 * given.si, 100 * given.si];
  if (!(efficiencyAt(low) > target && efficiencyAt(high) < target)) return undefined;
  for (let i = 0; i < 40; i++) {
    const middle = Math.sqrt(low * high);
    if (efficiencyAt(middle) > target) low = middle;
    else high = middle;
  }
  const calibrated = fromSiValue(high, 'heat-transfer coefficient', unitOf('W/(m^2*K)'));
  return `heatLoss.heatTransferCoefficient: ${given} would become ${calibrated} to explain the delivered c* ${found} by heat loss alone, in place of propellant.characteristicVelocityEfficiency; the record does not separate the two`;
}
