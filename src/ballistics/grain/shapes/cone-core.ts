import type { QuantityInput } from '../../../units';
import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { inMillimetres, readChoice, readLength, requireFit } from '../measure';
import { arc, line, outline, revolve } from '../surface';
import { type Core, type CoreExtent, extentFields, extentOf } from './core';

const coneFields: FieldsOf<Parameters<typeof coneCore>[0]> = {
  ...extentFields,
  headDiameter: 'required',
  aftDiameter: 'required',
  dome: 'optional',
};

/**
 * A conical core about the axis, between two diameters. An end inside the grain is closed by a point or a dome.
 *
 * @throws MeopError `grain-measure`, also for an end in the grain that is neither pointed nor domed
 * @example coneCore({ headDiameter: '12 mm', aftDiameter: '20 mm' }).name // => 'cone core'
 */
export function coneCore(
  options: CoreExtent & {
    /** Diameter at the head end of the core [length, zero or more]. */
    readonly headDiameter: QuantityInput<'length'>;
    /** Diameter at the aft end of the core [length, zero or more]. */
    readonly aftDiameter: QuantityInput<'length'>;
    /** End inside the grain that is closed by a hemisphere of the diameter of the core. */
    readonly dome?: 'head' | 'aft';
  },
): Core {
  const name = 'cone core';
  const context = 'coneCore';
  requireFields(context, options, coneFields);
  if (options.dome !== undefined) readChoice(context, 'dome', options.dome, ['head', 'aft']);
  const head = readLength(context, 'headDiameter', options.headDiameter, 'zero') / 2;
  const aft = readLength(context, 'aftDiameter', options.aftDiameter, 'zero') / 2;
  return {
    name,
    place: ({ radius, length }) => {
      requireFit(
        Math.max(head, aft) < radius,
        context,
        'aftDiameter',
        options.aftDiameter,
        `less than the outer diameter of the grain (${inMillimetres(2 * radius)})`,
      );
      const [from, to] = extentOf(context, options, length);
      const closedHead = from <= 0 || head === 0 || options.dome === 'head';
      const closedAft = to >= length || aft === 0 || options.dome === 'aft';
      requireFit(
        closedHead && closedAft,
        context,
        'dome',
        options.dome,
        "'head' or 'aft' where the core ends inside the grain with a diameter above zero",
        'Add a dome, taper the core to a point, or extend it to the end of the grain',
      );
      const body = line(head, from, aft, to);
      const profile = outline([
        ...(options.dome === 'head' && head > 0 ? [arc(0, from, head, -Math.PI / 2, Math.PI / 2)] : []),
        body,
        ...(options.dome === 'aft' && aft > 0 ? [arc(0, to, aft, 0, Math.PI / 2)] : []),
      ]);
      return revolve({ name, profile, low: 0, high: length });
    },
  };
}
