import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { portPressure, propellant } from '../../../src/ballistics';
import { erosiveRate } from '../../../src/ballistics/port/erosion-law';
import { machSquared } from '../../../src/ballistics/port/impulse-flow';
import { addPortCell, CellKind, portCells } from '../../../src/ballistics/port/port-cells';
import { marchPort, portMarch } from '../../../src/ballistics/port/port-march';
import { findRoot } from '../../../src/numerics';
import {
  addTube,
  driveOf,
  gamma,
  gasEnergy,
  gasWith,
  lenoirRobillard,
  mukundaPaul,
  solveTo,
  tube,
  vandenkerckhove,
} from './kernel-motor';

const off = (found: number, expected: number): number => Math.abs(found / expected - 1);

// Closed form of a port of constant area with one rate everywhere, by its own root search: textbook balances (Shapiro
// 1953 ch. 8, from memory), none of the library's relations.
const areaOver = (M: number): number =>
  (1 / M) * ((2 / (gamma + 1)) * (1 + ((gamma - 1) / 2) * M * M)) ** ((gamma + 1) / (2 * (gamma - 1)));
function closedForm(massFlow: number, area: number, J: number, beta: number) {
  const choking = 1 / Math.sqrt(1 + gamma * (beta - 1));
  const mach =
    J <= areaOver(choking)
      ? choking
      : findRoot((M) => Math.log(areaOver(M) / J), { lower: 1e-4, upper: choking }).root;
  const t = 1 + ((gamma - 1) / 2) * mach * mach;
  const aft = (massFlow / area) * Math.sqrt(gasEnergy / (gamma * mach * mach * t));
  return {
    mach,
    aft,
    head: aft * (1 + beta * gamma * mach * mach),
    stagnation: aft * t ** (gamma / (gamma - 1)),
  };
}

describe('a port of constant area and one rate', () => {
  const diameter = 0.02;
  const area = (Math.PI / 4) * diameter ** 2;
  const massFlow = 1780 * 7e-3 * Math.PI * diameter * 0.4;
  it.each([
    [10, 1],
    [4, 1],
    [2, 1],
    [1.5, 1],
    [1.05, 1],
    [1.0001, 1],
    [0.8, 1],
    [0.3, 1],
    [3, 1.2337],
    [1.2, 1.2337],
    [1.005, 1.2337],
    [0.7, 1.2337],
  ])('is the closed form at J = %s, profile factor %s, within 1e-6', (J, beta) => {
    const gas = gasWith(undefined, { exponent: 0, momentumFactor: beta });
    const { solution, march } = solveTo(tube(diameter, 0.4, 50), gas, diameter / Math.sqrt(J));
    const exact = closedForm(massFlow, area, J, beta);
    const choking = 1 / Math.sqrt(1 + gamma * (beta - 1));
    expect(solution.converged).toBe(true);
    expect(solution.chokedPort).toBe(exact.mach === choking);
    expect(off(solution.headPressure, exact.head)).toBeLessThan(1e-6);
    expect(off(march.exitFlow, massFlow)).toBeLessThan(1e-12);
    // At the choked end the pressure varies as the root of the distance from it.
    const near = exact.mach > 0.95 * choking ? 1e-3 : 1e-6;
    expect(off(march.exitMach, exact.mach)).toBeLessThan(near);
    expect(off(march.exitStagnation, exact.stagnation)).toBeLessThan(near);
    // Half way the flow is half of that at the end: the middle of the 50 cells is a face, so its neighbours straddle it.
    const middle = 0.5 * (march.massFlow[24] + march.massFlow[25]);
    expect(off(middle, 0.5 * massFlow)).toBeLessThan(1e-12);
    const local = closedForm(massFlow, area, J, beta);
    for (const i of [0, 10, 24, 40]) {
      const G = march.massFlow[i] / area;
      const p = march.pressure[i];
      const M2 = march.mach[i] ** 2;
      // The balances hold at each station.
      expect(off(p * (1 + beta * gamma * M2), local.head)).toBeLessThan(1e-6);
      expect(off(p * Math.sqrt((gamma * M2 * (1 + ((gamma - 1) / 2) * M2)) / gasEnergy), G)).toBeLessThan(
        1e-9,
      );
    }
  });

  it('gives no flow instead of NaN where the head pressure is too low to pass it', () => {
    const cells = tube(diameter, 0.4, 20);
    const out = portMarch(20);
    const drive = driveOf({ headPressure: 3e5 });
    expect(marchPort(cells, gasWith(undefined, { exponent: 0 }), drive, out)).toBe(false);
    expect(out.chokedCell).toBeGreaterThanOrEqual(0);
  });

  it('takes the stored gas from the flow: while it fills, the port does not choke', () => {
    const cells = tube(diameter, 0.4, 40);
    const gas = gasWith();
    const out = portMarch(40);
    const at = (headPressureSlope: number) =>
      marchPort(cells, gas, driveOf({ headPressure: 4e5, headPressureSlope }), out);
    // At 0.4 MPa the whole generation chokes this port (pitfall 10 of the notes).
    expect(at(0)).toBe(false);
    const generated = 1780 * 7e-3 * 0.4 ** 0.32 * Math.PI * diameter * 0.4;
    const slope = (0.7 * generated * gasEnergy) / (area * 0.4);
    expect(at(slope)).toBe(true);
    // What leaves is what burns less what is stored.
    expect(off(out.exitFlow, out.burned - (slope * area * 0.4) / gasEnergy)).toBeLessThan(1e-8);
  });
});

