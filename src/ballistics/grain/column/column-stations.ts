import { fromSiArray, q } from '../../../units';
import type { PortAtStation, Regression, WallExposureMap } from '../front';

/** One segment of a column: its regression and the position of its head end. */
export interface ColumnSegment {
  readonly regression: Regression;
  /** Distance from the head end of the column to that of the segment [m]. */
  readonly position: number;
}

/** Ports of all segments at their positions in the column, tabulated at the depths of the column. */
export function portsOf(segments: readonly ColumnSegment[], depth: Float64Array): readonly PortAtStation[] {
  return segments.flatMap(({ regression, position }) => {
    const own = regression.si.depth;
    // In a column of equal segments the depths of column and segment are the same.
    const aligned = (values: Float64Array): Float64Array =>
      own === depth ? values : depth.map((w) => valueAt(own, values, w));
    return regression.portArea.map((station) => ({
      position: q(station.position.si + position, 'm').to('mm'),
      area: fromSiArray('area', aligned(station.area.si)),
      perimeter: fromSiArray('length', aligned(station.perimeter.si)),
    }));
  });
}

/** Wall exposure of all segments in order. A body of revolution has the same values at every angle. */
export function exposureOf(segments: readonly ColumnSegment[]): WallExposureMap {
  const maps = segments.map(({ regression, position }) => ({ map: regression.wallExposure, position }));
  const finest = maps.reduce(
    (most, { map }) => (map.angle.length > most.angle.length ? map : most),
    maps[0].map,
  );
  const angles = finest.angle.si;
  const positions = maps.flatMap(({ map, position }) => [...map.position.si].map((z) => z + position));
  const depth = new Float64Array(angles.length * positions.length);
  angles.forEach((_, i) => {
    let at = i * positions.length;
    for (const { map } of maps) {
      const row = map.angle.length === 1 ? 0 : Math.round((i * map.angle.length) / angles.length);
      const width = map.position.length;
      depth.set(map.depth.si.subarray(row * width, (row + 1) * width), at);
      at += width;
    }
  });
  return {
    angle: fromSiArray('angle', angles),
    position: fromSiArray('length', Float64Array.from(positions)),
    depth: fromSiArray('length', depth),
  };
}

/** Interpolates a table linearly; beyond its ends the end values are used. */
export function valueAt(depth: Float64Array, values: Float64Array, w: number): number {
  const last = depth.length - 1;
  if (w >= depth[last]) return values[last];
  if (!(w > depth[0])) return values[0];
  let [low, high] = [0, last];
  while (high - low > 1) {
    const mid = (low + high) >> 1;
    if (depth[mid] <= w) low = mid;
    else high = mid;
  }
  return values[low] + ((w - depth[low]) / (depth[high] - depth[low])) * (values[high] - values[low]);
}
