// Regression of a grain with flaws: the flawless grain, plus the fronts of the flaws, minus what both would burn. Only the
// neighbourhood of the flaws is sampled.
import type { GrainShape } from '../shapes';
import { commonWedge, type Envelope, outsideBy, type Source, type Wedge } from '../surface';
import { flawCavities } from './cast-volume';
import { rayCutter, refuseExterior } from './cut';
import { deepestRay } from './deepest-ray';
import { type DepthBreak, deepestCell, depthLevels, findBreaks } from './depth-levels';
import { type DepthField, depthField, type LitSource } from './field';
import { type FrontTable, firstAtLeast, tallyFront } from './front-tally';
import { type Overlap, overlapBuilder, tallyOverlap } from './overlap';
import { type RayCells, type Sampling, sampleRays } from './ray-cells';
import type { FlawPieces, ShapeOptions, ShapeRegression } from './shape-regression';
import { tableDifference } from './table-difference';
import { wallContacts } from './wall-exposure';

/** Wall contacts are found for this number of flaws at most. */
const FEW = 8;

/** Whether the difference to the flawless grain can be computed: every surface burns, and cavities of flaws are balls. */
export const hasSoundPart = (shape: GrainShape): boolean =>
  shape.flaws.length > 0 &&
  shape.inert.length === 0 &&
  shape.ports.length + Number(shape.headBurns) + Number(shape.aftBurns) > 0 &&
  shape.ports.every((s) => s.cavity === undefined) &&
  shape.flaws.every(({ source: s }) => s.cavity === undefined && (s.sheet || s.round === true));

interface Sampled {
  readonly pieces: FlawPieces;
  /** Error of the volume of the cavities of flaws as sampled, relative to the cast volume. */
  readonly missed: number;
}

