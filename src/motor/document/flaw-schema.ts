import * as z from 'zod/mini';
import { chippedEdge, crack, debond, type Flaw, voidBubble } from '../../ballistics';
import { choice, explained, oneOf, part } from './fields';
import { measure } from './measure';

const zero = { min: 0, words: '0 or more' };
const position = (meaning: string) => measure('length', `${meaning}, from the head end`, '30 mm', zero);
const angle = () => z.optional(measure('angle', 'circumferential position of its centre', '0 deg'));
const open = () =>
  z.optional(
    explained(z.boolean({ error: 'must be true or false (whether it burns from the start)' }), {
      description: 'whether it burns from the start; default: determined from its geometry',
    }),
  );

const makeFlawSchema = () =>
  oneOf(
    'flaw',
    [
      part(
        {
          flaw: z.literal('radial crack'),
          angle: angle(),
          innerRadius: measure('length', 'distance of its inner edge from the axis', '8 mm', zero),
          outerRadius: measure('length', 'distance of its outer edge from the axis', '18 mm'),
          from: position('start position'),
          to: measure('length', 'end position, from the head end', '60 mm'),
          open: open(),
        },
        'crack in a plane through the axis',
      ),
      part(
        {
          flaw: z.literal('transverse crack'),
          position: measure('length', 'position, from the head end', '40 mm'),
          innerRadius: z.optional(
            measure('length', 'distance of its inner edge from the axis', '8 mm', zero),
          ),
          outerRadius: measure('length', 'distance of its outer edge from the axis', '18 mm'),
          open: open(),
        },
        'crack across the grain',
      ),
      part(
        {
          flaw: z.literal('void'),
          diameter: measure('length', 'diameter of the void', '4 mm'),
          distanceFromAxis: measure('length', 'distance of its centre from the axis', '15 mm', zero),
          angle: angle(),
          position: measure('length', 'position of its centre, from the head end', '30 mm'),
          open: open(),
        },
        'void',
      ),
      part(
        {
          flaw: z.literal('debond'),
          from: position('start position'),
          to: measure('length', 'end position, from the head end', '30 mm'),
          angle: angle(),
          width: z.optional(measure('angle', 'angle spanned', '60 deg', { above: 0, words: 'more than 0' })),
          open: open(),
        },
        'area of the wall where the propellant is debonded',
      ),
      part(
        {
          flaw: z.literal('chipped edge'),
          end: choice(['head', 'aft'], 'end with the chip'),
          edgeRadius: measure('length', 'distance of the edge from the axis', '8 mm', zero),
          angle: angle(),
          depth: measure('length', 'depth of the chip', '3 mm'),
        },
        'chipped edge of an end',
      ),
    ],
    'flaw of the grain',
  );

let made: ReturnType<typeof makeFlawSchema> | undefined;

/** A flaw of the grain: additional burning surface. One schema, so that the JSON Schema contains it once. */
export function flawSchema(): ReturnType<typeof makeFlawSchema> {
  made ??= makeFlawSchema();
  return made;
}

/** A flaw as parsed. */
export type FlawPart = z.output<ReturnType<typeof flawSchema>>;

/** The flaw in the form of the ballistics module. */
export function flawOf(part: FlawPart): Flaw {
  const at = { angle: 'angle' in part && part.angle ? part.angle.value : '0 deg' } as const;
  const lit = 'open' in part && part.open !== undefined ? { open: part.open } : {};
  switch (part.flaw) {
    case 'radial crack':
      return crack({
        plane: 'radial',
        ...at,
        innerRadius: part.innerRadius.value,
        outerRadius: part.outerRadius.value,
        from: part.from.value,
        to: part.to.value,
        ...lit,
      });
    case 'transverse crack':
      return crack({
        plane: 'transverse',
        position: part.position.value,
        ...(part.innerRadius && { innerRadius: part.innerRadius.value }),
        outerRadius: part.outerRadius.value,
        ...lit,
      });
    case 'void':
      return voidBubble({
        diameter: part.diameter.value,
        distanceFromAxis: part.distanceFromAxis.value,
        position: part.position.value,
        ...at,
        ...lit,
      });
    case 'debond':
      return debond({
        from: part.from.value,
        to: part.to.value,
        ...at,
        ...(part.width && { width: part.width.value }),
        ...lit,
      });
    case 'chipped edge':
      return chippedEdge({
        end: part.end,
        edgeRadius: part.edgeRadius.value,
        depth: part.depth.value,
        ...at,
      });
  }
}
