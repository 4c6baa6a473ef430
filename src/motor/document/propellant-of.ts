import { type Propellant, propellant, type SaintRobertInput } from '../../ballistics';
import { MeopError } from '../../units';
import type { MotorParts } from './motor-schema';

/** The propellant of a document in the form of the ballistics module. */
export function propellantOf(part: MotorParts['propellant']): Propellant {
  const { burnLaw, sources = {} } = part;
  return propellant({
    name: part.name,
    density: part.density.value,
    ...(part.idealDensity && { idealDensity: part.idealDensity.value }),
    law: lawOf(burnLaw),
    gamma: part.gamma.value.si,
    ...(part.molarMass && { molarMass: part.molarMass.value }),
    ...(part.flameTemperature && { flameTemperature: part.flameTemperature.value }),
    ...(part.idealCharacteristicVelocity && {
      idealCharacteristicVelocity: part.idealCharacteristicVelocity.value,
    }),
    characteristicVelocityEfficiency: part.characteristicVelocityEfficiency.value.si,
    ...(part.condensedFraction && { condensedFraction: part.condensedFraction.value.si }),
    sources,
  });
}

function lawOf(burnLaw: MotorParts['propellant']['burnLaw']): SaintRobertInput {
  const { bands, referenceRate, referencePressure, exponent } = burnLaw;
  const facts = {
    ...(burnLaw.characterisedFrom && { characterisedFrom: burnLaw.characterisedFrom.value }),
    ...(burnLaw.characterisedTo && { characterisedTo: burnLaw.characterisedTo.value }),
    ...(burnLaw.temperatureSensitivity && { temperatureSensitivity: burnLaw.temperatureSensitivity.value }),
    ...(burnLaw.referenceTemperature && { referenceTemperature: burnLaw.referenceTemperature.value }),
    source: burnLaw.source,
  };
  if (bands)
    return {
      bands: bands.map((band) => ({
        from: band.from.value,
        to: band.to.value,
        referenceRate: band.referenceRate.value,
        referencePressure: band.referencePressure.value,
        exponent: band.exponent.value.si,
      })),
      ...facts,
    };
  if (referenceRate && referencePressure && exponent)
    return {
      referenceRate: referenceRate.value,
      referencePressure: referencePressure.value,
      exponent: exponent.value.si,
      ...facts,
    };
  throw new MeopError(
    'missing-field',
    'propellant: burnLaw: missing required fields referenceRate, referencePressure and exponent, or bands',
    'burnLaw',
  );
}
