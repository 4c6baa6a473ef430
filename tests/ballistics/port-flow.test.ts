import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  erosiveCoefficient,
  lenoirRobillardRate,
  portEnd,
  portMassFlux,
  portStagnationPressureRatio,
  portStaticPressureRatio,
  simulate,
} from '../../src/ballistics';
import { portMachAt } from '../../src/ballistics/port-mach';
import { checkValue } from '../cases/check-value';
import { caseOf, si, siList } from '../cases/read-case';
import { endBurnerMotor, segmentMotor } from './reference-motors';

// Expected values are those of tests/cases/ballistics.json, each with its source and provenance there.

const close = (value: number, expected: number, relTol: number): void =>
  expect(Math.abs(value / expected - 1)).toBeLessThanOrEqual(relTol);

describe('port flow', () => {
  it('port-static-drop', () => {
    const one = caseOf('ballistics', 'port-static-drop');
    const { inputs } = one;
    siList(inputs.machAft).forEach((mach, i) => {
      checkValue(one, `headToAftStatic[${i}]`, portStaticPressureRatio({ mach, gamma: 1.2 }));
      checkValue(one, `aftStagnationToHead[${i}]`, portStagnationPressureRatio({ mach, gamma: 1.2 }));
    });
  });

  it('port-mach-from-area-ratio', () => {
    const one = caseOf('ballistics', 'port-mach-from-area-ratio');
    const { inputs } = one;
    siList(inputs.portToThroat).forEach((portToThroat, i) => {
      const end = portEnd({ portToThroat, gamma: 1.2 });
      checkValue(one, `machAft[${i}]`, end.mach);
      checkValue(one, `headToAftStatic[${i}]`, end.headToAftStatic);
      checkValue(one, `aftStagnationToHead[${i}]`, end.aftStagnationToHead);
    });
  });

  it('port-mass-flux', () => {
    const one = caseOf('ballistics', 'port-mass-flux');
    const { inputs } = one;
    const throatArea = (Math.PI / 4) * si(inputs.throatDiameter) ** 2;
    const massFlow = (si(inputs.pressure) * throatArea) / si(inputs.characteristicVelocity);
    checkValue(one, 'massFlow', massFlow);
    const flux = portMassFlux.si({ massFlow, portDiameter: si(inputs.boreDiameter) });
    checkValue(one, 'massFlux', flux);
    checkValue(one, 'massFluxInchPound', flux);
    checkValue(one, 'machAft', portEnd({ portToThroat: si(one.expected.portToThroat), gamma: 1.14 }).mach);
  });

  it('the Mach number of a flux is that whose flux it is (round trip)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 0.999, noNaN: true }),
        fc.double({ min: 1.03, max: 1.4, noNaN: true }),
        (mach, gamma) => {
          const flux =
            (4e6 / Math.sqrt(3e5)) *
            Math.sqrt(gamma) *
            mach *
            (Math.sqrt(1 + ((gamma - 1) / 2) * mach ** 2) / (1 + gamma * mach ** 2));
          // The flux has its maximum at Mach 1: half the digits are lost there.
          close(portMachAt(flux, 4e6, 3e5, gamma), mach, mach > 0.9 ? 1e-6 : 1e-12);
        },
      ),
    );
  });
});

describe('erosive burning', () => {
  it('erosive-alpha', () => {
    const one = caseOf('ballistics', 'erosive-alpha');
    const alpha = erosiveCoefficient({
      gasHeatCapacity: '1900 J/(kg*K)',
      viscosity: '5e-5 Pa*s',
      prandtl: 0.5,
      density: '1750 kg/m^3',
      solidHeatCapacity: '1250 J/(kg*K)',
      gasTemperature: '2800 K',
      surfaceTemperature: '900 K',
      grainTemperature: '293 K',
    });
    checkValue(one, 'alpha', alpha);
  });

  it('erosive-rate: the total rate is on both sides', () => {
    const one = caseOf('ballistics', 'erosive-rate');
    const rate = lenoirRobillardRate({
      baseRate: '8 mm/s',
      coefficient: 1.71491896e-5,
      massFlux: '1000 kg/(m^2*s)',
      length: '0.3 m',
      density: '1750 kg/m^3',
    });
    checkValue(one, 'burnRate', rate.si);
    checkValue(one, 'augmentation', rate.si / 0.008);
  });

  it('raises the first pressure of a tight port, fades as it opens, and vanishes with its coefficient', () => {
    const tight = { ...segmentMotor(), nozzle: { throatDiameter: '9 mm', expansionRatio: 4 } } as const;
    const plain = simulate(tight);
    const run = (coefficient: number) =>
      simulate({ ...tight, erosiveBurning: { law: 'lenoir-robillard', coefficient, length: '85 mm' } });
    const strong = run(2e-5);
    const early = (record: typeof plain): number =>
      record.pressure.si[record.web.si.findIndex((w) => w > 0.5e-3)];
    expect(early(strong)).toBeGreaterThan(1.01 * early(plain));
    close(run(0).totalImpulse.si, plain.totalImpulse.si, 1e-9);
    expect(Math.abs(strong.balance.relativeError)).toBeLessThan(1e-3);
    const threshold = (speed: '50 m/s' | '5000 m/s') =>
      simulate({
        ...tight,
        erosiveBurning: { law: 'threshold-velocity', threshold: speed, gain: 0.2 },
      });
    expect(early(threshold('50 m/s'))).toBeGreaterThan(early(plain));
    close(threshold('5000 m/s').totalImpulse.si, plain.totalImpulse.si, 1e-9);
  });

  it('needs a port', () => {
    expect(() =>
      simulate({
        ...endBurnerMotor(),
        erosiveBurning: { law: 'lenoir-robillard', coefficient: 2e-5, length: '1 m' },
      }),
    ).toThrow(expect.objectContaining({ code: 'no-port' }));
  });
});

describe('diagnosis along the port', () => {
  it('at the aft end is the flux of the mass flow through the port, falling to the head end', () => {
    const record = simulate(segmentMotor());
    const flow = record.portFlow;
    expect(flow).toBeDefined();
    if (flow === undefined) return;
    const i = record.time.si.findIndex((t) => t > 0.2);
    const n = flow.position.length;
    for (let s = 1; s < n; s++) expect(flow.massFlux[s].si[i]).toBeGreaterThan(flow.massFlux[s - 1].si[i]);
    const port = Math.PI * (0.008 + record.web.si[i]) ** 2;
    // The last station stands half a stretch ahead of the end: it sees all but half a share of the gas.
    close(flow.massFlux[n - 1].si[i], (record.massFlow.si[i] / port) * (1 - 0.5 / n), 0.01);
    close(flow.portToThroat[i], port / ((Math.PI / 4) * 0.007 ** 2), 1e-3);
    expect(flow.headPressureRatio[i]).toBeGreaterThan(1);
    expect(record.cautions).toEqual([]);
  });

  it('cautions when the port is tight', () => {
    const tight = simulate({ ...segmentMotor(), nozzle: { throatDiameter: '12 mm', expansionRatio: 2 } });
    expect(tight.cautions.join('\n')).toMatch(/port-to-throat area ratio 1\.78 at the start/);
    const burning = simulate({ ...segmentMotor(), nozzle: { throatDiameter: '9 mm', expansionRatio: 2 } });
    expect(burning.cautions.join('\n')).toMatch(/erosive burning is likely/);
  });
});
