// The regression kernel: samples the rays, refines the spacing until the result converges, and tabulates it.

import { MeopError } from '../../../units';
import type { GrainShape } from '../shapes';
import { commonWedge, endPlane, type Wedge } from '../surface';
import { castVolume } from './cast-volume';
import { rayCutter, refuseExterior } from './cut';
import { deepestCell, depthLevels, findBreaks } from './depth-levels';
import { depthField, type LitSource } from './field';
import { type FrontTable, tallyFront } from './front-tally';
import { ignitionDepths } from './ignition-depths';
import { type RayCells, type Sampling, sampleRays } from './ray-cells';
import { hasSoundPart, regressFlawed } from './regress-flawed';
import { withBurningEnds } from './section-ends';
import type { Method, ShapeOptions, ShapeRegression } from './shape-regression';
import { blockersOf, refuseBlockedRays } from './straight-path';
import { tableDifference } from './table-difference';
import { wallContacts } from './wall-exposure';

export type { Method, ShapeRegression } from './shape-regression';
export { tableDifference } from './table-difference';

/** Wall contacts are found for this number of surfaces at most. */
const FEW = 8;
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

/** Regression of a grain in SI numbers. */
export function regressShape(shape: GrainShape, options: ShapeOptions): ShapeRegression {
  const section = isSection(shape);
  const everything = litSources(shape);
  if (!section && options.ignoreSymmetry !== true && hasSoundPart(shape)) {
    const wedge = commonWedge(everything.map((l) => l.source.symmetry));
    if (!wedge.axisymmetric) return regressFlawed(shape, everything, soundOf(shape, options), options);
  }
  return sampleAll(shape, everything, section, options);
}

/** The regression of the grain without its flaws, more accurate where that is cheap. */
function soundOf(shape: GrainShape, options: ShapeOptions): ShapeRegression {
  const bare: GrainShape = { ...shape, flaws: [] };
  const lit = litSources(bare);
  const section = isSection(bare);
  const flat = section || commonWedge(lit.map((l) => l.source.symmetry)).axisymmetric;
  const { spacing: _, onProgress: __, ...rest } = options;
  return sampleAll(bare, lit, section, { ...rest, accuracy: options.accuracy / (flat ? 20 : 2) });
}

/** Samples the rays of every surface. */
function sampleAll(
  shape: GrainShape,
  everything: readonly LitSource[],
  section: boolean,
  options: ShapeOptions,
): ShapeRegression {
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
    refuseExterior(cutter);
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
  ): Omit<ShapeRegression, 'method' | 'lit' | 'field' | 'wedge' | 'section' | 'tableAt'> => {
    const burnout = deepestCell(fine);
    if (burnout <= 0)
      throw new MeopError({
        code: 'grain-no-propellant',
        procedure: 'regress',
        problem: 'the cavities fill the grain and leave no propellant',
        remedy: 'Reduce the cores',
      });
    const breaks = findBreaks(fine, burnout);
    const depth = depthLevels(breaks, burnout, options.steps, kinks);
    const sampled = tallyFront(fine, depth);
    const check = tallyFront(coarse, depth);
    // Two samplings can miss the same propellant: the cast volume is known by itself.
    const missed = Math.abs(sampled.volume[0] / exact - 1);
    // Behind an inhibited cavity rays miss propellant at any spacing; such a grain is rejected below.
    const trusted = blockers.length === 0 ? missed : 0;
    const achieved = Math.max(tableDifference(sampled, check, depth) / (ratio * ratio - 1), trusted);
    const scale = exact / sampled.volume[0];
    const table = { area: sampled.area.map((a) => scale * a), volume: sampled.volume.map((v) => scale * v) };
    const cells = fine.reduce((n, c) => n + c.count, 0);
    return { depth, ...table, breaks, kinks, achieved, burnout, cells, rays: fine };
  };
  const exact = castVolume(shape, everything);
  const kinks = wallContacts(everything.slice(0, Math.min(FEW, shape.ports.length)), shape.envelope);
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
  const scale = result.volume[0] / tallyFront(fine, result.depth).volume[0];
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
    tableAt: (levels) => tableOf(fine, levels, scale, result.burnout, faces / length),
    ...(section ? { section: constant } : {}),
  };
}

/** Sums the rays at any depths; `ends` is the number of burning ends over the length of a section. */
function tableOf(
  rays: readonly RayCells[],
  levels: Float64Array,
  scale: number,
  burnout: number,
  ends: number,
): FrontTable {
  const beyond = 1.001 * Math.max(burnout, levels[levels.length - 1]);
  const { area, volume } = tallyFront(rays, Float64Array.of(...levels, beyond));
  const left = levels.map((w) => Math.max(0, 1 - ends * w));
  return {
    area: levels.map((_, k) => (left[k] > 0 ? scale * (area[k] * left[k] + ends * volume[k]) : 0)),
    volume: levels.map((_, k) => scale * volume[k] * left[k]),
  };
}

/**
 * Initial number of cells on a radius, or a sixth of the number of stretches of a curve. The error falls with its
 * square; eight usually gives 1e-3. Below six cells, or eighteen stretches, partly hidden features are missed.
 */
const firstDivision = (accuracy: number, least: number): number =>
  Math.min(8, Math.max(least, 8.5 * Math.sqrt(1e-3 / accuracy)));
