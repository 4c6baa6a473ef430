import {
  fromSiArray,
  fromSiValue,
  MeopError,
  type NamedKind,
  type Quantity,
  type QuantityInput,
  readInput,
  type Series,
  table,
  unitOf,
} from '../units';
import { type ContourPiece, type ContourPoint, sampleContour, svgPathOf } from './contour-path';

/** What {@link nozzleContour} needs. */
export interface NozzleContourOptions {
  readonly throatDiameter: QuantityInput<'length'>;
  readonly exitDiameter: QuantityInput<'length'>;
  /** Diameter at which the profile starts. */
  readonly inletDiameter: QuantityInput<'length'>;
  /** Half angle of the convergent cone; default 45°. */
  readonly convergentHalfAngle?: QuantityInput<'angle'>;
  /** Radius that rounds the inlet into the convergent cone; default none. */
  readonly entranceRadius?: QuantityInput<'length'>;
  /** Radius of the wall upstream of the throat; default the throat diameter. */
  readonly throatRadius?: QuantityInput<'length'>;
  /** Radius of the wall downstream of the throat; default 0.4 of the throat radius (half of 0.4 throat diameters). */
  readonly downstreamRadius?: QuantityInput<'length'>;
  /** Length of the cylindrical throat; default none. A long one wears evenly but costs friction. */
  readonly throatLength?: QuantityInput<'length'>;
  /** A straight cone, or a parabolic bell. */
  readonly divergent:
    | { readonly shape: 'cone'; readonly halfAngle: QuantityInput<'angle'> }
    | {
        readonly shape: 'bell';
        /** Wall angle just behind the throat, where the parabola begins. */
        readonly initialAngle: QuantityInput<'angle'>;
        /** Wall angle at the lip. */
        readonly exitAngle: QuantityInput<'angle'>;
        /** Length over that of a 15° cone of the same diameters; default 0.8. */
        readonly lengthShare?: number;
      };
  /** Greatest distance between the points and the true curve; default 1 µm. */
  readonly tolerance?: QuantityInput<'length'>;
}

/** Where a piece of the profile ends. */
export interface ContourStation {
  readonly name: string;
  readonly x: Quantity<'length'>;
  readonly diameter: Quantity<'length'>;
}

