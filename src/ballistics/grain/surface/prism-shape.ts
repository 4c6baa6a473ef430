import type { Frame } from './frame';
import type { Outline } from './outline';

/** Burning faces of a prism. `side` may be one axial stretch of it. An end that lies in the end of the grain is `through`. */
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
  /** Axes of the prism; undefined when they are those of the grain. */
  readonly frame?: Frame | undefined;
  /** Mirror line of a single outline through the axis [rad], when it has one. */
  readonly mirror?: number | undefined;
}
