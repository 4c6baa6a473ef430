import { formula, procedure, ratio } from '../units';
import { gamma, machBranch } from './gas-inputs';
import { areaRatioSi } from './isentropic-kernels';
import { type MachBranch, machFromAreaRatioSi } from './mach-from-area-ratio';

const report1135 = 'NACA Report 1135 (1953), equations for isentropic flow of a perfect gas';

/**
 * Area of the flow over its area at Mach 1, where it has its minimum of 1.
 *
 * @example areaRatio({ mach: 2, gamma: 1.4 }) // => 1.6875
 */
export const areaRatio = /* @__PURE__ */ formula({
  name: 'areaRatio',
  title: 'Area/sonic area ratio in isentropic flow',
  equation: 'A/A* = 1 / M·((1 + (γ − 1)·M² / 2) / ((γ + 1) / 2))^((γ + 1) / (2·(γ − 1)))',
  source: report1135,
  inputs: {
    mach: ratio('M', 'Mach number', { above: 0 }),
    gamma,
  },
  output: ratio('A/A*', 'area/sonic area ratio', { min: 1 }),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => areaRatioSi(mach, gamma),
});

/**
 * Mach number at an area/sonic area ratio, solved in a proven bracket; to about one unit in the last place of what
 * the double `areaRatio` determines: near 1 an area rounded by 1e-16 moves Mach by 1e-16·(γ+1)/(4·|M−1|).
 *
 * @example machFromAreaRatio({ areaRatio: 2, gamma: 1.4, branch: 'supersonic' }) // => 2.197198121
 */
export const machFromAreaRatio = /* @__PURE__ */ procedure({
  name: 'machFromAreaRatio',
  title: 'Mach number from area/sonic area ratio in isentropic flow',
  source: report1135,
  inputs: {
    areaRatio: ratio('A/A*', 'area/sonic area ratio; of a nozzle exit the expansion ratio', { above: 0 }),
    gamma,
    branch: machBranch,
  },
  gives: 'the Mach number on the branch named',
  example: { areaRatio: 2, gamma: 1.4, branch: 'supersonic' },
  checks: [
    ({ areaRatio }) =>
      areaRatio >= 1
        ? undefined
        : {
            path: 'areaRatio',
            given: areaRatio,
            expected: 'at least 1',
            remedy: 'An expansion ratio is exit area/throat area, not the reverse',
          },
  ],
  run: ({ areaRatio, gamma, branch }) => machFromAreaRatioSi(areaRatio, gamma, branch === 'supersonic'),
  si: (values: { readonly areaRatio: number; readonly gamma: number; readonly branch: MachBranch }): number =>
    machFromAreaRatioSi(values.areaRatio, values.gamma, values.branch === 'supersonic'),
});
