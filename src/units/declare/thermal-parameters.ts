import { any, parameterOf, positive } from './parameter';

/** A heat flux; any finite value unless a domain is given. */
export const heatFlux = /* @__PURE__ */ parameterOf('heat flux', any);

/** A heat-transfer coefficient; above zero unless a domain is given. */
export const heatTransferCoefficient = /* @__PURE__ */ parameterOf('heat-transfer coefficient', positive);

/** A thermal insulance; above zero unless a domain is given. */
export const thermalInsulance = /* @__PURE__ */ parameterOf('thermal insulance', positive);

/** A thermal conductivity; above zero unless a domain is given. */
export const thermalConductivity = /* @__PURE__ */ parameterOf('thermal conductivity', positive);

/** A thermal resistance; above zero unless a domain is given. */
export const thermalResistance = /* @__PURE__ */ parameterOf('thermal resistance', positive);

/** A specific heat; above zero unless a domain is given. */
export const specificHeat = /* @__PURE__ */ parameterOf('specific heat', positive);

/** A specific gas constant; above zero unless a domain is given. */
export const specificGasConstant = /* @__PURE__ */ parameterOf('specific gas constant', positive);

/** A specific energy; any finite value unless a domain is given. */
export const specificEnergy = /* @__PURE__ */ parameterOf('specific energy', any);

/** A temperature; above zero unless a domain is given. */
export const temperature = /* @__PURE__ */ parameterOf('temperature', positive);

/** A temperature difference; any finite value unless a domain is given. */
export const temperatureDifference = /* @__PURE__ */ parameterOf('temperature difference', any);

/** A temperature rate; any finite value unless a domain is given. */
export const temperatureRate = /* @__PURE__ */ parameterOf('temperature rate', any);

/** A thermal expansion; any finite value unless a domain is given. */
export const thermalExpansion = /* @__PURE__ */ parameterOf('thermal expansion', any);

/** A temperature sensitivity; any finite value unless a domain is given. */
export const temperatureSensitivity = /* @__PURE__ */ parameterOf('temperature sensitivity', any);

/** An amount; above zero unless a domain is given. */
export const amount = /* @__PURE__ */ parameterOf('amount', positive);

/** A molar mass; above zero unless a domain is given. */
export const molarMass = /* @__PURE__ */ parameterOf('molar mass', positive);

/** A molar energy; any finite value unless a domain is given. */
export const molarEnergy = /* @__PURE__ */ parameterOf('molar energy', any);

/** A molar heat capacity; above zero unless a domain is given. */
export const molarHeatCapacity = /* @__PURE__ */ parameterOf('molar heat capacity', positive);

/** A dynamic viscosity; above zero unless a domain is given. */
export const dynamicViscosity = /* @__PURE__ */ parameterOf('dynamic viscosity', positive);

/** A kinematic viscosity; above zero unless a domain is given. */
export const kinematicViscosity = /* @__PURE__ */ parameterOf('kinematic viscosity', positive);

/** A thermal diffusivity; above zero unless a domain is given. */
export const thermalDiffusivity = /* @__PURE__ */ parameterOf('thermal diffusivity', positive);
