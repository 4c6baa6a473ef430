import {
  angle,
  fromSiValue,
  length,
  MeopError,
  optional,
  printable,
  procedure,
  type Quantity,
  unitFor,
  unitOf,
} from '../../units';

/** The profile of a bore that is printed lying down and guides a round drill. */
export interface DrillGuideBore {
  /** Diameter of the round part, with the allowance. */
  readonly diameter: Quantity<'length'>;
  readonly flankAngle: Quantity<'angle'>;
  /** Height of the top above the centre: of the peak, or of the flat. */
  readonly topHeight: Quantity<'length'>;
  /** Distance of the points of tangency from the axis. */
  readonly tangentOffset: Quantity<'length'>;
  /** Height of the points of tangency above the centre. */
  readonly tangentHeight: Quantity<'length'>;
  /** Width of the flat that the printer must bridge; zero for a full peak. */
  readonly bridge: Quantity<'length'>;
  /** The outline in millimetres about the centre, y upwards, as the `d` of an SVG path or for CAD. */
  readonly path: string;
  toString(): string;
}

const mm = (si: number): string => String(Number((si * 1000).toFixed(4)));

/**
 * A teardrop bore for a printed drill guide. Bores that lie down when printed sag at the top, so the top is made of
 * two flanks tangent to the circle, and the drill still runs on the round part. Point the peak along the case, away from
 * the edge that the drill must keep its distance from.
 *
 * @example drillGuideBore({ diameter: '6.4 mm' }).topHeight.in('mm') // => 4.525483400
 */
export const drillGuideBore = /* @__PURE__ */ procedure({
  name: 'drillGuideBore',
  title: 'Teardrop bore for a printed drill guide',
  source: 'Plane geometry',
  inputs: {
    diameter: length('d', 'diameter of the drill or drill bushing', { example: '6.4 mm' }),
    flankAngle: optional(
      angle('α', 'angle of the flanks from the vertical: the overhang that prints cleanly', {
        above: 0,
        below: Math.PI / 2,
        example: '45 deg',
      }),
      Math.PI / 4,
    ),
    allowance: optional(
      length('a', 'addition to the diameter, since printed holes come out small', {
        above: Number.NEGATIVE_INFINITY,
        example: '0.2 mm',
      }),
      0,
    ),
    flatTop: optional(
      length('h', 'height above the centre at which the peak is cut off; the full peak where omitted', {
        example: '3.6 mm',
      }),
    ),
  },
  gives: 'the profile of the bore, with its outline for CAD',
  example: { diameter: '6.4 mm' },
  checks: [
    ({ diameter, allowance }) =>
      diameter.si + allowance.si > 0
        ? undefined
        : { path: 'allowance', given: allowance, expected: `above −${diameter}` },
  ],
  run: ({ diameter, flankAngle: { si: flank }, allowance, flatTop }): DrillGuideBore => {
    const show = (si: number): Quantity<'length'> =>
      fromSiValue(si, 'length', unitFor('length', diameter.unit));
    const radius = (diameter.si + allowance.si) / 2;
    const peak = radius / Math.sin(flank);
    const [x, y] = [radius * Math.cos(flank), radius * Math.sin(flank)];
    const top = flatTop?.si ?? peak;
    if (top < radius || top > peak)
      throw new MeopError({
        code: 'out-of-domain',
        procedure: 'drillGuideBore',
        path: 'flatTop',
        given: flatTop,
        expected: `from the radius to the peak (${mm(radius)} to ${mm(peak)} mm)`,
      });
    const half = (peak - top) * Math.tan(flank); // the flanks open by the tangent of their angle below the peak
    const turn = `${mm(radius)} ${mm(radius)} 0 1 1`; // the long way, under the centre
    const tip = half === 0 ? `L 0 ${mm(top)}` : `L ${mm(half)} ${mm(top)} L ${mm(-half)} ${mm(top)}`;
    const path = `M ${mm(-x)} ${mm(y)} A ${turn} ${mm(x)} ${mm(y)} ${tip} Z`;
    return printable(
      {
        diameter: show(2 * radius),
        flankAngle: fromSiValue<'angle'>(flank, 'angle', unitOf('deg')),
        topHeight: show(top),
        tangentOffset: show(x),
        tangentHeight: show(y),
        bridge: show(2 * half),
        path,
      },
      () =>
        `teardrop bore: circle ${show(2 * radius)}, flanks ${(flank * 180) / Math.PI}° from the vertical, tangent at ${show(x)} from the axis and ${show(y)} above the centre, top at ${show(top)}${half > 0 ? `, flat of ${show(2 * half)}` : ''}`,
    );
  },
});
