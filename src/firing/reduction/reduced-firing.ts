import type { Quantity } from '../../units';
import type { Resonance } from '../cleaning/resonance';
import type { Firing } from '../firing';
import type { Clipping } from '../saturation/clipping';
import type { Recovery } from '../saturation/recovery';
import type { MotorNumbers } from './motor-numbers';

/** A firing reduced: the cleaned record, and what the motor did, as far as the record can tell. */
export interface ReducedFiring extends MotorNumbers {
  /** `'no result'` where no channel is fit to give numbers; then all of them are undefined. */
  readonly status: 'reduced' | 'no result';
  readonly record: Firing;
  readonly clipping: { readonly pressure?: Clipping; readonly thrust?: Clipping };
  readonly recovery: Recovery<'absolute pressure'> | Recovery<'force'> | undefined;
  /** Upper end of the peak pressure above ambient: what the hardware may have seen. */
  readonly peakPressureUpperBound: Quantity<'gauge pressure'> | undefined;
  readonly resonance: Resonance | undefined;
  toString(): string;
}
