import type { Quantity } from '../../units';
import type { Resonance } from '../cleaning/resonance';
import type { Firing } from '../firing';
import type { Clipping } from '../saturation/clipping';
import type { Recovery } from '../saturation/recovery';
import type { MotorNumbers } from './motor-numbers';

/** A reduced firing: the cleaned record, and the performance of the motor as far as the record allows. */
export interface ReducedFiring extends MotorNumbers {
  /** `'no result'` where no channel is usable; then all numbers are undefined. */
  readonly status: 'reduced' | 'no result';
  readonly record: Firing;
  readonly clipping: { readonly pressure?: Clipping; readonly thrust?: Clipping };
  readonly recovery: Recovery<'absolute pressure'> | Recovery<'force'> | undefined;
  /** Upper limit of peak pressure above ambient to which the hardware may have been exposed. */
  readonly peakPressureUpperBound: Quantity<'gauge pressure'> | undefined;
  readonly resonance: Resonance | undefined;
  toString(): string;
}
