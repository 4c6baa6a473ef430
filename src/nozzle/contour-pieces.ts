import { type MeopError, readInput } from '../units';
import { requireFields } from '../units/known-fields';
import { refusal } from '../units/refusal';
import type { NozzleContourOptions } from './contour-options';
import type { ContourPiece, ContourPoint } from './contour-path';

// The lines, arcs and parabolas of a profile from the options of nozzleContour, in SI numbers; x is 0 at the start of the throat.

interface Convergent {
  readonly inlet: number;
  readonly throat: number;
  readonly beta: number;
  readonly round: number;
  readonly up: number;
}

/** Inlet rounding, cone and upstream throat arc, ending at x = 0. */
export function convergentPieces(
  { inlet, throat, beta, round, up }: Convergent,
  options: NozzleContourOptions,
): ContourPiece[] {
  const rise = inlet - throat;
  if (rise === 0) return [];
  const drop = 1 - Math.cos(beta);
  // Both arcs turn through the angle of the cone, so together they rise by this fraction of their radii.
  if ((round + up) * drop > rise * (1 + 1e-12)) {
    const fits = `at most ${mm(rise / drop)}, which is all that fits between inlet and throat at this angle,`;
    if (round === 0)
      throw contourError('throatRadius', options.throatRadius ?? `the default of ${mm(up)}`, fits);
    throw contourError(
      'entranceRadius',
      options.entranceRadius,
      `with the throat radius of ${mm(up)} together ${fits}`,
    );
  }
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

/** Downstream throat arc, then cone or parabola to the exit lip. */
export function divergentPieces(
  { throat, exit, down, start }: Divergent,
  options: NozzleContourOptions,
): ContourPiece[] {
  const { divergent } = options;
  if (exit === throat) return [];
  const shape: unknown = Reflect.get(Object(divergent), 'shape');
  if (shape !== 'cone' && shape !== 'bell') throw contourError('divergent.shape', shape, "'cone' or 'bell'");
  if (divergent.shape === 'cone')
    requireFields('nozzleContour: divergent', divergent, { shape: 'required', halfAngle: 'required' });
  else
    requireFields('nozzleContour: divergent', divergent, {
      shape: 'required',
      initialAngle: 'required',
      exitAngle: 'required',
      lengthShare: 'optional',
    });
  const turn =
    divergent.shape === 'cone'
      ? contourAngle('divergent.halfAngle', divergent.halfAngle)
      : contourAngle('divergent.initialAngle', divergent.initialAngle);
  const arcEnd: ContourPoint = { x: start + down * Math.sin(turn), r: throat + down * (1 - Math.cos(turn)) };
  if (arcEnd.r > exit)
    throw contourError(
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
    return exit - arcEnd.r > 1e-12 * exit ? [...throatArc, line('divergent cone', arcEnd, lip)] : throatArc;
  }
  const lipAngle = contourAngle('divergent.exitAngle', divergent.exitAngle, true);
  const share = readInput(
    'dimensionless',
    'divergent.lengthShare',
    divergent.lengthShare ?? 0.8,
    'nozzleContour',
  ).si;
  if (!(share > 0)) throw contourError('divergent.lengthShare', divergent.lengthShare, 'above 0');
  if (!(lipAngle < turn))
    throw contourError('divergent.exitAngle', divergent.exitAngle, 'below the initial angle');
  const lip: ContourPoint = { x: start + (share * (exit - throat)) / Math.tan(Math.PI / 12), r: exit };
  // Intersection of the tangents at the two ends; a monotonic parabola exists only if it is between the ends.
  const control =
    (lip.r - arcEnd.r - Math.tan(lipAngle) * (lip.x - arcEnd.x)) / (Math.tan(turn) - Math.tan(lipAngle));
  if (!(control > 0 && control < lip.x - arcEnd.x))
    throw contourError(
      'divergent',
      `${String(divergent.initialAngle)} to ${String(divergent.exitAngle)}`,
      `an initial angle above and an exit angle below the mean slope of ${((Math.atan2(lip.r - arcEnd.r, lip.x - arcEnd.x) * 180) / Math.PI).toPrecision(4)} deg`,
    );
  const meet: ContourPoint = { x: arcEnd.x + control, r: arcEnd.r + control * Math.tan(turn) };
  return [...throatArc, { kind: 'parabola', name: 'bell', from: arcEnd, to: lip, control: meet }];
}

export const line = (name: string, from: ContourPoint, to: ContourPoint): ContourPiece => ({
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

const mm = (si: number): string => `${Number((1000 * si).toPrecision(5))} mm`;

export function contourLength(field: string, value: unknown, least: number, strict: boolean): number {
  const { si } = readInput('length', field, value, 'nozzleContour');
  if (strict ? si > least : si >= least) return si;
  throw contourError(field, value, strict ? 'above 0 mm' : 'at least 0 mm');
}

export function contourAngle(field: string, value: unknown, zero = false): number {
  const { si } = readInput('angle', field, value, 'nozzleContour');
  if ((zero ? si >= 0 : si > 0) && si < Math.PI / 2) return si;
  throw contourError(field, value, `${zero ? 'from' : 'above'} 0 deg to below 90 deg`);
}

export const contourError = (field: string, value: unknown, expected: string): MeopError =>
  refusal('nozzleContour', field, value ?? 'the default', expected);
