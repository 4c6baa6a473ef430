import { fromSiValue, type QuantityInput, type Unit } from '../../units';
import type { readFactors } from '../joint/joint-factors';
import { type Margin, margin } from '../margin';
import { allowable, type Material, type StrengthProperty } from '../materials';

/** A part of a closure as it is judged: its metal, how hot it is, and the factors that count. */
export interface JudgedPart {
  readonly material: Material;
  readonly temperature: QuantityInput<'temperature'> | undefined;
  readonly exposure: QuantityInput<'time'> | undefined;
  readonly factors: ReturnType<typeof readFactors>;
  /** That stresses are shown in. */
  readonly unit: Unit;
}

/** A stress in a part and the strength that it is held against. */
export interface PartStress {
  readonly mode: string;
  /** [Pa] */
  readonly applied: number;
  readonly property: StrengthProperty;
  readonly source: string;
  /** The stress [Pa] at which the part lets go, where that is not the strength itself. */
  readonly carried?: (strength: number) => number;
}

/** The margin of a part, by the factor on yield for a yield strength and by that on rupture for any other. */
export function partMargin(
  { material, temperature, exposure, factors, unit }: JudgedPart,
  { mode, applied, property, source, carried = (strength) => strength }: PartStress,
): Margin {
  const strength = allowable({ material, property, temperature, exposure });
  return margin({
    mode,
    applied: fromSiValue(applied, 'stress', unit),
    allowable: fromSiValue(carried(strength.value.si), 'stress', unit),
    factor: property.includes('yield') ? factors.yield : factors.ultimate,
    temperature: strength.temperature,
    source: `${source}; strength: ${strength.source}`,
    cautions: strength.cautions,
  });
}
