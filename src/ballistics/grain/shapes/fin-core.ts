import { count, length, procedure } from '../../../units';
import { direction, tipShape } from '../grain-inputs';
import { lessThan, refused } from '../misfit';
import { finOutline } from '../surface';
import { apart, type Core, clipped, extent, extentOf } from './core';
import { partialCore, throughCore } from './prism-core';

const name = 'fin core';
const context = 'finCore';

/** Any number of fins, over any axial extent. */
export const finCore = /* @__PURE__ */ procedure({
  name: context,
  title: 'Core of fins or slots about the axis',
  source: 'geometry',
  inputs: {
    count: count('N', 'number of fins', { example: 6 }),
    thickness: length('t', 'thickness of a fin', { example: '4 mm' }),
    tipDiameter: length(
      'd_f',
      'twice the distance of a fin tip from the axis; beyond the wall the fins are cut off',
      { example: '44 mm' },
    ),
    tip: tipShape('shape of the tip'),
    angle: direction('direction of the first fin'),
    ...extent,
  },
  checks: [lessThan('thickness', 'tipDiameter', 'the tip diameter')],
  gives: 'the core, for composedGrain',
  example: { count: 6, thickness: '4 mm', tipDiameter: '44 mm', from: '100 mm' },
  run: (values): Core => ({
    name,
    place: ({ radius, length: high }) => {
      const { thickness, tipDiameter } = values;
      const angle = values.angle.si;
      const [from, to] = extentOf(context, values, ['from', 'to'], high);
      const fins = finOutline(values.count, thickness.si / 2, tipDiameter.si / 2, values.tip, angle);
      if (fins === undefined) throw refused(context, 'thickness', thickness, apart);
      const o = clipped(context, 'tipDiameter', tipDiameter, fins, radius);
      return from <= 0 && to >= high
        ? throughCore(name, o, high, angle)
        : partialCore(name, o, from, to, high, angle);
    },
  }),
});
