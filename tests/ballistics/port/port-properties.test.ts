import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chokedPortFlux,
  erosiveThresholdFlux,
  lenoirRobillardRate,
  mukundaPaulAugmentation,
  mukundaPaulRate,
  portChokingMach,
  portEnd,
  portPressure,
  propellant,
  segmentGapFlow,
  thresholdVelocityFactor,
  uniformPort,
} from '../../../src/ballistics';
import { type ErosionLaw, erosiveRate } from '../../../src/ballistics/port/erosion-law';
import { addPortCell, CellKind, portCells } from '../../../src/ballistics/port/port-cells';
import { marchPort, portMarch } from '../../../src/ballistics/port/port-march';
import {
  addTube,
  characteristicVelocity,
  driveOf,
  gamma,
  gasEnergy,
  gasWith,
  lenoirRobillard,
  mukundaPaul,
  solveTo,
  tube,
} from './kernel-motor';

const off = (found: number, expected: number): number => Math.abs(found / expected - 1);
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyLaw: fc.Arbitrary<ErosionLaw> = fc.oneof(
  fc.constant<ErosionLaw>({ law: 'none' }),
  between(0, 2).map(mukundaPaul),
  between(0, 2).map((factor) => lenoirRobillard('hydraulic diameter', factor)),
  between(0, 2).map((factor) => lenoirRobillard('distance from the head', factor)),
  fc
    .record({ threshold: between(50, 400), gain: between(0, 0.5), augmentationFactor: between(0, 2) })
    .map((constants): ErosionLaw => ({ law: 'threshold-velocity', ...constants })),
);

const anyTube = fc.record({
  diameter: between(0.008, 0.06),
  slenderness: between(4, 25),
  J: between(1.02, 8),
  exponent: between(-0.2, 0.6),
  rate: between(3e-3, 1.2e-2),
  erosion: anyLaw,
});

const count = 40;
const solveTube = ({
  diameter,
  slenderness,
  J,
  exponent,
  rate,
  erosion,
}: typeof anyTube extends fc.Arbitrary<infer T> ? T : never) =>
  solveTo(
    tube(diameter, slenderness * diameter, count),
    gasWith(erosion, { exponent, rate }),
    diameter / Math.sqrt(J),
  );

