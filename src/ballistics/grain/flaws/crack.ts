import type { QuantityInput } from '../../../units';
import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { inMillimetres, readAngle, readChoice, readLength, requireFit } from '../measure';
import {
  annulusOutline,
  circleOutline,
  type Envelope,
  frameAt,
  line,
  type Outline,
  outline,
  outsideBy,
  prism,
  type Source,
} from '../surface';
import { type Flaw, NARROW_GAP_CAUTION } from './flaw';

/** A crack in a plane through the axis of the grain: a rectangle between two radii and two axial positions. */
export interface RadialCrack {
  readonly plane: 'radial';
  /** Direction of the crack from the axis [angle]. */
  readonly angle: QuantityInput<'angle'>;
  /** Distance of its inner edge from the axis [length]; less than the bore radius for a crack that is open to the bore. */
  readonly innerRadius: QuantityInput<'length'>;
  /** Distance of its outer edge from the axis [length]; beyond the wall the crack is cut off. */
  readonly outerRadius: QuantityInput<'length'>;
  /** Start of its axial extent [length from the head end]. */
  readonly from: QuantityInput<'length'>;
  /** End of its axial extent [length from the head end]. */
  readonly to: QuantityInput<'length'>;
}

/** A crack across the grain: a flat disc or ring about the axis. */
export interface TransverseCrack {
  readonly plane: 'transverse';
  /** Axial position [length from the head end]. */
  readonly position: QuantityInput<'length'>;
  /** Inner radius [length]. Default 0 (a full disc). */
  readonly innerRadius?: QuantityInput<'length'>;
  /** Outer radius [length]; beyond the wall the crack is cut off. */
  readonly outerRadius: QuantityInput<'length'>;
}

/** A crack in any plane: a disc, or a rectangle when `width` is specified. */
export interface FreeCrack {
  readonly plane: 'free';
  /** Centre: x, y, and distance from the head end [length]. */
  readonly centre: readonly [QuantityInput<'length'>, QuantityInput<'length'>, QuantityInput<'length'>];
  /** Normal of the plane of the crack; its length is ignored. */
  readonly normal: readonly [number, number, number];
  /** Diameter of the disc, or height of the rectangle in the direction of `along` [length]. */
  readonly size: QuantityInput<'length'>;
  /** Width of the rectangle [length]. Default: a disc. */
  readonly width?: QuantityInput<'length'>;
  /** Direction of the height of the rectangle. Default: the axis of the grain. */
  readonly along?: readonly [number, number, number];
}

const sheet = (
  o: Outline,
  parts: { readonly frame?: ReturnType<typeof frameAt>; readonly at?: number; readonly mirror?: number },
): Source =>
  prism({
    name: 'crack',
    outline: o,
    from: parts.at ?? 0,
    to: parts.at ?? 0,
    faces: { side: [parts.at ?? 0, parts.at ?? 0], start: 'burning', end: 'burning' },
    frame: parts.frame,
    mirror: parts.mirror,
  });

const rectangle = (a: number, b: number): Outline =>
  outline([line(-a, -b, a, -b), line(a, -b, a, b), line(a, b, -a, b), line(-a, b, -a, -b)]);

type Open<T> = T & { readonly open?: boolean };
const radialFields: FieldsOf<Open<RadialCrack>> = {
  plane: 'required',
  angle: 'required',
  innerRadius: 'required',
  outerRadius: 'required',
  from: 'required',
  to: 'required',
  open: 'optional',
};
const transverseFields: FieldsOf<Open<TransverseCrack>> = {
  plane: 'required',
  position: 'required',
  innerRadius: 'optional',
  outerRadius: 'required',
  open: 'optional',
};
const freeFields: FieldsOf<Open<FreeCrack>> = {
  plane: 'required',
  centre: 'required',
  normal: 'required',
  size: 'required',
  width: 'optional',
  along: 'optional',
  open: 'optional',
};

/** Three finite numbers, not all zero. */
function readDirection(name: string, field: string, given: readonly number[]): Direction {
  const [x, y, z] = Array.isArray(given) && given.length === 3 ? given : [0, 0, 0];
  const size = Math.hypot(x, y, z);
  requireFit(size > 0 && Number.isFinite(size), name, field, given, 'three finite numbers, not all zero');
  return [x / size, y / size, z / size];
}
type Direction = readonly [number, number, number];

/**
 * A crack: a sheet without thickness that burns on both faces and is cut off at the wall and the ends of the grain.
 * It burns from the start if it meets the bore, a burning end or another open flaw, and otherwise from the depth at
 * which the front reaches it; `open` overrides this. The caution of the result states what is not modelled.
 *
 * @throws MeopError `grain-measure` and the errors of its quantities
 * @example crack({ plane: 'radial', angle: '0 deg', innerRadius: '8 mm', outerRadius: '18 mm', from: '40 mm', to: '60 mm' }).kind // => 'crack'
 */