describe('order of the port solver', () => {
  // Manufactured: A = A_0·(1 + a·x + b·x²), p = p_h·(1 − c·x²), x = z/L, both chosen; then the balance of momentum gives
  // β·ρ_g·u²·A = −∫A dp in closed form, and the source is the difference of mass flow over each cell.
  const length = 0.4;
  const [openAtHead, a, b, head, c] = [4e-4, 0.35, 0.25, 3e6, 0.12];
  const area = (x: number): number => openAtHead * (1 + a * x + b * x * x);
  const pressure = (x: number): number => head * (1 - c * x * x);
  const flow = (x: number, beta: number): number => {
    const push = 2 * c * head * openAtHead * (x ** 2 / 2 + (a * x ** 3) / 3 + (b * x ** 4) / 4);
    const M2 = push / (beta * gamma * pressure(x) * area(x));
    return pressure(x) * area(x) * Math.sqrt((gamma * M2 * (1 + ((gamma - 1) / 2) * M2)) / gasEnergy);
  };
  const errors = (count: number, beta: number) => {
    const gas = gasWith(undefined, { exponent: 0, momentumFactor: beta });
    const cells = portCells(count);
    for (let i = 0; i < count; i++) {
      const made = flow((i + 1) / count, beta) - flow(i / count, beta);
      addPortCell(
        cells,
        CellKind.bore,
        length / count,
        area((i + 0.5) / count),
        made / (1780 * 7e-3),
        Math.sqrt((4 / Math.PI) * area((i + 0.5) / count)),
      );
    }
    const out = portMarch(count);
    const drive = driveOf({ headPressure: head });
    expect(marchPort(cells, gas, drive, out)).toBe(true);
    const inside = Math.max(
      ...Array.from({ length: count }, (_, i) => off(out.pressure[i], pressure((i + 0.5) / count))),
    );
    return { inside, exit: off(out.exitPressure, pressure(1)), flow: off(out.exitFlow, flow(1, beta)) };
  };
  it.each([1, 1.2337])('is two, with a profile factor of %s', (beta) => {
    const [coarse, fine, finer] = [40, 80, 160].map((count) => errors(count, beta));
    for (const [one, two] of [
      [coarse, fine],
      [fine, finer],
    ]) {
      expect(Math.log2(one.inside / two.inside)).toBeGreaterThan(1.9);
      expect(Math.log2(one.exit / two.exit)).toBeGreaterThan(1.9);
    }
    expect(finer.inside).toBeLessThan(1e-5);
    expect(finer.flow).toBeLessThan(1e-12);
  });
});

// Computed with SciPy 1.17.1 by tests/reference/port/steady_port.py.
const reference: {
  readonly table: Readonly<Record<'z' | 'area' | 'perimeter', readonly number[]>>;
  readonly records: readonly {
    readonly name: string;
    readonly headPressure: number;
    readonly nozzleStagnation: number;
    readonly aftPressure: number;
    readonly massFlow: number;
    readonly aftMach: number;
    readonly position: readonly number[];
    readonly pressure: readonly number[];
    readonly rate: readonly number[];
    readonly massFlux: readonly number[];
  }[];
  readonly lambert: readonly Readonly<
    Record<'baseRate' | 'flux' | 'length' | 'coefficient' | 'rate', number>
  >[];
} = JSON.parse(readFileSync('tests/reference/port/steady-port.json', 'utf8'));

const recorded = (start: string) => {
  const found = reference.records.find(({ name }) => name.startsWith(start));
  if (found === undefined) throw new Error(`no record ${start}`);
  return found;
};

const standard = propellant({
  density: '1780 kg/m^3',
  law: { coefficient: 7, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.32 },
  gamma,
  molarMass: '40 g/mol',
  flameTemperature: '1600 K',
});