describe('a solved port', () => {
  it('has an aft Mach number that the port-to-throat ratio alone determines, whatever burns', () => {
    fc.assert(
      fc.property(anyTube, (one) => {
        const { solution, march } = solveTube(one);
        expect(solution.converged).toBe(true);
        // Near choking the Mach number changes with the root of the distance from it.
        expect(off(march.exitMach, portEnd({ portToThroat: one.J, gamma }).mach)).toBeLessThan(1e-8);
      }),
      { numRuns: 60 },
    );
  });

  it('passes through the nozzle what burns, by the nozzle stagnation pressure and not that of the head', () => {
    fc.assert(
      fc.property(anyTube, (one) => {
        const { solution, march } = solveTube(one);
        const throat = ((Math.PI / 4) * one.diameter ** 2) / one.J;
        expect(off(march.exitFlow, march.burned)).toBeLessThan(1e-13);
        expect(off(march.exitFlow, (march.exitStagnation * throat) / characteristicVelocity)).toBeLessThan(
          1e-9,
        );
        expect(solution.headPressure).toBeGreaterThan(march.exitStagnation);
        expect(solution.marches).toBeLessThan(60);
      }),
      { numRuns: 60 },
    );
  });

  it('is that of one pressure where the port is wide: M → 0', () => {
    fc.assert(
      fc.property(anyTube, between(30, 300), (one, J) => {
        const { solution, march } = solveTube({ ...one, J, erosion: { law: 'none' } });
        const M = portEnd({ portToThroat: J, gamma }).mach;
        expect(off(solution.headPressure, march.exitStagnation)).toBeLessThan(gamma * M * M);
        expect(off(march.rate[0], march.rate[count - 1])).toBeLessThan(gamma * M * M);
      }),
      { numRuns: 30 },
    );
  });

  it('has a head pressure that falls when the throat opens, and rises with erosion', () => {
    fc.assert(
      fc.property(anyTube, between(1.01, 1.5), between(0.2, 1), (one, wider, factor) => {
        const here = solveTube(one).solution.headPressure;
        expect(solveTube({ ...one, J: one.J * wider }).solution.headPressure).toBeGreaterThan(here);
        const { erosion } = one;
        if (erosion.law === 'none' || erosion.augmentationFactor === 0) return;
        const less = { ...erosion, augmentationFactor: erosion.augmentationFactor * factor };
        expect(solveTube({ ...one, erosion: less }).solution.headPressure).toBeLessThanOrEqual(
          here * (1 + 1e-9),
        );
      }),
      { numRuns: 40 },
    );
  });

  it('is the same at every size without erosion; with a size effect the larger one gains less', () => {
    fc.assert(
      fc.property(anyTube, between(1.5, 5), (one, scale) => {
        const scaled = (erosion: ErosionLaw, by: number) =>
          solveTube({ ...one, erosion, diameter: one.diameter * by }).solution.headPressure;
        expect(off(scaled({ law: 'none' }, scale), scaled({ law: 'none' }, 1))).toBeLessThan(1e-9);
        const law = lenoirRobillard('hydraulic diameter');
        expect(scaled(law, scale)).toBeLessThan(scaled(law, 1) * (1 + 1e-9));
      }),
      { numRuns: 30 },
    );
  });

  it('scales as the power 1/(1 − n) of the rate without erosion', () => {
    fc.assert(
      fc.property(anyTube, between(1.1, 2), (given, by) => {
        const one = { ...given, erosion: { law: 'none' } as const };
        const before = solveTube(one).solution.headPressure;
        const after = solveTube({ ...one, rate: one.rate * by }).solution.headPressure;
        expect(off(after / before, by ** (1 / (1 - one.exponent)))).toBeLessThan(1e-8);
      }),
      { numRuns: 30 },
    );
  });

  it('passes over into the result of a uniform profile as its factor goes to 1', () => {
    const found = [1, 1.0001, 1.001, 1.01].map(
      (momentumFactor) =>
        solveTo(tube(0.02, 0.4, count), gasWith(undefined, { momentumFactor }), 0.0158).solution.headPressure,
    );
    expect(off(found[1], found[0])).toBeLessThan(3e-5);
    // In proportion to the difference from 1.
    expect((found[3] - found[0]) / (found[2] - found[0])).toBeCloseTo(10, 0);
  });

  it('pays 23 % more at the head with the profile of injected flow (the notes; incompressible limit)', () => {
    const rise = (momentumFactor: number): number => {
      const { solution, march } = solveTo(
        tube(0.02, 0.4, count),
        gasWith(undefined, { momentumFactor, exponent: 0 }),
        0.005,
      );
      return solution.headPressure / march.exitPressure - 1;
    };
    expect(rise(1.2337) / rise(1)).toBeCloseTo(1.2337, 4);
  });

  it('finds the choked port too, at the head pressure that just passes its flow', () => {
    fc.assert(
      fc.property(anyTube, between(0.3, 0.98), (one, J) => {
        const { solution, march } = solveTube({ ...one, J });
        expect(solution.converged).toBe(true);
        expect(solution.chokedPort).toBe(true);
        const area = (Math.PI / 4) * one.diameter ** 2;
        // Largest flow of a head pressure: p_h·A·√(γ/(2·(γ + 1)·R·T_0)).
        const most = solution.headPressure * area * Math.sqrt(gamma / (2 * (gamma + 1) * gasEnergy));
        expect(off(march.exitFlow, most)).toBeLessThan(1e-9);
      }),
      { numRuns: 40 },
    );
  });

  it('loses stagnation pressure at a gap, more with a loss at the entrance, and nothing at M → 0', () => {
    const with2 = (throat: number, entranceLoss: number, gapped: boolean) => {
      const cells = portCells(90);
      addTube(cells, 0.02, 0.2, 40);
      if (gapped) addPortCell(cells, CellKind.gap, 1e-6, 0.0019, 0, 0.049);
      addTube(cells, 0.02, 0.2, 40);
      const { solution, march } = solveTo(cells, gasWith(undefined, { entranceLoss }), throat);
      return solution.headPressure / march.exitStagnation;
    };
    const plain = with2(0.015, 0, false);
    const gap = with2(0.015, 0, true);
    const sharp = with2(0.015, 0.5, true);
    expect(gap).toBeGreaterThan(plain * 1.002);
    expect(sharp).toBeGreaterThan(gap * 1.002);
    expect(off(with2(0.002, 0.5, true), 1)).toBeLessThan(1e-4);
  });

  it('carries igniter gas from the head through to the nozzle', () => {
    const cells = tube(0.02, 0.3, 30);
    const out = portMarch(30);
    const drive = driveOf({ headPressure: 3e6, headFlow: 0.05, ignited: 0 });
    expect(marchPort(cells, gasWith(), drive, out)).toBe(true);
    expect(off(out.exitFlow, 0.05)).toBeLessThan(1e-12);
    expect(out.burned).toBe(0);
  });
});

