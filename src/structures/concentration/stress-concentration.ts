import type { Provenance } from '../materials/datum';

/** A stress-concentration factor, and the nominal stress that it multiplies. */
export interface StressConcentration {
  /** Factor on the nominal stress; the maximum where a range is known. */
  readonly factor: number;
  /** The range of the factor, where its source states a range. */
  readonly range?: { readonly min: number; readonly max: number };
  /** `theoretical` (K_t): elastic peak; `fatigue` (K_f): includes the notch sensitivity of the metal. */
  readonly type: 'theoretical' | 'fatigue';
  /** The nominal stress that the factor multiplies. */
  readonly nominal: string;
  readonly source: string;
  readonly provenance: Provenance;
  readonly cautions: readonly string[];
}
