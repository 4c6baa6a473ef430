import { choice, inputs, length, list, optional, procedure } from '../../../units';
import { direction, endPosition, startPosition } from '../grain-inputs';
import { requireFit } from '../misfit';
import { circleOutline, prism } from '../surface';
import { type Core, clipped, extent, extentOf } from './core';

const name = 'cylinder core';
const context = 'cylinderCore';

/** Any of its faces can be inhibited, the side also over part of its length. */
export const cylinderCore = /* @__PURE__ */ procedure({
  name: context,
  title: 'Round core with flat ends, on the axis or off it',
  source: 'geometry',
  inputs: {
    diameter: length('d', 'diameter of the core', { example: '16 mm' }),
    ...extent,
    offset: optional(length('e', 'distance of the core from the axis', { min: 0, example: '5 mm' }), 0),
    angle: direction('direction of the offset'),
    inhibited: optional(
      list('faces that do not burn', choice('face that does not burn', ['side', 'head', 'aft']), { min: 0 }),
      [],
    ),
    burningSide: optional(
      inputs(
        { from: startPosition('start of that part'), to: endPosition('end of that part') },
        { meaning: 'part of the side that burns, the rest being inhibited; the whole side if omitted' },
      ),
    ),
  },
  gives: 'the core, for composedGrain',
  example: { diameter: '16 mm', from: '20 mm' },
  run: (values): Core => {
    const { offset, inhibited, burningSide } = values;
    const angle = values.angle.si;
    return {
      name,
      place: (envelope) => {
        const [from, to] = extentOf(context, values, ['from', 'to'], envelope.length);
        const circle = circleOutline(
          values.diameter.si / 2,
          offset.si * Math.cos(angle),
          offset.si * Math.sin(angle),
        );
        const slack = 1e-9 * envelope.length;
        const side: readonly [number, number] | undefined = inhibited.includes('side')
          ? undefined
          : [Math.max(from, burningSide?.from.si ?? from), Math.min(to, burningSide?.to.si ?? to)];
        requireFit(
          context,
          side === undefined || side[1] > side[0],
          'burningSide',
          burningSide,
          'a stretch within the length of the core',
        );
        return prism({
          name,
          outline: clipped(context, 'offset', offset, circle, envelope.radius),
          from,
          to,
          faces: {
            side,
            start: from <= slack ? 'through' : inhibited.includes('head') ? 'inhibited' : 'burning',
            end:
              to >= envelope.length - slack ? 'through' : inhibited.includes('aft') ? 'inhibited' : 'burning',
          },
          mirror: angle,
        });
      },
    };
  },
});
