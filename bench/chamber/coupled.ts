// node scripts/run-ts.mjs bench/chamber/coupled.ts [repeats]
// A firing of 60 stations by the coupled model of the port: processor time, best of the repeats.
import {
  grainColumn,
  internalTube,
  propellant,
  regress,
  regressColumn,
  type SimulateInput,
  tubularSegment,
} from '../../src/ballistics';
import { coupledModel } from '../../src/ballistics/coupled/coupled-run';
import { runCoupled } from '../../src/ballistics/coupled/run-coupled';
import { erosionLawOf } from '../../src/ballistics/erosive-inputs';
import { readMotor } from '../../src/ballistics/read-motor';
import { simulateInputs } from '../../src/ballistics/simulate-inputs';
import { readInputs } from '../../src/units';

const repeats = Number(process.argv[2] ?? 40);
const common = {
  propellant: propellant({
    density: '1780 kg/m^3',
    law: { coefficient: 7, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.32 },
    gamma: 1.14,
    molarMass: '40 g/mol',
    flameTemperature: '1600 K',
  }),
  ambient: '1 atm',
  portModel: 'coupled',
} as const;
const tube = {
  ...common,
  grain: regress(internalTube({ outerDiameter: '50 mm', boreDiameter: '20 mm', length: '400 mm' })),
  nozzle: { throatDiameter: '15.8 mm', expansionRatio: 5 },
  chamber: { innerDiameter: '50 mm', length: '410 mm' },
} as const;
const segment = tubularSegment({ outerDiameter: '60 mm', boreDiameter: '24 mm', length: '80 mm' });
const motors: Readonly<Record<string, SimulateInput>> = {
  'tube, no law': tube,
  'tube, Mukunda-Paul': { ...tube, erosiveBurning: { law: 'mukunda-paul' } },
  'tube, Lenoir-Robillard': {
    ...tube,
    erosiveBurning: { law: 'lenoir-robillard', coefficient: 7.23698928e-6, decay: 53 },
  },
  'four segments, Mukunda-Paul': {
    ...common,
    grain: regressColumn(grainColumn({ segments: [segment, segment, segment, segment], spacers: '4 mm' })),
    nozzle: { throatDiameter: '18 mm', expansionRatio: 5 },
    chamber: { innerDiameter: '60 mm', length: '360 mm' },
    erosiveBurning: { law: 'mukunda-paul' },
  },
};

for (const [name, motor] of Object.entries(motors)) {
  const at = { procedure: 'simulate', path: '' };
  const given = readInputs(simulateInputs, motor, at);
  const model = coupledModel(
    given,
    readMotor(given, at),
    erosionLawOf(given.erosiveBurning ?? { law: 'none' }),
  );
  let best = Number.POSITIVE_INFINITY;
  let run = runCoupled(model);
  for (let i = 0; i < repeats; i++) {
    const before = process.cpuUsage();
    run = runCoupled(model);
    const { user, system } = process.cpuUsage(before);
    best = Math.min(best, (user + system) / 1000);
  }
  process.stdout.write(
    `${name.padEnd(28)} ${best.toFixed(1).padStart(5)} ms, ${run.steps} steps, ${run.evaluations} marches\n`,
  );
}
