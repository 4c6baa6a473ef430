import type { QuantityInput, Unit } from '../units';
import { type Calculation, type GivenValue, given } from './failure-mode/calculation';
import type { PressureDrivenMode } from './failure-mode/failure-mode';
import type { FailureModeId } from './failure-mode/mode-name';
import type { PartId } from './failure-mode/part-name';
import { allowable, type StrengthProperty } from './materials/allowable';
import type { Material } from './materials/material';
import { strengthLimits } from './materials/strength-limits';

/** A part as it is analysed: its metal, how hot it is, the pressure, and the factors that count. */
export interface StressedPart {
  readonly part: PartId;
  readonly material: Material;
  readonly temperature: QuantityInput<'temperature'> | undefined;
  readonly exposure: QuantityInput<'time'> | undefined;
  readonly factors: { readonly yield: number; readonly ultimate: number };
  /** Gauge chamber pressure [Pa] that the stresses are for. */
  readonly pressure: number;
  /** That stresses are shown in. */
  readonly unit: Unit;
}

/** A stress in a part and the strength that it is compared with. */
export interface StressedMode {
  readonly id: FailureModeId;
  readonly calculation: Calculation;
  readonly property: StrengthProperty;
  /** The stress at which the part fails, where that is not the strength itself. */
  readonly allowable?: (strength: number) => Calculation;
  readonly failurePressure?: (strength: number) => number;
  readonly cautions?: readonly string[];
}

/** A mode judged by a strength of the material: the factor on yield for a yield strength, that on rupture for any other. */
export function materialMode(
  { part, material, temperature, exposure, factors, pressure, unit }: StressedPart,
  { id, calculation, property, allowable: from = stressOf, failurePressure, cautions = [] }: StressedMode,
): PressureDrivenMode {
  const strength = allowable({ material, property, temperature, exposure });
  const limit = strengthLimits[property];
  return {
    id,
    part,
    limit,
    calculation,
    allowable: from(strength.value.si),
    factor: factors[limit],
    pressure,
    failurePressure: failurePressure?.(strength.value.si),
    temperature: strength.temperature,
    unit,
    sources: [`strength: ${strength.source}`],
    cautions: [...strength.cautions, ...cautions],
  };
}

const stressOf = (si: number): GivenValue => given('stress', si);
