// The regression kernel: samples the rays, refines the spacing until the result converges, and tabulates it.

import { MeopError } from '../../../units';
import type { GrainShape } from '../shapes';
import { commonWedge, endPlane, type Wedge } from '../surface';
import { rayCutter } from './cut';
import { type DepthBreak, deepestCell, depthLevels, findBreaks } from './depth-levels';
import { type DepthField, depthField, type LitSource } from './field';
import { type FrontTable, tallyFront } from './front-tally';
import { ignitionDepths } from './ignition-depths';
import { type RayCells, type Sampling, sampleRays } from './ray-cells';
import { withBurningEnds } from './section-ends';
import { blockersOf, refuseBlockedRays } from './straight-path';

export interface ShapeOptions {
  /** Required relative error of the burning area. */
  readonly accuracy: number;
  /** Number of depths in the table. */
  readonly steps: number;
  readonly onProgress?: ((fraction: number) => void) | undefined;
  readonly signal?: AbortSignal | undefined;
  /** Use the whole grain instead of its symmetric wedge. */
  readonly ignoreSymmetry?: boolean | undefined;
  /** Fixed cell size [m] instead of the accuracy target. */
  readonly spacing?: number | undefined;
}

export type Method = 'section' | 'body of revolution' | 'three-dimensional';

export interface ShapeRegression {
  readonly method: Method;
  readonly depth: Float64Array;
  readonly area: Float64Array;
  readonly volume: Float64Array;
  readonly breaks: readonly DepthBreak[];
  /** Estimated relative error of area (root mean square over depth) and volume, from two spacings. */
  readonly achieved: number;
  readonly burnout: number;
  readonly cells: number;
  /** All burning surfaces: ports, then ends, then flaws. */
  readonly lit: readonly LitSource[];
  readonly field: DepthField;
  readonly wedge: Wedge;
  readonly rays: readonly RayCells[];
  /** For a constant section: the table of a length of `perLength` [m] with both ends inhibited. */
  readonly section?: {
    readonly perLength: number;
    readonly depth: Float64Array;
    readonly area: Float64Array;
    readonly volume: Float64Array;
  };
}

const MOST_CELLS = 6_000_000;

/** Lists all burning surfaces of a grain, with the depth at which each ignites. */
export function litSources(shape: GrainShape): LitSource[] {
  const { radius, length } = shape.envelope;
  const ends = [
    ...(shape.headBurns ? [endPlane('head end', 0, 1, radius)] : []),
    ...(shape.aftBurns ? [endPlane('aft end', length, -1, radius)] : []),
  ];
  const open = [...shape.ports, ...ends];
  const flaws = ignitionDepths(open, shape.flaws, 1e-7 * radius);
  return [
    ...shape.ports.map((source) => ({ source, litAt: 0 })),
    ...ends.map((source) => ({ source, litAt: 0 })),
    ...flaws,
  ];
}

const isSection = (shape: GrainShape): boolean =>
  shape.envelope.form === 'cylinder' &&
  shape.inert.length === 0 &&
  [...shape.ports, ...shape.flaws.map((f) => f.source)].every((s) => s.through === true) &&
  shape.ports.length + shape.flaws.length > 0;

