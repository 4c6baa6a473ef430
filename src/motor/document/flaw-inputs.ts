import { chippedEdge, crack, debond, type Flaw, voidBubble } from '../../ballistics';
import { angle, choice, flag, inputs, length, optional, variants } from '../../units';
import type { ReadAs } from './document-types';
import { nominal } from './nominal';

const place = (symbol: string, meaning: string, example: `${number} mm`) =>
  length(symbol, `${meaning}, from the head end`, { above: 0, example, worse: 'neither' });
const fromZero = (symbol: string, meaning: string, example: `${number} mm`) =>
  length(symbol, meaning, { min: 0, example, worse: 'neither' });
const size = (symbol: string, meaning: string, example: `${number} mm`) =>
  length(symbol, meaning, { above: 0, example, worse: 'neither' });
const direction = optional(
  angle('θ', 'circumferential position of its centre', { example: '0 deg', worse: 'neither' }),
);
const open = optional(
  flag('whether it burns from the start; determined from its geometry where omitted', { example: true }),
);
const innerRadius = fromZero('r_i', 'distance of its inner edge from the axis', '8 mm');
const outerRadius = size('r_o', 'distance of its outer edge from the axis', '18 mm');
const from = fromZero('z_1', 'start position, from the head end', '30 mm');

/** A flaw of the grain: additional burning surface. */
export const flawInputs = /* @__PURE__ */ variants('flaw', 'flaw of the grain', {
  'radial crack': inputs(
    { angle: direction, innerRadius, outerRadius, from, to: place('z_2', 'end position', '60 mm'), open },
    { meaning: 'crack in a plane through the axis' },
  ),
  'transverse crack': inputs(
    { position: place('z', 'position', '40 mm'), innerRadius: optional(innerRadius), outerRadius, open },
    { meaning: 'crack across the grain' },
  ),
  void: inputs(
    {
      diameter: size('d', 'diameter of the void', '4 mm'),
      distanceFromAxis: fromZero('r', 'distance of its centre from the axis', '15 mm'),
      angle: direction,
      position: place('z', 'position of its centre', '30 mm'),
      open,
    },
    { meaning: 'void' },
  ),
  debond: inputs(
    {
      from,
      to: place('z_2', 'end position', '30 mm'),
      angle: direction,
      width: optional(angle('β', 'angle spanned', { above: 0, example: '60 deg', worse: 'neither' })),
      open,
    },
    { meaning: 'area of the wall where the propellant is debonded' },
  ),
  'chipped edge': inputs(
    {
      end: choice('end with the chip', ['head', 'aft']),
      edgeRadius: fromZero('r', 'distance of the edge from the axis', '8 mm'),
      angle: direction,
      depth: size('h', 'depth of the chip', '3 mm'),
    },
    { meaning: 'chipped edge of an end' },
  ),
});

/** A flaw as parsed. */
export type FlawPart = ReadAs<typeof flawInputs>;

/** The flaw in the form of the ballistics module. */
export function flawOf(part: FlawPart): Flaw {
  const flaw = nominal(part);
  switch (flaw.flaw) {
    case 'radial crack':
      return crack({ plane: 'radial', ...around, ...sizesOf(flaw) });
    case 'transverse crack':
      return crack({ plane: 'transverse', ...sizesOf(flaw) });
    case 'void':
      return voidBubble({ ...around, ...sizesOf(flaw) });
    case 'debond':
      return debond({ ...around, ...sizesOf(flaw) });
    case 'chipped edge':
      return chippedEdge({ ...around, ...sizesOf(flaw) });
  }
}

/** Default direction of a flaw. */
const around = { angle: '0 deg' } as const;

const sizesOf = <F extends { flaw: unknown }>({ flaw: _, ...sizes }: F) => sizes;
