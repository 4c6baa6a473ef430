import type { PartId } from '../../structures';

/** A length of metal, or a ratio, that practice requires to be at least so large. */
export interface Ligament {
  readonly part: PartId;
  readonly check: string;
  /** Metres, or a ratio. */
  readonly value: number;
  readonly kind: 'length' | 'ratio';
  /** Required minimum. */
  readonly least: number;
  /** Recommended minimum, where it differs. */
  readonly preferred?: number;
  /** The rule in words, such as '1.5 bolt diameters'. */
  readonly rule: string;
  readonly source: string;
}

export const practice = 'engineering practice, no published source';