export function regressShape(shape: GrainShape, options: ShapeOptions): ShapeRegression {
  const section = isSection(shape);
  const everything = litSources(shape);
  const ends = shape.ports.length + Number(shape.headBurns) + Number(shape.aftBurns);
  const lit = section ? everything.filter((_, i) => i < shape.ports.length || i >= ends) : everything;
  if (!lit.some((l) => l.litAt === 0))
    throw new MeopError({
      code: 'grain-nothing-burns',
      procedure: 'regress',
      problem: 'the grain has no burning surface',
      remedy: 'Add a core, a burning end or an open flaw',
    });
  const field = depthField(lit, 1e-10 * shape.envelope.radius);
  const whole: Wedge = { axisymmetric: false, from: 0, angle: 2 * Math.PI, mirrored: false, copies: 1 };
  const wedge =
    options.ignoreSymmetry === true
      ? whole
      : commonWedge([...lit.map((l) => l.source.symmetry), ...shape.inert.map((s) => s.symmetry)]);
  const { radius, length } = shape.envelope;
  const method: Method = section
    ? 'section'
    : wedge.axisymmetric
      ? 'body of revolution'
      : 'three-dimensional';
  const reach = 0.5 * Math.min(radius, section ? radius : length);
  const patches = lit.flatMap((l, owner) =>
    l.source
      .patches(wedge, reach)
      .map((p) => ({ patch: section ? { ...p, sizeV: 0 } : p, litAt: l.litAt, owner })),
  );
  const surfaces = patches.some(({ patch }) => patch.sizeU > 0 && patch.sizeV > 0);
  const blockers = blockersOf(shape);
  const sample = (how: Sampling, from: number, to: number): RayCells[] => {
    const cutter = rayCutter(field, shape.envelope, blockers);
    const cells = patches.map(({ patch, litAt, owner }, i) => {
      options.signal?.throwIfAborted();
      const c = sampleRays(patch, litAt, owner, cutter, how);
      options.onProgress?.(from + ((to - from) * (i + 1)) / patches.length);
      return c;
    });
    if (cutter.exteriorHits() > 0)
      throw new MeopError({
        code: 'grain-surface-outside',
        procedure: 'regress',
        problem: 'part of a burning surface outside the grain is the nearest one to propellant inside it',
        remedy: 'Keep cores and flaws within the wall and the ends',
      });
    return cells.filter((c) => c.count > 0);
  };
  const how = (spacing: number): Sampling => ({
    spacing,
    surfaceTolerance: (0.05 * spacing * spacing) / radius,
    curveTolerance: options.accuracy * 0.02 * spacing * spacing,
    curveSpacing: spacing,
  });
  const tabulate = (
    fine: RayCells[],
    coarse: RayCells[],
    ratio: number,
  ): Omit<ShapeRegression, 'method' | 'lit' | 'field' | 'wedge' | 'section'> => {
    const burnout = deepestCell(fine);
    if (burnout <= 0)
      throw new MeopError({
        code: 'grain-no-propellant',
        procedure: 'regress',
        problem: 'the cavities fill the grain and leave no propellant',
        remedy: 'Reduce the cores',
      });
    const breaks = findBreaks(fine, burnout);
    const depth = depthLevels(breaks, burnout, options.steps);
    const table = tallyFront(fine, depth);
    const check = tallyFront(coarse, depth);
    const achieved = tableDifference(table, check, depth) / (ratio * ratio - 1);
    const cells = fine.reduce((n, c) => n + c.count, 0);
    return { depth, ...table, breaks, achieved, burnout, cells, rays: fine };
  };
  let spacing =
    options.spacing ??
    radius / (surfaces ? firstDivision(options.accuracy, 6) : 6 * firstDivision(options.accuracy, 3));
  let coarse = sample(how(2 * spacing), 0, 0.1);
  let fine = sample(how(spacing), 0.1, 0.3);
  let result = tabulate(fine, coarse, 2);
  for (
    let round = 0;
    round < 6 && options.spacing === undefined && result.achieved > options.accuracy;
    round++
  ) {
    // The first error estimate compares with a sampling that may have missed a feature. The first step is shorter,
    // because the longest one multiplies the number of cells by nine.
    const longest = surfaces && round === 0 ? 1.5 : 3;
    const ratio = Math.min(longest, Math.max(1.4, 1.15 * Math.sqrt(result.achieved / options.accuracy)));
    if (surfaces && result.cells * ratio * ratio > MOST_CELLS) break;
    spacing /= ratio;
    coarse = fine;
    fine = sample(how(spacing), 0.3 + 0.1 * round, 0.4 + 0.1 * round);
    result = tabulate(fine, coarse, ratio);
  }
  refuseBlockedRays(shape, fine, field);
  options.onProgress?.(1);
  const faces = section ? Number(shape.headBurns) + Number(shape.aftBurns) : 0;
  const constant = { perLength: length, depth: result.depth, area: result.area, volume: result.volume };
  const closed =
    faces === 2
      ? withBurningEnds(result, length, 2)
      : faces === 1
        ? withBurningEnds(result, length, 1)
        : result;
  return {
    method,
    lit: everything,
    field,
    wedge,
    ...result,
    ...closed,
    ...(section ? { section: constant } : {}),
  };
}

/**
 * Initial number of cells on a radius, or a sixth of the number of stretches of a curve. The error falls with its
 * square; eight usually gives 1e-3. Below six cells, or eighteen stretches, partly hidden features are missed.
 */
const firstDivision = (accuracy: number, least: number): number =>
  Math.min(8, Math.max(least, 8.5 * Math.sqrt(1e-3 / accuracy)));

/**
 * Root mean square difference, over depth, of the areas relative to the mean area, or the maximum difference of the
 * volumes relative to the cast volume if that is larger. The area of a step is the volume burned in it divided by its
 * width, so that the instant of a jump has no weight.
 */
export function tableDifference(a: FrontTable, b: FrontTable, depth: Float64Array): number {
  const last = depth.length - 1;
  const cast = a.volume[0];
  let square = 0;
  let worst = 0;
  for (let k = 1; k <= last; k++) {
    const run = depth[k] - depth[k - 1];
    worst = Math.max(worst, Math.abs(a.volume[k - 1] - b.volume[k - 1]) / cast);
    if (run < 1e-5 * depth[last]) continue;
    const burned = a.volume[k - 1] - a.volume[k] - (b.volume[k - 1] - b.volume[k]);
    square += (burned * burned) / run;
  }
  return Math.max(Math.sqrt(square * depth[last]) / cast, worst);
}
