// Propellant of a grain of any shape, slice by slice along the axis, against depth.
import type { GrainShape } from '../shapes';
import { wallRadius } from '../surface';
import { type DepthField, depthField } from './field';
import { portStation } from './port-stations';
import type { ShapeRegression } from './regress-shape';
import type { RegressionKernel } from './regression';
import { regressionKernel } from './regression-kernel';

const rings = 48;
const spokesAround = 96;
// Below this share of the cast volume the sections do not tell where the rest is: it keeps its shares.
const restShare = 1e-3;

/** The depth field of everything that burns but the flat ends, which pass a section all at once. */
function fieldWithoutEnds(
  { ports, headBurns, aftBurns, envelope }: GrainShape,
  { lit }: Pick<ShapeRegression, 'lit'>,
): DepthField | undefined {
  const ends = ports.length + Number(headBurns) + Number(aftBurns);
  const others = lit.filter((_, i) => i < ports.length || i >= ends);
  return others.length === 0 ? undefined : depthField(others, 1e-10 * envelope.radius);
}

/** The part of a stretch of the axis that lies between the ends, of which those that burn have moved by a depth. */
function betweenEnds(
  { headBurns, aftBurns, envelope }: GrainShape,
  from: number,
  to: number,
  depth: number,
): readonly [number, number] {
  const low = Math.max(from, headBurns ? depth : 0);
  const high = Math.min(to, aftBurns ? envelope.length - depth : envelope.length);
  return high > low ? [low, high] : [from, from];
}

/**
 * Equal slices of a grain: in each the propellant between its ends by the sections (a parabola through three of them),
 * scaled so that the slices hold what the grain holds at every depth. What burns in a slice is what goes missing from it.
 */
export function grainSlices(
  shape: GrainShape,
  found: Pick<ShapeRegression, 'lit' | 'wedge'>,
  si: RegressionKernel,
  count: number = found.wedge.axisymmetric ? 40 : 24,
): readonly RegressionKernel[] {
  const { depth, volume, burnout } = si;
  const { envelope } = shape;
  const field = fieldWithoutEnds(shape, found);
  const spokes = Math.max(12, Math.ceil((spokesAround * found.wedge.angle) / (2 * Math.PI)));
  const step = envelope.length / (2 * count);
  const sections = Array.from({ length: 2 * count + 1 }, (_, i) => {
    const z = Math.min(Math.max(i * step, 1e-6 * step), envelope.length - 1e-6 * step);
    const radius = wallRadius(envelope, z);
    const whole = Math.PI * radius * radius;
    if (field === undefined) return depth.map(() => whole);
    const { area } = portStation(field, envelope, found.wedge, z, depth, rings, spokes);
    return area.map((open) => Math.max(0, whole - open));
  });
  const held = Array.from({ length: count }, (_, s) =>
    depth.map((w, k) => {
      const from = 2 * s * step;
      const [low, high] = betweenEnds(shape, from, from + 2 * step, w);
      const part = (z: number): number =>
        step *
        primitive(sections[2 * s][k], sections[2 * s + 1][k], sections[2 * s + 2][k], (z - from) / step);
      return Math.max(0, part(high) - part(low));
    }),
  );
  let shares = held.map(() => 1 / count);
  const own = held.map(() => new Float64Array(depth.length));
  depth.forEach((_, k) => {
    const sum = held.reduce((total, values) => total + values[k], 0);
    if (sum > restShare * volume[0] && volume[k] > restShare * volume[0])
      shares = held.map((values) => values[k] / sum);
    own.forEach((values, s) => {
      values[k] = volume[k] * shares[s];
    });
  });
  return own.map((values) => regressionKernel(depth, slopes(depth, values), values, [], burnout));
}

/** Integral from 0 to u of the parabola through a at 0, b at 1 and c at 2. */
const primitive = (a: number, b: number, c: number, u: number): number =>
  u * (a + u * ((4 * b - 3 * a - c) / 4 + (u * (a - 2 * b + c)) / 6));

/** Minus the derivative of the volume: the parabola through three depths, never below zero. */
function slopes(depth: Float64Array, volume: Float64Array): Float64Array {
  const last = depth.length - 1;
  const run = (k: number): number => (volume[k] - volume[k + 1]) / (depth[k + 1] - depth[k]);
  return depth.map((_, k) => {
    if (k === last) return 0;
    if (k === 0) return Math.max(0, 1.5 * run(0) - 0.5 * run(1));
    const before = depth[k] - depth[k - 1];
    const after = depth[k + 1] - depth[k];
    // Two depths close together stand for a jump: each side has the slope of its own side.
    if (after < 1e-3 * before) return Math.max(0, run(k - 1));
    if (before < 1e-3 * after) return Math.max(0, run(k));
    return Math.max(0, (run(k - 1) * after + run(k) * before) / (before + after));
  });
}
