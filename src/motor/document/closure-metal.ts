import type { Closure } from './closure-inputs';
import type { Partly } from './document-types';
import { si } from './fit-check';

type Metal = Pick<Partly<Closure>, 'thickness' | 'layout'>;

/**
 * Axial length of the metal in the middle of a closure [m]: between the cavity and the recess of its layout, or its
 * thickness where the document gives no layout.
 */
export function closureMetal({ thickness, layout }: Metal): number | undefined {
  if (layout === undefined) return si(thickness);
  const length = si(layout.length);
  return length && length - depthOf(layout.cavity) - depthOf(layout.recess);
}

/** Depth of the cavity in the inner face of a closure [m]. */
export const cavityDepth = ({ layout }: Metal): number => depthOf(layout?.cavity);

const depthOf = (hollow: NonNullable<Metal['layout']>['cavity']): number => si(hollow?.depth) ?? 0;
