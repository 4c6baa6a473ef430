import { endBurner, propellant, type SimulateInput, slottedTube, tubularSegment } from '../../src/ballistics';

/** The reference motors of tests/cases/ballistics.json, as simulations take them. */
const common = {
  ambient: '101325 Pa',
  ignition: { initialPressure: '0.2 MPa' },
  stopPressure: '0.2 MPa',
} as const;

export const segmentMotor = (): SimulateInput => ({
  ...common,
  propellant: propellant({
    density: '1780 kg/m^3',
    law: { coefficient: 7, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.32 },
    gamma: 1.14,
    molarMass: '40 g/mol',
    flameTemperature: '1600 K',
  }),
  grain: tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' }),
  chamber: { innerDiameter: '50 mm', length: '110 mm' },
  nozzle: { throatDiameter: '7 mm', expansionRatio: 5, separation: 'none' },
});

export const endBurnerMotor = (): SimulateInput => ({
  ...common,
  propellant: propellant({
    density: '1820 kg/m^3',
    law: { coefficient: 5.1, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.22 },
    gamma: 1.135,
    molarMass: '39.9 g/mol',
    flameTemperature: '1600 K',
    characteristicVelocityEfficiency: 0.95,
  }),
  grain: endBurner({ outerDiameter: '40 mm', length: '60 mm' }),
  chamber: { innerDiameter: '40 mm', length: '75 mm' },
  nozzle: { throatDiameter: '2.5 mm', expansionRatio: 4, separation: 'none' },
});

/** Six blind slots over the full length, ends inhibited: slivers, and the peak at the moment the wall is reached. */
export const finnedMotor = (): SimulateInput => ({
  ...common,
  propellant: propellant({
    density: '1690 kg/m^3',
    law: { coefficient: 3.6, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.38 },
    gamma: 1.2,
    molarMass: '24.5 g/mol',
    flameTemperature: '2800 K',
  }),
  grain: slottedTube({
    outerDiameter: '76 mm',
    boreDiameter: '20 mm',
    length: '180 mm',
    slots: 6,
    slotWidth: '4 mm',
    slotDiameter: '44 mm',
  }),
  chamber: { innerDiameter: '76 mm', length: '195 mm' },
  nozzle: { throatDiameter: '14 mm', expansionRatio: 7, separation: 'none' },
});
