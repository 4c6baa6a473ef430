import { gaugePressure } from '../units';

/** The maximum expected operating pressure of a motor. */
export const meop = gaugePressure(
  'p',
  'maximum expected operating pressure (MEOP): the upper bound over hot grain, dispersion and ignition peak, not the nominal peak',
  { above: 0, example: '5 MPa' },
);
