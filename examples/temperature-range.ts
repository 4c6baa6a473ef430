// The same motor at −10, 20 and 40 °C: pressure, thrust, burn time and impulse.
//   node scripts/run-ts.mjs examples/temperature-range.ts
// Drawn in examples/out/temperature-range.svg. All data are invented.
import { mkdirSync, writeFileSync } from 'node:fs';
import {
  drawPlot,
  plotFiring,
  pressureTemperatureSensitivity,
  propellant,
  simulate,
  summarize,
  table,
  tubularSegment,
} from '../src/index';

const exponent = 0.33;
const rateSensitivity = '0.002 1/K';
const motor = {
  propellant: propellant({
    name: 'invented sugar-class propellant',
    density: '1760 kg/m^3',
    law: {
      coefficient: 7.2,
      rateUnit: 'mm/s',
      pressureUnit: 'MPa',
      exponent,
      temperatureSensitivity: rateSensitivity,
      referenceTemperature: '20 degC',
    },
    gamma: 1.14,
    molarMass: '40 g/mol',
    flameTemperature: '1600 K',
    characteristicVelocityEfficiency: 0.94,
  }),
  grain: tubularSegment({ outerDiameter: '50 mm', boreDiameter: '18 mm', length: '80 mm' }),
  chamber: { innerDiameter: '50 mm', length: '100 mm' },
  nozzle: { throatDiameter: '6.6 mm', expansionRatio: 6, efficiency: 0.92 },
  ignition: { igniterMass: '0.2 g', igniterDuration: '25 ms', flameSpreadTime: '50 ms' },
  ambient: '101325 Pa',
} as const;

const firings = (['-10 degC', '20 degC', '40 degC'] as const).map((grainTemperature) =>
  simulate({ ...motor, grainTemperature, title: grainTemperature.replace(' degC', ' °C').replace('-', '−') }),
);
console.log(
  table(
    firings.map((record) => {
      const sum = summarize(record);
      return {
        temperature: record.title ?? '',
        'peak pressure': record.peakPressure,
        'peak thrust': sum.peakThrust ?? '',
        'burn time': sum.burnTime ?? '',
        'total impulse': record.totalImpulse,
        designation: sum.designation ?? '',
      };
    }),
  ),
);
// The rule of the hand: pressure goes with exp(π_K·ΔT), impulse hardly moves.
console.log(`\n${pressureTemperatureSensitivity.explain({ rateSensitivity, exponent })}`);
const [cold, , hot] = firings;
console.log(
  `\nhot over cold: ${(hot.peakPressure.si / cold.peakPressure.si).toFixed(3)} in peak pressure, ${(hot.totalImpulse.si / cold.totalImpulse.si).toFixed(3)} in impulse`,
);

mkdirSync('examples/out', { recursive: true });
writeFileSync('examples/out/temperature-range.svg', await drawPlot(plotFiring(firings)));
console.log('drawn in examples/out/temperature-range.svg');
