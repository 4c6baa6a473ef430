// What throat to drill: pressure, thrust and how tight the port is, from 5.5 to 8 mm, as a table.
//   node scripts/run-ts.mjs examples/throat-sweep.ts
// All data are invented.
import {
  burningAreaRatio,
  propellant,
  q,
  regress,
  simulate,
  summarize,
  table,
  throatForPressure,
  tubularSegment,
} from '../src/index';

const sugar = propellant({
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
});
const regression = regress(
  tubularSegment({ outerDiameter: '50 mm', boreDiameter: '18 mm', length: '80 mm' }),
);
const most = regression.burningArea.max();

const rows = Array.from({ length: 11 }, (_, i) => q(5.5 + 0.25 * i, 'mm')).map((throatDiameter) => {
  const record = simulate({
    propellant: sugar,
    grain: regression,
    chamber: { innerDiameter: '50 mm', length: '100 mm' },
    nozzle: { throatDiameter, expansionRatio: 6, efficiency: 0.92 },
    ambient: '101325 Pa',
  });
  const sum = summarize(record);
  return {
    throat: throatDiameter,
    'greatest K': burningAreaRatio({
      burningArea: most,
      throatArea: throatDiameter.pow(2).times(Math.PI / 4),
    }).toFixed(0),
    'peak pressure': record.peakPressure,
    'average thrust': sum.averageThrust ?? '',
    'burn time': sum.burnTime ?? '',
    impulse: record.totalImpulse,
    'specific impulse': sum.specificImpulse ?? '',
    'port / throat': record.portFlow?.portToThroat[0].toFixed(2) ?? '',
    cautions: record.cautions.length,
  };
});
console.log(table(rows));

// And by hand, for 5 MPa at the greatest area.
const rate = q(7.2e-3 * 5 ** 0.33, 'm/s');
console.log(
  `\n${throatForPressure.explain({
    pressure: '5 MPa',
    burningArea: most,
    burnRate: rate,
    density: sugar.density,
    characteristicVelocity: sugar.characteristicVelocity,
  })}`,
);
