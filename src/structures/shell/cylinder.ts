import { type Conflict, choice, gaugePressure, length, optional, type Quantity } from '../../units';

/** The radii of a cylinder. */
export const radii = {
  insideRadius: length('r_i', 'inside radius', { example: '38.1 mm' }),
  outsideRadius: length('r_o', 'outside radius', { example: '44.45 mm' }),
};

const ends = choice(
  'ends of the cylinder: closed where the wall carries the end force, open where another part does',
  ['closed', 'open'],
);

/** Whether the wall of a cylinder carries the end force. */
export type CylinderEnds = (typeof ends.options)[number];

/** A thick cylinder under pressure, and the radius of interest. */
export const cylinder = {
  pressure: gaugePressure('p', 'internal pressure', { example: '7 MPa' }),
  externalPressure: optional(gaugePressure('p_o', 'external pressure', { example: '0 MPa' }), 0),
  ...radii,
  radius: optional(length('r', 'radius of interest; the bore, where stresses are maximum, where omitted')),
  ends: optional(ends, 'closed'),
};

interface Radii {
  readonly insideRadius: Quantity<'length'>;
  readonly outsideRadius: Quantity<'length'>;
}

/** The outside radius exceeds the inside radius. */
export const hasWall = ({ insideRadius, outsideRadius }: Radii): Conflict | undefined =>
  outsideRadius.si > insideRadius.si
    ? undefined
    : {
        path: 'outsideRadius',
        given: outsideRadius,
        expected: `more than the inside radius (${insideRadius})`,
      };
