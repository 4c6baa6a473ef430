import { isQuantity, type NamedTable } from '../../units';
import { type ORing, oRing } from './o-ring';
import { sizeRuns } from './o-ring-table';

/** O-rings by AS568 dash number, or a ring of other sizes. */
export const oRings: NamedTable<ORing> = {
  what: 'size of O-ring',
  names: () =>
    sizeRuns.flatMap(({ from, insideDiameters }) =>
      insideDiameters.split(/\s+/).map((_, i) => String(from + i).padStart(3, '0')),
    ),
  usual: [],
  find: oRing,
  is: (value): value is ORing =>
    typeof value === 'object' &&
    value !== null &&
    ['insideDiameter', 'insideDiameterTolerance', 'crossSection', 'crossSectionTolerance'].every((field) =>
      isQuantity(Reflect.get(value, field)),
    ),
};
