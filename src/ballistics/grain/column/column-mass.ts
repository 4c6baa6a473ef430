import { fromSiArray } from '../../../units';
import type { GrainMassProperties, Regression } from '../front';
import { type ColumnSegment, valueAt } from './column-stations';

/**
 * Mass properties of a column: sums over its segments by the parallel-axis theorem, interpolated linearly between the
 * depths of each segment.
 */
export function columnMass(
  segments: readonly ColumnSegment[],
  depth: Float64Array,
  density: Parameters<Regression['massProperties']>[0],
): GrainMassProperties {
  const parts = segments.map(({ regression, position }) => ({
    own: regression.massProperties(density),
    from: regression.si.depth,
    position,
  }));
  const make = (): Float64Array => new Float64Array(depth.length);
  const [mass, cz, cx, cy, axial, ix, iy] = [make(), make(), make(), make(), make(), make(), make()];
  depth.forEach((w, k) => {
    const now = parts.map(({ own, from, position }) => {
      const at = (values: { readonly si: Float64Array }): number => valueAt(from, values.si, w);
      return {
        m: at(own.mass),
        z: at(own.centreAxial) + position,
        x: at(own.centreX),
        y: at(own.centreY),
        axial: at(own.axialInertia),
        ix: at(own.inertiaX),
        iy: at(own.inertiaY),
      };
    });
    const total = now.reduce((sum, { m }) => sum + m, 0);
    const centre = (of: 'x' | 'y' | 'z', before: Float64Array): number =>
      total > 0 ? now.reduce((sum, one) => sum + one.m * one[of], 0) / total : k > 0 ? before[k - 1] : 0;
    mass[k] = total;
    cz[k] = centre('z', cz);
    cx[k] = centre('x', cx);
    cy[k] = centre('y', cy);
    for (const one of now) {
      axial[k] += one.axial;
      ix[k] += one.ix + one.m * ((one.y - cy[k]) ** 2 + (one.z - cz[k]) ** 2);
      iy[k] += one.iy + one.m * ((one.x - cx[k]) ** 2 + (one.z - cz[k]) ** 2);
    }
  });
  const inertia = (values: Float64Array) => fromSiArray('moment of inertia', values);
  return {
    mass: fromSiArray('mass', mass),
    centreAxial: fromSiArray('length', cz),
    centreX: fromSiArray('length', cx),
    centreY: fromSiArray('length', cy),
    axialInertia: inertia(axial),
    inertiaX: inertia(ix),
    inertiaY: inertia(iy),
  };
}
