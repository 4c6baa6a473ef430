import type { SealCheck } from './gland-limits';
import { grooveRow } from './standard-groove';
import { stretchThinning } from './stretch-thinning';
import type { BandSi } from './tolerance';

/** A face seal over its tolerances, in SI. */
export interface FaceSealBands {
  /** Nominal cross section. */
  readonly section: number;
  /** Minimum, reduced as measured on rings. */
  readonly sectionAtWorst: number;
  readonly squeeze: BandSi;
  /** With the faces open. */
  readonly squeezeUnderPressure: BandSi;
  readonly deepest: number;
  /** Interference of the ring with the wall of the groove on the side away from the pressure; negative with a gap. */
  readonly seat: BandSi;
  readonly fill: BandSi;
  readonly faceGap: number;
}

const guide =
  'gland design guide of a seal manufacturer: 3 % of the outside diameter, 5 % of the inside diameter';

const percent = (value: number): string => `${(value * 100).toFixed(1)} %`;
const mm = (si: number): string => `${(si * 1000).toFixed(3)} mm`;
const least = 0.007 * 0.0254; // of interference, as for radial seals: handbooks of seal manufacturers (from memory)

/** Every check of a face seal, in the order in which it is designed. */
export function faceSealChecks(
  bands: FaceSealBands,
  {
    inside,
    swell,
    limit,
    temperatures,
  }: {
    /** Whether the pressure is inside the ring. */
    readonly inside: boolean;
    readonly swell: number;
    readonly limit: { readonly gap: number; readonly source: string } | undefined;
    readonly temperatures: readonly SealCheck[];
  },
): readonly SealCheck[] {
  const { squeeze, seat } = bands;
  const row = grooveRow(bands.section, 'face');
  const [low, high] = row?.squeeze ?? [20, 30];
  const source = row?.source ?? 'usual range of face seals (engineering practice, no published source)';
  // The chart is rounded to whole per cent; half of one is allowed for that.
  const slack = 0.005;
  const most = inside ? 0.03 : 0.05;
  const interference = bands.sectionAtWorst - bands.deepest - bands.faceGap;
  const fill = bands.fill.max * (1 + swell);
  return [
    {
      check: 'squeeze, minimum',
      passes: squeeze.min >= low / 100 - slack,
      message: `${percent(squeeze.min)}, required ≥ ${low} %`,
      source,
    },
    {
      check: 'squeeze, maximum',
      passes: squeeze.max <= high / 100 + slack,
      message: `${percent(squeeze.max)}, allowed ≤ ${high} %`,
      source,
    },
    {
      check: 'interference under pressure',
      passes: interference >= least,
      message: `${mm(interference)} with the faces open, required ≥ ${mm(least)}`,
      source: `handbooks of seal manufacturers, 0.007 in (from memory); ${stretchThinning.source}`,
    },
    {
      check: 'seat',
      passes: seat.nominal >= -1e-9 && seat.nominal <= most,
      message: `${percent(seat.nominal)} of interference on the ${inside ? 'outer' : 'inner'} wall of the groove, ${percent(seat.min)} to ${percent(seat.max)} over the tolerances; required nominally 0 to ${percent(most)}, so that pressure does not move the ring`,
      source: guide,
    },
    {
      check: 'fill',
      passes: fill < 1,
      message: `${percent(fill)} in the worst case${swell > 0 ? ' at maximum temperature' : ''}, required < 100 %, since rubber is incompressible`,
      source: 'Geometry of an incompressible ring',
    },
    ...(limit === undefined
      ? []
      : [
          {
            check: 'extrusion gap under pressure',
            passes: bands.faceGap <= limit.gap,
            message: `${mm(bands.faceGap)} between the faces, allowed ≤ ${mm(limit.gap)}`,
            source: limit.source,
          },
        ]),
    ...temperatures,
  ];
}
