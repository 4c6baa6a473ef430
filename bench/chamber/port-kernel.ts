// What port.mjs times: the march along a port, and its rows for the C program.
import { writeFileSync } from 'node:fs';
import { addPortCell, CellKind, portCells } from '../../src/ballistics/port/port-cells';
import { marchPort, type PortDrive, type PortGas, portMarch } from '../../src/ballistics/port/port-march';

const gamma = 1.14;
const gasEnergy = (8.31446261815324 / 0.04) * 1600;

/** Two tapered bores with a gap between them and a volume ahead of the nozzle, in cells. */
function column(count: number) {
  const cells = portCells(count);
  const bores = count - 2;
  const half = bores / 2;
  const length = 0.2 / half;
  for (let k = 0; k < 2; k++) {
    for (let i = 0; i < half; i++) {
      const d = 0.02 + 0.003 * (k + (i + 0.5) / half);
      addPortCell(cells, CellKind.bore, length, (Math.PI / 4) * d * d, Math.PI * d * length, d);
    }
    addPortCell(cells, CellKind.gap, 0.004, 0.0019, k === 0 ? 2e-3 : 0, 0.049);
  }
  return cells;
}

const gasOf = (erodes: boolean): PortGas => ({
  gamma,
  gasEnergy,
  density: 1780,
  momentumFactor: 1,
  entranceLoss: 0.3,
  law: {
    lnBoundaries: new Float64Array(0),
    lnCoefficients: Float64Array.of(Math.log(7e-3) - 0.32 * Math.log(1e6)),
    exponents: Float64Array.of(0.32),
  },
  erosion: erodes
    ? { law: 'mukunda-paul', gain: 0.023, threshold: 35, viscosity: 5e-5, augmentationFactor: 1 }
    : { law: 'none' },
  settledWithin: 3e-7,
  fillsBurnedVolume: true,
});

/** Prepares marches, writes them for the C program, and gives the pass over them. */
export function preparePort(count: number, marches: number, erodes: boolean, file: string) {
  const cells = column(count);
  const gas = gasOf(erodes);
  const drives = Float64Array.from({ length: 2 * marches }, (_, j) =>
    j % 2 === 0 ? 2.5e6 + 3e6 * ((j * 0.618034) % 1) : 4e8 * (((j * 0.754878) % 1) - 0.3),
  );
  const columns = [
    Float64Array.from(cells.kind),
    cells.length,
    cells.area,
    cells.burning,
    cells.diameter,
    cells.volume,
  ];
  const head = Float64Array.of(
    ...[count, marches, erodes ? 1 : 0, gamma, gasEnergy, gas.density, gas.momentumFactor, gas.entranceLoss],
    ...[gas.law.lnCoefficients[0], gas.law.exponents[0], gas.settledWithin, 0.023, 35, 5e-5, 1],
  );
  writeFileSync(file, Buffer.concat([head, ...columns, drives].map(({ buffer }) => Buffer.from(buffer))));
  const out = portMarch(count);
  const drive: PortDrive = {
    headPressure: 0,
    headPressureSlope: 0,
    headVolume: 0,
    headFlow: 0,
    ignited: 1,
    liftsChoked: false,
    steepness: 1,
  };
  return () => {
    const sums = [0, 0, 0];
    const start = process.cpuUsage();
    for (let j = 0; j < marches; j++) {
      drive.headPressure = drives[2 * j];
      drive.headPressureSlope = drives[2 * j + 1];
      if (!marchPort(cells, gas, drive, out)) continue;
      sums[0] += out.exitFlow;
      sums[1] += out.exitStagnation;
      sums[2] += out.rate[count - 2];
    }
    const { user, system } = process.cpuUsage(start);
    return { nanoseconds: 1000 * (user + system), sums };
  };
}
