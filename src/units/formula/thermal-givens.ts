import { any, givenOf, positive } from './given';

/** A heat flux; any finite value unless a domain says otherwise. */
export const heatFlux = /* @__PURE__ */ givenOf('heat flux', any);

/** A heat-transfer coefficient; above zero unless a domain says otherwise. */
export const heatTransferCoefficient = /* @__PURE__ */ givenOf('heat-transfer coefficient', positive);

/** A thermal insulance; above zero unless a domain says otherwise. */
export const thermalInsulance = /* @__PURE__ */ givenOf('thermal insulance', positive);

/** A thermal conductivity; above zero unless a domain says otherwise. */
export const thermalConductivity = /* @__PURE__ */ givenOf('thermal conductivity', positive);

/** A thermal resistance; above zero unless a domain says otherwise. */
export const thermalResistance = /* @__PURE__ */ givenOf('thermal resistance', positive);

/** A specific heat; above zero unless a domain says otherwise. */
export const specificHeat = /* @__PURE__ */ givenOf('specific heat', positive);

/** A specific gas constant; above zero unless a domain says otherwise. */
export const specificGasConstant = /* @__PURE__ */ givenOf('specific gas constant', positive);

/** A specific energy; any finite value unless a domain says otherwise. */
export const specificEnergy = /* @__PURE__ */ givenOf('specific energy', any);

/** A temperature; above zero unless a domain says otherwise. */
export const temperature = /* @__PURE__ */ givenOf('temperature', positive);

/** A temperature difference; any finite value unless a domain says otherwise. */
export const temperatureDifference = /* @__PURE__ */ givenOf('temperature difference', any);

/** A temperature rate; any finite value unless a domain says otherwise. */
export const temperatureRate = /* @__PURE__ */ givenOf('temperature rate', any);

/** A thermal expansion; any finite value unless a domain says otherwise. */
export const thermalExpansion = /* @__PURE__ */ givenOf('thermal expansion', any);

/** A temperature sensitivity; any finite value unless a domain says otherwise. */
export const temperatureSensitivity = /* @__PURE__ */ givenOf('temperature sensitivity', any);

/** An amount; above zero unless a domain says otherwise. */
export const amount = /* @__PURE__ */ givenOf('amount', positive);

/** A molar mass; above zero unless a domain says otherwise. */
export const molarMass = /* @__PURE__ */ givenOf('molar mass', positive);

/** A molar energy; any finite value unless a domain says otherwise. */
export const molarEnergy = /* @__PURE__ */ givenOf('molar energy', any);

/** A molar heat capacity; above zero unless a domain says otherwise. */
export const molarHeatCapacity = /* @__PURE__ */ givenOf('molar heat capacity', positive);

/** A dynamic viscosity; above zero unless a domain says otherwise. */
export const dynamicViscosity = /* @__PURE__ */ givenOf('dynamic viscosity', positive);

/** A kinematic viscosity; above zero unless a domain says otherwise. */
export const kinematicViscosity = /* @__PURE__ */ givenOf('kinematic viscosity', positive);

/** A thermal diffusivity; above zero unless a domain says otherwise. */
export const thermalDiffusivity = /* @__PURE__ */ givenOf('thermal diffusivity', positive);
