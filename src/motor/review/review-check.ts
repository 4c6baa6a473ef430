import type { Quantity } from '../../units';

/** A check without a margin of safety. */
export interface ReviewCheck {
  readonly check: string;
  readonly passes: boolean;
  readonly value: Quantity | number;
  readonly limit: Quantity | number;
  /** Result in words. */
  readonly message: string;
  readonly source: string;
}
