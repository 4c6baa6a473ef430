import { readInput } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { refusal } from '../units/refusal';
import { vandenkerckhoveSi } from './isentropic-kernels';
import { type MachBranch, machFromAreaRatioSi } from './mach-from-area-ratio';

const procedure = 'machFromMassFlowParameter';

/** What {@link machFromMassFlowParameter} needs. */
export interface MachFromMassFlowParameterOptions {
  /** ṁ·√(R·T0)/(p0·A), above 0 and at most its value at Mach 1, the Vandenkerckhove function. */
  readonly massFlowParameter: number;
  /** Ratio of specific heats, above 1. */
  readonly gamma: number;
  /** Which of the two solutions is meant: there is no default, since either is a plausible answer. */
  readonly branch: MachBranch;
}

const machFromMassFlowParameterFields: FieldsOf<MachFromMassFlowParameterOptions> = {
  massFlowParameter: 'required',
  gamma: 'required',
  branch: 'required',
};

/**
 * Mach number of a stream from its mass-flow parameter: from mass flow, stagnation state and area, on the branch named.
 *
 * Source: NACA Report 1135 (1953); the parameter is its value at Mach 1 over the area ratio A/A*.
 *
 * @throws MeopError `out-of-domain` for a parameter not above 0 or above what a choked stream carries, γ not above 1, or no branch
 * @example machFromMassFlowParameter({ massFlowParameter: 0.5110694, gamma: 1.4, branch: 'subsonic' }) // => 0.5
 */
export function machFromMassFlowParameter(options: MachFromMassFlowParameterOptions): number {
  requireFields(procedure, options, machFromMassFlowParameterFields);
  const read = (field: 'massFlowParameter' | 'gamma'): number =>
    readInput('dimensionless', field, options[field], procedure).si;
  const parameter = read('massFlowParameter');
  const gamma = read('gamma');
  if (!(gamma > 1)) throw refusal(procedure, 'gamma', options.gamma, 'above 1');
  if (options.branch !== 'subsonic' && options.branch !== 'supersonic')
    throw refusal(procedure, 'branch', options.branch, "'subsonic' or 'supersonic'");
  const choked = vandenkerckhoveSi(gamma);
  if (!(parameter > 0 && parameter <= choked))
    throw refusal(
      procedure,
      'massFlowParameter',
      options.massFlowParameter,
      `above 0 and at most ${choked.toPrecision(7)}, where the stream is choked,`,
    );
  return machFromAreaRatioSi(choked / parameter, gamma, options.branch === 'supersonic');
}
