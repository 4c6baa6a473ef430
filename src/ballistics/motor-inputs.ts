import { expansionRatio, throatDiameter } from '../firing/motor-inputs';
import { separationCriteria } from '../nozzle/inputs';
import {
  absolutePressure,
  type Conflict,
  choice,
  gaugePressure,
  inputs,
  length,
  mass,
  molarMass,
  optional,
  type Quantity,
  ratio,
  speed,
  temperature,
  time,
  volume,
} from '../units';

/** Temperature of the grain before ignition. */
export const grainTemperature = temperature('T_p', 'initial grain temperature', { example: '21 degC' });

/** Change of the throat radius during the firing: ṙ = ṙ_ref·(p / p_ref)^m. */
export const throatErosion = inputs(
  {
    referenceRate: speed(
      'ṙ_ref',
      'recession rate of the throat radius at the reference pressure; negative where deposits build up',
      { example: '0.02 mm/s', worse: 'firing low' },
    ),
    referencePressure: optional(
      absolutePressure('p_ref', 'pressure of that rate; required with an exponent', { example: '4 MPaa' }),
    ),
    exponent: optional(ratio('m', 'pressure exponent of the recession rate'), 0),
    delay: optional(time('t_d', 'time before the throat begins to recede', { min: 0 }), 0),
  },
  {
    meaning: 'recession of the throat',
    checks: [
      ({ exponent, referencePressure }) =>
        exponent !== 0 && referencePressure === undefined
          ? { code: 'missing-field', path: 'referencePressure', expected: 'pressure of the reference rate' }
          : undefined,
    ],
  },
);

/** The nozzle of a simulated motor. */
export const nozzle = inputs(
  {
    throatDiameter,
    expansionRatio: optional(expansionRatio),
    exitDiameter: optional(
      length('d_e', 'exit diameter, instead of the expansion ratio', { example: '28 mm' }),
    ),
    dischargeCoefficient: optional(
      ratio('C_d', 'mass flow/mass flow of the ideal throat', { above: 0, max: 1.05, example: 0.98 }),
      1,
    ),
    efficiency: optional(
      ratio('η_F', 'thrust/ideal thrust: divergence, friction and two-phase lag together', {
        above: 0,
        max: 1.05,
        example: 0.95,
        worse: 'firing high',
      }),
      1,
    ),
    separation: optional(
      choice("criterion of flow separation in an over-expanded nozzle; 'none': full flowing", [
        ...separationCriteria,
        'none',
      ]),
      'summerfield',
    ),
    throatErosion: optional(throatErosion),
  },
  {
    meaning: 'nozzle',
    checks: [
      ({ expansionRatio: ratioGiven, exitDiameter }) =>
        (ratioGiven === undefined) === (exitDiameter === undefined)
          ? {
              code: 'missing-field',
              path: 'expansionRatio',
              problem: 'exactly one of expansionRatio and exitDiameter is required',
            }
          : undefined,
      ({ exitDiameter, throatDiameter: throat }) =>
        exitDiameter !== undefined && exitDiameter.si < throat.si
          ? { path: 'exitDiameter', given: exitDiameter, expected: `at least the throat diameter, ${throat}` }
          : undefined,
    ],
  },
);

/** The empty chamber of a simulated motor. */
export const chamber = inputs(
  {
    volume: optional(volume('V', 'volume of the empty chamber', { example: '220 cm^3' })),
    innerDiameter: optional(length('d', 'inside diameter of the chamber', { example: '50 mm' })),
    length: optional(length('l', 'length of the chamber', { example: '110 mm' })),
    burstPressure: optional(
      gaugePressure('p_b', 'pressure at which the chamber bursts and the simulation ends', {
        above: 0,
        example: '20 MPa',
      }),
    ),
  },
  {
    meaning: 'empty chamber: volume, or innerDiameter and length',
    checks: [
      ({ volume: whole, innerDiameter, length: inside }) =>
        whole !== undefined && (innerDiameter !== undefined || inside !== undefined)
          ? {
              code: 'inconsistent',
              path: 'volume',
              problem: 'volume and innerDiameter with length are mutually exclusive; give one',
            }
          : undefined,
      ({ volume: whole, innerDiameter, length: inside }) => {
        if (whole !== undefined || (innerDiameter !== undefined && inside !== undefined)) return undefined;
        const path = innerDiameter === undefined ? 'innerDiameter' : 'length';
        return {
          code: 'missing-field',
          path,
          expected: `${path === 'length' ? 'length' : 'inside diameter'} of the chamber`,
          remedy: 'Give innerDiameter and length, or volume',
        };
      },
    ],
  },
);

