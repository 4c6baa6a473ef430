import type { QuantityInput } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { type Flaw, NARROW_GAP_CAUTION } from './flaw';
import { frameAt } from './frame';
import { readAngle, readChoice, readLength, requireFit } from './measure';
import { line, type Outline, outline } from './outline';
import { annulusOutline, circleOutline } from './outline-shapes';
import { prism } from './prism';
import { type Envelope, outsideBy, type Source } from './source';

/** A crack in a plane that holds the grain's axis: a rectangle reaching outwards. */
export interface RadialCrack {
  readonly plane: 'radial';
  /** Direction of the crack from the axis [angle]. */
  readonly angle: QuantityInput<'angle'>;
  /** Distances from the axis where it begins and ends [length]; begin inside the bore to have it open. */
  readonly innerRadius: QuantityInput<'length'>;
  readonly outerRadius: QuantityInput<'length'>;
  /** Axial extent [length from the head end]. */
  readonly from: QuantityInput<'length'>;
  readonly to: QuantityInput<'length'>;
}

/** A crack across the grain: a flat disc or ring about the axis. */
export interface TransverseCrack {
  readonly plane: 'transverse';
  /** Axial position [length from the head end]. */
  readonly position: QuantityInput<'length'>;
  /** Distances from the axis where it begins and ends [length]; default from the axis. */
  readonly innerRadius?: QuantityInput<'length'>;
  readonly outerRadius: QuantityInput<'length'>;
}

/** A crack anywhere: a disc, or a rectangle when `width` is given, in the plane normal to `normal`. */
export interface FreeCrack {
  readonly plane: 'free';
  /** Centre: x, y, and distance from the head end [length]. */
  readonly centre: readonly [QuantityInput<'length'>, QuantityInput<'length'>, QuantityInput<'length'>];
  /** Direction across the crack; only the direction counts. */
  readonly normal: readonly [number, number, number];
  /** Diameter of the disc, or height of the rectangle, along `along` [length]. */
  readonly size: QuantityInput<'length'>;
  /** Width of a rectangle [length]. */
  readonly width?: QuantityInput<'length'>;
  /** Direction of the rectangle's height. Default the axis. */
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
  requireFit(
    size > 0 && Number.isFinite(size),
    name,
    field,
    given,
    'a direction: three numbers, not all zero,',
  );
  return [x / size, y / size, z / size];
}
type Direction = readonly [number, number, number];

/**
 * A crack: a sheet of no thickness that burns on both faces. It is cut off at the grain's wall and ends. It burns from the
 * start when it meets the bore, a burning end or another open flaw; otherwise when the front arrives, unless `open` says.
 * The notes on why a computed crack is a lower bound travel with it as a caution.
 *
 * @throws MeopError `grain-measure` and the errors of quantities
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
    requireFit(outer > inner, name, 'outerRadius', options.outerRadius, 'more than innerRadius');
    requireFit(to > from, name, 'to', options.to, 'more than from');
    return flaw(`crack at ${String(options.angle)}`, ({ radius, length }) => {
      const far = Math.min(outer, radius);
      const end = Math.min(to, length);
      requireFit(
        inner < radius,
        name,
        'innerRadius',
        options.innerRadius,
        'less than the outer radius of the grain',
      );
      requireFit(from < length, name, 'from', options.from, 'less than the length of the grain');
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
    requireFit(outer > inner, name, 'outerRadius', options.outerRadius, 'more than innerRadius');
    return flaw(`crack across at ${String(options.position)}`, ({ radius, length }) => {
      requireFit(position < length, name, 'position', options.position, 'less than the length of the grain');
      const far = Math.min(outer, radius);
      requireFit(
        inner < far,
        name,
        'innerRadius',
        options.innerRadius,
        'less than the outer radius of the grain',
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
    'x, y and the distance from the head end',
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
    'a direction in the crack, not its normal,',
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
      'a crack that reaches into the grain',
    );
    return { source, open: options.open };
  });
}

/** True where part of the surface lies in the grain. */
function reaches(envelope: Envelope, source: Source): boolean {
  const points = source.samples();
  for (let i = 0; i + 2 < points.length; i += 3)
    if (outsideBy(envelope, points[i], points[i + 1], points[i + 2]) < 0) return true;
  return false;
}
