import { procedure, ratio } from '../units';
import { gamma, machBranch } from './gas-inputs';
import { vandenkerckhoveSi } from './isentropic-kernels';
import { machFromAreaRatioSi } from './mach-from-area-ratio';

/**
 * Mach number of a flow from mass flow, stagnation state and area: the mass-flow parameter is its value at Mach 1 over the
 * area ratio A/A*.
 *
 * @example machFromMassFlowParameter({ massFlowParameter: 0.5110694, gamma: 1.4, branch: 'subsonic' }) // => 0.5
 */
export const machFromMassFlowParameter = /* @__PURE__ */ procedure({
  name: 'machFromMassFlowParameter',
  title: 'Mach number from the mass-flow parameter',
  source: 'NACA Report 1135 (1953), equations for isentropic flow of a perfect gas',
  inputs: {
    massFlowParameter: ratio(
      'ṁ·√(R·T0)/(p0·A)',
      'mass-flow parameter; at Mach 1 the Vandenkerckhove function',
      {
        above: 0,
      },
    ),
    gamma,
    branch: machBranch,
  },
  gives: 'the Mach number on the branch named',
  example: { massFlowParameter: 0.5110694, gamma: 1.4, branch: 'subsonic' },
  checks: [
    ({ massFlowParameter, gamma }) => {
      const choked = vandenkerckhoveSi(gamma);
      return massFlowParameter <= choked
        ? undefined
        : {
            path: 'massFlowParameter',
            given: massFlowParameter,
            expected: `at most ${choked.toPrecision(7)}, the value of choked flow`,
          };
    },
  ],
  run: ({ massFlowParameter, gamma, branch }) =>
    machFromAreaRatioSi(vandenkerckhoveSi(gamma) / massFlowParameter, gamma, branch === 'supersonic'),
});
