import fc from 'fast-check';
import { expect, it } from 'vitest';
import { readMotor } from '../../src/ballistics/read-motor';
import { simulateInputs } from '../../src/ballistics/simulate-inputs';
import { beginRun, chamberJacobian, chamberSlopes } from '../../src/ballistics/simulation/chamber-slopes';
import { chamberWorkspace } from '../../src/ballistics/simulation/chamber-workspace';
import { setSwitches } from '../../src/ballistics/simulation/run-switches';
import { readInputs } from '../../src/units';
import { segmentMotor } from './reference-motors';

// The method keeps its order only with the exact Jacobian: against central differences of the slopes.

const at = { procedure: 'test', path: '' };
const model = readMotor(
  readInputs(
    simulateInputs,
    {
      ...segmentMotor(),
      ignition: {
        igniterMass: '1 g',
        igniterDuration: '10 ms',
        igniterFallTime: '20 ms',
        igniterGasTemperature: '2600 K',
        igniterMolarMass: '50 g/mol',
        ignitionDelay: '2 ms',
        flameSpreadTime: '60 ms',
        partialFraction: 0.4,
        fullIgnitionPressure: '1 MPa',
      },
    },
    at,
  ),
  at,
).model;

it('the Jacobian during ignition is that of the slopes', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.001, max: 0.05, noNaN: true }),
      fc.double({ min: 0.3e6, max: 5e6, noNaN: true }),
      fc.double({ min: 1e-4, max: 1e-3, noNaN: true }),
      fc.boolean(),
      (t, p, y, held) => {
        const near = [model.ignitionDelay, 0.01, 0.03].some((change) => Math.abs(t - change) < 1e-5);
        fc.pre(!near);
        const w = chamberWorkspace();
        beginRun(model, w);
        w.held = held;
        setSwitches(model, w, t, model.throatRadius);
        const slopesAt = (...point: readonly [number, number, number, number]): readonly number[] => {
          w.point.set(point);
          chamberSlopes(model, w);
          return [...w.slope];
        };
        const throat = model.throatRadius;
        const point = [t, p, y, throat] as const;
        const differences = [1e-8, 1e-5 * p, 1e-9, 1e-8].map((d, k) => {
          const moved = (by: number) =>
            slopesAt(
              ...([0, 1, 2, 3].map((j) => point[j] + (j === k ? by : 0)) as [number, number, number, number]),
            );
          const [up, down] = [moved(d), moved(-d)];
          return up.map((value, i) => (value - down[i]) / (2 * d));
        });
        const [byT, byP, byY, byThroat] = differences;
        slopesAt(...point);
        chamberJacobian(model, w);
        const [pp, py, pr, yp, yy, yr, , pt, yt] = w.jacobian;
        const close = (found: number, expected: number, scale: number): void =>
          expect(Math.abs(found - expected)).toBeLessThanOrEqual(1e-4 * Math.abs(expected) + scale);
        const rise = 1e8; // Pa/s, of the largest terms of p'
        close(pp, byP[0], 1e-6 * (rise / p));
        close(py, byY[0], 1e-6 * (rise / y));
        close(pr, byThroat[0], 1e-6 * (rise / throat));
        close(pt, byT[0], 1e-6 * (rise / t));
        close(yp, byP[1], 1e-13);
        close(yy, byY[1], 1e-6);
        close(yr, byThroat[1], 1e-6);
        close(yt, byT[1], 1e-6);
      },
    ),
    { numRuns: 200 },
  );
});
