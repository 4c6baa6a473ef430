import type { QuantityInput } from '../../../units';
import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { inMillimetres, readCount, readLength, requireFit } from '../measure';
import { wagonWheelOutline } from '../surface';
import { type Grain, makeGrain, type OuterMeasures, outerFields, readEnds } from './grain';
import { throughCore } from './prism-core';

const fields: FieldsOf<Parameters<typeof wagonWheel>[0]> = {
  ...outerFields,
  spokes: 'required',
  ringInnerDiameter: 'required',
  spokeThickness: 'required',
  spokeTipDiameter: 'required',
};

/**
 * Parallel-sided spokes of propellant inside a ring. The spokes add burning area early in the burn only. Ends are
 * inhibited by default.
 *
 * @throws MeopError `grain-measure`
 * @example wagonWheel({ spokes: 6, outerDiameter: '80 mm', ringInnerDiameter: '60 mm', spokeThickness: '6 mm', spokeTipDiameter: '20 mm', length: '100 mm' }).kind // => 'wagon wheel'
 */
export function wagonWheel(
  options: OuterMeasures & {
    /** Number of spokes [whole, at least 2]. */
    readonly spokes: number;
    /** Inner diameter of the ring [length]. */
    readonly ringInnerDiameter: QuantityInput<'length'>;
    /** Thickness of a spoke [length]. */
    readonly spokeThickness: QuantityInput<'length'>;
    /** Twice the distance of the flat tip of a spoke from the axis [length]. */
    readonly spokeTipDiameter: QuantityInput<'length'>;
  },
): Grain {
  const context = 'wagonWheel';
  requireFields(context, options, fields);
  const spokes = readCount(context, 'spokes', options.spokes, 2);
  const radius = readLength(context, 'outerDiameter', options.outerDiameter) / 2;
  const ringRadius = readLength(context, 'ringInnerDiameter', options.ringInnerDiameter) / 2;
  const halfThickness = readLength(context, 'spokeThickness', options.spokeThickness) / 2;
  const spokeRadius = readLength(context, 'spokeTipDiameter', options.spokeTipDiameter) / 2;
  const length = readLength(context, 'length', options.length);
  requireFit(
    ringRadius < radius,
    context,
    'ringInnerDiameter',
    options.ringInnerDiameter,
    `less than the outer diameter (${inMillimetres(2 * radius)})`,
  );
  requireFit(
    spokeRadius < ringRadius,
    context,
    'spokeTipDiameter',
    options.spokeTipDiameter,
    `less than the inner diameter of the ring (${inMillimetres(2 * ringRadius)})`,
  );
  requireFit(
    halfThickness < spokeRadius * Math.sin(Math.PI / spokes) + 1e-12 &&
      halfThickness < ringRadius * Math.sin(Math.PI / spokes),
    context,
    'spokeThickness',
    options.spokeThickness,
    'small enough to leave a gap between the tips of the spokes',
  );
  const o = wagonWheelOutline({ spokes, ringRadius, halfThickness, spokeRadius });
  return makeGrain({
    kind: 'wagon wheel',
    shape: {
      envelope: { form: 'cylinder', radius, length },
      ports: [throughCore('wheel', o, length)],
      inert: [],
    },
    burningEnds: readEnds(context, options.burningEnds, 'none'),
  });
}
