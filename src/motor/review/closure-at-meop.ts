import type { PartId } from '../../structures';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { MotorSettings } from '../settings';
import type { Closure } from './closure-heat';

/** A closure held in some way, and what it is to be judged at. */
export interface ClosureAtMeop<Held extends Closure> {
  readonly motor: Motor;
  readonly part: PartId;
  readonly closure: Held;
  readonly meop: Quantity<'gauge pressure'>;
  readonly settings: MotorSettings;
}
