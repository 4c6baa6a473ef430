import type { FailureMargin } from './failure-margin';

/**
 * The worst case of several analyses of one part, such as its largest and its smallest sizes: for each mode the minimum
 * margin and the minimum failure pressure.
 */
export function leastFavourable<M extends FailureMargin>(variants: readonly (readonly M[])[]): readonly M[] {
  const all = variants.flat();
  return [...new Set(all.map(({ id }) => id))].map((id) => {
    const [first, ...others] = all.filter((one) => one.id === id);
    const least = others.reduce((a, b) => (b.marginOfSafety < a.marginOfSafety ? b : a), first);
    const soonest = others.reduce((a, b) => (pressureOf(b) < pressureOf(a) ? b : a), first);
    return soonest === least ? least : { ...least, failurePressure: soonest.failurePressure };
  });
}

const pressureOf = ({ failurePressure }: FailureMargin): number =>
  failurePressure?.si ?? Number.POSITIVE_INFINITY;
