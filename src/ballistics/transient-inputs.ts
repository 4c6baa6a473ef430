// Inputs of heat loss, tail-off and blockage, declared once for the simulation and the
// motor document.
import { coefficient } from '../thermo/heat-inputs';
import { area, inputs, optional, ratio, temperature, time, variants } from '../units';

/** Heat transfer from the gas to the wall of the chamber. */
export const wallHeatLoss = inputs(
  {
    heatTransferCoefficient: {
      ...coefficient,
      meaning: 'heat-transfer coefficient between gas and wall, at the mean pressure',
      worse: 'firing low' as const,
    },
    wallArea: optional(
      area('A_w', 'wall in contact with the gas; computed from chamber and grain if omitted', {
        example: '60 cm^2',
        worse: 'firing low',
      }),
    ),
    wallTemperature: temperature('T_w', 'mean temperature of the wall surface during the firing', {
      above: 0,
      example: '600 K',
      worse: 'firing high',
    }),
  },
  { meaning: 'heat loss to the wall of the chamber' },
);

/** How the pressure falls after burnout. */
export const tailOff = variants('law', 'law of the tail-off', {
  isothermal: {},
  adiabatic: {},
  'heat-loss': wallHeatLoss,
});

const blockageStart = time('t_b', 'time at which the blockage begins', {
  min: 0,
  example: '0.4 s',
  worse: 'neither',
});

/** A fragment that blocks part of the throat for a time. */
export const throatBlockage = inputs(
  {
    fraction: ratio('φ', 'blocked fraction of the throat area', {
      min: 0,
      below: 1,
      example: 0.3,
      worse: 'firing high',
    }),
    from: blockageStart,
    duration: time('Δt_b', 'duration of the blockage', { min: 0, example: '10 ms', worse: 'firing high' }),
  },
  { meaning: 'blockage of the throat by a fragment' },
);

/** The same as an assumed event of a motor, whose time may be left to the peak. */
export const assumedBlockage = inputs(
  {
    ...throatBlockage.fields,
    from: optional({
      ...blockageStart,
      meaning: 'time at which it begins; that of the peak pressure if omitted',
    }),
  },
  { meaning: 'blockage of the throat by a fragment, assumed in the worst case' },
);
