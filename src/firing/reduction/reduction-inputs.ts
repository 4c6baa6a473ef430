import {
  type Arguments,
  choice,
  either,
  frequency,
  length,
  list,
  optional,
  ratio,
  speed,
  type Values,
  words,
} from '../../units';
import { firingInput } from '../firing';
import { ambientPressure, expansionRatio, propellantMass, ranges, throatDiameter } from '../motor-inputs';

const channelName = words('name of a channel of the log');

/** What a log does not contain, and the selection of its channels. */
export const logFacts = {
  ambientPressure,
  pressure: optional(
    either(
      'channel of chamber pressure, or several, which are averaged; all whose names begin with pressure unless specified',
      [list('channels of chamber pressure', channelName), channelName],
    ),
  ),
  thrust: optional(words('channel of thrust; the first whose name begins with thrust unless specified')),
  title: optional(words('title of the record')),
  propellantMass: optional(propellantMass),
  throatDiameter: optional(throatDiameter),
};
export type LogFacts = Values<typeof logFacts>;

// Only ambient pressure is required; further data give further results.
export const reductionFields = {
  ...logFacts,
  finalThroatDiameter: optional(length('d_t,2', 'throat diameter after firing')),
  expansionRatio: optional(expansionRatio),
  idealCharacteristicVelocity: optional(
    speed('c*_th', 'theoretical characteristic velocity, for the combustion efficiency', { above: 0 }),
  ),
  idealThrustCoefficient: optional(
    ratio('C_F,th', 'theoretical thrust coefficient at the mean pressure, for the nozzle efficiency', {
      above: 0,
    }),
  ),
  stand: optional(
    choice('orientation of the motor on the stand', ['horizontal', 'nozzle up', 'nozzle down']),
    'horizontal',
  ),
  ranges,
  calibrationUncertainty: optional(
    ratio('u_c', 'relative standard deviation of the calibrations', { min: 0, example: 0.01 }),
    0.01,
  ),
  lowPass: optional(
    frequency('f_c', 'cutoff of a low-pass; none unless specified, since a low-pass reduces the peak'),
  ),
  prediction: optional(firingInput),
};
/** Data of the motor and the stand for a reduction. */
export type ReductionInputs = Arguments<typeof reductionFields>;
export type ReductionFacts = Values<typeof reductionFields>;

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

/** The inputs in SI units. */
export function reductionSi(facts: ReductionFacts): ReductionInputsSi {
  const throat = facts.throatDiameter?.si;
  const last = facts.finalThroatDiameter?.si ?? throat;
  const area = (d: number): number => (Math.PI / 4) * d * d;
  return {
    ambient: facts.ambientPressure.si,
    throatArea: throat === undefined ? undefined : area(throat),
    meanThroatArea: throat === undefined || last === undefined ? undefined : (area(throat) + area(last)) / 2,
    propellantMass: facts.propellantMass?.si,
    idealCharacteristicVelocity: facts.idealCharacteristicVelocity?.si,
    idealThrustCoefficient: facts.idealThrustCoefficient,
    calibrationUncertainty: facts.calibrationUncertainty,
  };
}
