import { fromSiValue, type Quantity, unitFor } from '../../units';
import type { PressureDrivenMode } from '../failure-mode/failure-mode';
import type { ClosureCheck } from './closure-review';
import { bendingEdgeMargin, shearEdgeMargin, tabulatedEdgeMargin } from './edge-margin';
import type { RetainingRingModes, RetainingRingSi } from './retaining-ring-modes';

/** Part of the wall that practice leaves under a groove. */
const wallLeft = 0.6;

/** Checks of a ring and its groove without a margin of safety: the wall under the groove, and the edge margin of the ring tables. */
export function retainingRingChecks(
  ring: RetainingRingSi,
  { load, modes }: RetainingRingModes,
  us: boolean,
): readonly ClosureCheck[] {
  const { boreDiameter, grooveDepth, edgeMargin, wall } = ring;
  const left = 1 - grooveDepth / wall;
  const bearing = modes.find(({ id }) => id === 'groove-bearing-yield');
  return [
    {
      check: 'wall under the groove',
      value: Number(left.toPrecision(4)),
      limit: wallLeft,
      passes: left >= wallLeft,
      message: `The groove leaves ${percent(left)} of the wall (required ≥ ${percent(wallLeft)}).`,
      source: 'engineering practice, no published source',
    },
    ...(bearing === undefined
      ? []
      : [
          edgeCheck(
            requiredEdgeMargin(
              { load: load.value, grooveDiameter: boreDiameter + 2 * grooveDepth, grooveDepth },
              bearing,
            ),
            edgeMargin,
            us ? 'in' : 'mm',
          ),
        ]),
  ];
}

interface Required {
  readonly si: number;
  readonly by: string;
  readonly source: string;
}

/** The longest of three: shear and bending of the land with the yield strength and the yield factor, and three groove depths. */
function requiredEdgeMargin(
  groove: { readonly load: number; readonly grooveDiameter: number; readonly grooveDepth: number },
  { allowable, factor }: PressureDrivenMode,
): Required {
  const { load, grooveDiameter, grooveDepth } = groove;
  const land = { load, grooveDiameter, yieldStrength: allowable.value, factor };
  const all: readonly Required[] = [
    {
      si: tabulatedEdgeMargin.si({ grooveDepth }),
      by: 'three groove depths',
      source: tabulatedEdgeMargin.source,
    },
    { si: shearEdgeMargin.si(land), by: 'shear of the land', source: shearEdgeMargin.source },
    {
      si: bendingEdgeMargin.si({ ...land, grooveDepth }),
      by: 'bending of the land',
      source: bendingEdgeMargin.source,
    },
  ];
  return all.reduce((most, one) => (one.si > most.si ? one : most));
}

function edgeCheck({ si, by, source }: Required, edgeMargin: number, unit: 'in' | 'mm'): ClosureCheck {
  const shown = (value: number): Quantity<'length'> =>
    fromSiValue<'length'>(value, 'length', unitFor('length', unit));
  const text = (value: number): string => `${Number(shown(value).in(unit).toPrecision(4))} ${unit}`;
  return {
    check: 'edge margin of the groove',
    value: shown(edgeMargin),
    limit: shown(si),
    passes: edgeMargin >= si * (1 - 1e-9),
    message: `The edge margin is ${text(edgeMargin)} (required ≥ ${text(si)}, ${by}).`,
    source,
  };
}

const percent = (part: number): string => `${Number((100 * part).toPrecision(3))} %`;
