import type { Measured, Motor } from '../document';

type Law = Motor['propellant']['burnLaw'];
type Band = NonNullable<Law['bands']>[number];
interface PowerLaw {
  readonly referenceRate: Measured<'speed'>;
  readonly referencePressure: Measured<'absolute pressure'>;
  readonly exponent: Measured<'dimensionless'>;
}

/** A motor whose burn law has its rate at the pressure about which rate and exponent are uncertain, and what was assumed. */
export interface LawAboutMiddle {
  readonly motor: Motor;
  readonly assumptions: readonly string[];
}

/**
 * Writes the burn law of a motor as the rate at the middle of its measurements, where the errors of rate and exponent are
 * independent. Without this the exponent would turn the law about whatever reference pressure it is quoted at, and one law
 * would have several worst cases. `peak` is the nominal peak pressure [Pa, absolute].
 */
export function lawAboutMiddle(motor: Motor, peak: number): LawAboutMiddle {
  const { burnLaw } = motor.propellant;
  const { referenceRate, referencePressure, exponent, bands, covariance } = burnLaw;
  const rewritten = (law: Partial<Law>): Motor => ({
    ...motor,
    propellant: { ...motor.propellant, burnLaw: { ...burnLaw, ...law } },
  });
  if (bands !== undefined) {
    const about = bands.map((band) => (isUncertain(band) ? aboutBand(band, burnLaw) : band));
    return bands.some(isUncertain)
      ? {
          motor: rewritten({ bands: about }),
          assumptions: [
            'The uncertainty of rate and exponent of each band is taken about the geometric mean of its characterised pressures.',
          ],
        }
      : { motor, assumptions: [] };
  }
  if (referenceRate === undefined || referencePressure === undefined || exponent === undefined)
    return { motor, assumptions: [] }; // not reached: a law without bands has all three
  const law = { referenceRate, referencePressure, exponent };
  if (covariance !== undefined) {
    const [ofCoefficient = 0, both = 0, ofExponent = 0] = covariance.map(({ value }) => value.si);
    const middle = Math.exp(-both / ofExponent);
    // The errors at this pressure are not correlated; a tolerance is two standard deviations.
    const rate = 2 * Math.sqrt(Math.max(0, ofCoefficient - both ** 2 / ofExponent));
    const about = lawAt(law, middle);
    return {
      motor: rewritten({
        ...about,
        referenceRate: { ...about.referenceRate, plusMinus: about.referenceRate.value.si * rate },
        exponent: { ...exponent, plusMinus: 2 * Math.sqrt(ofExponent) },
      }),
      assumptions: [
        `The uncertainty of the burn law is that of its covariance: ±${(100 * rate).toPrecision(3)} % of the rate at ${about.referencePressure.value} and ±${(2 * Math.sqrt(ofExponent)).toPrecision(3)} of the exponent (two standard deviations of the fitted law; scatter between batches is not included).`,
      ],
    };
  }
  if (!isUncertain(law)) return { motor, assumptions: [] };
  const [from, to] = [burnLaw.characterisedFrom?.value.si, burnLaw.characterisedTo?.value.si];
  const middle = Math.sqrt((from ?? motor.ambient.pressure.value.si) * (to ?? peak));
  const about = lawAt(law, middle);
  const missing = [
    ...(from === undefined ? ['propellant.burnLaw.characterisedFrom'] : []),
    ...(to === undefined ? ['propellant.burnLaw.characterisedTo'] : []),
  ];
  const ends = `${from === undefined ? 'ambient pressure' : burnLaw.characterisedFrom?.value} and ${to === undefined ? 'the nominal peak pressure' : burnLaw.characterisedTo?.value}`;
  return {
    motor: rewritten(about),
    assumptions: [
      missing.length === 0
        ? `The uncertainty of rate and exponent is taken about ${about.referencePressure.value}, the geometric mean of the characterised pressures.`
        : `${missing.join(' and ')} not specified; the uncertainty of rate and exponent is taken about ${about.referencePressure.value}, the geometric mean of ${ends}.`,
    ],
  };
}

const isUncertain = ({ exponent }: PowerLaw): boolean => exponent.plusMinus > 0;

/** A band, about the middle of the part of it that is characterised, or of all of it. */
function aboutBand(band: Band, { characterisedFrom, characterisedTo }: Law): Band {
  const low = Math.max(band.from.value.si, characterisedFrom?.value.si ?? 0);
  const high = Math.min(band.to.value.si, characterisedTo?.value.si ?? Number.POSITIVE_INFINITY);
  const [from, to] = low < high ? [low, high] : [band.from.value.si, band.to.value.si];
  return { ...band, ...lawAt(band, Math.sqrt(from * to)) };
}

/** The same law with its rate at another pressure [Pa]; relative tolerances are kept. */
function lawAt({ referenceRate, referencePressure, exponent }: PowerLaw, pressure: number): PowerLaw {
  const rise = (pressure / referencePressure.value.si) ** exponent.value.si;
  return {
    referenceRate: scaled(referenceRate, rise),
    referencePressure: scaled(referencePressure, pressure / referencePressure.value.si),
    exponent,
  };
}

const scaled = <K extends 'speed' | 'absolute pressure'>(
  { value, plusMinus }: Measured<K>,
  factor: number,
): Measured<K> => ({ value: value.times(factor), plusMinus: plusMinus * factor });