describe('a choked port', () => {
  it('passes the largest flow of its head pressure, also with a profile (maximum by search over Mach numbers)', () => {
    fc.assert(
      fc.property(between(1.05, 1.4), between(1, 1.4), (g, momentumFactor) => {
        let most = 0;
        for (let M = 0.5; M <= 1; M += 1e-4)
          most = Math.max(
            most,
            Math.sqrt(g * M * M * (1 + ((g - 1) / 2) * M * M)) / (1 + momentumFactor * g * M * M),
          );
        const flux = chokedPortFlux({
          headPressure: '1 MPa',
          gasConstant: '200 J/(kg*K)',
          gasTemperature: '1500 K',
          gamma: g,
          momentumFactor,
        }).si;
        expect(off(flux, (1e6 * most) / Math.sqrt(200 * 1500))).toBeLessThan(1e-7);
      }),
      { numRuns: 20 },
    );
  });

  it('is the one that the port end reports, where its profile chokes it before the throat', () => {
    const momentumFactor = 1.2337;
    const choking = portChokingMach({ gamma, momentumFactor });
    // The isentropic area relation at the choking Mach number, 1.0077, is between these two ratios.
    const narrow = portEnd({ portToThroat: 1.005, gamma, momentumFactor });
    expect([narrow.choked, narrow.mach]).toEqual([true, choking]);
    const wider = portEnd({ portToThroat: 1.02, gamma, momentumFactor });
    expect(wider.choked).toBe(false);
    expect(wider.mach).toBeLessThan(choking);
  });
});

describe('a gap between segments', () => {
  it('has faces that burn without erosion, whatever flows past', () => {
    const cells = portCells(21);
    addTube(cells, 0.012, 0.3, 20);
    addPortCell(cells, CellKind.gap, 0.003, 1.2e-4, 1e-4, 0.012);
    const out = portMarch(21);
    expect(marchPort(cells, gasWith(mukundaPaul()), driveOf({ headPressure: 4e6 }), out)).toBe(true);
    expect(out.rate[19]).toBeGreaterThan(1.05 * 7e-3 * (out.pressure[19] / 1e6) ** 0.32);
    expect(off(out.rate[20], 7e-3 * (out.pressure[20] / 1e6) ** 0.32)).toBeLessThan(1e-6);
  });

  it('conserves mass and never raises the stagnation pressure', () => {
    fc.assert(
      fc.property(between(0.01, 0.6), between(1.05, 8), between(1, 1.4), (boreMach, wider, next) => {
        const found = segmentGapFlow({
          boreMach,
          borePressure: '3 MPa',
          boreArea: '300 mm^2',
          gapArea: `${300 * wider} mm^2`,
          nextArea: `${300 * next * 1.4} mm^2`,
          gamma,
        });
        expect(found.stagnationRatio).toBeLessThanOrEqual(1 + 1e-12);
        const flow = (p: number, A: number, M: number) =>
          p * A * M * Math.sqrt(1 + ((gamma - 1) / 2) * M * M);
        const through = flow(3e6, 300, boreMach);
        expect(off(flow(found.gapPressure.si, 300 * wider, found.gapMach), through)).toBeLessThan(1e-9);
        expect(off(flow(found.nextPressure.si, 300 * next * 1.4, found.nextMach), through)).toBeLessThan(
          1e-9,
        );
      }),
      { numRuns: 60 },
    );
  });

  it('is an error where the next bore is too small', () => {
    expect(() =>
      segmentGapFlow({
        boreMach: 0.6,
        borePressure: '3 MPa',
        boreArea: '300 mm^2',
        gapArea: '600 mm^2',
        nextArea: '200 mm^2',
        gamma,
      }),
    ).toThrow(/the next bore chokes/);
  });
});

