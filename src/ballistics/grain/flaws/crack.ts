import {
  inputs,
  length,
  list,
  optional,
  procedure,
  type Quantity,
  ratio,
  type Values,
  variants,
} from '../../../units';
import { endPosition } from '../grain-inputs';
import { greaterThan, inMillimetres, requireFit } from '../misfit';
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
import { flawAngle, flawExtent, innerRadius, open, outerRadius } from './flaw-inputs';

const name = 'crack';
const three = { min: 3, max: 3 };
const component = ratio('n', 'component along x, y or the axis');

/** Inputs of a crack, by the plane that it lies in. */
export const crackPlanes = {
  radial: inputs(
    { angle: flawAngle, innerRadius, outerRadius, ...flawExtent, open },
    {
      meaning: 'crack in a plane through the axis',
      checks: [greaterThan('outerRadius', 'innerRadius'), greaterThan('to', 'from')],
    },
  ),
  transverse: inputs(
    { position: endPosition('position'), innerRadius: optional(innerRadius, 0), outerRadius, open },
    {
      meaning: 'crack across the grain: a disc or a ring',
      checks: [greaterThan('outerRadius', 'innerRadius')],
    },
  ),
  free: inputs(
    {
      centre: list('centre: x, y and the distance from the head end', length('x', 'coordinate', {}), three),
      normal: list('normal of the plane of the crack; its length is ignored', component, three),
      size: length('h', 'diameter of the disc, or height of the rectangle', { example: '8 mm' }),
      width: optional(length('w', 'width of the rectangle; a disc if omitted', { example: '3 mm' })),
      along: optional(
        list('direction of the height of the rectangle; the axis of the grain if omitted', component, three),
      ),
      open,
    },
    { meaning: 'crack in any plane: a disc, or a rectangle' },
  ),
};

/**
 * A sheet without thickness that burns on both faces and is cut off at the wall and the ends of the grain. It burns from
 * the start if it meets the bore, a burning end or another open flaw, and otherwise from the depth at which the front
 * reaches it; `open` overrides this. The caution of the result states what is not modelled.
 *
 * @example crack({ plane: 'radial', angle: '0 deg', innerRadius: '8 mm', outerRadius: '18 mm', from: '40 mm', to: '60 mm' }).kind // => 'crack'
 */
export const crack = /* @__PURE__ */ procedure({
  name,
  title: 'Crack',
  source: 'geometry',
  subject: variants('plane', 'crack, by the plane that it lies in', crackPlanes),
  inputs: {},
  gives: 'the flaw, for withFlaws',
  example:
    "crack({ plane: 'radial', angle: '0 deg', innerRadius: '8 mm', outerRadius: '18 mm', from: '40 mm', to: '60 mm' })",
  run: (given): Flaw => {
    switch (given.plane) {
      case 'radial':
        return flaw(`crack at ${given.angle}`, (envelope) => radialSheet(given, envelope), given.open);
      case 'transverse':
        return flaw(
          `transverse crack at ${given.position}`,
          (envelope) => transverseSheet(given, envelope),
          given.open,
        );
      case 'free': {
        const source = freeSheet(given);
        return flaw(
          'crack',
          (envelope) => {
            requireFit(
              name,
              reaches(envelope, source),
              'centre',
              given.centre.map(String),
              'a position at which part of the crack lies in the grain',
            );
            return source;
          },
          given.open,
        );
      }
    }
  },
});

const flaw = (label: string, sheetIn: (envelope: Envelope) => Source, burns: boolean | undefined): Flaw => ({
  kind: 'crack',
  label,
  cautions: [NARROW_GAP_CAUTION],
  place: (envelope) => ({ source: sheetIn(envelope), open: burns }),
});

function radialSheet(
  {
    angle: { si: angle },
    innerRadius: inner,
    outerRadius: outer,
    from,
    to,
  }: Values<typeof crackPlanes.radial.fields>,
  { radius, length: whole }: Envelope,
): Source {
  insideGrain('innerRadius', inner, radius, 'outer radius');
  insideGrain('from', from, whole, 'length');
  const far = Math.min(outer.si, radius);
  const end = Math.min(to.si, whole);
  const out = [Math.cos(angle), Math.sin(angle)] as const;
  const middle = (inner.si + far) / 2;
  const frame = frameAt(
    [middle * out[0], middle * out[1], (from.si + end) / 2],
    [-out[1], out[0], 0],
    [out[0], out[1], 0],
  );
  return sheet(rectangle((far - inner.si) / 2, (end - from.si) / 2), { frame, mirror: angle });
}

function transverseSheet(
  { position, innerRadius: inner, outerRadius: outer }: Values<typeof crackPlanes.transverse.fields>,
  { radius, length: whole }: Envelope,
): Source {
  insideGrain('position', position, whole, 'length');
  insideGrain('innerRadius', inner, radius, 'outer radius');
  const far = Math.min(outer.si, radius);
  return sheet(inner.si > 0 ? annulusOutline(inner.si, far) : circleOutline(far), { at: position.si });
}

function freeSheet({ centre, size, width, ...given }: Values<typeof crackPlanes.free.fields>): Source {
  const normal = directionOf('normal', given.normal);
  const upright: Direction = Math.hypot(normal[0], normal[1]) > 1e-6 ? [0, 0, 1] : [1, 0, 0];
  const along = given.along === undefined ? upright : directionOf('along', given.along);
  const across = along[0] * normal[0] + along[1] * normal[1] + along[2] * normal[2];
  requireFit(
    name,
    Math.abs(across) < 1 - 1e-9,
    'along',
    given.along,
    'a direction in the plane of the crack, not its normal',
  );
  const [x, y, z] = centre;
  const frame = frameAt([x.si, y.si, z.si], normal, along);
  const o = width === undefined ? circleOutline(size.si / 2) : rectangle(size.si / 2, width.si / 2);
  return sheet(o, { frame });
}

const insideGrain = (path: string, given: Quantity<'length'>, limit: number, what: string): void =>
  requireFit(
    name,
    given.si < limit,
    path,
    given,
    `less than the ${what} of the grain (${inMillimetres(limit)})`,
  );

type Direction = readonly [number, number, number];

function directionOf(path: string, given: readonly number[]): Direction {
  const [x, y, z] = given;
  const size = Math.hypot(x, y, z);
  requireFit(name, size > 0, path, given, 'three numbers, not all zero');
  return [x / size, y / size, z / size];
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

/** True if part of the surface lies in the grain. */
function reaches(envelope: Envelope, source: Source): boolean {
  const points = source.samples();
  for (let i = 0; i + 2 < points.length; i += 3)
    if (outsideBy(envelope, points[i], points[i + 1], points[i + 2]) < 0) return true;
  return false;
}
