import type { PartId } from '../../structures';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { MotorSettings } from '../settings';
import type { Closure } from './closure-heat';

/** A closure with its retention, and the conditions of its evaluation. */
export interface ClosureAtMeop<Held extends Closure> {
  readonly motor: Motor;
  readonly part: PartId;
  readonly closure: Held;
  readonly meop: Quantity<'gauge pressure'>;
  readonly settings: MotorSettings;
}
