import {
  absolutePressure,
  angle,
  area,
  type Conflict,
  choice,
  length,
  massFlow,
  optional,
  ratio,
  type Series,
  speed,
  temperature,
  trace,
} from '../units';
import { divergentBehaviours } from './nozzle-flow';
import { separationCriteria } from './separation';

// Inputs that describe a nozzle and its flow. Each is declared here once and imported by every calculation that takes it.

/** Exit area/throat area. */
export const expansionRatio = /* @__PURE__ */ ratio('ε', 'exit area/throat area', {
  min: 1,
  example: 6,
  synonyms: ['expansion ratio', 'area ratio'],
});

/** Stagnation pressure of the chamber. */
export const chamberPressure = /* @__PURE__ */ absolutePressure('p_c', 'chamber stagnation pressure', {
  example: '5 MPa',
});

/** Stagnation temperature of the chamber. */
export const chamberTemperature = /* @__PURE__ */ temperature('T_0', 'chamber stagnation temperature', {
  example: '1700 K',
});

/** Pressure of the surroundings, which may be a vacuum. */
export const ambientPressure = /* @__PURE__ */ absolutePressure('p_a', 'ambient pressure', {
  min: 0,
  example: '101325 Pa',
});

/** Pressure of surroundings that are not a vacuum. */
export const ambientAboveZero = /* @__PURE__ */ absolutePressure(
  'p_a',
  'ambient pressure; not a vacuum, for which there is no finite result',
  { example: '101325 Pa' },
);

/** Delivered or ideal characteristic velocity. */
export const characteristicVelocity = /* @__PURE__ */ speed('c*', 'characteristic velocity', {
  above: 0,
  example: '900 m/s',
});

/** Thrust/(chamber pressure × throat area). */
export const thrustCoefficientInput = /* @__PURE__ */ ratio('C_F', 'thrust coefficient', { example: 1.5 });

/** Mass flow that is not zero. */
export const nozzleFlow = /* @__PURE__ */ massFlow('ṁ', 'mass flow', { above: 0, example: '0.5 kg/s' });

export const throatDiameter = /* @__PURE__ */ length('D_t', 'throat diameter', { example: '12 mm' });
export const exitDiameter = /* @__PURE__ */ length('D_e', 'exit diameter', { example: '32 mm' });
export const throatArea = /* @__PURE__ */ area('A_t', 'throat area', { example: '100 mm^2' });
export const exitArea = /* @__PURE__ */ area('A_e', 'exit area', { example: '335 cm^2' });

/** Diameter upstream of the convergent section. */
export const inletDiameter = /* @__PURE__ */ length(
  'D_i',
  'inlet diameter, from which the convergent section starts',
  { example: '40 mm' },
);

/** Half angle of a cone. */
export const halfAngle = /* @__PURE__ */ angle('α', 'half angle of the cone', {
  above: 0,
  below: Math.PI / 2,
  example: '12 deg',
});

/** Half angle of the convergent cone, usually 45°. */
export const convergentHalfAngle = /* @__PURE__ */ optional(
  /* @__PURE__ */ angle('β', 'half angle of the convergent cone', {
    above: 0,
    below: Math.PI / 2,
    example: '45 deg',
  }),
  Math.PI / 4,
);

/** Rate at which the throat wall recedes. */
export const recessionRate = /* @__PURE__ */ speed(
  'v',
  'radial recession rate; negative for slag deposition',
  { example: '0.1 mm/s' },
);

/** Where over-expanded flow separates. */
export const criterion = /* @__PURE__ */ optional(
  /* @__PURE__ */ choice('separation criterion', separationCriteria),
  'summerfield',
);

/** How the divergent section behaves where it does not flow full. */
export const divergent = /* @__PURE__ */ optional(
  /* @__PURE__ */ choice(
    'behaviour of the divergent section where it does not flow full',
    divergentBehaviours,
  ),
  'recovers',
);

/** A recorded or computed chamber pressure. */
export const pressureTrace = {
  time: /* @__PURE__ */ trace('time', 'times of the pressures', { min: 2 }),
  chamberPressure: /* @__PURE__ */ trace('absolute pressure', 'chamber stagnation pressure at those times'),
};

/** The conflict of times and pressures of different number. */
export const sameLength = (values: {
  readonly time: Series<'time'>;
  readonly chamberPressure: Series<'absolute pressure'>;
}): Conflict | undefined =>
  values.time.length === values.chamberPressure.length
    ? undefined
    : {
        path: 'chamberPressure',
        given: values.chamberPressure.length,
        expected: `as long as the times, ${values.time.length} values`,
      };
