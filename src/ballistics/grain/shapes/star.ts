import type { QuantityInput } from '../../../units';
import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { readAngle, readCount, readLength, refused, requireFit } from '../measure';
import { starOutline } from '../surface';
import { type Grain, makeGrain, type OuterMeasures, outerFields, readEnds } from './grain';
import { throughCore } from './prism-core';
import { starClosedForm } from './star-closed-form';

const fields: FieldsOf<Parameters<typeof star>[0]> = {
  ...outerFields,
  points: 'required',
  webThickness: 'required',
  filletRadius: 'required',
  angularFraction: 'required',
  openingAngle: 'required',
};

/**
 * A star-shaped port in the standard parameters (NASA SP-8076; quoted from memory, not verified). Ends are inhibited
 * by default.
 *
 * @throws MeopError `grain-measure` when the sides of the points do not meet in front of the axis
 * @example star({ points: 5, outerDiameter: '60 mm', webThickness: '10 mm', filletRadius: '1.5 mm', angularFraction: 0.75, openingAngle: '62.26 deg', length: '100 mm' }).kind // => 'star'
 */
export function star(
  options: OuterMeasures & {
    /** Number of points of propellant [whole, at least 3]. */
    readonly points: number;
    /** Distance from the arms of the port to the wall [length]. */
    readonly webThickness: QuantityInput<'length'>;
    /** Radius of the fillets at the arms [length, zero or more]. */
    readonly filletRadius: QuantityInput<'length'>;
    /** Fraction of each sector that a point takes up at the centres of the fillets [dimensionless, above 0 to 1]. */
    readonly angularFraction: number;
    /** Full angle between the two sides of a point [angle]. */
    readonly openingAngle: QuantityInput<'angle'>;
  },
): Grain {
  const context = 'star';
  requireFields(context, options, fields);
  const points = readCount(context, 'points', options.points, 3);
  const radius = readLength(context, 'outerDiameter', options.outerDiameter) / 2;
  const web = readLength(context, 'webThickness', options.webThickness);
  const fillet = readLength(context, 'filletRadius', options.filletRadius, 'zero');
  const openingAngle = readAngle(context, 'openingAngle', options.openingAngle);
  const length = readLength(context, 'length', options.length);
  const { angularFraction } = options;
  requireFit(
    angularFraction > 0 && angularFraction <= 1,
    context,
    'angularFraction',
    angularFraction,
    'above 0 and at most 1',
  );
  requireFit(
    openingAngle > 0 && openingAngle < Math.PI,
    context,
    'openingAngle',
    options.openingAngle,
    'between 0 deg and 180 deg',
  );
  const measures = { points, outerRadius: radius, web, fillet, angularFraction, openingAngle };
  const o = starOutline(measures);
  if (o === undefined)
    throw refused(
      context,
      'openingAngle',
      options.openingAngle,
      'an angle at which the sides of the points meet between the axis and the fillets',
    );
  return makeGrain({
    kind: 'star',
    shape: {
      envelope: { form: 'cylinder', radius, length },
      ports: [throughCore('star', o, length)],
      inert: [],
    },
    burningEnds: readEnds(context, options.burningEnds, 'none'),
    closedForm: starClosedForm(measures),
  });
}
