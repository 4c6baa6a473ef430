import {
  type Conflict,
  fromSiArray,
  fromSiValue,
  isSeries,
  MeopError,
  printable,
  procedure,
  type Quantity,
  type Series,
  table,
  unitOf,
} from '../units';
import { type ContourDimensions, contourInputs } from './contour-inputs';
import { type ContourPiece, sampleContour, svgPathOf } from './contour-path';
import { convergentPieces, divergentPieces, line } from './contour-pieces';

/** The end of a piece of the profile, with what a lathe needs to cut the piece. */
export interface ContourStation {
  readonly name: string;
  readonly x: Quantity<'length'>;
  readonly diameter: Quantity<'length'>;
  /** Tool position with the inlet face as zero. */
  readonly fromInlet: Quantity<'length'>;
  /** Radius of the arc that ends here. */
  readonly radius?: Quantity<'length'>;
  /** Centre of that arc: along x, and its distance from the axis. */
  readonly centre?: { readonly x: Quantity<'length'>; readonly fromAxis: Quantity<'length'> };
  /** Half angle of the cone that ends here, 0 for a cylinder. */
  readonly halfAngle?: Quantity<'angle'>;
}

/** The inner profile of a nozzle from inlet to exit lip; x is measured from the throat, negative upstream. */
export interface NozzleContour {
  readonly x: Series<'length'>;
  readonly radius: Series<'length'>;
  /** The ends of every line and arc, for turning. */
  readonly stations: readonly ContourStation[];
  readonly length: Quantity<'length'>;
  readonly convergentLength: Quantity<'length'>;
  readonly divergentLength: Quantity<'length'>;
  /** SVG path data in millimetres, upper half, x to the right, axis at y = 0. */
  readonly svgPath: string;
  readonly pieces: readonly ContourPiece[];
  readonly cautions: readonly string[];
  toString(): string;
}

/** Whether a value is a profile as {@link nozzleContour} makes it. */
export const isNozzleContour = (value: unknown): value is NozzleContour => {
  const { x, radius, pieces }: Readonly<Record<string, unknown>> = Object(value);
  return isSeries(x) && isSeries(radius) && Array.isArray(pieces);
};

const notBelowThroat =
  (path: 'exitDiameter' | 'inletDiameter') =>
  (values: ContourDimensions): Conflict | undefined =>
    values[path].si >= values.throatDiameter.si
      ? undefined
      : { path, given: values[path], expected: `at least the throat diameter, ${values.throatDiameter}` };

/**
 * Inner profile of a nozzle for turning: inlet rounding, convergent cone, throat arcs, and a cone or a parabolic bell. Arcs and
 * lines meet tangentially.
 *
 * @example nozzleContour({ throatDiameter: '12 mm', exitDiameter: '32 mm', inletDiameter: '40 mm', divergent: { shape: 'cone', halfAngle: '12 deg' } }).radius.min().in('mm') // => 6
 */
export const nozzleContour = /* @__PURE__ */ procedure({
  name: 'nozzleContour',
  title: 'Inner profile of a nozzle',
  source:
    'Geometry; a parabola from the throat arc to the exit lip approximates a bell as in Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), section 3.4 (after Rao)',
  inputs: contourInputs,
  gives: 'points, stations for turning, lengths and SVG path of the profile',
  example: {
    throatDiameter: '12 mm',
    exitDiameter: '32 mm',
    inletDiameter: '40 mm',
    divergent: { shape: 'cone', halfAngle: '12 deg' },
  },
  checks: [
    notBelowThroat('exitDiameter'),
    notBelowThroat('inletDiameter'),
    ({ divergent }) =>
      divergent.shape === 'cone' || divergent.exitAngle.si < divergent.initialAngle.si
        ? undefined
        : {
            path: 'divergent.exitAngle',
            given: divergent.exitAngle,
            expected: `below the initial angle, ${divergent.initialAngle}`,
          },
  ],
  run: (values): NozzleContour => {
    const throat = values.throatDiameter.si / 2;
    const exit = values.exitDiameter.si / 2;
    const inlet = values.inletDiameter.si / 2;
    const up = values.throatRadius?.si ?? 2 * throat;
    const down = values.downstreamRadius?.si ?? 0.4 * throat;
    const land = values.throatLength.si;
    const convergent = { inlet, throat, beta: values.convergentHalfAngle.si, up };
    const pieces = [
      ...convergentPieces({ ...convergent, round: values.entranceRadius.si }, values),
      ...(land > 0 ? [line('throat', { x: 0, r: throat }, { x: land, r: throat })] : []),
      ...divergentPieces({ throat, exit, down, start: land }, values),
    ];
    if (pieces.length === 0)
      throw new MeopError({
        code: 'out-of-domain',
        procedure: 'nozzleContour',
        path: 'throatLength',
        given: values.throatLength,
        expected: 'above 0 mm where inlet, throat and exit have the same diameter',
      });
    return printed(pieces, values.tolerance.si, { land, sharp: up < throat });
  },
});

function printed(
  pieces: readonly ContourPiece[],
  tolerance: number,
  { land, sharp }: { readonly land: number; readonly sharp: boolean },
): NozzleContour {
  const points = sampleContour(pieces, tolerance);
  const first = pieces[0].from;
  const last = pieces[pieces.length - 1].to;
  const stations: ContourStation[] = [
    { name: 'inlet', x: mm(first.x), diameter: mm(2 * first.r), fromInlet: mm(0) },
    ...pieces.map((piece) => ({
      name: `end of ${piece.name}`,
      x: mm(piece.to.x),
      diameter: mm(2 * piece.to.r),
      fromInlet: mm(piece.to.x - first.x),
      ...(piece.kind === 'arc' && {
        radius: mm(piece.radius),
        centre: { x: mm(piece.centre.x), fromAxis: mm(piece.centre.r) },
      }),
      ...(piece.kind === 'line' && { halfAngle: degrees(slopeOf(piece)) }),
    })),
  ];
  const result = {
    x: fromSiArray(
      'length',
      Float64Array.from(points, ({ x }) => x),
      'mm',
    ),
    radius: fromSiArray(
      'length',
      Float64Array.from(points, ({ r }) => r),
      'mm',
    ),
    stations,
    length: mm(last.x - first.x),
    convergentLength: mm(-first.x),
    divergentLength: mm(last.x - land),
    svgPath: svgPathOf(pieces),
    pieces,
    cautions: sharp
      ? [
          'The throat is sharp (upstream radius below the throat radius). The discharge coefficient decreases and the edge erodes first.',
        ]
      : [],
  };
  return printable(result, () =>
    table(
      stations.map(({ name, x, fromInlet, diameter, radius, halfAngle }) => ({
        station: name,
        'x, mm': microns(x),
        'from inlet': microns(fromInlet),
        diameter: microns(diameter),
        radius: radius === undefined ? '' : microns(radius),
        'half angle': halfAngle?.format() ?? '',
      })),
    ),
  );
}

const mm = (si: number): Quantity<'length'> => fromSiValue(si, 'length', unitOf('mm'));
const slopeOf = ({ from, to }: Extract<ContourPiece, { readonly kind: 'line' }>): number =>
  Math.atan2(Math.abs(to.r - from.r), to.x - from.x);
const degrees = (si: number): Quantity<'angle'> => fromSiValue(si, 'angle', unitOf('deg'));
// To the micrometre, as a drawing is dimensioned; four figures would leave 0.1 mm at 100 mm.
const microns = (length: Quantity<'length'>): string => length.in('mm').toFixed(3);
