import type { QuantityInput } from '../../../units';
import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { inMillimetres, readAngle, readLength, requireFit } from '../measure';
import { prism, wallOutline } from '../surface';
import { type Flaw, NARROW_GAP_CAUTION } from './flaw';

const fields: FieldsOf<Parameters<typeof debond>[0]> = {
  from: 'required',
  to: 'required',
  angle: 'optional',
  width: 'optional',
  open: 'optional',
};

/**
 * A debond: a stretch of the wall where the propellant is not bonded and burns inwards from its outer surface. It
 * burns from the start if it reaches an end of the grain, where the flame enters, or meets the bore or another open
 * flaw, and otherwise from the depth at which the front reaches it; `open` overrides this.
 *
 * @throws MeopError `grain-measure`
 * @example debond({ from: '0 mm', to: '30 mm', angle: '0 deg', width: '60 deg' }).kind // => 'debond'
 */
export function debond(options: {
  /** Start of its axial extent [length from the head end]. */
  readonly from: QuantityInput<'length'>;
  /** End of its axial extent [length from the head end]. */
  readonly to: QuantityInput<'length'>;
  /** Direction of its centre line [angle]. Default 0. */
  readonly angle?: QuantityInput<'angle'>;
  /** Angle that it spans [angle, above 0 to 360 deg]. Default 360 deg. */
  readonly width?: QuantityInput<'angle'>;
  /**
   * True: burns from the start. False: buried until the front reaches it. Default: determined from the surfaces that
   * it meets.
   */
  readonly open?: boolean;
}): Flaw {
  const name = 'debond';
  requireFields(name, options, fields);
  const from = readLength(name, 'from', options.from, 'zero');
  const to = readLength(name, 'to', options.to);
  const width = options.width === undefined ? 2 * Math.PI : readAngle(name, 'width', options.width);
  const angle = options.angle === undefined ? 0 : readAngle(name, 'angle', options.angle);
  requireFit(to > from, name, 'to', options.to, `greater than from (${inMillimetres(from)})`);
  requireFit(
    width > 0 && width <= 2 * Math.PI + 1e-9,
    name,
    'width',
    options.width,
    'above 0 deg and at most 360 deg',
  );
  return {
    kind: 'debond',
    label: `debond from ${String(options.from)} to ${String(options.to)}`,
    cautions: [NARROW_GAP_CAUTION],
    place: ({ form, radius, length }) => {
      requireFit(
        form === 'cylinder',
        name,
        'from',
        options.from,
        'a position on the wall of a cylindrical grain',
      );
      requireFit(
        from < length,
        name,
        'from',
        options.from,
        `less than the length of the grain (${inMillimetres(length)})`,
      );
      const slack = 1e-9 * length;
      const end = Math.min(to, length);
      const atHead = from <= slack;
      const atAft = end >= length - slack;
      const source = prism({
        name: 'debond',
        outline: wallOutline(radius, angle - width / 2, width),
        from,
        to: end,
        faces: {
          side: [from, end],
          start: atHead ? 'through' : 'burning',
          end: atAft ? 'through' : 'burning',
        },
        mirror: angle,
      });
      return { source, open: options.open ?? (atHead || atAft ? true : undefined) };
    },
  };
}