describe('against SciPy', () => {
  it('a tabulated section with the profile of injected flow and erosion', () => {
    const one = recorded('tabulated');
    const { z, area, perimeter } = reference.table;
    const [found] = portPressure({
      propellant: standard,
      port: {
        shape: 'tabulated',
        sections: z.map((at, i) => ({
          position: `${at} m`,
          area: `${area[i]} m^2`,
          perimeter: `${perimeter[i]} m`,
        })),
      },
      throatDiameter: '19 mm',
      momentumFactor: 1.2337,
      laws: [{ law: 'mukunda-paul' }],
      stations: one.position.map((at) => `${at} m` as const),
    }).laws;
    expect(off(found.headPressure.si, one.headPressure)).toBeLessThan(3e-6);
    expect(off(found.nozzleStagnation.si, one.nozzleStagnation)).toBeLessThan(3e-6);
    expect(off(found.massFlow.si, one.massFlow)).toBeLessThan(3e-6);
    one.position.forEach((_, i) => {
      expect(off(found.pressure.at(i).si, one.pressure[i])).toBeLessThan(1e-5);
      expect(off(found.rate.at(i).si, one.rate[i])).toBeLessThan(1e-5);
    });
  });

  it('a port that chokes before the throat, with erosion: the head pressure rises until it passes the flow', () => {
    const one = recorded('tube choked at its aft end, Lenoir');
    const gas = gasWith(lenoirRobillard('hydraulic diameter'));
    const { solution, march } = solveTo(tube(0.02, 0.4, 800), gas, 0.024);
    expect(solution.chokedPort).toBe(true);
    expect(off(solution.headPressure, one.headPressure)).toBeLessThan(2e-5);
    expect(off(march.exitFlow, one.massFlow)).toBeLessThan(2e-5);
  });

  it('a port that chokes below Mach 1 by its profile', () => {
    const one = recorded('tube choked at its aft end, profile');
    const { solution, march } = solveTo(
      tube(0.02, 0.4, 800),
      gasWith(undefined, { momentumFactor: 1.2337 }),
      0.0201,
    );
    expect(solution.chokedPort).toBe(true);
    expect(off(solution.headPressure, one.headPressure)).toBeLessThan(2e-5);
    expect(off(march.exitFlow, one.massFlow)).toBeLessThan(2e-5);
  });

  it('two bores with burning faces in the gap, a sharp entrance and a volume ahead of the nozzle', () => {
    const one = recorded('two bores');
    const cells = portCells(700);
    addTube(cells, 0.02, 0.2, 300);
    addPortCell(cells, CellKind.gap, 0.004, 0.0019, 2e-3, 0.049);
    addTube(cells, 0.024, 0.15, 300);
    addPortCell(cells, CellKind.gap, 0.02, 0.0019, 0, 0.049);
    const { solution, march } = solveTo(cells, gasWith(mukundaPaul(0.5), { entranceLoss: 0.5 }), 0.0165);
    expect(off(solution.headPressure, one.headPressure)).toBeLessThan(5e-6);
    expect(off(march.exitStagnation, one.nozzleStagnation)).toBeLessThan(5e-6);
    expect(off(march.exitFlow, one.massFlow)).toBeLessThan(5e-6);
  });

  it('Lenoir-Robillard by distance, with an augmentation factor', () => {
    const one = recorded('tube, Lenoir-Robillard by distance');
    const [found] = portPressure({
      propellant: standard,
      port: { shape: 'tube', boreDiameter: '12 mm', length: '300 mm' },
      throatDiameter: '9.5 mm',
      laws: [
        {
          law: 'lenoir-robillard',
          coefficient: 7.23698928e-6,
          lengthOf: 'distance from the head',
          augmentationFactor: 2,
        },
      ],
      stations: one.position.map((at) => `${at} m` as const),
    }).laws;
    expect(off(found.headPressure.si, one.headPressure)).toBeLessThan(2e-6);
    one.position.forEach((_, i) => {
      expect(off(found.rate.at(i).si, one.rate[i])).toBeLessThan(5e-6);
    });
  });

  it('the total rate of Lenoir-Robillard against the Lambert function', () => {
    for (const { baseRate, flux, length, coefficient, rate } of reference.lambert)
      expect(
        off(
          erosiveRate(
            lenoirRobillard('hydraulic diameter', 1, coefficient),
            1780,
            baseRate,
            flux,
            length,
            0,
            0,
          ),
          rate,
        ),
      ).toBeLessThan(1e-12);
  });
});

describe('the Mach number of a flow and an impulse', () => {
  it('keeps its digits at the head end', () => {
    // M² = s/γ·(1 + O(s)) for s → 0: the textbook root loses all digits there.
    for (const s of [1e-30, 1e-20, 1e-12])
      expect(off(machSquared(Math.sqrt(s), 1, 1, gamma, 1), s / gamma)).toBeLessThan(1e-11);
  });

  it('is that of sound at the largest flow, and none above', () => {
    const most = Math.sqrt(gamma / (2 * (gamma + 1)));
    expect(machSquared(most * (1 - 1e-12), 1, 1, gamma, 1)).toBeCloseTo(1, 4);
    expect(machSquared(most * (1 + 1e-9), 1, 1, gamma, 1)).toBeNaN();
    // The nozzle's constant, as the flow of a throat without a port.
    expect(vandenkerckhove(gamma)).toBeGreaterThan(most);
  });
});
