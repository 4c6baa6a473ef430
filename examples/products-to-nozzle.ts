// From what burns to the nozzle: products at chemical equilibrium, the γ and c* that belong in the throat, the nozzle for a
// thrust, and what liner and case make of the heat.
//   node scripts/run-ts.mjs examples/products-to-nozzle.ts
// Heats of formation: potassium nitrate NBS Tables (1982), sorbitol a handbook value, both from memory; the second is uncertain by 20 kJ/mol.
import {
  adiabaticWallTemperature,
  bartzCoefficient,
  combustionGasViscosity,
  equilibriumProducts,
  layeredWallHeating,
  prandtlEstimate,
  sizeNozzle,
  speciesProperties,
} from '../src/index';

const chamberPressure = '4 MPa';
const reactants = (sorbitol: `${number} kJ/mol`) =>
  [
    {
      name: 'potassium nitrate',
      elements: { K: 1, N: 1, O: 3 },
      parts: 65,
      enthalpyOfFormation: '-494.63 kJ/mol',
    },
    { name: 'sorbitol', elements: { C: 6, H: 14, O: 6 }, parts: 35, enthalpyOfFormation: sorbitol },
  ] as const;

console.log('— products —');
const products = equilibriumProducts({
  by: 'mass',
  pressure: chamberPressure,
  reactants: reactants('-1353.7 kJ/mol'),
});
console.log(`${products}\n`);
for (const sorbitol of ['-1373.7 kJ/mol', '-1333.7 kJ/mol'] as const) {
  const { temperature, characteristicVelocity } = equilibriumProducts({
    by: 'mass',
    pressure: chamberPressure,
    reactants: reactants(sorbitol),
  });
  console.log(`with ${sorbitol}: ${temperature}, c* ${characteristicVelocity}`);
}

console.log('\n— the nozzle —');
const delivered = products.characteristicVelocity.times(0.93); // c* efficiency of small motors: engineering practice, no published source
const nozzle = sizeNozzle({
  target: { thrust: '500 N' },
  chamberPressure,
  ambientPressure: '1 atm',
  gamma: products.gamma,
  characteristicVelocity: delivered,
  efficiency: 0.95,
});
console.log(`${nozzle}\n`);

console.log('— heat —');
const prandtl = prandtlEstimate({ gamma: products.gasGamma });
const throat = bartzCoefficient({
  throatDiameter: nozzle.throatDiameter,
  viscosity: combustionGasViscosity({ molarMass: products.gasMolarMass, temperature: products.temperature }),
  specificHeat: products.gasSpecificHeat,
  prandtl,
  chamberPressure,
  characteristicVelocity: delivered,
  throatCurvatureRadius: nozzle.throatDiameter,
  sigma: 1.2,
});
const drive = adiabaticWallTemperature({
  stagnationTemperature: products.temperature,
  gamma: products.gamma,
  mach: 1,
  prandtl,
});
console.log(`throat: ${throat}, driven by ${drive}; an order of magnitude for a smoky stream`);
const wall = layeredWallHeating({
  gasTemperature: products.temperature,
  gasCoefficient: '1500 W/(m^2*K)',
  heatingTime: '2 s',
  duration: '5 min',
  initialTemperature: '20 degC',
  outsideCoefficient: '10 W/(m^2*K)',
  innerRadius: '30 mm',
  steps: [
    {
      name: 'liner',
      thickness: '1.5 mm',
      conductivity: '0.15 W/(m*K)',
      density: '750 kg/m^3',
      specificHeat: '1340 J/(kg*K)',
    },
    { contact: '2.75e-4 m^2*K/W' },
    {
      name: 'case',
      thickness: '3 mm',
      conductivity: '167 W/(m*K)',
      density: '2700 kg/m^3',
      specificHeat: '896 J/(kg*K)',
    },
  ],
});
console.log(`${wall}\n`);
const steam = speciesProperties({ species: 'H2O', temperature: products.temperature });
console.log(`steam at the flame temperature: c_p ${steam.specificHeat}`);
