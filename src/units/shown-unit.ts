import { coherentText } from './dimension';
import { dimensionOfKind, type Kind, kindFacts } from './kinds';
import { type Unit, unitFor } from './unit';

const shown = new Map<Kind, readonly [metric: Unit, us: Unit]>(); // computed once, because products are frequent

/** Default unit of a kind: metric or US, like the quantities from which it was computed. */
export function shownIn(kind: Kind, us: boolean): Unit {
  let units = shown.get(kind);
  if (!units) {
    const coherent = coherentText(dimensionOfKind(kind));
    const { metric, us: american } = kindFacts(kind) ?? { metric: coherent, us: coherent };
    units = [unitFor(kind, metric), unitFor(kind, american)];
    shown.set(kind, units);
  }
  return units[us ? 1 : 0];
}

/** The units in which a kind is shown: one or, where the US one differs, two. */
export const shownUnits = (kind: Kind): readonly Unit[] => [
  ...new Set([shownIn(kind, false), shownIn(kind, true)]),
];
