import { fromSiValue, type Quantity, unitFor } from '../../units';
import type { Margin } from '../margin';
import { checkMargin } from '../margin-check';
import { type Calculation, kindOf } from './calculation';
import { type Consequence, consequenceOf } from './consequence';
import { explainMargin, type MarginExplanation } from './explain-margin';
import {
  type FailureLimit,
  type FailureMode,
  failurePressureOf,
  type PressureDrivenMode,
} from './failure-mode';
import { marginStep } from './margin-step';
import { type FailureModeId, modeName } from './mode-name';
import type { PartId } from './part-name';

/** The margin of a failure mode, with the pressure at which it fails and its hand calculation. */
export interface FailureMargin extends Margin {
  /** The mode, for programs; `mode` is its name for people. */
  readonly id: FailureModeId;
  readonly part: PartId;
  readonly limit: FailureLimit;
  /** What the part does at the limit. */
  readonly consequence: Consequence;
  /** The gauge chamber pressure at which applied equals allowable, without factor; where pressure drives the mode. */
  readonly failurePressure?: Quantity<'gauge pressure'> | undefined;
  /** The hand calculation that the margin comes from. */
  explain(): MarginExplanation;
}

/** The margin of a mode that chamber pressure drives. */
export interface PressureDrivenMargin extends FailureMargin {
  readonly failurePressure: Quantity<'gauge pressure'>;
}

/** The margin of a failure mode. */
export function failureMargin(mode: PressureDrivenMode): PressureDrivenMargin;
export function failureMargin(mode: FailureMode): FailureMargin;
export function failureMargin(mode: FailureMode): FailureMargin {
  const { id, part, limit, calculation, allowable, factor, temperature, unit, cautions } = mode;
  const kind = kindOf(calculation);
  const shown = unitFor(kind, unit.text);
  const name = modeName(id);
  const applied = fromSiValue(calculation.value, kind, shown);
  const carried = fromSiValue(allowable.value, kind, shown);
  checkMargin({ mode: name, applied, allowable: carried, factor });
  const pressure = failurePressureOf(mode);
  // Written out, and added to only where there is something: a spread costs more than all the rest.
  const found: { -readonly [F in keyof FailureMargin]: FailureMargin[F] } = {
    id,
    part,
    mode: name,
    limit,
    consequence: consequenceOf(id, limit),
    applied,
    allowable: carried,
    factor,
    marginOfSafety: marginStep(mode).value,
    source: [...sourceOf(calculation), ...sourceOf(allowable), ...mode.sources].join('; '),
    cautions,
    explain: () => explainMargin(mode),
  };
  if (temperature !== undefined) found.temperature = temperature;
  if (pressure !== undefined)
    found.failurePressure = fromSiValue(
      pressure,
      'gauge pressure',
      unitFor('gauge pressure', unit.us ? 'psi' : 'MPa'),
    );
  return found;
}

/** Where the last formula of a calculation is published; `explain()` names those before it as well. */
const sourceOf = (calculation: Calculation): readonly string[] =>
  'formula' in calculation ? [calculation.formula.source] : [];