describe('laws of erosive burning', () => {
  it('never lower the rate, rise with the flux, and are the base rate where the factor is 0', () => {
    fc.assert(
      fc.property(
        anyLaw,
        between(2e-3, 2e-2),
        between(1, 3000),
        between(0.005, 0.1),
        (law, base, flux, diameter) => {
          const velocity = flux / 10;
          const at = (one: ErosionLaw, G: number) =>
            erosiveRate(one, 1780, base, G, diameter, 0.2, (velocity * G) / flux);
          expect(at(law, flux)).toBeGreaterThanOrEqual(base);
          expect(at(law, 1.1 * flux)).toBeGreaterThanOrEqual(at(law, flux));
          expect(at(law, 0)).toBe(base);
          if (law.law !== 'none') {
            expect(at({ ...law, augmentationFactor: 0 }, flux)).toBe(base);
            // The factor multiplies what is added.
            const [one, two] = [1, 2].map(
              (augmentationFactor) => at({ ...law, augmentationFactor }, flux) - base,
            );
            expect(Math.abs(two - 2 * one)).toBeLessThan(1e-12 * base + 1e-9 * one);
          }
        },
      ),
    );
  });

  it('Lenoir-Robillard satisfies its equation also where plain iteration oscillates', () => {
    fc.assert(
      fc.property(
        between(1e-3, 2e-2),
        between(1, 5000),
        between(0.005, 1),
        between(1e-6, 1e-3),
        (base, flux, length, coefficient) => {
          const r = erosiveRate(
            lenoirRobillard('hydraulic diameter', 1, coefficient),
            1780,
            base,
            flux,
            length,
            0,
            0,
          );
          const right = base + coefficient * flux ** 0.8 * length ** -0.2 * Math.exp((-53 * 1780 * r) / flux);
          expect(Math.abs(r - right) / r).toBeLessThan(1e-11);
        },
      ),
    );
    // r_(k+1) = right side of r_k does not converge here.
    const plain = Array.from({ length: 60 }).reduce<number>(
      (r) => 0.007 + 1e-3 * 800 ** 0.8 * 0.02 ** -0.2 * Math.exp((-53 * 1780 * r) / 800),
      0.007,
    );
    const rate = lenoirRobillardRate({
      baseRate: '7 mm/s',
      coefficient: 1e-3,
      massFlux: '800 kg/(m^2*s)',
      length: '20 mm',
      density: '1780 kg/m^3',
    }).si;
    expect(off(plain, rate)).toBeGreaterThan(0.1);
  });

  it('Mukunda-Paul begins at its threshold flux', () => {
    fc.assert(
      fc.property(between(2, 20), between(5, 100), (rate, diameter) => {
        const surface = {
          baseRate: `${rate} mm/s`,
          hydraulicDiameter: `${diameter} mm`,
          density: '1780 kg/m^3',
        } as const;
        const threshold = erosiveThresholdFlux(surface).si;
        const at = (flux: number) => mukundaPaulRate({ ...surface, massFlux: `${flux} kg/(m^2*s)` }).si;
        expect(at(0.999 * threshold)).toBe(at(0));
        expect(at(1.01 * threshold)).toBeGreaterThan(at(0));
      }),
    );
    expect(mukundaPaulAugmentation({ reducedFlux: 10 })).toBe(1);
    expect(thresholdVelocityFactor({ gasVelocity: '100 m/s', threshold: '200 m/s', gain: 0.2 })).toBe(1);
  });
});