/** `sound` is the regression of the grain without its flaws. */
export function regressFlawed(
  shape: GrainShape,
  lit: readonly LitSource[],
  sound: ShapeRegression,
  options: ShapeOptions,
): ShapeRegression {
  const { envelope } = shape;
  const { radius, length } = envelope;
  const field = depthField(lit, 1e-10 * radius);
  const first = lit.length - shape.flaws.length;
  const soundField = depthField(lit.slice(0, first));
  const wedge: Wedge = commonWedge(lit.map((l) => l.source.symmetry));
  const cutter = rayCutter(field, envelope);
  const reach = 0.5 * Math.min(radius, length);
  const patches = lit.flatMap(({ source, litAt }, owner) =>
    source.patches(wedge, reach).map((patch) => ({ patch, litAt, owner })),
  );
  const flaws = patches.filter(({ owner }) => owner >= first);
  const cast = sound.volume[0];
  const cavities = flawCavities(shape, soundField, 4e-7 * cast);
  const samplingOf = (spacing: number): Sampling => ({
    spacing,
    surfaceTolerance: (0.05 * spacing * spacing) / radius,
    curveTolerance: options.accuracy * 0.02 * spacing * spacing,
    curveSpacing: spacing,
  });
  const sample = (spacing: number): Sampled => {
    const overlaps: Overlap[] = [];
    const size = 0.6 * spacing;
    const cells = flaws.map(({ patch, litAt, owner }) => {
      options.signal?.throwIfAborted();
      const builder = overlapBuilder(soundField, size);
      const found = sampleRays(patch, litAt, owner, cutter, samplingOf(spacing), (...cell) =>
        builder.addCell(patch, ...cell),
      );
      overlaps.push(builder.done());
      return found;
    });
    const parts = cavityOverlap(shape, soundField, wedge, size);
    const volume = parts.reduce((sum, o) => sum + tallyOverlap(o, Float64Array.of(0)).volume[0], 0);
    const cavity = volume > 0 ? joined(parts, cavities / volume) : undefined;
    const kept = cells.filter((c) => c.count > 0);
    return { pieces: { sound, cells: kept, overlaps, cavity }, missed: Math.abs(volume - cavities) / cast };
  };
  const kinks = [
    ...sound.kinks,
    ...(shape.flaws.length <= FEW ? wallContacts(lit.slice(first), envelope) : []),
  ];
  const deepest = deepestRay(
    patches.filter(({ owner }) => owner < first),
    cutter,
    radius / 6,
  );
  const result = (fine: Sampled, coarse: Sampled): ShapeRegression => {
    const { pieces } = fine;
    const burnout = Math.max(deepest, deepestCell(pieces.cells));
    const breaks = breaksOf(pieces.cells, sound, burnout);
    const depth = depthLevels(breaks, burnout, options.steps, kinks);
    const exact = cast - cavities;
    const raw = difference(pieces, depth);
    const last = depth.length - 1;
    const left = raw.volume[last - 1];
    const table = closed(raw, exact, left);
    table.volume[0] = exact;
    table.volume[last] = 0;
    table.area[last] = 0;
    const other = difference(coarse.pieces, depth);
    const rough = closed(other, exact, other.volume[last - 1]);
    const unclosed = Math.max(Math.abs(left) / exact, table.clipped);
    // Kinks make the error fall between linearly and with the square of the spacing.
    const achieved = Math.max(sound.achieved, unclosed, tableDifference(table, rough, depth) / 3);
    return {
      method: 'three-dimensional',
      depth,
      area: table.area,
      volume: table.volume,
      breaks: breaks.map((b) => ({ depth: b.depth, jump: jumpAt(table.area, depth, b.depth) })),
      kinks,
      achieved,
      burnout,
      cells: sound.cells + pieces.cells.reduce((n, c) => n + c.count, 0),
      lit,
      field,
      wedge,
      rays: pieces.cells,
      tableAt: (levels) => closed(difference(pieces, levels), exact, left),
      pieces,
    };
  };
  let spacing = options.spacing ?? radius / 6;
  let coarse = sample(2 * spacing);
  let fine = sample(spacing);
  let found = result(fine, coarse);
  for (
    let round = 0;
    round < 5 && options.spacing === undefined && found.achieved > options.accuracy;
    round++
  ) {
    const ratio = Math.min(2.2, Math.max(1.25, 1.1 * Math.sqrt(found.achieved / options.accuracy)));
    if ((found.cells - sound.cells) * ratio * ratio > 250_000) break;
    spacing /= ratio;
    coarse = sample(2 * spacing);
    fine = sample(spacing);
    found = result(fine, coarse);
  }
  if (shape.flaws.some(({ source }) => reachesOut(source, envelope)))
    // Only rays of the flawless grain tell whether such a part is nearest to propellant inside.
    for (const { patch, litAt, owner } of patches)
      if (owner < first) sampleRays(patch, litAt, owner, cutter, samplingOf(radius / 6));
  refuseExterior(cutter);
  return found;
}

/** True if a point of the surface lies outside the grain. */
function reachesOut(source: Source, envelope: Envelope): boolean {
  const points = source.samples();
  for (let i = 0; i + 2 < points.length; i += 3)
    if (outsideBy(envelope, points[i], points[i + 1], points[i + 2]) > 1e-6 * envelope.radius) return true;
  return false;
}

/** Volume and area at the depths, as sampled. */
function difference({ sound, cells, overlaps, cavity }: FlawPieces, depths: Float64Array): FrontTable {
  const n = depths.length;
  const beyond = 1.001 * Math.max(sound.burnout, deepestCell(cells), depths[n - 1]);
  // Sums begin at depth 0 and end beyond all rays.
  const levels = Float64Array.of(0, ...depths, beyond);
  const base = sound.tableAt(levels);
  const own = tallyFront(cells, levels);
  const taken = overlaps.map((o) => tallyOverlap(o, levels));
  const sampled = taken.reduce((sum, t) => sum + t.volume[0], 0);
  // The same propellant, summed over rays and over tetrahedra.
  const share = sampled > 0 ? own.volume[0] / sampled : 0;
  const inside = cavity === undefined ? undefined : tallyOverlap(cavity, levels);
  const area = new Float64Array(n);
  const volume = new Float64Array(n);
  for (let k = 0; k < n; k++) {
    let [v, a] = [base.volume[k + 1] + own.volume[k + 1], base.area[k + 1] + own.area[k + 1]];
    for (const t of taken) {
      v -= share * t.volume[k + 1];
      a -= share * t.area[k + 1];
    }
    volume[k] = v - (inside?.volume[k + 1] ?? 0);
    area[k] = a - (inside?.area[k + 1] ?? 0);
  }
  return { area, volume };
}

