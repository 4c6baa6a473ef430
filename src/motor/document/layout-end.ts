import type { EndLayout } from '../layout/end-layout';
import { overlap, voidDiameter } from '../layout/metal';
import type { Closure } from './closure-inputs';
import type { Path } from './problems';

/** An end with a layout, and the space for it. Positions are distances from the end of the case. */
export interface PlacedEnd {
  readonly at: Path;
  readonly closure: Closure & { readonly layout: NonNullable<Closure['layout']> };
  readonly layout: EndLayout;
  readonly bore: number;
  readonly outside: number;
}

/** The field that makes the widest space inside a closure over a span, for a message. */
export function spaceAt(layout: EndLayout, span: { readonly from: number; readonly to: number }): string {
  const widest = voidDiameter(layout, span);
  const names = ['cavity', 'recess', 'pocket', 'opening'] as const;
  const name = names.find((one) => {
    const space = layout[one];
    return space !== undefined && space.diameter === widest && overlap(space.span, span);
  });
  return name === 'pocket' ? 'pocket of the insert' : (name ?? 'opening');
}
