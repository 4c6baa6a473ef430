import {
  type Arguments,
  absolutePressure,
  choice,
  inputs,
  list,
  optional,
  ratio,
  speed,
  temperature,
  temperatureSensitivity,
  unitName,
  words,
} from '../units';

/** One power law r = r_ref·(p / p_ref)ⁿ. */
export const powerLaw = {
  referenceRate: speed('r_ref', 'burning rate at the reference pressure', { above: 0, example: '8 mm/s' }),
  referencePressure: absolutePressure('p_ref', 'reference pressure of that rate', { example: '4 MPaa' }),
  exponent: ratio('n', 'pressure exponent; no chamber pressure is stable from 1 on', {
    below: 1,
    example: 0.3,
  }),
};

/** Units of a burn-rate coefficient: those of r and p in r = a·pⁿ. */
export const coefficientUnits = {
  rateUnit: unitName('speed', 'unit of r in r = a·pⁿ', { example: 'mm/s' }),
  pressureUnit: unitName('absolute pressure', 'unit of p in r = a·pⁿ', { example: 'MPa' }),
};

/** A measured burning rate. */
export const ratePoint = inputs(
  {
    pressure: absolutePressure('p', 'chamber pressure', { example: '2 MPa' }),
    rate: speed('r', 'burning rate at that pressure', { above: 0, example: '6 mm/s' }),
  },
  { meaning: 'a measured burning rate' },
);

/** The ways in which a power law is quoted, of which one is given. */
const quotedLaw = {
  coefficient: optional(
    ratio('a', 'coefficient a of r = a·pⁿ in the units named', { above: 0, example: 8.26 }),
  ),
  rateUnit: optional(coefficientUnits.rateUnit),
  pressureUnit: optional(coefficientUnits.pressureUnit),
  referenceRate: optional(powerLaw.referenceRate),
  referencePressure: optional(powerLaw.referencePressure),
  exponent: optional(powerLaw.exponent),
  through: optional(list('two points that the law passes through', ratePoint, { min: 2, max: 2 })),
};

/** One band of a burn law. */
export const burnLawBand = inputs(
  {
    from: absolutePressure('p_1', 'lower limit of the band, included in it', { example: '0.1 MPaa' }),
    to: absolutePressure('p_2', 'upper limit of the band', { example: '3 MPaa' }),
    ...quotedLaw,
  },
  { meaning: 'a power law and the pressures between which it is valid' },
);

/** A burn law: one power law, or bands of them. */
export const burnLawInputs = inputs(
  {
    ...quotedLaw,
    bands: optional(list('bands, each beginning where the previous one ends', burnLawBand, { min: 0 })),
    characterisedFrom: optional(
      absolutePressure('p_min', 'minimum pressure of the characterisation', { example: '1 MPaa' }),
    ),
    characterisedTo: optional(
      absolutePressure('p_max', 'maximum pressure of the characterisation', { example: '7 MPaa' }),
    ),
    outside: optional(
      choice('treatment of pressures outside the characterised range', ['extrapolate', 'clamp', 'error']),
      'extrapolate',
    ),
    temperatureSensitivity: optional(
      temperatureSensitivity('σ_p', 'relative change of rate by grain temperature at constant pressure', {
        example: '0.0015 1/K',
      }),
    ),
    // Engineering practice, no published source.
    referenceTemperature: optional(
      temperature('T_ref', 'grain temperature of the characterisation', { example: '21 degC' }),
      294.15,
    ),
    source: optional(words('source of the burn law'), 'no source given'),
  },
  {
    meaning:
      'burn law: a coefficient with its units and exponent; a rate at a pressure and an exponent; two points; or bands',
  },
);

/** A burn law as it is quoted. */
export type SaintRobertInput = Arguments<typeof burnLawInputs.fields>;
