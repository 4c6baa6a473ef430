import { type Propellant, propellant } from '../../ballistics';
import type { MotorParts } from './motor-schema';
import { nominal } from './nominal';

/** The propellant of a document in the form of the ballistics module. */
export const propellantOf = ({ burnLaw, ...part }: MotorParts['propellant']): Propellant =>
  propellant({ ...nominal(part), law: nominal(burnLaw) });
