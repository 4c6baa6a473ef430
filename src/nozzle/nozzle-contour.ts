import { fromSiArray, fromSiValue, type Quantity, type Series, table, unitOf } from '../units';
import { requireFields } from '../units/known-fields';
import { type NozzleContourOptions, nozzleContourFields } from './contour-options';
import { type ContourPiece, sampleContour, svgPathOf } from './contour-path';
import {
  contourAngle,
  contourError,
  contourLength,
  convergentPieces,
  divergentPieces,
  line,
} from './contour-pieces';

/** End of a piece of the profile, and the tool path to it. */
export interface ContourStation {
  readonly name: string;
  readonly x: Quantity<'length'>;
  readonly diameter: Quantity<'length'>;
  /** Tool position with zero at the inlet face. */
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
  /** Data for the lathe: the ends of every line and arc. */
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

/**
 * Inner profile of a nozzle for machining: inlet rounding, convergent cone, throat arcs, and a cone or a parabolic
 * bell. Arcs and lines meet tangentially.
 *
 * Source: geometry; a parabola from the throat arc to the exit lip represents a bell as in Sutton & Biblarz,
 * Rocket Propulsion Elements, 7th ed. (2001), section 3.4 (after Rao).
 *
 * @throws MeopError `out-of-domain` for an exit or inlet smaller than the throat, angles outside 0 to 90°, or
 * radii that do not fit between the diameters
 * @example nozzleContour({ throatDiameter: '12 mm', exitDiameter: '32 mm', inletDiameter: '40 mm', divergent: { shape: 'cone', halfAngle: '12 deg' } }).radius.min().in('mm') // => 6
 */
export function nozzleContour(options: NozzleContourOptions): NozzleContour {
  requireFields('nozzleContour', options, nozzleContourFields);
  const throat = contourLength('throatDiameter', options.throatDiameter, 0, true) / 2;
  const exit = contourLength('exitDiameter', options.exitDiameter, 0, true) / 2;
  const inlet = contourLength('inletDiameter', options.inletDiameter, 0, true) / 2;
  const up =
    options.throatRadius === undefined
      ? 2 * throat
      : contourLength('throatRadius', options.throatRadius, 0, false);
  const down =
    options.downstreamRadius === undefined
      ? 0.4 * throat
      : contourLength('downstreamRadius', options.downstreamRadius, 0, false);
  const round =
    options.entranceRadius === undefined
      ? 0
      : contourLength('entranceRadius', options.entranceRadius, 0, false);
  const land =
    options.throatLength === undefined ? 0 : contourLength('throatLength', options.throatLength, 0, false);
  const tolerance = contourLength('tolerance', options.tolerance ?? '0.001 mm', 0, true);
  const beta = contourAngle('convergentHalfAngle', options.convergentHalfAngle ?? '45 deg');
  if (exit < throat) throw contourError('exitDiameter', options.exitDiameter, 'at least the throat diameter');
  if (inlet < throat)
    throw contourError('inletDiameter', options.inletDiameter, 'at least the throat diameter');

  const pieces = [
    ...convergentPieces({ inlet, throat, beta, round, up }, options),
    ...(land > 0 ? [line('throat', { x: 0, r: throat }, { x: land, r: throat })] : []),
    ...divergentPieces({ throat, exit, down, start: land }, options),
  ];
  if (pieces.length === 0)
    throw contourError(
      'throatLength',
      options.throatLength,
      'above 0 mm where inlet, throat and exit are of one diameter: there is no profile otherwise,',
    );
  const points = sampleContour(pieces, tolerance);
  const mm = (si: number): Quantity<'length'> => fromSiValue(si, 'length', unitOf('mm'));
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
  const text = (): string =>
    table(
      stations.map(({ name, x, fromInlet, diameter, radius, halfAngle }) => ({
        station: name,
        'x, mm': microns(x),
        'from inlet': microns(fromInlet),
        diameter: microns(diameter),
        radius: radius === undefined ? '' : microns(radius),
        'half angle': halfAngle?.format() ?? '',
      })),
    );
  return {
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
    cautions:
      up < throat
        ? [
            'The throat is sharp (upstream radius below the throat radius). The discharge coefficient decreases and the edge erodes first.',
          ]
        : [],
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
}

const slopeOf = ({ from, to }: Extract<ContourPiece, { readonly kind: 'line' }>): number =>
  Math.atan2(Math.abs(to.r - from.r), to.x - from.x);
const degrees = (si: number): Quantity<'angle'> => fromSiValue(si, 'angle', unitOf('deg'));
// To the micrometre, as on a drawing; four significant figures would round to 0.1 mm at 100 mm.
const microns = (length: Quantity<'length'>): string => length.in('mm').toFixed(3);
