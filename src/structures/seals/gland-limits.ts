import type { GlandBands } from './gland-band';
import { grooveRow } from './standard-groove';
import { stretchThinning } from './stretch-thinning';

/** One requirement on a seal, and whether it is satisfied. */
export interface SealCheck {
  readonly check: string;
  readonly passes: boolean;
  /** The value and its limit. */
  readonly message: string;
  readonly source: string;
}

interface Limits {
  /** Nominal cross section, m. */
  readonly section: number;
  readonly cold: GlandBands;
  readonly pressed: GlandBands;
  /** Growth in volume of the rubber at maximum temperature, as a fraction. */
  readonly swell: number;
  /** Where a pressure is given. */
  readonly limit?: { readonly clearance: number; readonly source: string };
  readonly backed: boolean;
  readonly temperatures: readonly SealCheck[];
}

const least = 0.007 * 0.0254; // of interference, whatever the section: handbooks of seal manufacturers (from memory)

/** The minimum and maximum usual squeeze of a static radial seal of this section. */
function usualSqueezeFor(section: number): {
  readonly min: number;
  readonly max: number;
  readonly source: string;
} {
  const row = grooveRow(section, 'radial');
  return row
    ? { min: row.squeeze[0] / 100, max: row.squeeze[1] / 100, source: row.source }
    : {
        min: 0.15,
        max: 0.3,
        source: 'usual range of static seals (engineering practice, no published source)',
      };
}

const percent = (value: number): string => `${(value * 100).toFixed(1)} %`;
const mm = (si: number): string => `${(si * 1000).toFixed(3)} mm`;

/** Every check of a gland, in the order in which a seal is designed. */
export function glandChecks({
  section,
  cold,
  pressed,
  swell,
  limit,
  backed,
  temperatures,
}: Limits): readonly SealCheck[] {
  const usual = usualSqueezeFor(section);
  // The table is rounded to whole per cent; half of one is allowed for that.
  const slack = 0.005;
  // The table of squeeze knows no thinning; what is left to seal with at the worst does.
  const interference = pressed.sectionAtWorst - pressed.depth.max;
  const fill = cold.fill.max * (1 + swell);
  return [
    {
      check: 'squeeze, minimum',
      passes: cold.squeeze.min >= usual.min - slack,
      message: `${percent(cold.squeeze.min)}, required ≥ ${percent(usual.min)}`,
      source: usual.source,
    },
    {
      check: 'squeeze, maximum',
      passes: cold.squeeze.max <= usual.max + slack,
      message: `${percent(cold.squeeze.max)}, allowed ≤ ${percent(usual.max)}`,
      source: usual.source,
    },
    {
      check: 'interference under pressure',
      passes: interference >= least,
      message: `${mm(interference)} with the bore grown, required ≥ ${mm(least)}`,
      source: `handbooks of seal manufacturers, 0.007 in (from memory); ${stretchThinning.source}`,
    },
    {
      check: 'squeeze off centre',
      passes: pressed.squeezeOffCentre > 0,
      message: `${percent(pressed.squeezeOffCentre)} with the closure against one side, required > 0`,
      source: 'Geometry',
    },
    {
      check: 'stretch',
      passes: cold.stretch.min >= 0 && cold.stretch.nominal <= 0.05,
      message: `${percent(cold.stretch.min)} to ${percent(cold.stretch.max)}, nominal ${percent(cold.stretch.nominal)}; required ≥ 0 and nominally ≤ 5 %`,
      source: 'Parker Hannifin, O-ring stretch article, 5 % limit',
    },
    {
      check: 'fill',
      passes: fill <= 0.85,
      message: `${percent(fill)} in the worst case${swell > 0 ? ' at maximum temperature' : ''}, allowed ≤ 85 %`,
      source: 'engineering practice, no published source',
    },
    ...(limit === undefined
      ? []
      : [
          {
            check: 'extrusion gap under pressure',
            passes: backed || pressed.clearance.max <= limit.clearance,
            message: backed
              ? `${mm(pressed.clearance.max)} diametral, closed by the backup ring, whose limit is not evaluated`
              : `${mm(pressed.clearance.max)} diametral, allowed ≤ ${mm(limit.clearance)}`,
            source: limit.source,
          },
        ]),
    {
      check: 'assembly clearance',
      passes: cold.clearance.min > 0,
      message: `${mm(cold.clearance.min)} minimum, required > 0`,
      source: 'Geometry',
    },
    ...temperatures,
  ];
}
