import type { QuantityInput } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { type Flaw, NARROW_GAP_CAUTION } from './flaw';
import { readAngle, readLength, requireFit } from './measure';
import { wallOutline } from './outline-shapes';
import { prism } from './prism';

const fields: FieldsOf<Parameters<typeof debond>[0]> = {
  from: 'required',
  to: 'required',
  angle: 'optional',
  width: 'optional',
  open: 'optional',
};

/**
 * A stretch of the wall where the propellant has come loose: its outside burns inwards. It burns from the start when it
 * reaches an end of the grain, where the flame gets in, or meets the bore or another open flaw; otherwise from
 * when the front arrives, unless `open` says.
 *
 * @throws MeopError `grain-measure`
 * @example debond({ from: '0 mm', to: '30 mm', angle: '0 deg', width: '60 deg' }).kind // => 'debond'
 */
export function debond(options: {
  /** Axial extent [length from the head end]. */
  readonly from: QuantityInput<'length'>;
  readonly to: QuantityInput<'length'>;
  /** Direction of its middle [angle]. Default 0. */
  readonly angle?: QuantityInput<'angle'>;
  /** Angle that it spans [angle]. Default all around. */
  readonly width?: QuantityInput<'angle'>;
  /** Says whether it burns from the start. */
  readonly open?: boolean;
}): Flaw {
  const name = 'debond';
  requireFields(name, options, fields);
  const from = readLength(name, 'from', options.from, 'zero');
  const to = readLength(name, 'to', options.to);
  const width = options.width === undefined ? 2 * Math.PI : readAngle(name, 'width', options.width);
  const angle = options.angle === undefined ? 0 : readAngle(name, 'angle', options.angle);
  requireFit(to > from, name, 'to', options.to, 'more than from');
  requireFit(
    width > 0 && width <= 2 * Math.PI + 1e-9,
    name,
    'width',
    options.width,
    'an angle above 0 and up to 360 deg',
  );
  return {
    kind: 'debond',
    label: `debond from ${String(options.from)} to ${String(options.to)}`,
    cautions: [NARROW_GAP_CAUTION],
    place: ({ form, radius, length }) => {
      requireFit(form === 'cylinder', name, 'from', options.from, 'a grain with a cylindrical wall');
      requireFit(from < length, name, 'from', options.from, 'less than the length of the grain');
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
