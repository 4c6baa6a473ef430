import { formula, ratio, readInput } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { refusal } from '../units/refusal';
import { areaRatioSi } from './isentropic-kernels';
import { type MachBranch, machFromAreaRatioSi } from './mach-from-area-ratio';

const procedure = 'machFromAreaRatio';

/**
 * Area of the stream over its area at Mach 1; no dimension. It has its least value, 1, at Mach 1.
 *
 * @throws MeopError `out-of-domain` for γ not above 1 or a Mach number not above 0; `not-finite` where it overflows
 * @example areaRatio({ mach: 2, gamma: 1.4 }) // => 1.6875
 */
export const areaRatio = /* @__PURE__ */ formula({
  name: 'areaRatio',
  title: 'Area over sonic area in isentropic flow',
  equation: 'A/A* = 1 / M·((1 + (γ − 1)·M² / 2) / ((γ + 1) / 2))^((γ + 1) / (2·(γ − 1)))',
  source: 'NACA Report 1135 (1953), equations for isentropic flow of a perfect gas',
  inputs: {
    mach: ratio('M', 'Mach number', { above: 0 }),
    gamma: ratio('γ', 'ratio of specific heats', { above: 1 }),
  },
  output: ratio('A/A*', 'area over sonic area', { min: 1 }),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => areaRatioSi(mach, gamma),
});

/** What {@link machFromAreaRatio} needs. */
export interface MachFromAreaRatioOptions {
  /** Area over sonic area, at least 1. */
  readonly areaRatio: number;
  /** Ratio of specific heats, above 1. */
  readonly gamma: number;
  /** Which of the two solutions is meant: there is no default, since either is a plausible answer. */
  readonly branch: MachBranch;
}

const machFromAreaRatioFields: FieldsOf<MachFromAreaRatioOptions> = {
  areaRatio: 'required',
  gamma: 'required',
  branch: 'required',
};

/**
 * Mach number at an area over the sonic area, on the branch named; to about one unit in the last place of what the
 * double `areaRatio` determines: near 1 an area rounded by 1e-16 moves Mach by 1e-16·(γ+1)/(4·|M−1|).
 *
 * Source: NACA Report 1135 (1953), area relation, solved in a proven bracket.
 *
 * @throws MeopError `out-of-domain` for an area ratio below 1, γ not above 1, or no branch
 * @example machFromAreaRatio({ areaRatio: 2, gamma: 1.4, branch: 'supersonic' }) // => 2.197198121
 */
export function machFromAreaRatio(options: MachFromAreaRatioOptions): number {
  requireFields(procedure, options, machFromAreaRatioFields);
  const { areaRatio, gamma, branch } = options;
  const ratio = readInput('dimensionless', 'areaRatio', areaRatio, procedure).si;
  const g = readInput('dimensionless', 'gamma', gamma, procedure).si;
  if (ratio < 1)
    throw refusal(
      procedure,
      'areaRatio',
      areaRatio,
      'at least 1',
      'no section is smaller than the sonic one. An expansion ratio is exit area over throat area, not the reverse',
    );
  if (!(g > 1))
    throw refusal(
      procedure,
      'gamma',
      gamma,
      'above 1',
      'the mixture value of a two-phase exhaust is about 1.04 to 1.15',
    );
  if (branch !== 'subsonic' && branch !== 'supersonic')
    throw refusal(procedure, 'branch', branch, "'subsonic' or 'supersonic'");
  return machFromAreaRatioSi(ratio, g, branch === 'supersonic');
}
