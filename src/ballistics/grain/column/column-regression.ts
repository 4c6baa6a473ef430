import { fromSiArray, inputs, instance, length, list, procedure, q, readInput } from '../../../units';
import { isRegression, once, type Regression, type RegressionKernel, regressionText } from '../front';
import { columnMass } from './column-mass';
import { type ColumnSegment, exposureOf, portsOf } from './column-stations';

/**
 * Areas, volumes and ports at common depths. Ends that face a gap burn as declared for their segment. The gaps contain no
 * propellant.
 *
 * @example columnRegression({ segments: [{ regression: regress(endBurner({ outerDiameter: '40 mm', length: '60 mm' })), position: '0 mm' }] }).burnout.in('mm') // => 60
 */
export const columnRegression = /* @__PURE__ */ procedure({
  name: 'columnRegression',
  title: 'Sum of the regressions of segments that burn at one rate',
  source: 'sum of areas and volumes at equal depth; parallel-axis theorem for the inertia',
  inputs: {
    segments: list(
      'segments, head end first',
      inputs(
        {
          regression: instance('its regression', 'a regression', isRegression),
          position: length('z', 'distance from the head end of the column to that of the segment', {
            min: 0,
            example: '0 mm',
          }),
        },
        { meaning: 'a segment' },
      ),
    ),
  },
  gives: 'the regression of the column',
  example:
    "columnRegression({ segments: [{ regression: regress(endBurner({ outerDiameter: '40 mm', length: '60 mm' })), position: '0 mm' }] })",
  run: ({ segments }) =>
    sumOfSegments(segments.map(({ regression, position }) => ({ regression, position: position.si }))),
});

/** The regression of a column of segments. */
export function sumOfSegments(segments: readonly ColumnSegment[]): Regression {
  const parts = segments.map(({ regression }) => regression);
  const si = columnKernel(parts);
  const { depth, area, volume, burnout } = si;
  const cast = volume[0];
  const mean = cast / burnout;
  const web = Math.min(...parts.map((part) => part.web.si));
  const lengthOf = (value: unknown): number => readInput('length', 'depth', value, 'column').si;
  const grain = columnText(parts);
  const ports = once(() => portsOf(segments, depth));
  const exposure = once(() => exposureOf(segments));
  const found: Omit<Regression, 'toString'> = {
    grain,
    method: 'column',
    depth: fromSiArray('length', depth),
    burningArea: fromSiArray('area', area),
    propellantVolume: fromSiArray('volume', volume),
    castVolume: q(cast, 'm^3').to('cm^3'),
    volumetricLoading:
      cast / parts.reduce((sum, part) => sum + part.castVolume.si / part.volumetricLoading, 0),
    breaks: breaksOf(parts, burnout),
    burnout: q(burnout, 'm').to('mm'),
    web: q(web, 'm').to('mm'),
    sliverFraction: web < burnout ? si.volumeAt(web) / cast : 0,
    neutrality: Math.max(...area) / mean,
    meanBurningArea: q(mean, 'm^2').to('mm^2'),
    get portArea() {
      return ports();
    },
    get wallExposure() {
      return exposure();
    },
    flawLighting: parts.flatMap((part) => part.flawLighting),
    accuracy: {
      requested: Math.max(...parts.map(({ accuracy }) => accuracy.requested)),
      achieved: Math.max(...parts.map(({ accuracy }) => accuracy.achieved)),
      cells: parts.reduce((sum, { accuracy }) => sum + accuracy.cells, 0),
      symmetry: Math.min(...parts.map(({ accuracy }) => accuracy.symmetry)),
    },
    cautions: [...new Set(parts.flatMap(({ cautions }) => cautions))],
    si,
    layout: () =>
      segments.flatMap(({ regression, position }) =>
        regression.layout().map((one) => ({ ...one, position: one.position + position })),
      ),
    burningAreaAt: (value) => q(si.areaAt(lengthOf(value)), 'm^2').to('mm^2'),
    propellantVolumeAt: (value) => q(si.volumeAt(lengthOf(value)), 'm^3').to('cm^3'),
    massProperties: (density) => columnMass(segments, depth, density),
  };
  return {
    ...found,
    toString: () => `${grain}: ${q(cast, 'm^3').to('cm^3')}, burnout depth ${q(burnout, 'm').to('mm')}`,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => regressionText(found) },
  };
}

