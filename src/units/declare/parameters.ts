import { any, type Parameter, type ParameterFacts, parameter, parameterOf, positive } from './parameter';

// One small function per kind, so that a bundle contains only the kinds it uses. Kinds with a true zero are positive
// unless a domain is given; the others accept any finite value.

/** A whole number of things, one or more unless a domain is given; it has no tolerance. */
export const count = (
  symbol: string,
  meaning: string,
  facts: Omit<ParameterFacts<'dimensionless', 'exact'>, 'worse'> = {},
): Parameter<'dimensionless', 'required', 'exact'> => {
  const { example, synonyms = [], ...domain } = facts;
  const whole = { min: 1, ...domain, whole: true };
  return parameter('dimensionless', symbol, meaning, whole, { example, synonyms, worse: 'exact' });
};

/** A number without dimension; any finite value unless a domain is given. */
export const ratio = /* @__PURE__ */ parameterOf('dimensionless', any);

/** An angle; any finite value unless a domain is given. */
export const angle = /* @__PURE__ */ parameterOf('angle', any);

/** A length; above zero unless a domain is given. */
export const length = /* @__PURE__ */ parameterOf('length', positive);

/** An area; above zero unless a domain is given. */
export const area = /* @__PURE__ */ parameterOf('area', positive);

/** A volume; above zero unless a domain is given. */
export const volume = /* @__PURE__ */ parameterOf('volume', positive);

/** A second moment of area; above zero unless a domain is given. */
export const secondMomentOfArea = /* @__PURE__ */ parameterOf('second moment of area', positive);

/** A mass; above zero unless a domain is given. */
export const mass = /* @__PURE__ */ parameterOf('mass', positive);

/** A time; above zero unless a domain is given. */
export const time = /* @__PURE__ */ parameterOf('time', positive);

/** A frequency; above zero unless a domain is given. */
export const frequency = /* @__PURE__ */ parameterOf('frequency', positive);

/** An angular speed; above zero unless a domain is given. */
export const angularSpeed = /* @__PURE__ */ parameterOf('angular speed', positive);

/** A speed; any finite value unless a domain is given. */
export const speed = /* @__PURE__ */ parameterOf('speed', any);

/** A specific impulse; above zero unless a domain is given. */
export const specificImpulse = /* @__PURE__ */ parameterOf('specific impulse', positive);

/** An acceleration; any finite value unless a domain is given. */
export const acceleration = /* @__PURE__ */ parameterOf('acceleration', any);

/** A force; any finite value unless a domain is given. */
export const force = /* @__PURE__ */ parameterOf('force', any);

/** An energy; any finite value unless a domain is given. */
export const energy = /* @__PURE__ */ parameterOf('energy', any);

/** A torque; any finite value unless a domain is given. */
export const torque = /* @__PURE__ */ parameterOf('torque', any);

/** An absolute pressure; above zero unless a domain is given. */
export const absolutePressure = /* @__PURE__ */ parameterOf('absolute pressure', positive);

/** A gauge pressure; any finite value unless a domain is given. */
export const gaugePressure = /* @__PURE__ */ parameterOf('gauge pressure', any);

/** A pressure difference; any finite value unless a domain is given. */
export const pressureDifference = /* @__PURE__ */ parameterOf('pressure difference', any);

/** A stress; any finite value unless a domain is given. */
export const stress = /* @__PURE__ */ parameterOf('stress', any);

/** A density; above zero unless a domain is given. */
export const density = /* @__PURE__ */ parameterOf('density', positive);

/** A mass flow; any finite value unless a domain is given. */
export const massFlow = /* @__PURE__ */ parameterOf('mass flow', any);

/** A mass flux; any finite value unless a domain is given. */
export const massFlux = /* @__PURE__ */ parameterOf('mass flux', any);

/** A volume flow; any finite value unless a domain is given. */
export const volumeFlow = /* @__PURE__ */ parameterOf('volume flow', any);

/** An impulse; any finite value unless a domain is given. */
export const impulse = /* @__PURE__ */ parameterOf('impulse', any);

/** A power; any finite value unless a domain is given. */
export const power = /* @__PURE__ */ parameterOf('power', any);

/** A pressure integral; any finite value unless a domain is given. */
export const pressureIntegral = /* @__PURE__ */ parameterOf('pressure integral', any);

/** A stiffness; above zero unless a domain is given. */
export const stiffness = /* @__PURE__ */ parameterOf('stiffness', positive);

/** A moment of inertia; above zero unless a domain is given. */
export const momentOfInertia = /* @__PURE__ */ parameterOf('moment of inertia', positive);

/** A pressure rate; any finite value unless a domain is given. */
export const pressureRate = /* @__PURE__ */ parameterOf('pressure rate', any);

/** A force rate; any finite value unless a domain is given. */
export const forceRate = /* @__PURE__ */ parameterOf('force rate', any);

/** A fracture toughness; above zero unless a domain is given. */
export const fractureToughness = /* @__PURE__ */ parameterOf('fracture toughness', positive);
