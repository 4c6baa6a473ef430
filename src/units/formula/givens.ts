import type { FormulaParameter } from './declaration';
import { any, given, givenOf, positive } from './given';

// One small function a kind, so that a bundle holds only the kinds it uses. Kinds with a true zero are positive
// unless a domain says otherwise; the others take any finite value.

/** A whole number of things, one or more. */
export const count = (symbol: string, meaning: string): FormulaParameter<'dimensionless', undefined> =>
  given('dimensionless', symbol, meaning, { min: 1, whole: true });

/** A number without dimension; any finite value unless a domain says otherwise. */
export const ratio = /* @__PURE__ */ givenOf('dimensionless', any);

/** An angle; any finite value unless a domain says otherwise. */
export const angle = /* @__PURE__ */ givenOf('angle', any);

/** A length; above zero unless a domain says otherwise. */
export const length = /* @__PURE__ */ givenOf('length', positive);

/** An area; above zero unless a domain says otherwise. */
export const area = /* @__PURE__ */ givenOf('area', positive);

/** A volume; above zero unless a domain says otherwise. */
export const volume = /* @__PURE__ */ givenOf('volume', positive);

/** A second moment of area; above zero unless a domain says otherwise. */
export const secondMomentOfArea = /* @__PURE__ */ givenOf('second moment of area', positive);

/** A mass; above zero unless a domain says otherwise. */
export const mass = /* @__PURE__ */ givenOf('mass', positive);

/** A time; above zero unless a domain says otherwise. */
export const time = /* @__PURE__ */ givenOf('time', positive);

/** A frequency; above zero unless a domain says otherwise. */
export const frequency = /* @__PURE__ */ givenOf('frequency', positive);

/** An angular speed; above zero unless a domain says otherwise. */
export const angularSpeed = /* @__PURE__ */ givenOf('angular speed', positive);

/** A speed; any finite value unless a domain says otherwise. */
export const speed = /* @__PURE__ */ givenOf('speed', any);

/** A specific impulse; above zero unless a domain says otherwise. */
export const specificImpulse = /* @__PURE__ */ givenOf('specific impulse', positive);

/** An acceleration; any finite value unless a domain says otherwise. */
export const acceleration = /* @__PURE__ */ givenOf('acceleration', any);

/** A force; any finite value unless a domain says otherwise. */
export const force = /* @__PURE__ */ givenOf('force', any);

/** An energy; any finite value unless a domain says otherwise. */
export const energy = /* @__PURE__ */ givenOf('energy', any);

/** A torque; any finite value unless a domain says otherwise. */
export const torque = /* @__PURE__ */ givenOf('torque', any);

/** An absolute pressure; above zero unless a domain says otherwise. */
export const absolutePressure = /* @__PURE__ */ givenOf('absolute pressure', positive);

/** A gauge pressure; any finite value unless a domain says otherwise. */
export const gaugePressure = /* @__PURE__ */ givenOf('gauge pressure', any);

/** A pressure difference; any finite value unless a domain says otherwise. */
export const pressureDifference = /* @__PURE__ */ givenOf('pressure difference', any);

/** A stress; any finite value unless a domain says otherwise. */
export const stress = /* @__PURE__ */ givenOf('stress', any);

/** A density; above zero unless a domain says otherwise. */
export const density = /* @__PURE__ */ givenOf('density', positive);

/** A mass flow; any finite value unless a domain says otherwise. */
export const massFlow = /* @__PURE__ */ givenOf('mass flow', any);

/** A mass flux; any finite value unless a domain says otherwise. */
export const massFlux = /* @__PURE__ */ givenOf('mass flux', any);

/** A volume flow; any finite value unless a domain says otherwise. */
export const volumeFlow = /* @__PURE__ */ givenOf('volume flow', any);

/** An impulse; any finite value unless a domain says otherwise. */
export const impulse = /* @__PURE__ */ givenOf('impulse', any);

/** A power; any finite value unless a domain says otherwise. */
export const power = /* @__PURE__ */ givenOf('power', any);

/** A pressure integral; any finite value unless a domain says otherwise. */
export const pressureIntegral = /* @__PURE__ */ givenOf('pressure integral', any);

/** A stiffness; above zero unless a domain says otherwise. */
export const stiffness = /* @__PURE__ */ givenOf('stiffness', positive);

/** A moment of inertia; above zero unless a domain says otherwise. */
export const momentOfInertia = /* @__PURE__ */ givenOf('moment of inertia', positive);

/** A pressure rate; any finite value unless a domain says otherwise. */
export const pressureRate = /* @__PURE__ */ givenOf('pressure rate', any);

/** A force rate; any finite value unless a domain says otherwise. */
export const forceRate = /* @__PURE__ */ givenOf('force rate', any);

/** A fracture toughness; above zero unless a domain says otherwise. */
export const fractureToughness = /* @__PURE__ */ givenOf('fracture toughness', positive);
