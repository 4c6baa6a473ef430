// Numbers of TR-BDF2 (Bank et al. 1985; Hosea & Shampine, Applied Numerical Mathematics 20, 1996): quoted from memory; second order, L-stable.
export const gammaStep = 2 - Math.SQRT2;
export const bdfRate = (1 - gammaStep) / (2 - gammaStep);
export const bdfNew = 1 / (gammaStep * (2 - gammaStep));
export const bdfOld = (1 - gammaStep) ** 2 / (gammaStep * (2 - gammaStep));
export const errorFactor = (-3 * gammaStep ** 2 + 4 * gammaStep - 2) / (12 * (2 - gammaStep));
