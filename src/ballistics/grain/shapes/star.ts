import { angle, count, length, procedure, ratio } from '../../../units';
import { outer } from '../grain-inputs';
import { refused } from '../misfit';
import { starOutline } from '../surface';
import { cylindricalGrain } from './grain';
import { throughCore } from './prism-core';
import { starClosedForm } from './star-closed-form';

/** Number of points of propellant. */
export const starPoints = count('N', 'number of points', { min: 3, example: 5 });

/** The sides of the points must meet in front of the axis. */
export const star = /* @__PURE__ */ procedure({
  name: 'star',
  title: 'Star-shaped port, in the standard parameters; ends inhibited by default',
  source: 'NASA SP-8076 (1972); quoted from memory, not verified',
  inputs: {
    ...outer('none'),
    points: starPoints,
    webThickness: length('w', 'web between the port arms and the wall', {
      example: '10 mm',
      worse: 'neither',
    }),
    filletRadius: length('f', 'radius of the fillets', { min: 0, example: '1.5 mm', worse: 'neither' }),
    angularFraction: ratio('ε', 'fraction of a sector occupied by a point', {
      above: 0,
      max: 1,
      example: 0.75,
      worse: 'neither',
    }),
    openingAngle: angle('θ', 'full angle between the sides of a point', {
      above: 0,
      below: Math.PI,
      example: '62 deg',
      worse: 'neither',
    }),
  },
  gives: 'the grain',
  example: {
    points: 5,
    outerDiameter: '60 mm',
    webThickness: '10 mm',
    filletRadius: '1.5 mm',
    angularFraction: 0.75,
    openingAngle: '62.26 deg',
    length: '100 mm',
  },
  run: (values) => {
    const { points, angularFraction, openingAngle } = values;
    const measures = {
      points,
      outerRadius: values.outerDiameter.si / 2,
      web: values.webThickness.si,
      fillet: values.filletRadius.si,
      angularFraction,
      openingAngle: openingAngle.si,
    };
    const port = starOutline(measures);
    if (port === undefined)
      throw refused(
        'star',
        'openingAngle',
        openingAngle,
        'an angle at which the sides of the points meet between the axis and the fillets',
      );
    return cylindricalGrain(
      'star',
      values,
      [throughCore('star', port, values.length.si)],
      starClosedForm(measures),
    );
  },
});