/** The inner profile of a nozzle from inlet to lip; x counts from the throat, negative upstream. */
export interface NozzleContour {
  readonly x: Series<'length'>;
  readonly radius: Series<'length'>;
  /** What a lathe needs: the ends of every line and arc. */
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
 * Inner profile of a nozzle for turning: inlet rounding, convergent cone, throat arcs, and a cone or a parabolic bell. Arcs and
 * lines meet tangentially.
 *
 * Source: geometry; a parabola from the throat arc to the lip stands for a bell as in Sutton & Biblarz, Rocket Propulsion
 * Elements, 7th ed. (2001), section 3.4 (after Rao).
 *
 * @throws MeopError `out-of-domain` for an exit or inlet smaller than the throat, angles outside 0 to 90°, or radii that do not fit between the diameters
 * @example nozzleContour({ throatDiameter: '12 mm', exitDiameter: '32 mm', inletDiameter: '40 mm', divergent: { shape: 'cone', halfAngle: '12 deg' } }).radius.min().in('mm') // => 6
 */
export function nozzleContour(options: NozzleContourOptions): NozzleContour {
  const throat = length('throatDiameter', options.throatDiameter, 0, true) / 2;
  const exit = length('exitDiameter', options.exitDiameter, 0, true) / 2;
  const inlet = length('inletDiameter', options.inletDiameter, 0, true) / 2;
  const up =
    options.throatRadius === undefined ? 2 * throat : length('throatRadius', options.throatRadius, 0, false);
  const down =
    options.downstreamRadius === undefined
      ? 0.4 * throat
      : length('downstreamRadius', options.downstreamRadius, 0, false);
  const round =
    options.entranceRadius === undefined ? 0 : length('entranceRadius', options.entranceRadius, 0, false);
  const land =
    options.throatLength === undefined ? 0 : length('throatLength', options.throatLength, 0, false);
  const tolerance = length('tolerance', options.tolerance ?? '0.001 mm', 0, true);
  const beta = angle('convergentHalfAngle', options.convergentHalfAngle ?? '45 deg');
  if (exit < throat) throw outside('exitDiameter', options.exitDiameter, 'at least the throat diameter');
  if (inlet < throat) throw outside('inletDiameter', options.inletDiameter, 'at least the throat diameter');

  const pieces = [
    ...convergentPieces({ inlet, throat, beta, round, up }, options),
    ...(land > 0 ? [line('throat', { x: 0, r: throat }, { x: land, r: throat })] : []),
    ...divergentPieces({ throat, exit, down, start: land }, options),
  ];
  const points = sampleContour(pieces, tolerance);
  const mm = (si: number): Quantity<'length'> => fromSiValue(si, 'length', unitOf('mm'));
  const first = pieces[0].from;
  const last = pieces[pieces.length - 1].to;
  const stations: ContourStation[] = [
    { name: 'inlet', x: mm(first.x), diameter: mm(2 * first.r) },
    ...pieces.map(({ name, to }) => ({ name: `end of ${name}`, x: mm(to.x), diameter: mm(2 * to.r) })),
  ];
  const text = (): string =>
    table(
      stations.map(({ name, x, diameter }) => ({
        station: name,
        x: x.format(),
        diameter: diameter.format(),
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
            'the throat is sharp (upstream radius below the throat radius): discharge falls and the edge erodes first',
          ]
        : [],
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
}

interface Convergent {
  readonly inlet: number;
  readonly throat: number;
  readonly beta: number;
  readonly round: number;
  readonly up: number;
}

/** Inlet rounding, cone and upstream throat arc, ending at x = 0. */
function convergentPieces(
  { inlet, throat, beta, round, up }: Convergent,
  options: NozzleContourOptions,
): ContourPiece[] {
  const rise = inlet - throat;
  if (rise === 0) return [];
  const drop = 1 - Math.cos(beta);
  // Both arcs turn through the cone's angle; if they meet before the cone begins, they turn only as far as they touch.
  if ((round + up) * drop > rise * (1 + 1e-12))
    throw outside(
      'entranceRadius',
      options.entranceRadius ?? options.throatRadius,
      `with the throat radius at most ${((rise / drop) * 1000).toPrecision(5)} mm together, which is all that fits between inlet and throat at this angle,`,
    );
  const arcEnd: ContourPoint = { x: -up * Math.sin(beta), r: throat + up * drop };
  const coneStart: ContourPoint = {
    x: arcEnd.x - (inlet - round * drop - arcEnd.r) / Math.tan(beta),
    r: inlet - round * drop,
  };
  const start: ContourPoint = { x: coneStart.x - round * Math.sin(beta), r: inlet };
  return [
    ...(round > 0 ? [arc('entrance radius', start, coneStart, { x: start.x, r: inlet - round }, round)] : []),
    ...(coneStart.r - arcEnd.r > 1e-12 * inlet ? [line('convergent cone', coneStart, arcEnd)] : []),
    ...(up > 0
      ? [arc('upstream throat radius', arcEnd, { x: 0, r: throat }, { x: 0, r: throat + up }, up)]
      : []),
  ];
}

interface Divergent {
  readonly throat: number;
  readonly exit: number;
  readonly down: number;
  readonly start: number;
}

/** Downstream throat arc, then cone or parabola to the lip. */
function divergentPieces(
  { throat, exit, down, start }: Divergent,
  options: NozzleContourOptions,
): ContourPiece[] {
  const { divergent } = options;
  if (exit === throat) return [];
  const turn =
    divergent.shape === 'cone'
      ? angle('divergent.halfAngle', divergent.halfAngle)
      : angle('divergent.initialAngle', divergent.initialAngle);
  const arcEnd: ContourPoint = { x: start + down * Math.sin(turn), r: throat + down * (1 - Math.cos(turn)) };
  if (arcEnd.r > exit)
    throw outside(
      'downstreamRadius',
      options.downstreamRadius,
      'small enough for the arc to end inside the exit diameter',
    );
  const throatArc =
    down > 0
      ? [
          arc(
            'downstream throat radius',
            { x: start, r: throat },
            arcEnd,
            { x: start, r: throat + down },
            down,
          ),
        ]
      : [];
  if (divergent.shape === 'cone') {
    const lip = { x: arcEnd.x + (exit - arcEnd.r) / Math.tan(turn), r: exit };
    return [...throatArc, line('divergent cone', arcEnd, lip)];
  }
  const lipAngle = angle('divergent.exitAngle', divergent.exitAngle, true);
  const share = readInput(
    'dimensionless',
    'divergent.lengthShare',
    divergent.lengthShare ?? 0.8,
    'nozzleContour',
  ).si;
  if (!(share > 0)) throw outside('divergent.lengthShare', divergent.lengthShare, 'above 0');
  if (!(lipAngle < turn))
    throw outside('divergent.exitAngle', divergent.exitAngle, 'below the initial angle');
  const lip: ContourPoint = { x: start + (share * (exit - throat)) / Math.tan(Math.PI / 12), r: exit };
  // Where the tangents at the two ends meet; a parabola that stays between them exists only if that lies between the ends.
  const control =
    (lip.r - arcEnd.r - Math.tan(lipAngle) * (lip.x - arcEnd.x)) / (Math.tan(turn) - Math.tan(lipAngle));
  if (!(control > 0 && control < lip.x - arcEnd.x))
    throw outside(
      'divergent',
      `${String(divergent.initialAngle)} to ${String(divergent.exitAngle)}`,
      `an initial angle above and an exit angle below the mean slope of ${((Math.atan2(lip.r - arcEnd.r, lip.x - arcEnd.x) * 180) / Math.PI).toPrecision(4)} deg`,
    );
  const meet: ContourPoint = { x: arcEnd.x + control, r: arcEnd.r + control * Math.tan(turn) };
  return [...throatArc, { kind: 'parabola', name: 'bell', from: arcEnd, to: lip, control: meet }];
}

const line = (name: string, from: ContourPoint, to: ContourPoint): ContourPiece => ({
  kind: 'line',
  name,
  from,
  to,
});
const arc = (
  name: string,
  from: ContourPoint,
  to: ContourPoint,
  centre: ContourPoint,
  radius: number,
): ContourPiece => ({
  kind: 'arc',
  name,
  from,
  to,
  centre,
  radius,
});

function length(field: string, value: unknown, least: number, strict: boolean): number {
  const { si } = readInput('length', field, value, 'nozzleContour');
  if (strict ? si > least : si >= least) return si;
  throw outside(field, value, strict ? 'above 0 mm' : 'at least 0 mm');
}

function angle(field: string, value: unknown, zero = false): number {
  const kind: NamedKind = 'angle';
  const { si } = readInput(kind, field, value, 'nozzleContour');
  if ((zero ? si >= 0 : si > 0) && si < Math.PI / 2) return si;
  throw outside(field, value, `${zero ? 'from' : 'above'} 0 deg to below 90 deg`);
}

function outside(field: string, value: unknown, expected: string): MeopError {
  return new MeopError(
    'out-of-domain',
    `nozzleContour: ${field}: ${value === undefined ? 'the default' : String(value)} given; ${expected} is expected`,
    field,
    { value, expected },
  );
}
