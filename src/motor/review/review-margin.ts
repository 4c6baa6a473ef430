import { type Margin, marginOfSafety } from '../../structures';
import { fromSiValue, type Quantity, unitOf } from '../../units';
import type { ReviewMargin, ReviewPart } from './review-result';

/** What {@link reviewMargin} adds to a margin. */
export interface MarginContext {
  readonly part: ReviewPart;
  readonly formulas: readonly string[];
  /** The calculation of the stress or load, where a formula explains it. */
  readonly steps?: () => readonly { toString(): string }[];
  /** Where the chamber pressure drives the mode in proportion. */
  readonly meop?: Quantity<'gauge pressure'>;
  /** The pressure that uses it up, where it is driven otherwise. */
  readonly failurePressure?: Quantity<'gauge pressure'>;
}

/** A margin of the review, with the pressure that uses it up and its hand calculation. */
export function reviewMargin(
  margin: Margin,
  { part, formulas, steps, meop, failurePressure }: MarginContext,
): ReviewMargin {
  const { applied, allowable, factor } = margin;
  return {
    ...margin,
    part,
    formulas: [...formulas, 'marginOfSafety'],
    ...(meop !== undefined && {
      failurePressure: fromSiValue<'gauge pressure'>(
        (meop.si * allowable.si) / applied.si,
        'gauge pressure',
        unitOf(meop.unit),
      ),
    }),
    ...(failurePressure !== undefined && { failurePressure }),
    explain: () => {
      const said = (steps?.() ?? []).map(String);
      // The working of a joint ends with its margin by itself.
      const hasMargin = said.at(-1)?.includes('MS = ') === true;
      const shown = [
        `${part}: ${margin.mode}`,
        ...said,
        ...(hasMargin ? [] : [marginText(applied, allowable, factor)]),
      ].join('\n\n');
      return {
        toString: () => shown,
        ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => shown },
        ...{ [Symbol.for('Jupyter.display')]: () => ({ 'text/plain': shown }) },
      };
    },
  };
}

function marginText(applied: Quantity, allowable: Quantity, factor: number): string {
  const isStress = applied.kind === 'stress' && allowable.kind === 'stress';
  if (isStress)
    return String(
      marginOfSafety.explain({ applied: applied.as('stress'), allowable: allowable.as('stress'), factor }),
    );
  const margin = marginOfSafety.si({ applied: applied.si, allowable: allowable.si, factor });
  return [
    marginOfSafety.equation,
    `f = ${applied}, F = ${allowable}, FS = ${factor}`,
    `MS = ${allowable} / (${factor} · ${applied}) − 1 = ${Number(margin.toPrecision(4))}`,
    `source: ${marginOfSafety.source}`,
  ].join('\n');
}
