// A sound grain against the same grain with cracks: pressure and thrust over time, and the figures that matter.
//   node scripts/run-ts.mjs examples/sound-vs-cracked.ts
// Drawn in examples/out/sound-vs-cracked.svg. All data are invented.
import { mkdirSync, writeFileSync } from 'node:fs';
import {
  compareFirings,
  crack,
  drawPlot,
  grainColumn,
  plotFiring,
  propellant,
  simulate,
  summarize,
  tubularSegment,
  withFlaws,
} from '../src/index';

const segment = tubularSegment({ outerDiameter: '50 mm', boreDiameter: '18 mm', length: '80 mm' });
// From the bore to within a millimetre of the wall, along half of the segment.
const cracked = withFlaws(segment, {
  flaws: [
    crack({
      plane: 'radial',
      angle: '0 deg',
      innerRadius: '8 mm',
      outerRadius: '24 mm',
      from: '20 mm',
      to: '60 mm',
    }),
    crack({
      plane: 'radial',
      angle: '140 deg',
      innerRadius: '8 mm',
      outerRadius: '20 mm',
      from: '0 mm',
      to: '50 mm',
    }),
  ],
});

const motor = {
  propellant: propellant({
    name: 'invented sugar-class propellant',
    density: '1760 kg/m^3',
    law: {
      coefficient: 7.2,
      rateUnit: 'mm/s',
      pressureUnit: 'MPa',
      exponent: 0.33,
      characterisedFrom: '1 MPa',
      characterisedTo: '8 MPa',
    },
    gamma: 1.14,
    molarMass: '40 g/mol',
    flameTemperature: '1600 K',
    characteristicVelocityEfficiency: 0.94,
  }),
  chamber: { innerDiameter: '50 mm', length: '270 mm', burstPressure: '14 MPa' },
  nozzle: { throatDiameter: '11.5 mm', expansionRatio: 6, efficiency: 0.92 },
  ignition: { igniterMass: '0.6 g', igniterDuration: '25 ms', flameSpreadTime: '60 ms' },
  ambient: '101325 Pa',
} as const;

const sound = simulate({
  ...motor,
  grain: grainColumn({ segments: [segment, segment, segment], spacers: '2 mm' }),
  title: 'sound',
});
const flawed = simulate({
  ...motor,
  grain: grainColumn({ segments: [segment, cracked, segment], spacers: '2 mm' }),
  title: 'cracked in the middle segment',
});

for (const record of [sound, flawed]) console.log(`${summarize(record)}\n`);
console.log(String(compareFirings({ reference: sound, other: flawed })));
console.log('\nAn analysis is no permission: a grain with a known crack belongs in no motor.');

mkdirSync('examples/out', { recursive: true });
writeFileSync('examples/out/sound-vs-cracked.svg', await drawPlot(plotFiring([sound, flawed])));
console.log('drawn in examples/out/sound-vs-cracked.svg');
