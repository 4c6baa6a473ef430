// A port for the tests of the kernel: plain numbers, its own assembly, none of the library's shapes.
import type { ErosionLaw } from '../../../src/ballistics/port/erosion-law';
import { addPortCell, CellKind, type PortCells, portCells } from '../../../src/ballistics/port/port-cells';
import {
  type PortDrive,
  type PortGas,
  type PortMarch,
  portMarch,
} from '../../../src/ballistics/port/port-march';
import { type PortSolution, solvePort, steady } from '../../../src/ballistics/port/solve-port';

export const gamma = 1.14;
// R·T of molar mass 40 g/mol at 1600 K.
export const gasEnergy = (8.31446261815324 / 0.04) * 1600;
export const vandenkerckhove = (g: number): number =>
  Math.sqrt(g) * (2 / (g + 1)) ** ((g + 1) / (2 * (g - 1)));
export const characteristicVelocity = Math.sqrt(gasEnergy) / vandenkerckhove(gamma);

/** A gas with r = 7 mm/s·(p/MPa)^n unless told otherwise. */
export const gasWith = (
  erosion: ErosionLaw = { law: 'none' },
  { exponent = 0.32, rate = 7e-3, momentumFactor = 1, entranceLoss = 0 } = {},
): PortGas => ({
  gamma,
  gasEnergy,
  density: 1780,
  momentumFactor,
  entranceLoss,
  law: {
    lnBoundaries: new Float64Array(0),
    lnCoefficients: Float64Array.of(Math.log(rate) - exponent * Math.log(1e6)),
    exponents: Float64Array.of(exponent),
  },
  erosion,
  fillsBurnedVolume: false,
  settledWithin: 1e-10,
});

export const mukundaPaul = (augmentationFactor = 1): ErosionLaw => ({
  law: 'mukunda-paul',
  gain: 0.023,
  threshold: 35,
  viscosity: 5e-5,
  augmentationFactor,
});

export const lenoirRobillard = (
  lengthOf: 'hydraulic diameter' | 'distance from the head',
  augmentationFactor = 1,
  coefficient = 7.23698928e-6,
): ErosionLaw => ({
  law: 'lenoir-robillard',
  coefficient,
  decay: 53,
  length: undefined,
  lengthOf,
  augmentationFactor,
});

/** Adds a tube of equal cells. */
export function addTube(cells: PortCells, diameter: number, length: number, count: number): void {
  for (let i = 0; i < count; i++)
    addPortCell(
      cells,
      CellKind.bore,
      length / count,
      (Math.PI / 4) * diameter ** 2,
      (Math.PI * diameter * length) / count,
      diameter,
    );
}

export function tube(diameter: number, length: number, count: number): PortCells {
  const cells = portCells(count);
  addTube(cells, diameter, length, count);
  return cells;
}

/** Conditions of a march: steady, all surface ignited, unless told otherwise. */
export const driveOf = (given: Partial<PortDrive>): PortDrive => ({
  headPressure: 0,
  headPressureSlope: 0,
  headFlow: 0,
  headVolume: 0,
  ignited: 1,
  liftsChoked: false,
  steepness: 1,
  ...given,
});

export interface Solved {
  readonly solution: PortSolution;
  readonly march: PortMarch;
}

/** The steady flow with a throat of this diameter. */
export function solveTo(cells: PortCells, gas: PortGas, throat: number, guess = 2e6): Solved {
  const march = portMarch(cells.count);
  const passes = ((Math.PI / 4) * throat ** 2 * vandenkerckhove(gas.gamma)) / Math.sqrt(gas.gasEnergy);
  const solution = solvePort(cells, gas, (p) => passes * p, driveOf({}), march, guess, steady, 1e-13);
  return { solution, march };
}