/**
 * Nothing is left at burnout: what the sampling leaves there is spread over all that burned, so that the area remains
 * minus the derivative of the volume. `clipped` is the rise of the volume that was cut off, relative to the cast volume.
 */
function closed(table: FrontTable, cast: number, left: number): FrontTable & { readonly clipped: number } {
  const n = table.volume.length;
  const stretch = cast / (cast - left);
  const volume = table.volume.map((v) => Math.max(0, cast - (cast - v) * stretch));
  let clipped = 0;
  for (let k = n - 2; k >= 0; k--) {
    clipped = Math.max(clipped, volume[k + 1] - volume[k]);
    volume[k] = Math.max(volume[k], volume[k + 1]);
  }
  return { area: table.area.map((a) => Math.max(0, a * stretch)), volume, clipped: clipped / cast };
}

/** The insides of the cavities of flaws, by the depth of the flawless grain. */
function cavityOverlap(shape: GrainShape, sound: DepthField, wedge: Wedge, size: number): Overlap[] {
  const bodies = shape.flaws.map(({ source }) => source).filter((s) => s.round === true);
  const union = depthField(bodies.map((source) => ({ source, litAt: 0 })));
  return bodies.flatMap((body, own) => {
    const radius = body.bound?.[3] ?? 0;
    const keep = (x: number, y: number, z: number): boolean => {
      if (outsideBy(shape.envelope, x, y, z) > 0) return false;
      union.depth(x, y, z);
      return union.footSource() === own;
    };
    const builder = overlapBuilder(sound, Math.min(2 * radius, Math.max(radius / 3, size / 2)), keep);
    for (const patch of body.patches(wedge, radius))
      for (let i = 0; i < 4; i++)
        for (let j = 0; j < 4; j++)
          builder.addCell(patch, i / 4, j / 4, 1 / 4, 1 / 4, -radius, -radius, -radius, -radius, -radius);
    return [builder.done()];
  });
}

/** Jumps of the fronts of the flaws, and those of the flawless grain that come before burnout. */
function breaksOf(
  cells: readonly RayCells[],
  sound: ShapeRegression,
  burnout: number,
): readonly DepthBreak[] {
  const near = 1e-6 * burnout;
  const scale = 2e-4 * Math.max(...sound.area);
  const own = findBreaks(cells, burnout);
  const buried = own.length > 40 ? own.filter((b) => Math.abs(b.jump) > scale) : own;
  const others = sound.breaks.filter(
    (b) => b.depth < burnout - near && buried.every((o) => Math.abs(o.depth - b.depth) > near),
  );
  return [...buried, ...others].sort((a, b) => a.depth - b.depth);
}

/** Change of the tabulated area across a depth that stands between two of the table. */
function jumpAt(area: Float64Array, depth: Float64Array, at: number): number {
  const k = Math.min(depth.length - 1, firstAtLeast(depth, at));
  return k > 0 ? area[k] - area[k - 1] : 0;
}

const joined = (parts: readonly Overlap[], share: number): Overlap => {
  const of = (pick: (o: Overlap) => Float64Array): Float64Array =>
    Float64Array.from(parts.flatMap((o) => Array.from(pick(o))));
  return {
    count: parts.reduce((n, o) => n + o.count, 0),
    at: of((o) => o.at),
    volume: of((o) => o.volume).map((v) => share * v),
    depth: of((o) => o.depth),
  };
};
