import type { Frame } from './frame';
import type { Outline } from './outline';

/** What of a prism burns. `side` may be one axial stretch of it; an end that lies in the grain's own end is `through`. */
export interface PrismFaces {
  readonly side: readonly [number, number] | undefined;
  readonly start: 'burning' | 'inhibited' | 'through';
  readonly end: 'burning' | 'inhibited' | 'through';
}

/** A cavity of constant section between two planes. */
export interface PrismShape {
  readonly name: string;
  readonly outline: Outline;
  readonly from: number;
  readonly to: number;
  readonly faces: PrismFaces;
  /** Where the prism's own axes stand; undefined when they are the grain's. */
  readonly frame?: Frame | undefined;
  /** Mirror line of a single outline through the axis [rad], when it has one. */
  readonly mirror?: number | undefined;
}
