import { choice, length, optional, procedure } from '../../../units';
import { inMillimetres, requireFit } from '../misfit';
import { arc, line, outline, revolve } from '../surface';
import { type Core, extent, extentOf } from './core';

const name = 'cone core';
const context = 'coneCore';
const diameter = (end: string, example: `${number} mm`) =>
  length('d', `diameter at the ${end} end of the core`, { min: 0, example });

/** An end inside the grain is closed by a point or a dome. */
export const coneCore = /* @__PURE__ */ procedure({
  name: context,
  title: 'Conical core about the axis, between two diameters',
  source: 'geometry',
  inputs: {
    headDiameter: diameter('head', '12 mm'),
    aftDiameter: diameter('aft', '20 mm'),
    dome: optional(
      choice('end inside the grain that is closed by a hemisphere of the diameter of the core', [
        'head',
        'aft',
      ]),
    ),
    ...extent,
  },
  gives: 'the core, for composedGrain',
  example: { headDiameter: '12 mm', aftDiameter: '20 mm' },
  run: (values): Core => {
    const { dome } = values;
    const head = values.headDiameter.si / 2;
    const aft = values.aftDiameter.si / 2;
    return {
      name,
      place: ({ radius, length: high }) => {
        requireFit(
          context,
          Math.max(head, aft) < radius,
          'aftDiameter',
          values.aftDiameter,
          `less than the outer diameter of the grain (${inMillimetres(2 * radius)})`,
        );
        const [from, to] = extentOf(context, values, ['from', 'to'], high);
        const closedHead = from <= 0 || head === 0 || dome === 'head';
        const closedAft = to >= high || aft === 0 || dome === 'aft';
        requireFit(
          context,
          closedHead && closedAft,
          'dome',
          dome,
          "'head' or 'aft' where the core ends inside the grain with a diameter above zero",
          'Add a dome, taper the core to a point, or extend it to the end of the grain',
        );
        const profile = outline([
          ...(dome === 'head' && head > 0 ? [arc(0, from, head, -Math.PI / 2, Math.PI / 2)] : []),
          line(head, from, aft, to),
          ...(dome === 'aft' && aft > 0 ? [arc(0, to, aft, 0, Math.PI / 2)] : []),
        ]);
        return revolve({ name, profile, low: 0, high });
      },
    };
  },
});
