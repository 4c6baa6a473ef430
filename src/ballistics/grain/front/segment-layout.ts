// What the flow along the port needs of a segment: its section by depth, in plain SI numbers.
import { type Grain, grainClosedForm } from '../shapes';
import { grainSlices } from './grain-slices';
import { regressShape, type ShapeRegression } from './regress-shape';
import type { RegressionKernel } from './regression';
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
export function segmentLayout(grain: Grain, found: ShapeRegression, si: RegressionKernel): SegmentLayout {
  const { envelope, headBurns, aftBurns } = grain.shape;
  const { length, radius } = envelope;
  const place = { position: 0, length, radius, headBurns, aftBurns };
  if (grain.flaws.length > 0) return { ...place, ...flawed(grain, found, si) };
  const section = sectionOf(grain, found);
  return section === undefined
    ? { ...place, section, slices: grainSlices(grain.shape, found, si), flaw: undefined }
    : { ...place, section, slices: [], flaw: undefined };
}

const exactDepths = 400;

/** The constant section of a grain without flaws, per unit length. */
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

/** The segment without its flaws, and what they add to it. */
function flawed(
  grain: Grain,
  found: ShapeRegression,
  si: RegressionKernel,
): Pick<SegmentLayout, 'section' | 'slices' | 'flaw'> {
  const { shape } = grain;
  const open = shape.ports.length + Number(shape.headBurns) + Number(shape.aftBurns) > 0;
  // A flaw can be all that burns: then there is no sound regression, and the slices hold the flaw.
  if (!open) return { section: undefined, slices: grainSlices(shape, found, si), flaw: undefined };
  const bare: Grain = { ...grain, flaws: [], shape: { ...shape, flaws: [] } };
  const plain = regressShape(bare.shape, { accuracy: 1e-3, steps: 300 });
  const section = sectionOf(bare, plain);
  const sound = soundTable(bare, plain, section);
  const slices = section === undefined ? grainSlices(bare.shape, plain, sound) : [];
  return { section, slices, flaw: { ...flawSpan(grain), whole: si, sound } };
}

/** Regression of a grain without its flaws. */
function soundTable(
  { shape }: Grain,
  plain: ShapeRegression,
  section: RegressionKernel | undefined,
): RegressionKernel {
  const { depth, burnout } = plain;
  if (section === undefined)
    return regressionKernel(
      depth,
      plain.area,
      plain.volume,
      plain.breaks.map((at) => at.depth),
      burnout,
    );
  const form = { perimeter: section.areaAt, section: section.volumeAt, burnout: section.burnout };
  const faces = Number(shape.headBurns) + Number(shape.aftBurns);
  const { area, volume } = grainClosedForm(
    form,
    shape.envelope.length,
    faces === 2 ? 2 : faces === 1 ? 1 : 0,
  );
  return regressionKernel(depth, depth.map(area), depth.map(volume), [], burnout);
}

/** The stretch of the axis on which the flaws of a grain lie. */
function flawSpan({ shape }: Grain): Pick<FlawLayout, 'from' | 'to'> {
  const { length } = shape.envelope;
  let [low, high] = [length, 0];
  for (const { source } of shape.flaws) {
    const points = source.samples();
    for (let k = 2; k < points.length; k += 3) {
      low = Math.min(low, Math.max(0, points[k]));
      high = Math.max(high, Math.min(length, points[k]));
    }
  }
  return { from: low, to: Math.max(high, low + 1e-3 * length) };
}
