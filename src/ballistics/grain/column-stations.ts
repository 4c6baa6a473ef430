import { fromSiArray, q } from '../../units';
import type { PortAtStation, Regression, WallExposureMap } from './regression';

/** One segment of a column: its regression, and where its head end lies. */
export interface ColumnSegment {
  readonly regression: Regression;
  /** From the head end of the column [m]. */
  readonly position: number;
}

/** The ports of all segments at their places in the column, in step with its depths. */
export function portsOf(segments: readonly ColumnSegment[], depth: Float64Array): readonly PortAtStation[] {
  return segments.flatMap(({ regression, position }) => {
    const own = regression.si.depth;
    // A column of like segments shares their depths.
    const aligned = (values: Float64Array): Float64Array =>
      own === depth ? values : depth.map((w) => valueAt(own, values, w));
    return regression.portArea.map((station) => ({
      position: q(station.position.si + position, 'm').to('mm'),
      area: fromSiArray('area', aligned(station.area.si)),
      perimeter: fromSiArray('length', aligned(station.perimeter.si)),
    }));
  });
}

/** The walls of all segments, one behind the other; a body of revolution is the same at every angle. */
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

/** A table at a depth by a straight line; its last value beyond. */
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
