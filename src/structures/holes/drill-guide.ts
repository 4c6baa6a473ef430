import { fromSiValue, type Quantity, type QuantityInput, readInput, unitOf } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { refusal } from '../../units/refusal';

/** A bore that a printed drill guide is to have. */
export interface DrillGuideInput {
  /** Of the drill or drill bushing. */
  readonly diameter: QuantityInput<'length'>;
  /** Of the flanks from the vertical: the overhang that the printer still prints cleanly; 45° where left out. */
  readonly flankAngle?: QuantityInput<'angle'>;
  /** Added to the diameter, for printed holes come out small; 0 where left out. */
  readonly allowance?: QuantityInput<'length'>;
  /** Cuts the peak off at this height over the centre; the full peak where left out. */
  readonly flatTop?: QuantityInput<'length'>;
}

/** The profile of a bore that is printed lying down and still guides a round drill. */
export interface DrillGuideBore {
  /** Of the round part, with the allowance. */
  readonly diameter: Quantity<'length'>;
  readonly flankAngle: Quantity<'angle'>;
  /** From the centre to the top: of the peak, or of the flat. */
  readonly topHeight: Quantity<'length'>;
  /** Where the flanks leave the circle: to each side of the centre. */
  readonly tangentOffset: Quantity<'length'>;
  /** Where the flanks leave the circle: above the centre. */
  readonly tangentHeight: Quantity<'length'>;
  /** Width of the flat that the printer has to bridge; zero under a full peak. */
  readonly bridge: Quantity<'length'>;
  /** The outline in millimetres about the centre, y upwards, as the `d` of an SVG path or for CAD. */
  readonly path: string;
  toString(): string;
}

const name = 'drillGuideBore';

const drillGuideBoreFields: FieldsOf<DrillGuideInput> = {
  diameter: 'required',
  flankAngle: 'optional',
  allowance: 'optional',
  flatTop: 'optional',
};

/**
 * A teardrop bore for a printed drill guide: bores that lie down when printed sag at the top, so the top is made of
 * two flanks that touch the circle, and the drill still runs on the round part. Put the peak along the case, away from
 * the edge that the drill must hold. Plane geometry.
 *
 * @throws MeopError `out-of-domain`
 * @example drillGuideBore({ diameter: '6.4 mm' }).topHeight.in('mm') // => 4.525483400
 */
export function drillGuideBore(input: DrillGuideInput): DrillGuideBore {
  requireFields('drillGuideBore', input, drillGuideBoreFields);
  const { si: drill, unit } = readInput('length', 'diameter', input.diameter, name);
  const allowance =
    input.allowance === undefined ? 0 : readInput('length', 'allowance', input.allowance, name).si;
  const flank =
    input.flankAngle === undefined
      ? Math.PI / 4
      : readInput('angle', 'flankAngle', input.flankAngle, name).si;
  const radius = (drill + allowance) / 2;
  if (!(drill > 0 && radius > 0)) throw refusal(name, 'diameter', input.diameter, 'a length above zero');
  if (!(flank > 0 && flank < Math.PI / 2))
    throw refusal(name, 'flankAngle', input.flankAngle, 'an angle between 0 and 90 deg');
  const peak = radius / Math.sin(flank);
  const [x, y] = [radius * Math.cos(flank), radius * Math.sin(flank)];
  const top = input.flatTop === undefined ? peak : readInput('length', 'flatTop', input.flatTop, name).si;
  if (top < radius || top > peak)
    throw refusal(
      name,
      'flatTop',
      input.flatTop,
      `a height from the radius to the peak (${mm(radius)} to ${mm(peak)} mm)`,
    );
  const half = (peak - top) * Math.tan(flank); // the flanks open by the tangent of their angle below the peak

  const show = (si: number): Quantity<'length'> => fromSiValue(si, 'length', unit);
  const turn = `${mm(radius)} ${mm(radius)} 0 1 1`; // the long way, under the centre
  const tip = half === 0 ? `L 0 ${mm(top)}` : `L ${mm(half)} ${mm(top)} L ${mm(-half)} ${mm(top)}`;
  const path = `M ${mm(-x)} ${mm(y)} A ${turn} ${mm(x)} ${mm(y)} ${tip} Z`;
  const text = (): string =>
    `teardrop bore: circle ${show(2 * radius)}, flanks ${(flank * 180) / Math.PI}° from the vertical from ${show(x)} beside and ${show(y)} above the centre, top at ${show(top)}${half > 0 ? `, flat of ${show(2 * half)}` : ''}`;
  return {
    diameter: show(2 * radius),
    flankAngle: fromSiValue(flank, 'angle', unitOf('deg')),
    topHeight: show(top),
    tangentOffset: show(x),
    tangentHeight: show(y),
    bridge: show(2 * half),
    path,
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
}

const mm = (si: number): string => String(Number((si * 1000).toFixed(4)));
