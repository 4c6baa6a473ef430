import { MeopError, type Quantity } from '../units';
import type { ContourDimensions } from './contour-inputs';
import type { ContourPiece, ContourPoint } from './contour-path';

// The lines, arcs and parabolas of a profile in SI numbers; x is 0 where the throat begins.

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
  given: ContourDimensions,
): ContourPiece[] {
  const rise = inlet - throat;
  if (rise === 0) return [];
  const drop = 1 - Math.cos(beta);
  // Both arcs turn through the angle of the cone, so together they rise by this share of their radii.
  if ((round + up) * drop > rise * (1 + 1e-12)) {
    const fits = `at most ${mm(rise / drop)}, which is all that fits between inlet and throat at this angle`;
    if (round === 0) throw misfit('throatRadius', given.throatRadius, up, fits);
    const sum = `small enough that its sum with the throat radius of ${mm(up)} is ${fits}`;
    throw misfit('entranceRadius', given.entranceRadius, round, sum);
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
  { divergent, downstreamRadius }: ContourDimensions,
): ContourPiece[] {
  if (exit === throat) return [];
  const turn = (divergent.shape === 'cone' ? divergent.halfAngle : divergent.initialAngle).si;
  const arcEnd: ContourPoint = { x: start + down * Math.sin(turn), r: throat + down * (1 - Math.cos(turn)) };
  if (arcEnd.r > exit) {
    const fits = `at most ${mm((exit - throat) / (1 - Math.cos(turn)))}, so that the arc ends inside the exit diameter`;
    throw misfit('downstreamRadius', downstreamRadius, down, fits);
  }
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
  const { initialAngle, exitAngle, lengthShare } = divergent;
  const lipAngle = exitAngle.si;
  const lip: ContourPoint = { x: start + (lengthShare * (exit - throat)) / Math.tan(Math.PI / 12), r: exit };
  // Where the tangents at the two ends meet; a parabola that stays between them exists only if that lies between the ends.
  const control =
    (lip.r - arcEnd.r - Math.tan(lipAngle) * (lip.x - arcEnd.x)) / (Math.tan(turn) - Math.tan(lipAngle));
  if (!(control > 0 && control < lip.x - arcEnd.x))
    throw new MeopError({
      code: 'out-of-domain',
      procedure: 'nozzleContour',
      path: 'divergent',
      given: `${initialAngle} to ${exitAngle}`,
      expected: `an initial angle above and an exit angle below the mean slope of ${((Math.atan2(lip.r - arcEnd.r, lip.x - arcEnd.x) * 180) / Math.PI).toPrecision(4)} deg`,
    });
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

/** The error for a radius, as given or the default, that does not fit between the diameters. */
const misfit = (
  path: string,
  given: Quantity<'length'> | undefined,
  used: number,
  expected: string,
): MeopError =>
  new MeopError({
    code: 'out-of-domain',
    procedure: 'nozzleContour',
    path,
    given: given ?? `the default of ${mm(used)}`,
    expected,
  });