export function crack(
  options: (RadialCrack | TransverseCrack | FreeCrack) & { readonly open?: boolean },
): Flaw {
  const name = 'crack';
  readChoice(name, 'plane', options?.plane, ['radial', 'transverse', 'free']);
  const flaw = (label: string, place: Flaw['place']): Flaw => ({
    kind: 'crack',
    label,
    cautions: [NARROW_GAP_CAUTION],
    place,
  });
  if (options.plane === 'radial') {
    requireFields('crack (radial)', options, radialFields);
    const angle = readAngle(name, 'angle', options.angle);
    const inner = readLength(name, 'innerRadius', options.innerRadius, 'zero');
    const outer = readLength(name, 'outerRadius', options.outerRadius);
    const from = readLength(name, 'from', options.from, 'zero');
    const to = readLength(name, 'to', options.to);
    requireFit(
      outer > inner,
      name,
      'outerRadius',
      options.outerRadius,
      `greater than innerRadius (${inMillimetres(inner)})`,
    );
    requireFit(to > from, name, 'to', options.to, `greater than from (${inMillimetres(from)})`);
    return flaw(`crack at ${String(options.angle)}`, ({ radius, length }) => {
      const far = Math.min(outer, radius);
      const end = Math.min(to, length);
      requireFit(
        inner < radius,
        name,
        'innerRadius',
        options.innerRadius,
        `less than the outer radius of the grain (${inMillimetres(radius)})`,
      );
      requireFit(
        from < length,
        name,
        'from',
        options.from,
        `less than the length of the grain (${inMillimetres(length)})`,
      );
      const out = [Math.cos(angle), Math.sin(angle)] as const;
      const middle = (inner + far) / 2;
      const frame = frameAt(
        [middle * out[0], middle * out[1], (from + end) / 2],
        [-out[1], out[0], 0],
        [out[0], out[1], 0],
      );
      const source = sheet(rectangle((far - inner) / 2, (end - from) / 2), { frame, mirror: angle });
      return { source, open: options.open };
    });
  }
  if (options.plane === 'transverse') {
    requireFields('crack (transverse)', options, transverseFields);
    const position = readLength(name, 'position', options.position);
    const inner =
      options.innerRadius === undefined ? 0 : readLength(name, 'innerRadius', options.innerRadius, 'zero');
    const outer = readLength(name, 'outerRadius', options.outerRadius);
    requireFit(
      outer > inner,
      name,
      'outerRadius',
      options.outerRadius,
      `greater than innerRadius (${inMillimetres(inner)})`,
    );
    return flaw(`transverse crack at ${String(options.position)}`, ({ radius, length }) => {
      requireFit(
        position < length,
        name,
        'position',
        options.position,
        `less than the length of the grain (${inMillimetres(length)})`,
      );
      const far = Math.min(outer, radius);
      requireFit(
        inner < far,
        name,
        'innerRadius',
        options.innerRadius,
        `less than the outer radius of the grain (${inMillimetres(radius)})`,
      );
      const o = inner > 0 ? annulusOutline(inner, far) : circleOutline(far);
      return { source: sheet(o, { at: position }), open: options.open };
    });
  }
  requireFields('crack (free)', options, freeFields);
  requireFit(
    Array.isArray(options.centre) && options.centre.length === 3,
    name,
    'centre',
    options.centre,
    'three lengths: x, y and the distance from the head end',
  );
  const centre = options.centre.map((c, i) => readLength(name, `centre[${i}]`, c, 'any'));
  const size = readLength(name, 'size', options.size);
  const width = options.width === undefined ? undefined : readLength(name, 'width', options.width);
  const normal = readDirection(name, 'normal', options.normal);
  const upright: Direction = Math.hypot(normal[0], normal[1]) > 1e-6 ? [0, 0, 1] : [1, 0, 0];
  const along = options.along === undefined ? upright : readDirection(name, 'along', options.along);
  const across = along[0] * normal[0] + along[1] * normal[1] + along[2] * normal[2];
  requireFit(
    Math.abs(across) < 1 - 1e-9,
    name,
    'along',
    options.along,
    'a direction in the plane of the crack, not its normal',
  );
  return flaw('crack', (envelope) => {
    const frame = frameAt([centre[0], centre[1], centre[2]], normal, along);
    const o = width === undefined ? circleOutline(size / 2) : rectangle(size / 2, width / 2);
    const source = sheet(o, { frame });
    requireFit(
      reaches(envelope, source),
      name,
      'centre',
      options.centre,
      'a position at which part of the crack lies in the grain',
    );
    return { source, open: options.open };
  });
}

/** True if part of the surface lies in the grain. */
function reaches(envelope: Envelope, source: Source): boolean {
  const points = source.samples();
  for (let i = 0; i + 2 < points.length; i += 3)
    if (outsideBy(envelope, points[i], points[i + 1], points[i + 2]) < 0) return true;
  return false;
}
