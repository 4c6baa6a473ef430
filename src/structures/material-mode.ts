import type { Quantity, Unit } from '../units';
import { type Calculation, type GivenValue, given } from './failure-mode/calculation';
import type { PressureDrivenMode } from './failure-mode/failure-mode';
import type { FailureModeId } from './failure-mode/mode-name';
import type { PartId } from './failure-mode/part-name';
import { allowableOf, type StrengthProperty } from './materials/allowable';
import type { Material } from './materials/material';
import { exposure as usual } from './materials/part-temperature';
import { strengthLimits } from './materials/strength-limits';

/** A part under stress: its metal and temperature, the pressure, and the factors. */
export interface StressedPart {
  readonly part: PartId;
  readonly material: Material;
  readonly temperature: Quantity<'temperature'> | undefined;
  /** Half an hour where it is undefined. */
  readonly exposure?: Quantity<'time'> | undefined;
  readonly factors: { readonly yield: number; readonly ultimate: number };
  /** Gauge chamber pressure [Pa] of the stresses. */
  readonly pressure: number;
  /** The unit of the stresses shown. */
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

/** A mode limited by a strength of the material: the yield factor for a yield strength, the ultimate factor for any other. */
export function materialMode(
  { part, material, temperature, exposure = usual.absent(), factors, pressure, unit }: StressedPart,
  { id, calculation, property, allowable: from = stressOf, failurePressure, cautions = [] }: StressedMode,
): PressureDrivenMode {
  const strength = allowableOf({
    material,
    property,
    temperature,
    exposure,
    edgeRatio: undefined,
    direction: 'least',
    basis: 'minimum',
  });
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
