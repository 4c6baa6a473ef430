import { erosiveBurning } from '../../ballistics/inputs';
import {
  absolutePressure,
  density,
  inputs,
  list,
  molarMass,
  optional,
  ratio,
  speed,
  temperature,
  temperatureSensitivity,
  words,
} from '../../units';
import { inputOf } from '../../units/declare/plain-inputs';

// Wider than any solid propellant (engineering practice, no published source): a unit error is outside.
const solid = { min: 500, max: 4000, worse: 'neither' } as const;
const regression = { min: 1e-5, max: 0.5 };

const powerLaw = {
  referenceRate: speed('r_ref', 'burning rate at the reference pressure', {
    ...regression,
    example: '8 mm/s',
    worse: 'neither',
  }),
  referencePressure: absolutePressure('p_ref', 'reference pressure of the rate', {
    example: '4 MPaa',
    worse: 'neither',
  }),
  // At 1 or more no chamber pressure is stable.
  exponent: ratio('n', 'pressure exponent n', { above: -3, below: 1, example: 0.3, worse: 'neither' }),
};

const coefficient =
  "Give the coefficient as a rate at a pressure: a in mm/s with p in MPa is referenceRate 'a mm/s' at referencePressure '1 MPaa'; a in in/s with p in psi is referenceRate 'a in/s' at '1 psia'";

/**
 * A burn law in the document: one power law, or several pressure bands. Enter a coefficient a with its units as the rate at
 * a pressure.
 */
const burnLaw = /* @__PURE__ */ inputs(
  {
    referenceRate: optional(powerLaw.referenceRate),
    referencePressure: optional(powerLaw.referencePressure),
    exponent: optional(powerLaw.exponent),
    bands: optional(
      list(
        'bands, each starting at the end of the previous one',
        inputs(
          {
            from: absolutePressure('p_1', 'lower limit of the band', {
              example: '0.1 MPaa',
              worse: 'neither',
            }),
            to: absolutePressure('p_2', 'upper limit of the band', { example: '3 MPaa', worse: 'neither' }),
            ...powerLaw,
          },
          { meaning: 'band of the burn law' },
        ),
      ),
    ),
    characterisedFrom: optional(
      absolutePressure('p_min', 'minimum measured pressure', { example: '1 MPaa', worse: 'neither' }),
    ),
    characterisedTo: optional(
      absolutePressure('p_max', 'maximum measured pressure', { example: '7 MPaa', worse: 'neither' }),
    ),
    covariance: optional(
      list(
        'covariance of a fitted law, as fitBurnLaw returns it: variance of ln a (a in m/s and Pa), covariance, variance of n; instead of tolerances of rate and exponent',
        ratio('V', 'variance or covariance', { example: 1e-4, worse: 'neither' }),
      ),
    ),
    temperatureSensitivity: optional(
      temperatureSensitivity('σ_p', 'relative change of rate with grain temperature', {
        min: -0.02,
        max: 0.02,
        example: '0.0015 1/K',
        worse: 'neither',
      }),
    ),
    referenceTemperature: optional(
      temperature('T_ref', 'grain temperature of the measurements', {
        above: 0,
        example: '21 degC',
        worse: 'neither',
      }),
    ),
    source: words('source of the law'),
  },
  {
    meaning:
      'burn law: referenceRate, referencePressure and exponent, or bands; for r = a·p^n, a in mm/s with p in MPa is the rate at 1 MPaa',
    instead: { a: coefficient, coefficient, n: "did you mean 'exponent'?" },
  },
);

const sources = inputOf<Readonly<Record<string, string>>, Readonly<Record<string, string>>>({
  type: 'texts',
  meaning: 'sources of values, by field',
  takes: () => '{ field: text, … }',
  read: () => ({}),
});

/** The propellant in the form of the analysis. */
export const propellantInputs = /* @__PURE__ */ inputs(
  {
    name: words('name of the propellant'),
    density: density('ρ', 'density as cast; weigh a grain', { ...solid, example: '1780 kg/m^3' }),
    idealDensity: optional(density('ρ_0', 'density without voids', { ...solid, example: '1841 kg/m^3' })),
    burnLaw,
    gamma: ratio('γ', 'ratio of specific heats', {
      above: 1,
      max: 5 / 3,
      example: 1.14,
      worse: 'neither',
    }),
    molarMass: optional(
      molarMass('M', 'molar mass of all products', {
        min: 5e-3,
        max: 0.2,
        example: '40 g/mol',
        worse: 'neither',
      }),
    ),
    flameTemperature: optional(
      temperature('T_0', 'flame temperature without losses', {
        min: 500,
        max: 5000,
        example: '1600 K',
        worse: 'neither',
      }),
    ),
    idealCharacteristicVelocity: optional(
      speed('c*_0', 'characteristic velocity without losses', {
        min: 200,
        max: 3000,
        example: '906 m/s',
        worse: 'neither',
      }),
    ),
    characteristicVelocityEfficiency: ratio('η_c', 'delivered/ideal characteristic velocity', {
      above: 0,
      below: 1.1,
      example: 0.95,
      worse: 'neither',
    }),
    condensedFraction: optional(
      ratio('x_c', 'mass fraction of liquid and solid products', {
        min: 0,
        below: 1,
        example: 0.4,
        worse: 'neither',
      }),
    ),
    erosiveBurning: optional(erosiveBurning),
    sources: optional(sources),
  },
  { meaning: 'propellant' },
);
