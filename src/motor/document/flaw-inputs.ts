import { chippedEdge, crack, debond, type Flaw, voidBubble } from '../../ballistics';
import { crackPlanes } from '../../ballistics/inputs';
import { inputs, variants } from '../../units';
import type { ReadAs } from './document-types';
import { nominal } from './nominal';

/** A flaw of the grain: additional burning surface. */
export const flawInputs = /* @__PURE__ */ variants('flaw', 'flaw of the grain', {
  'radial crack': crackPlanes.radial,
  'transverse crack': crackPlanes.transverse,
  void: inputs(voidBubble.inputs, { meaning: 'void' }),
  debond: inputs(debond.inputs, { meaning: 'area of the wall where the propellant is debonded' }),
  'chipped edge': inputs(chippedEdge.inputs, { meaning: 'chipped edge of an end' }),
});

/** A flaw as parsed. */
export type FlawPart = ReadAs<typeof flawInputs>;

/** The flaw in the form of the ballistics module. */
export function flawOf(part: FlawPart): Flaw {
  const flaw = nominal(part);
  switch (flaw.flaw) {
    case 'radial crack':
      return crack({ plane: 'radial', ...sizesOf(flaw) });
    case 'transverse crack':
      return crack({ plane: 'transverse', ...sizesOf(flaw) });
    case 'void':
      return voidBubble({ ...sizesOf(flaw) });
    case 'debond':
      return debond({ ...sizesOf(flaw) });
    case 'chipped edge':
      return chippedEdge({ ...sizesOf(flaw) });
  }
}

const sizesOf = <F extends { flaw: unknown }>({ flaw: _, ...sizes }: F) => sizes;
