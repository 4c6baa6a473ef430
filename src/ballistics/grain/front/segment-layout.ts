// What the flow along the port needs of a segment: its section by depth, in plain SI numbers.
import { type Grain, grainClosedForm } from '../shapes';
import { regressShape, type ShapeRegression } from './regress-shape';
import type { PortAtStation, RegressionKernel } from './regression';
import { regressionKernel } from './regression-kernel';

/** Flaws of a segment: what they add to the segment without them, and the stretch along the axis on which they lie. */
export interface FlawLayout {
  /** [m] from the head end of the segment. */
  readonly from: number;
  readonly to: number;
  /** Regression of the segment with its flaws. */
  readonly whole: RegressionKernel;
  /** Regression of the segment without them. */
  readonly sound: RegressionKernel;
}

/** A segment of the column: constant sections between flat ends, or slices of any shape. */
export interface SegmentLayout {
  /** Distance from the head end of the column to that of the segment [m]. */
  readonly position: number;
  /** [m] */
  readonly length: number;
  readonly radius: number;
  readonly headBurns: boolean;
  readonly aftBurns: boolean;
  /** `volume` is the propellant area [m²], `area` the burning perimeter [m], where the section is constant. */
  readonly section: RegressionKernel | undefined;
  /** Otherwise equal slices: `volume` is propellant volume [m³], `area` burning area [m²], burning ends included. */
  readonly slices: readonly RegressionKernel[];
  readonly flaw: FlawLayout | undefined;
}

/** The layout of one grain; `found` is its regression, `si` its table. */
export function segmentLayout(
  grain: Grain,
  found: ShapeRegression,
  si: RegressionKernel,
  portArea: readonly PortAtStation[],
): SegmentLayout {
  const { envelope, headBurns, aftBurns } = grain.shape;
  const { length, radius } = envelope;
  const place = { position: 0, length, radius, headBurns, aftBurns };
  if (grain.flaws.length > 0) return { ...place, ...flawed(grain, si, portArea) };
  const section = sectionOf(grain, found);
  return section === undefined
    ? { ...place, section, slices: slicesOf(grain, si, portArea), flaw: undefined }
    : { ...place, section, slices: [], flaw: undefined };
}

const exactDepths = 400;

/** The constant section of a sound grain, per unit length. */
function sectionOf(grain: Grain, found: ShapeRegression): RegressionKernel | undefined {
  const form = grain.closedForm;
  if (form !== undefined && !Number.isFinite(form.burnout)) {
    // A solid section: only its ends burn.
    const depth = Float64Array.of(0, grain.shape.envelope.length);
    const area = form.section(0);
    return regressionKernel(depth, new Float64Array(2), Float64Array.of(area, area), [], depth[1]);
  }
  if (form !== undefined) {
    const inside = found.section?.depth ?? evenDepths(form.burnout);
    const depth = Float64Array.from(
      [...inside, ...evenDepths(form.burnout)].filter((w) => w < form.burnout * (1 - 1e-9)),
    ).sort();
    const kept = depth.filter((w, i) => i === 0 || w - depth[i - 1] > 1e-9 * form.burnout);
    const end = form.burnout;
    return regressionKernel(
      Float64Array.of(...kept, end),
      Float64Array.of(...kept.map(form.perimeter), form.perimeter(end * (1 - 1e-12))),
      Float64Array.of(...kept.map(form.section), 0),
      [],
      end,
    );
  }
  const { section } = found;
  if (section === undefined) return undefined;
  const { perLength, depth, area, volume } = section;
  return regressionKernel(
    depth,
    area.map((a) => a / perLength),
    volume.map((v) => v / perLength),
    [],
    depth[depth.length - 1],
  );
}

const evenDepths = (burnout: number): readonly number[] =>
  Array.from({ length: exactDepths }, (_, k) => (burnout * k) / exactDepths);

/**
 * Slices about the stations of the port: the propellant in each by its section, scaled so that the slices hold what the
 * grain holds at every depth.
 */
function slicesOf(
  grain: Grain,
  si: RegressionKernel,
  portArea: readonly PortAtStation[],
): readonly RegressionKernel[] {
  const { length, radius } = grain.shape.envelope;
  const slice = length / portArea.length;
  const whole = Math.PI * radius * radius;
  const { depth } = si;
  const held = portArea.map(({ area }) => area.si.map((open) => slice * Math.max(0, whole - open)));
  const scale = depth.map((_, k) => {
    const sum = held.reduce((total, volume) => total + volume[k], 0);
    return sum > 0 ? si.volume[k] / sum : 0;
  });
  return held.map((volume) => {
    const own = volume.map((v, k) => v * scale[k]);
    // What burns is what goes missing.
    const area = own.map((_, k) => {
      const [a, b] = [Math.max(0, k - 1), Math.min(own.length - 1, k + 1)];
      return Math.max(0, (own[a] - own[b]) / (depth[b] - depth[a]));
    });
    return regressionKernel(depth, area, own, [], si.burnout);
  });
}

/** The segment without its flaws, and what they add to it. */
function flawed(
  grain: Grain,
  si: RegressionKernel,
  portArea: readonly PortAtStation[],
): Pick<SegmentLayout, 'section' | 'slices' | 'flaw'> {
  const { shape } = grain;
  const open = shape.ports.length + Number(shape.headBurns) + Number(shape.aftBurns) > 0;
  // A flaw can be all that burns: then there is no sound regression, and the slices hold the flaw.
  if (!open) return { section: undefined, slices: slicesOf(grain, si, portArea), flaw: undefined };
  const bare: Grain = { ...grain, flaws: [], shape: { ...shape, flaws: [] } };
  const plain = regressShape(bare.shape, { accuracy: 1e-3, steps: 300 });
  const section = sectionOf(bare, plain);
  if (section === undefined) return { section, slices: slicesOf(grain, si, portArea), flaw: undefined };
  const { length } = shape.envelope;
  const faces = Number(shape.headBurns) + Number(shape.aftBurns);
  const form = {
    perimeter: section.areaAt,
    section: section.volumeAt,
    burnout: section.burnout,
  };
  const { area, volume } = grainClosedForm(form, length, faces === 2 ? 2 : faces === 1 ? 1 : 0);
  const sound = regressionKernel(
    plain.depth,
    plain.depth.map(area),
    plain.depth.map(volume),
    [],
    plain.burnout,
  );
  const spans = shape.flaws.map(({ source }) => {
    const points = source.samples();
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let k = 2; k < points.length; k += 3) {
      low = Math.min(low, points[k]);
      high = Math.max(high, points[k]);
    }
    return [Math.max(0, low), Math.min(length, high)] as const;
  });
  const from = Math.min(...spans.map(([low]) => low));
  const to = Math.max(...spans.map(([, high]) => high));
  return { section, slices: [], flaw: { from, to: Math.max(to, from + 1e-3 * length), whole: si, sound } };
}
