import {
  absolutePressure,
  type Conflict,
  choice,
  molarMass,
  optional,
  ratio,
  specificGasConstant,
  specificHeat,
  temperature,
  words,
} from '../units';

// Inputs that describe a gas and its flow. Each is declared here once and imported by every calculation that takes it.

/** Ratio of specific heats; of an exhaust with condensed products that of the mixture. */
export const gamma = /* @__PURE__ */ ratio('γ', 'ratio of specific heats', {
  above: 1,
  example: 1.2,
  synonyms: ['gamma', 'isentropic exponent', 'adiabatic index'],
});

/** Mach number of any flow. */
export const mach = /* @__PURE__ */ ratio('M', 'Mach number', { min: 0, example: 2 });

/** Mach number of a flow that is not slower than sound. */
export const machFromOne = /* @__PURE__ */ ratio('M', 'Mach number', { min: 1, example: 2 });

/** Mach number of the flow that meets a normal shock. */
export const machAhead = /* @__PURE__ */ ratio('M1', 'Mach number ahead of the shock', {
  min: 1,
  example: 2,
});

/** The two Mach numbers of an area ratio: neither is a default, since either is plausible. */
export const machBranch = /* @__PURE__ */ choice('subsonic or supersonic solution', [
  'subsonic',
  'supersonic',
]);

/** Gas constant for each unit of mass. */
export const gasConstant = /* @__PURE__ */ specificGasConstant('R', 'specific gas constant', {
  example: '350 J/(kg*K)',
});

/** Gas constant of a gas that carries droplets, without them. */
export const gasAlone = /* @__PURE__ */ specificGasConstant('R_g', 'specific gas constant of the gas alone', {
  example: '231 J/(kg*K)',
});

/** A gas with droplets of condensed products. */
export const droplets = {
  condensedMassFraction: /* @__PURE__ */ ratio('X', 'condensed mass/total mass', {
    min: 0,
    below: 1,
    example: 0.43,
  }),
  gasSpecificHeat: /* @__PURE__ */ specificHeat('c_g', 'specific heat of the gas at constant pressure', {
    example: '1960 J/(kg*K)',
  }),
  condensedSpecificHeat: /* @__PURE__ */ specificHeat('c_c', 'specific heat of the condensed matter', {
    example: '1550 J/(kg*K)',
  }),
};

/** A gas at rest upstream of a throat or an orifice. */
export const stagnation = {
  stagnationPressure: /* @__PURE__ */ absolutePressure('p0', 'stagnation pressure', { example: '1 MPa' }),
  stagnationTemperature: /* @__PURE__ */ temperature('T0', 'stagnation temperature', { example: '800 K' }),
  gamma,
  gasConstant,
};

/** Mass of a mole of a species or a mixture. */
export const molarMassOfGas = /* @__PURE__ */ molarMass('M', 'molar mass', { example: '28.014 g/mol' });

/** Name of a part of a mixture, for the reader. */
export const partName = /* @__PURE__ */ optional(/* @__PURE__ */ words('name, for the reader'));

/** Amount of one part of a mixture. */
export const parts = /* @__PURE__ */ ratio('n', 'parts by mole or by mass, in any scale', {
  min: 0,
  example: 1,
});

/** What the parts of a mixture count. */
export const partsBy = /* @__PURE__ */ choice('quantity that the parts count', ['mole', 'mass']);

/** The conflict of a mixture whose parts are all 0. */
export const someParts = (
  path: string,
  mixture: readonly { readonly parts: number }[],
): Conflict | undefined =>
  mixture.some(({ parts }) => parts > 0)
    ? undefined
    : { path, problem: 'the parts are all 0', remedy: 'Give at least one of them parts above 0' };
