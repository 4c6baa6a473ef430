import { isQuantity, type NamedTable } from '../../units';
import { type RetainingRingSize, retainingRingNames, retainingRingSize } from './retaining-ring-size';

/** Internal retaining rings by series and bore, or a ring with sizes of its manufacturer. */
export const retainingRings: NamedTable<RetainingRingSize> = {
  what: 'retaining ring',
  names: retainingRingNames,
  usual: [],
  find: retainingRingSize,
  is: (value): value is RetainingRingSize =>
    typeof value === 'object' &&
    value !== null &&
    ['bore', 'thickness', 'grooveDiameter', 'grooveDepth', 'grooveWidth', 'edgeMargin'].every((field) =>
      isQuantity(Reflect.get(value, field)),
    ),
};
