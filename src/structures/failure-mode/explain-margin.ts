import {
  type Explanation,
  formatNumber,
  fromSiValue,
  type NamedKind,
  type Quantity,
  unitFor,
} from '../../units';
import { shownIn } from '../../units/shown-unit';
import { fromSi } from '../../units/unit';
import { kindOf, numberOf, type Step, stepsOf } from './calculation';
import type { FailureMode } from './failure-mode';
import { marginStep } from './margin-step';
import { modeName } from './mode-name';
import { partName } from './part-name';

/** A margin written out as a hand calculation, formula by formula. */
export interface MarginExplanation {
  /** The formulas in the order in which they feed each other; the last is that of the margin. */
  readonly steps: readonly Explanation[];
  /** The names of those formulas. */
  readonly formulas: readonly string[];
  /** Where they, and the strength, are published. */
  readonly sources: readonly string[];
  /** The margin with its numbers. */
  readonly substitution: string;
  toString(): string;
  toHtml(): string;
}

const figures = 7;

/** The steps from the pressure or load to the margin of a mode. */
export function explainMargin(mode: FailureMode): MarginExplanation {
  const { calculation, allowable, factor, unit } = mode;
  const kind = kindOf(calculation);
  const carrying = stepsOf(calculation, allowable);
  const last = marginStep(mode);
  const steps = [...carrying, last].map((one) => explainStep(one, unit.us));
  const title = `${partName(mode.part)}: ${modeName(mode.id)}`;
  const shown = unitFor(kind, unit.text);
  const number = (si: number): string => `${formatNumber(fromSi(si, shown), figures)} ${shown.text}`;
  const substitution = `MS = ${number(allowable.value)} / (${factor}·${number(calculation.value)}) − 1 = ${formatNumber(last.value, figures)}`;
  const text = (): string => [title, ...steps.map(String), substitution].join('\n\n');
  const html = (): string => [...steps.map((one) => one.toHtml()), `<p>${substitution}</p>`].join('');
  return {
    steps,
    formulas: [...new Set([...carrying, last].map(({ formula }) => formula.id))],
    sources: [...new Set([...carrying.map(({ formula }) => formula.source), ...mode.sources])],
    substitution,
    toString: text,
    toHtml: html,
    ...{
      [Symbol.for('nodejs.util.inspect.custom')]: text,
      [Symbol.for('Jupyter.display')]: () => ({ 'text/plain': text(), 'text/html': html() }),
    },
  };
}

/** One step as its formula writes it out. */
const explainStep = ({ formula, given }: Step, us: boolean): Explanation =>
  formula.explain(
    Object.fromEntries(
      Object.entries(given).flatMap(([field, value]) =>
        value === undefined ? [] : [[field, shownValue(formula.inputs[field].kind, numberOf(value), us)]],
      ),
    ),
  );

function shownValue(kind: NamedKind, si: number, us: boolean): number | Quantity {
  if (kind === 'dimensionless') return si;
  const isModulus = kind === 'stress' && si > 1e10;
  return fromSiValue(si, kind, isModulus ? unitFor(kind, us ? 'Msi' : 'GPa') : shownIn(kind, us));
}
