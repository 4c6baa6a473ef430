import { describe, expect, it } from 'vitest';
import { internalTube, propellant, type SimulateInput, simulate, tubularSegment } from '../../src/ballistics';

// Motors with everything at once, against the equations of docs/theory/chamber-pressure.md solved anew: computed with
// scipy 1.10.1, solve_ivp (LSODA at rtol 1e-10; the law of two bands by RK45 with steps of at most 0.2 ms), closed forms
// of area and volume, phases cut at igniter out, surface alight, delay of erosion, closure opening and burnout.

const power = (coefficient: number, exponent: number) =>
  ({ coefficient, exponent, rateUnit: 'mm/s', pressureUnit: 'MPa' }) as const;
const gas = { gamma: 1.14, molarMass: '40 g/mol', flameTemperature: '1600 K' } as const;
const common = { ambient: '101325 Pa' } as const;
const segment = tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' });

interface Solved {
  readonly burnout: number;
  readonly end: number;
  readonly impulse: number;
  readonly pressureIntegral: number;
  readonly massThroughNozzle: number;
  readonly peak: number;
  readonly throatRadius: number;
  readonly closureOpens?: number;
}

const motors: readonly (readonly [string, SimulateInput, Solved])[] = [
  [
    'igniter, flame spread, closure, late erosion, hot grain, discharge and efficiency',
    {
      ...common,
      propellant: propellant({
        density: '1780 kg/m^3',
        law: { ...power(7, 0.32), temperatureSensitivity: '0.002 1/K', referenceTemperature: '293.15 K' },
        ...gas,
      }),
      grainTemperature: '308.15 K',
      grain: segment,
      chamber: { innerDiameter: '50 mm', length: '110 mm' },
      nozzle: {
        throatDiameter: '7 mm',
        expansionRatio: 5,
        separation: 'none',
        dischargeCoefficient: 0.97,
        efficiency: 0.93,
        throatErosion: {
          referenceRate: '0.12 mm/s',
          referencePressure: '4 MPa',
          exponent: 0.8,
          delay: '0.3 s',
        },
      },
      ignition: {
        igniterMass: '1.5 g',
        igniterDuration: '20 ms',
        flameSpreadTime: '50 ms',
        nozzleClosureBurstPressure: '0.8 MPa',
      },
    },
    {
      burnout: 1.52460962,
      end: 1.57544256,
      impulse: 347.532483,
      pressureIntegral: 6276999.27,
      massThroughNozzle: 0.268110413,
      peak: 4487854.27,
      throatRadius: 0.00365446421,
      closureOpens: 0.00207362607,
    },
  ],
  [
    'slag in the throat, c* efficiency, a progressive tube',
    {
      ...common,
      propellant: propellant({
        density: '1820 kg/m^3',
        law: power(5.13, 0.222),
        ...gas,
        characteristicVelocityEfficiency: 0.94,
      }),
      grain: internalTube({ outerDiameter: '40 mm', boreDiameter: '14 mm', length: '120 mm' }),
      chamber: { innerDiameter: '40 mm', length: '150 mm' },
      nozzle: {
        throatDiameter: '5.2 mm',
        expansionRatio: 6,
        separation: 'none',
        throatErosion: {
          referenceRate: '-0.06 mm/s',
          referencePressure: '3 MPa',
          exponent: 1,
          delay: '0.2 s',
        },
      },
    },
    {
      burnout: 1.74553047,
      end: 1.8856183,
      impulse: 326.865595,
      pressureIntegral: 10387377.3,
      massThroughNozzle: 0.240783711,
      peak: 10666435.1,
      throatRadius: 0.00240225855,
    },
  ],
  [
    'a law of two bands with a jump up',
    {
      ...common,
      propellant: propellant({
        density: '1780 kg/m^3',
        law: {
          bands: [
            { from: '1 kPa', to: '4 MPa', ...power(8, 0.35) },
            { from: '4 MPa', to: '100 MPa', ...power(8 * 1.05 * 4 ** -0.15, 0.5) },
          ],
        },
        ...gas,
      }),
      grain: segment,
      chamber: { innerDiameter: '50 mm', length: '110 mm' },
      nozzle: { throatDiameter: '6.8 mm', expansionRatio: 5, separation: 'none' },
    },
    {
      burnout: 0.952351653,
      end: 1.01844362,
      impulse: 384.092484,
      pressureIntegral: 6650285.82,
      massThroughNozzle: 0.266610413,
      peak: 7675383.01,
      throatRadius: 0.0034,
    },
  ],
];

describe('the equations solved anew', () => {
  it.each(motors)('%s', (_name, motor, solved) => {
    const record = simulate(motor);
    const opens = record.events.find(({ name }) => name === 'nozzle closure opens')?.time.si;
    const found: Solved = {
      burnout: record.burnoutTime?.si ?? Number.NaN,
      end: record.time.si.at(-1) ?? Number.NaN,
      impulse: record.totalImpulse.si,
      pressureIntegral: record.pressureIntegral.si,
      massThroughNozzle: record.balance.throughNozzle.si,
      peak: record.peakPressure.si,
      throatRadius: (record.throatDiameter.si.at(-1) ?? Number.NaN) / 2,
      ...(opens !== undefined && { closureOpens: opens }),
    };
    expect(Object.keys(found)).toEqual(Object.keys(solved));
    for (const [figure, value] of Object.entries(solved)) {
      const ours = Object.entries(found).find(([name]) => name === figure)?.[1] ?? Number.NaN;
      expect(Math.abs(ours / value - 1), figure).toBeLessThan(5e-6);
    }
  });
});
