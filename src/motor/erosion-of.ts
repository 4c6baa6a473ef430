import type { Regression, SimulateInput } from '../ballistics';
import { fromSiValue, unitOf } from '../units';
import type { Motor } from './document';
import { nominal } from './document/nominal';

// Laws of erosive burning differ by about half of the effect (Mukunda-Paul against Lenoir-Robillard, computed here for
// tubes of 10 to 100 mm): an assumption, no source.
const assumedTolerance = 0.5;

/** What is assumed of erosive burning where the document is silent. */
export const assumedErosion =
  'propellant.erosiveBurning not specified; assumed the law of Mukunda and Paul with its standard constants, its augmentation factor 1 ± 0.5 (the law is not validated for sugar-class propellants).';

/** The motor with the law of erosive burning that is assumed where its document specifies none. */
export function withAssumedErosion(motor: Motor): Motor {
  if (motor.propellant.erosiveBurning !== undefined) return motor;
  return {
    ...motor,
    propellant: {
      ...motor.propellant,
      erosiveBurning: {
        law: 'mukunda-paul',
        augmentationFactor: {
          value: fromSiValue(1, 'dimensionless', unitOf('1')),
          plusMinus: assumedTolerance,
        },
      },
    },
  };
}

/** Whether a grain has a port from the start, along which gas flows. */
const hasPort = ({ portArea }: Regression): boolean =>
  portArea.some(({ area }) => area.si[0] > 1e-9 * area.max().si);

/** Erosive burning of a simulation: by the document, or as assumed; none in a grain without a port. */
export function erosionOf(motor: Motor, grain: Regression): Pick<SimulateInput, 'erosiveBurning'> {
  const { erosiveBurning } = withAssumedErosion(motor).propellant;
  return erosiveBurning === undefined || !hasPort(grain) ? {} : { erosiveBurning: nominal(erosiveBurning) };
}