/** What the inputs of an igniter must satisfy together. */
export const igniterChecks = [
  ({
    igniterMass,
    igniterDuration,
  }: {
    readonly igniterMass: Quantity<'mass'>;
    readonly igniterDuration: Quantity<'time'>;
  }): Conflict | undefined =>
    igniterMass.si > 0 && igniterDuration.si === 0
      ? { code: 'missing-field', path: 'igniterDuration', expected: 'duration of the igniter' }
      : undefined,
  ({
    igniterGasTemperature,
    igniterMolarMass,
  }: {
    readonly igniterGasTemperature: Quantity<'temperature'> | undefined;
    readonly igniterMolarMass: Quantity<'molar mass'> | undefined;
  }): Conflict | undefined =>
    (igniterGasTemperature === undefined) !== (igniterMolarMass === undefined)
      ? {
          code: 'missing-field',
          path: igniterMolarMass === undefined ? 'igniterMolarMass' : 'igniterGasTemperature',
          problem: 'igniterGasTemperature and igniterMolarMass are required together',
        }
      : undefined,
] as const;

/** How the motor is ignited. */
export const ignition = inputs(
  {
    initialPressure: optional(
      absolutePressure('p_i', 'chamber pressure at the start; that of the surroundings if omitted', {
        example: '0.3 MPaa',
        worse: 'firing high',
      }),
    ),
    igniterMass: optional(
      mass('m_i', 'mass of gas from the igniter', {
        min: 0,
        example: '0.5 g',
        worse: 'firing high',
      }),
      0,
    ),
    igniterDuration: optional(
      time('t_i', 'time of constant igniter flow', {
        min: 0,
        example: '0.1 s',
        worse: 'firing low',
      }),
      0,
    ),
    igniterFallTime: optional(
      time('t_e', 'time in which the igniter flow then falls linearly to zero', {
        min: 0,
        example: '0.02 s',
        worse: 'firing low',
      }),
      0,
    ),
    igniterGasTemperature: optional(
      temperature('T_i', 'temperature of the igniter gas; that of the propellant gas if omitted', {
        above: 0,
        example: '2200 K',
        worse: 'firing high',
      }),
    ),
    igniterMolarMass: optional(
      molarMass('M_i', 'molar mass of the igniter gas; required with its temperature', {
        example: '50 g/mol',
        worse: 'firing low',
      }),
    ),
    ignitionDelay: optional(
      time('t_0', 'time from the start of the igniter to ignition of the first surface', {
        min: 0,
        example: '5 ms',
        worse: 'neither',
      }),
      0,
    ),
    flameSpreadTime: optional(
      time('t_f', 'time in which the flame then spreads evenly over the surface', {
        min: 0,
        example: '0.05 s',
        worse: 'firing low',
      }),
      0,
    ),
    flameSpreadSpeed: optional(
      speed('v_f', 'speed of the flame along the grain, instead of the flame spread time', {
        above: 0,
        example: '20 m/s',
        worse: 'firing high',
      }),
    ),
    partialFraction: optional(
      ratio('f_i', 'fraction of the surface that ignites below fullIgnitionPressure', {
        above: 0,
        max: 1,
        example: 0.3,
        worse: 'neither',
      }),
      1,
    ),
    fullIgnitionPressure: optional(
      absolutePressure('p_f', 'pressure at which the remaining surface ignites', {
        above: 0,
        example: '0.8 MPaa',
        worse: 'neither',
      }),
    ),
    nozzleClosureBurstPressure: optional(
      gaugePressure('p_c', 'pressure at which the nozzle closure opens; no closure if omitted', {
        above: 0,
        example: '1 MPag',
        worse: 'firing high',
      }),
    ),
  },
  {
    meaning: 'ignition',
    checks: [
      ...igniterChecks,
      ({ flameSpreadTime, flameSpreadSpeed }) =>
        flameSpreadSpeed !== undefined && flameSpreadTime.si > 0
          ? {
              code: 'inconsistent',
              path: 'flameSpreadSpeed',
              problem: 'flameSpreadTime and flameSpreadSpeed are mutually exclusive; give one',
            }
          : undefined,
      ({ partialFraction, fullIgnitionPressure }) =>
        partialFraction < 1 !== (fullIgnitionPressure !== undefined)
          ? {
              code: 'missing-field',
              path: partialFraction < 1 ? 'fullIgnitionPressure' : 'partialFraction',
              problem: 'partial ignition requires partialFraction below 1 and fullIgnitionPressure',
            }
          : undefined,
    ],
  },
);