function columnText(parts: readonly Regression[]): string {
  const counts = new Map<string, number>();
  for (const { grain } of parts) counts.set(grain, (counts.get(grain) ?? 0) + 1);
  return [...counts].map(([grain, count]) => (count === 1 ? grain : `${count} × ${grain}`)).join('; ');
}

/** Sums over the segments. Each table remains exact at its own depths. */
function columnKernel(parts: readonly Regression[]): RegressionKernel {
  const kernels = [...new Set(parts.map(({ si }) => si))];
  const weight = kernels.map((kernel) => parts.filter(({ si }) => si === kernel).length);
  const sum = (of: (kernel: RegressionKernel) => number): number =>
    kernels.reduce((total, kernel, i) => total + weight[i] * of(kernel), 0);
  const areaAt = (w: number): number => sum((kernel) => kernel.areaAt(w));
  const volumeAt = (w: number): number => sum((kernel) => kernel.volumeAt(w));
  const burnout = Math.max(...kernels.map((kernel) => kernel.burnout));
  const depth = mergedDepths(kernels, burnout);
  const breaks = Float64Array.from(new Set(kernels.flatMap((kernel) => [...kernel.breaks]))).sort();
  const last = depth.length - 1;
  return {
    depth,
    area: depth.map((w, k) => (k === last ? 0 : areaAt(w))),
    volume: depth.map((w, k) => (k === last ? 0 : volumeAt(w))),
    breaks,
    burnout,
    areaAt,
    volumeAt,
  };
}

// Merges the depths of all tables. Only a jump may lie between two depths close together: where depths of two tables
// merely lie close together, one is kept.
function mergedDepths(kernels: readonly RegressionKernel[], burnout: number): Float64Array {
  const near = 4e-6 * burnout;
  const jumps: [number, number][] = [];
  const others: number[] = [];
  for (const { depth } of kernels)
    for (let k = 0; k < depth.length; k++) {
      if (depth[k + 1] - depth[k] < near) {
        jumps.push([depth[k], depth[k + 1]]);
        k++;
      } else others.push(depth[k]);
    }
  jumps.sort(([a], [b]) => a - b);
  const hulls: [number, number][] = [];
  for (const [from, to] of jumps) {
    const last = hulls.at(-1);
    if (last !== undefined && from - last[1] < near) last[1] = Math.max(last[1], to);
    else hulls.push([from, to]);
  }
  const kept = hulls.flat();
  others.sort((a, b) => a - b);
  let h = 0;
  let before = Number.NEGATIVE_INFINITY;
  for (const w of others) {
    while (h < hulls.length && hulls[h][1] < w - near) h++;
    const inJump = h < hulls.length && w > hulls[h][0] - near;
    if (inJump || w - before < near) continue;
    kept.push(w);
    before = w;
  }
  return Float64Array.from(kept).sort();
}

function breaksOf(parts: readonly Regression[], burnout: number): Regression['breaks'] {
  const changes = new Map<number, number>();
  const add = (depth: number, change: number): void => {
    changes.set(depth, (changes.get(depth) ?? 0) + change);
  };
  for (const { breaks, si } of parts) {
    for (const { depth, change } of breaks) add(depth.si, change.si);
    // A segment that burns out before the others removes its last area, unless its own table already lists this loss.
    const listed = breaks.some(({ depth }) => Math.abs(depth.si - si.burnout) < 1e-6 * si.burnout);
    if (si.burnout < burnout && !listed) add(si.burnout, -si.areaAt(si.burnout * (1 - 1e-5)));
  }
  return [...changes]
    .sort(([a], [b]) => a - b)
    .map(([depth, change]) => ({ depth: q(depth, 'm').to('mm'), change: q(change, 'm^2').to('mm^2') }));
}
