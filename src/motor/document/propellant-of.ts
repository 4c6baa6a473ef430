import { type Propellant, propellant } from '../../ballistics';
import type { MotorParts } from './motor-schema';
import { nominal } from './nominal';

/** The propellant of a document in the form of the ballistics module. */
export const propellantOf = ({
  burnLaw: { covariance: _, ...law }, // of the law as fitted; MEOP uses it
  erosiveBurning: __, // of the flow along the port
  ...part
}: MotorParts['propellant']): Propellant => propellant({ ...nominal(part), law: nominal(law) });
