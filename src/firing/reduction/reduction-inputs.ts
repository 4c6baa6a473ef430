import { MeopError, type QuantityInput, readInput } from '../../units';
import type { Firing } from '../firing';

/** What is known of the motor and the stand. Only ambient pressure is needed; each further fact gives further numbers. */
export interface ReductionInputs {
  readonly ambientPressure: QuantityInput<'absolute pressure'>;
  readonly title?: string;
  /** Throat before firing. */
  readonly throatDiameter?: QuantityInput<'length'>;
  /** Throat after firing. */
  readonly finalThroatDiameter?: QuantityInput<'length'>;
  /** Exit over throat area. */
  readonly expansionRatio?: number;
  /** Propellant burned. */
  readonly propellantMass?: QuantityInput<'mass'>;
  /** Theoretical c*, for the combustion efficiency. */
  readonly idealCharacteristicVelocity?: QuantityInput<'speed'>;
  /** Theoretical thrust coefficient at the mean pressure, for the nozzle efficiency. */
  readonly idealThrustCoefficient?: number;
  /** How the motor lies on the stand. Default `'horizontal'`. */
  readonly stand?: 'horizontal' | 'nozzle up' | 'nozzle down';
  /** Channels of pressure and thrust in the log, where their names do not say it. */
  readonly pressure?: string | readonly string[];
  readonly thrust?: string;
  /** Largest values that the channels can tell, where no calibration says it. */
  readonly ranges?: {
    readonly pressure?: QuantityInput<'absolute pressure'>;
    readonly thrust?: QuantityInput<'force'>;
  };
  /** Standard deviation of the calibrations as a share. Default 0.01. */
  readonly calibrationUncertainty?: number;
  /** Low-pass to apply; none by default, since it eats the peak. */
  readonly lowPass?: QuantityInput<'frequency'>;
  /** A predicted firing whose shape may bound a clipped peak. */
  readonly prediction?: Firing;
}

/** The same in SI. */
export interface ReductionInputsSi {
  readonly ambient: number;
  readonly throatArea: number | undefined;
  /** Mean of the areas before and after. */
  readonly meanThroatArea: number | undefined;
  readonly propellantMass: number | undefined;
  readonly idealCharacteristicVelocity: number | undefined;
  readonly idealThrustCoefficient: number | undefined;
  readonly calibrationUncertainty: number;
}

/** @throws MeopError naming the fact that is wrong */
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
      `reduceFiring: ${field}: ${String(given)} given; above 0 is expected`,
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
