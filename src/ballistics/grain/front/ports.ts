// Port area and perimeter at stations along the axis, with units.
import { fromSiArray, q } from '../../../units';
import type { Grain } from '../shapes';
import type { DepthField } from './field';
import { portStation } from './port-stations';
import type { ShapeRegression } from './regress-shape';
import type { PortAtStation } from './regression';

/** Computes the ports at stations in the middle of equal stretches of the grain. */
export function portsOf(
  grain: Grain,
  found: ShapeRegression,
  field: DepthField,
  stations: number,
): PortAtStation[] {
  const { envelope, headBurns, aftBurns } = grain.shape;
  return Array.from({ length: stations }, (_, i) => {
    const z = (envelope.length * (i + 0.5)) / stations;
    const { area, perimeter } =
      found.section === undefined
        ? portStation(
            field,
            envelope,
            found.wedge,
            z,
            found.depth,
            96,
            Math.max(24, Math.ceil((192 * found.wedge.angle) / (2 * Math.PI))),
          )
        : sectionPort(found, z, envelope.radius, headBurns, aftBurns, envelope.length);
    return {
      position: q(z, 'm').to('mm'),
      area: fromSiArray('area', area),
      perimeter: fromSiArray('length', perimeter),
    };
  });
}

/** Port of a constant section: exact, until a burning end has passed the station. */
function sectionPort(
  found: ShapeRegression,
  z: number,
  radius: number,
  headBurns: boolean,
  aftBurns: boolean,
  length: number,
): { readonly area: Float64Array; readonly perimeter: Float64Array } {
  const { section, depth } = found;
  const whole = Math.PI * radius * radius;
  const area = new Float64Array(depth.length);
  const perimeter = new Float64Array(depth.length);
  if (section === undefined) return { area, perimeter };
  let k = 1;
  for (let i = 0; i < depth.length; i++) {
    const w = depth[i];
    const gone = (headBurns && w >= z) || (aftBurns && w >= length - z);
    while (k < section.depth.length - 1 && section.depth[k] < w) k++;
    const f = (w - section.depth[k - 1]) / (section.depth[k] - section.depth[k - 1]);
    const at = (v: Float64Array): number => (v[k - 1] + f * (v[k] - v[k - 1])) / section.perLength;
    area[i] = gone ? whole : whole - at(section.volume);
    perimeter[i] = gone ? 0 : at(section.area);
  }
  return { area, perimeter };
}