describe('portPressure', () => {
  const standard = propellant({
    density: '1780 kg/m^3',
    law: { coefficient: 7, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.32 },
    gamma,
    molarMass: '40 g/mol',
    flameTemperature: '1600 K',
  });

  // The table of the notes (flow.md, section A), computed there by another program: head pressure and p_0 over those of
  // one pressure without erosion, and aft over head rate; α 7.24e-6, viscosity 5e-5, L/d 20. To their last digit.
  it.each([
    [10, 1.6, [1.1, 1.21, 1.28, 1.24], [0.95, 1.12, 1.26, 1.29]],
    [20, 1.3, [1.15, 1.26, 1.33, 1.27], [0.91, 1.07, 1.19, 1.21]],
    [20, 2, [1.06, 1.15, 1.21, 1.16], [0.97, 1.12, 1.23, 1.24]],
    [20, 3, [1.03, 1.11, 1.17, 1.11], [0.99, 1.13, 1.24, 1.24]],
    [100, 1.6, [1.1, 1.17, 1.22, 1.14], [0.95, 1.06, 1.15, 1.12]],
  ])('at a bore of %s mm and J %s gives the table of the notes', (bore, J, heads, rates) => {
    const coefficient = 7.24e-6;
    const { laws } = portPressure({
      propellant: standard,
      port: { shape: 'tube', boreDiameter: `${bore} mm`, length: `${20 * bore} mm` },
      throatDiameter: `${bore / Math.sqrt(J)} mm`,
      laws: [
        { law: 'none' },
        { law: 'lenoir-robillard', coefficient, lengthOf: 'distance from the head' },
        { law: 'lenoir-robillard', coefficient, lengthOf: 'hydraulic diameter' },
        { law: 'mukunda-paul' },
      ],
    });
    // p = (ρ·a·c*·K)^(1/(1 − n)), K = 4·L/d·J.
    const lumped = (1780 * 7e-3 * 1e6 ** -0.32 * characteristicVelocity * 80 * J) ** (1 / 0.68);
    laws.forEach((one, i) => {
      expect(Math.abs(one.headPressure.si / lumped - heads[i])).toBeLessThan(0.0065);
      expect(Math.abs(one.rate.at(-1).si / one.rate.at(0).si - rates[i])).toBeLessThan(0.0065);
    });
  });

  it('compares the laws side by side with the result without erosion, and says what is assumed', () => {
    const found = portPressure({
      propellant: standard,
      port: { shape: 'tube', boreDiameter: '20 mm', length: '400 mm' },
      throatDiameter: '14 mm',
    });
    expect(found.laws.map(({ erosion }) => erosion)).toEqual([
      'none',
      'Mukunda-Paul',
      'Lenoir-Robillard, length distance from the head',
      'Lenoir-Robillard, length hydraulic diameter',
    ]);
    const [none, ...others] = found.laws.map(({ headPressure }) => headPressure.si);
    for (const one of others) expect(one).toBeGreaterThan(none);
    expect(found.cautions.join()).toMatch(/from memory.*assumed/);
    expect(String(found)).toMatch(/nozzle stagnation/);
  });

  it('refuses stations beyond the port and sections out of order', () => {
    const rest = { propellant: standard, throatDiameter: '14 mm' } as const;
    expect(() =>
      portPressure({
        ...rest,
        port: { shape: 'tube', boreDiameter: '20 mm', length: '400 mm' },
        stations: ['100 mm', '401 mm'],
      }),
    ).toThrow(/stations\.1.*at most the length of the port, 400 mm/s);
    const at = (position: `${number} mm`) => ({ position, area: '300 mm^2', perimeter: '60 mm' }) as const;
    expect(() =>
      portPressure({ ...rest, port: { shape: 'tabulated', sections: [at('0 mm'), at('5 mm'), at('5 mm')] } }),
    ).toThrow(/sections\.2\.position/);
    expect(() =>
      portPressure({ ...rest, port: { shape: 'tabulated', sections: [at('1 mm'), at('5 mm')] } }),
    ).toThrow(/the head end/);
  });
});

describe('uniformPort', () => {
  it('ends at the Mach number of the port end, and is at rest at the head', () => {
    fc.assert(
      fc.property(
        between(0.5, 10),
        between(1.05, 1.4),
        between(1, 1.3),
        (portToThroat, g, momentumFactor) => {
          const given = { portToThroat, gamma: g, momentumFactor };
          const found = uniformPort({ ...given, stations: [0, 0.3, 0.6, 1] });
          expect(found.mach[0]).toBe(0);
          expect(found.mach[3]).toBe(portEnd(given).mach);
          expect(found.mach[1]).toBeLessThan(found.mach[2]);
          expect(found.pressureRatio[2]).toBeLessThan(found.pressureRatio[1]);
          expect(off(1 / found.pressureRatio[3], portEnd(given).headToAftStatic)).toBeLessThan(1e-12);
        },
      ),
    );
  });
});
