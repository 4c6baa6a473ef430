import { describe, it } from 'vitest';
import { internalTube, regress } from '../../../src/ballistics';
import { ColumnSum, columnPath, cutColumn } from '../../../src/ballistics/coupled/column-cells';
import { type PortGas, portMarch } from '../../../src/ballistics/port/port-march';
import { solvePort, steady } from '../../../src/ballistics/port/solve-port';
import { checkValue } from '../../cases/check-value';
import { caseOf, siList } from '../../cases/read-case';
import { characteristicVelocity, driveOf, gasWith, lenoirRobillard, mukundaPaul } from '../port/kernel-motor';

// Expected values are those of tests/cases/flow.json, each with its source and provenance there. The cases leave out what
// the run includes (storage in the one, the gas that fills the burned volume in both), so they check its parts: the path
// cut at the depths of the stations, and the port solved at an instant.

const throatArea = (Math.PI / 4) * 0.0158 ** 2;
const passes = throatArea / characteristicVelocity;
const stations = 100;
const newPath = () =>
  columnPath(
    regress(internalTube({ outerDiameter: '50 mm', boreDiameter: '20 mm', length: '400 mm' })).layout(),
    stations,
    Math.PI * 0.025 ** 2,
    false,
    0,
  );

describe('burned station by station', () => {
  it('web-tube-lenoir-robillard', () => {
    const one = caseOf('flow', 'web-tube-lenoir-robillard');
    const path = newPath();
    const gas: PortGas = gasWith(lenoirRobillard('hydraulic diameter'));
    const march = portMarch(path.cells.length.length);
    let guess = 2e6;
    const rates = (depth: Float64Array): Float64Array => {
      cutColumn(path, depth);
      const solution = solvePort(
        path.cells,
        gas,
        (p) => passes * p,
        driveOf({}),
        march,
        guess,
        steady,
        1e-10,
      );
      guess = solution.headPressure;
      const out = new Float64Array(path.stateCount);
      for (let c = 0; c < path.cells.count; c++) out[path.stationOf[c]] = march.rate[c];
      return out;
    };
    let depth = new Float64Array(path.stateCount);
    rates(depth);
    checkValue(one, 'headPressureStart', guess);
    const [atStart, web] = [path.sums[ColumnSum.volume], 0.015];
    let time = 0;
    // Midpoint steps, which end at the times of the case.
    const advance = (to: number): void => {
      const h = (to - time) / Math.ceil((to - time) / 8e-3);
      while (time < to - 1e-12) {
        const first = rates(depth);
        const middle = rates(depth.map((w, i) => w + 0.5 * h * first[i]));
        depth = depth.map((w, i) => w + h * middle[i]);
        time += h;
      }
    };
    siList(one.inputs.times).forEach((t, i) => {
      advance(t);
      rates(depth);
      checkValue(one, `headPressure[${i}]`, guess);
    });
    // Then until the aft end is through, half a station behind the middle of the last.
    const atAftEnd = (of: Float64Array): number => 1.5 * of[stations - 1] - 0.5 * of[stations - 2];
    for (let left = 1; left > 1e-8; ) {
      left = (web - atAftEnd(depth)) / atAftEnd(rates(depth));
      // Less than that, as the rate grows.
      advance(time + 0.9 * left);
    }
    checkValue(one, 'firstContactTime', time);
    checkValue(one, 'webLeftAtHead', web - Math.min(...depth.subarray(0, stations)));
    cutColumn(path, depth);
    checkValue(one, 'propellantLeft', path.sums[ColumnSum.volume] / atStart);
  });
});

describe('a port that fills', () => {
  it('filling-tight-port', () => {
    const one = caseOf('flow', 'filling-tight-port');
    const path = newPath();
    cutColumn(path, new Float64Array(path.stateCount));
    const gas: PortGas = gasWith(mukundaPaul());
    const march = portMarch(path.cells.length.length);
    // The head pressure after an implicit step, whose slope is that of the port at its end: the rule of the trapezoid.
    let [time, pressure, slope] = [0, 0.2e6, 0];
    const step = (h: number, weight: number): void => {
      const before = pressure + (1 - weight) * h * slope;
      const rate = { slope: 1 / (weight * h), offset: -before / (weight * h) };
      const drive = driveOf({});
      const found = solvePort(path.cells, gas, (p) => passes * p, drive, march, pressure, rate, 1e-11);
      pressure = found.headPressure;
      slope = rate.slope * pressure + rate.offset;
      time += h;
    };
    // It begins with steps of Euler's rule, as the first slope is not known.
    for (let i = 0; i < 20; i++) step(1e-6, 1);
    siList(one.inputs.times).forEach((t, i) => {
      const n = Math.ceil((t - time) / 5e-5);
      const h = (t - time) / n;
      for (let k = 0; k < n; k++) step(h, 0.5);
      checkValue(one, `headPressure[${i}]`, pressure);
    });
    const found = solvePort(path.cells, gas, (p) => passes * p, driveOf({}), march, pressure, steady, 1e-11);
    checkValue(one, 'steadyHeadPressure', found.headPressure);
  });
});
