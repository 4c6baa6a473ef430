// Inputs that the calculations of port flow share.
import { gamma } from '../../thermo/gas-inputs';
import { absolutePressure, optional, ratio, specificGasConstant, temperature } from '../../units';

/** How far the velocity across the port is from uniform. */
export const momentumFactor = optional(
  ratio(
    'β',
    'momentum factor: mean of the squared velocity/square of the mean velocity over the section; 1 for a uniform profile, π²/8 for that of injected flow',
    { min: 1, max: 1.5, example: 1.2 },
  ),
  1,
);

/** Port-to-throat area ratio. */
export const portToThroat = ratio('J', 'port area/throat area', { above: 0, example: 2 });

/** Pressure at the closed end of a port. */
export const headPressure = absolutePressure('p_h', 'static pressure at the head end', { example: '4 MPa' });

/** The gas of a port. */
export const portGasInputs = {
  gasConstant: specificGasConstant('R', 'specific gas constant', { example: '208 J/(kg*K)' }),
  gasTemperature: temperature('T_0', 'stagnation temperature of the gas', { example: '1600 K' }),
  gamma,
};

/** Loss at a sharp entrance; 0.5 for a sharp edge, quoted from memory, not verified. */
export const entranceLoss = optional(
  ratio('ζ', 'loss at the entrance of the bore behind a gap/dynamic head there; up to 0.5 at a sharp edge', {
    min: 0,
    max: 1,
    example: 0.5,
  }),
  0,
);
