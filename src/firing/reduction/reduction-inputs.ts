import { MeopError, type QuantityInput, readInput } from '../../units';
import type { Firing } from '../firing';

/** Data of the motor and the stand. Only ambient pressure is required; further data give further results. */
export interface ReductionInputs {
  readonly ambientPressure: QuantityInput<'absolute pressure'>;
  readonly title?: string;
  /** Throat diameter before firing. */
  readonly throatDiameter?: QuantityInput<'length'>;
  /** Throat diameter after firing. */
  readonly finalThroatDiameter?: QuantityInput<'length'>;
  /** Nozzle exit area/throat area. */
  readonly expansionRatio?: number;
  /** Mass of propellant burned. */
  readonly propellantMass?: QuantityInput<'mass'>;
  /** Theoretical c*, for the combustion efficiency. */
  readonly idealCharacteristicVelocity?: QuantityInput<'speed'>;
  /** Theoretical thrust coefficient at the mean pressure, for the nozzle efficiency. */
  readonly idealThrustCoefficient?: number;
  /** Orientation of the motor on the stand. Default `'horizontal'`. */
  readonly stand?: 'horizontal' | 'nozzle up' | 'nozzle down';
  /** Channels of pressure and thrust in the log, where their names do not identify them. */
  readonly pressure?: string | readonly string[];
  readonly thrust?: string;
  /** Upper limits of the ranges of the channels, where no calibration states them. */
  readonly ranges?: {
    readonly pressure?: QuantityInput<'absolute pressure'>;
    readonly thrust?: QuantityInput<'force'>;
  };
  /** Relative standard deviation of the calibrations. Default 0.01. */
  readonly calibrationUncertainty?: number;
  /** Cutoff of a low-pass. Default: none, since a low-pass reduces the peak. */
  readonly lowPass?: QuantityInput<'frequency'>;
  /** A predicted firing, whose shape may bound a clipped peak. */
  readonly prediction?: Firing;
}

/** The same data in SI units. */
export interface ReductionInputsSi {
  readonly ambient: number;
  readonly throatArea: number | undefined;
  /** Mean of the throat areas before and after firing. */
  readonly meanThroatArea: number | undefined;
  readonly propellantMass: number | undefined;
  readonly idealCharacteristicVelocity: number | undefined;
  readonly idealThrustCoefficient: number | undefined;
  readonly calibrationUncertainty: number;
}

/** Reads the inputs into SI units. @throws MeopError with the field that is wrong */
export function readReductionInputs(facts: ReductionInputs): ReductionInputsSi {
  const read = (
    kind: 'length' | 'mass' | 'speed',
    field: 'throatDiameter' | 'finalThroatDiameter' | 'propellantMass' | 'idealCharacteristicVelocity',
  ): number | undefined => {
    const given = facts[field];
    if (given === undefined) return undefined;
    const { si } = readInput(kind, field, given, 'reduceFiring');
    if (si > 0) return si;
    throw new MeopError(
      'out-of-domain',
      `reduceFiring: ${field} must be greater than 0, got ${String(given)}`,
      field,
      {
        value: given,
      },
    );
  };
  const throat = read('length', 'throatDiameter');
  const last = read('length', 'finalThroatDiameter') ?? throat;
  const area = (d: number): number => (Math.PI / 4) * d * d;
  return {
    ambient: readInput('absolute pressure', 'ambientPressure', facts.ambientPressure, 'reduceFiring').si,
    throatArea: throat === undefined ? undefined : area(throat),
    meanThroatArea: throat === undefined || last === undefined ? undefined : (area(throat) + area(last)) / 2,
    propellantMass: read('mass', 'propellantMass'),
    idealCharacteristicVelocity: read('speed', 'idealCharacteristicVelocity'),
    idealThrustCoefficient: facts.idealThrustCoefficient,
    calibrationUncertainty: facts.calibrationUncertainty ?? 0.01,
  };
}
