import { describe, expect, it } from 'vitest';
import { type SimulatedFiring, type SimulateInput, simulate } from '../../src/ballistics';
import solved from '../reference/ignition.json';
import { segmentMotor } from './reference-motors';

// The same chamber solved anew in tests/reference/ignition.py: computed with SciPy 1.17.1.

const motor = (): SimulateInput => ({ ...segmentMotor(), ignition: {}, tolerance: 1e-8 });

const inputs: Readonly<Record<Exclude<keyof typeof solved, 'computedWith'>, Partial<SimulateInput>>> = {
  fallingIgniter: {
    ignition: {
      igniterMass: '1.5 g',
      igniterDuration: '20 ms',
      igniterFallTime: '15 ms',
      ignitionDelay: '4 ms',
      flameSpreadTime: '30 ms',
    },
  },
  ownGas: {
    ignition: {
      igniterMass: '1 g',
      igniterDuration: '20 ms',
      igniterFallTime: '10 ms',
      igniterGasTemperature: '2600 K',
      igniterMolarMass: '50 g/mol',
      ignitionDelay: '5 ms',
      flameSpreadTime: '20 ms',
    },
  },
  partial: {
    ignition: {
      igniterMass: '1.2 g',
      igniterDuration: '30 ms',
      partialFraction: 0.3,
      fullIgnitionPressure: '1 MPa',
      flameSpreadTime: '10 ms',
    },
  },
  blockage: { throatBlockage: { fraction: 0.3, from: '0.8 s', duration: '10 ms' } },
  adiabatic: { tailOff: { law: 'adiabatic' } },
  heatLoss: {
    tailOff: {
      law: 'heat-loss',
      heatTransferCoefficient: '900 W/(m^2*K)',
      wallArea: '200 cm^2',
      wallTemperature: '500 K',
    },
  },
};

const within = (found: number, expected: number, relative: number, what: string): void =>
  expect(Math.abs(found / expected - 1), `${what}: ${found}, not ${expected}`).toBeLessThan(relative);

const pressureAt = ({ time, pressure }: SimulatedFiring, t: number): number => {
  const k = Math.max(
    1,
    time.si.findIndex((each) => each >= t),
  );
  const share = (t - time.si[k - 1]) / (time.si[k] - time.si[k - 1]);
  return pressure.si[k - 1] + share * (pressure.si[k] - pressure.si[k - 1]);
};

describe('a chamber solved anew with SciPy', () => {
  for (const [name, input] of Object.entries(inputs))
    it(name, () => {
      const found = simulate({ ...motor(), ...input });
      const expected = Object.entries(solved).find(([each]) => each === name)?.[1];
      if (expected === undefined || typeof expected === 'string') throw new Error(name);
      within(found.peakPressure.si, expected.peak, 1e-6, 'peak');
      within(found.burnoutTime?.si ?? 0, expected.burnout, 1e-6, 'burnout');
      within(found.time.at(found.time.length - 1).si, expected.end, 1e-6, 'end');
      within(found.balance.throughNozzle.si, expected.massThroughNozzle, 1e-6, 'mass');
      for (const [i, after] of [0.002, 0.005, 0.01].entries())
        within(pressureAt(found, expected.burnout + after), expected.tail[i], 1e-4, `tail-off at ${after} s`);
      expect(Math.abs(found.balance.relativeError)).toBeLessThan(1e-7);
      if (expected.fullIgnition === null) return;
      const event = found.events.find(({ name: each }) => each === 'remaining surface ignites');
      within(event?.time.si ?? 0, expected.fullIgnition, 1e-6, 'full ignition');
    });
});
