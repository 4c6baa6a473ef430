import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  endBurner,
  equilibriumPressure,
  equilibriumPressures,
  heatLossEfficiency,
  heatTransferFromEfficiency,
  ignitionBand,
  ignitionTransient,
  motorHeatLoss,
  propellant,
  type SimulateInput,
  simulate,
  throatBlockagePulse,
} from '../../src/ballistics';
import { idealCharacteristicVelocity } from '../../src/thermo';
import { q } from '../../src/units';
import { errorOf } from '../error-code';
import { segmentMotor } from './reference-motors';

// What must be true for all inputs: balances, limits and scaling, derived from the equations of docs/theory/chamber-pressure.md.

const motor = (more: Partial<SimulateInput> = {}): SimulateInput => ({
  ...segmentMotor(),
  ignition: {},
  ...more,
});
const share = (max = 1) => fc.double({ min: 0, max, noNaN: true });

const ignitions = fc.record({
  igniterMass: share().map((s) => q(0.1 + 2 * s, 'g')),
  igniterDuration: share().map((s) => q(1 + 60 * s, 'ms')),
  igniterFallTime: share().map((s) => q(40 * s, 'ms')),
  ignitionDelay: share().map((s) => q(20 * s, 'ms')),
  flameSpreadTime: share().map((s) => q(80 * s, 'ms')),
  gas: fc.option(share()),
  partial: fc.option(share()),
  closure: fc.boolean(),
});

const ignitionOf = ({
  gas,
  partial,
  closure,
  ...given
}: typeof ignitions extends fc.Arbitrary<infer T> ? T : never) => ({
  ...given,
  ...(gas === null
    ? {}
    : { igniterGasTemperature: q(800 + 2500 * gas, 'K'), igniterMolarMass: q(20 + 60 * gas, 'g/mol') }),
  ...(partial === null
    ? {}
    : { partialFraction: 0.1 + 0.8 * partial, fullIgnitionPressure: q(0.3 + partial, 'MPa') }),
  ...(closure ? { nozzleClosureBurstPressure: '0.5 MPag' as const } : {}),
});

const wall = {
  heatTransferCoefficient: '800 W/(m^2*K)',
  wallArea: '150 cm^2',
  wallTemperature: '600 K',
} as const;

describe('balances', () => {
  it('gas in is gas out and gas stored, for any ignition, tail-off and blockage', () => {
    fc.assert(
      fc.property(
        ignitions,
        share(0.6),
        fc.constantFrom('isothermal', 'adiabatic', 'heat-loss'),
        (given, fraction, law) => {
          const found = simulate(
            motor({
              ignition: ignitionOf(given),
              throatBlockage: { fraction, from: '0.3 s', duration: '15 ms' },
              tailOff: law === 'heat-loss' ? { law, ...wall } : { law },
            }),
          );
          expect(Math.abs(found.balance.relativeError)).toBeLessThan(2e-5);
          expect(found.pressure.si.every((p) => p > 0 && Number.isFinite(p))).toBe(true);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('the wall takes what the gas loses: total heat of a tail-off with an open end', () => {
    // At a wall as hot as the gas no heat flows: adiabatic at first, then warmer than adiabatic.
    const warm = simulate(motor({ tailOff: { law: 'heat-loss', ...wall, wallTemperature: '1600 K' } }));
    const adiabatic = simulate(motor({ tailOff: { law: 'adiabatic' } }));
    expect(warm.pressureIntegral.si).toBeGreaterThan(adiabatic.pressureIntegral.si);
  });
});

describe('limits', () => {
  const same = (a: SimulateInput, b: SimulateInput, relative: number): void => {
    const [x, y] = [simulate(a), simulate(b)];
    for (const of of ['peakPressure', 'totalImpulse', 'pressureIntegral'] as const)
      expect(Math.abs(x[of].si / y[of].si - 1), of).toBeLessThan(relative);
  };

  it('h → 0 is the adiabatic tail-off', () =>
    same(
      motor({ tailOff: { law: 'heat-loss', ...wall, heatTransferCoefficient: '1e-6 W/(m^2*K)' } }),
      motor({ tailOff: { law: 'adiabatic' } }),
      1e-8,
    ));
  it('φ → 0 is the free throat, and its duration does not matter then', () =>
    same(motor({ throatBlockage: { fraction: 0, from: '0.3 s', duration: '1 s' } }), motor(), 1e-15));
  it('a tiny blockage changes little', () =>
    same(motor({ throatBlockage: { fraction: 1e-7, from: '0.3 s', duration: '0.1 s' } }), motor(), 3e-6));
  it('spreading time → 0 is immediate ignition', () =>
    same(motor({ ignition: { flameSpreadTime: '1e-9 s' } }), motor(), 1e-5));
  it('a spread by speed is that over the length of the grain', () =>
    same(
      motor({ ignition: { flameSpreadSpeed: '8.5 m/s' } }),
      motor({ ignition: { flameSpreadTime: '10 ms' } }),
      1e-12,
    ));
  it('igniter gas like that of the propellant is propellant gas', () => {
    const ignition = { igniterMass: '1 g', igniterDuration: '20 ms', igniterFallTime: '5 ms' } as const;
    same(
      motor({ ignition: { ...ignition, igniterGasTemperature: '1600 K', igniterMolarMass: '40 g/mol' } }),
      motor({ ignition }),
      1e-9,
    );
  });
  it('heat loss → 0 leaves the characteristic velocity', () =>
    same(motor({ heatLoss: { ...wall, heatTransferCoefficient: '1e-9 W/(m^2*K)' } }), motor(), 1e-9));
});

describe('the coupled model', () => {
  it('has the tail-off that is specified: from burnout on that of the lumped model', () => {
    for (const law of ['adiabatic', 'heat-loss'] as const) {
      const tailOff = law === 'adiabatic' ? { law } : { law, ...wall };
      const [lumped, coupled, isothermal] = [
        simulate(motor({ tailOff, portModel: 'lumped' })),
        simulate(motor({ tailOff, portModel: 'coupled' })),
        simulate(motor({ portModel: 'coupled' })),
      ];
      const shareAfter = (found: typeof lumped, seconds: number): number => {
        const t = (found.burnoutTime?.si ?? 0) + seconds;
        const k = found.time.si.findIndex((each) => each >= t);
        const share = (t - found.time.si[k - 1]) / (found.time.si[k] - found.time.si[k - 1]);
        const [low, high] = [found.pressure.si[k - 1], found.pressure.si[k]];
        return (
          (low + share * (high - low)) /
          found.pressure.si[found.time.si.findIndex((each) => each >= t - seconds)]
        );
      };
      // Burnout by stations is softer than that of one depth, so pressures are compared as shares of that at burnout.
      for (const seconds of [0.005, 0.01, 0.02]) {
        expect(Math.abs(shareAfter(coupled, seconds) / shareAfter(lumped, seconds) - 1)).toBeLessThan(0.03);
        expect(shareAfter(coupled, seconds)).toBeLessThan(0.99 * shareAfter(isothermal, seconds));
      }
      expect(Math.abs(coupled.balance.relativeError)).toBeLessThan(5e-3);
      expect(coupled.end).toBe('burned out');
      expect(coupled.history[0]).toContain(
        law === 'adiabatic' ? 'tail-off adiabatic' : 'tail-off with heat loss',
      );
    }
  });
});

describe('a blocked throat in both models', () => {
  it('has the same peak pressure, thrust and impulse, within what the port changes', () => {
    // Long enough that its thrust is a tenth of the impulse.
    const throatBlockage = { fraction: 0.3, from: '0.5 s', duration: '0.3 s' } as const;
    const [lumped, coupled] = (['lumped', 'coupled'] as const).map((portModel) =>
      simulate(motor({ throatBlockage, portModel })),
    );
    for (const of of ['peakPressure', 'totalImpulse'] as const)
      expect(Math.abs(coupled[of].si / lumped[of].si - 1), of).toBeLessThan(0.02);
    const during = ({ time, thrust }: typeof lumped): number => thrust.si[time.si.findIndex((t) => t > 0.7)];
    expect(Math.abs(during(coupled) / during(lumped) - 1)).toBeLessThan(0.03);
  });
});

describe('ignition', () => {
  it('igniter gas alone settles at ṁ·c*/A_t of its own gas, below which no surface burns', () => {
    const ignited = motor({
      ignition: {
        igniterMass: '5 g',
        igniterDuration: '200 ms',
        igniterGasTemperature: '2600 K',
        igniterMolarMass: '50 g/mol',
        ignitionDelay: '190 ms',
      },
    });
    const found = simulate(ignited);
    const at = found.time.si.findIndex((t) => t > 0.15);
    const velocity = idealCharacteristicVelocity.si({
      gamma: 1.14,
      gasConstant: 8.31446261815324 / 0.05,
      temperature: 2600,
    });
    const plateau = (0.025 * velocity) / ((Math.PI / 4) * 0.007 ** 2);
    expect(Math.abs(found.pressure.si[at] / plateau - 1)).toBeLessThan(1e-6);
    expect(Math.abs(found.massFlow.si[at] / 0.025 - 1)).toBeLessThan(1e-6);
    expect(found.web.si[at]).toBe(0);
    const coupled = simulate({ ...ignited, portModel: 'coupled' });
    const later = coupled.time.si.findIndex((t) => t > 0.15);
    expect(Math.abs(coupled.pressure.si[later] / plateau - 1)).toBeLessThan(2e-3);
  });

  it('pressure scales with time when volume, gas and times do (frozen chamber)', () => {
    const { propellant: material } = segmentMotor();
    const rise = (k: number) =>
      ignitionTransient({
        propellant: material,
        burningArea: '165 cm^2',
        freeVolume: q(80 * k, 'cm^3'),
        throatDiameter: '8.5 mm',
        startPressure: '101325 Pa',
        duration: q(0.1 * k, 's'),
        igniterMass: q(0.25 * k, 'g'),
        igniterDuration: q(20 * k, 'ms'),
        igniterFallTime: q(10 * k, 'ms'),
        ignitionDelay: q(5 * k, 'ms'),
        flameSpreadTime: q(25 * k, 'ms'),
      });
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 5, noNaN: true }), share(), (k, s) => {
        const [one, other] = [
          rise(1).pressureAt(q(0.1 * s, 's')).si,
          rise(k).pressureAt(q(0.1 * s * k, 's')).si,
        ];
        expect(Math.abs(other / one - 1)).toBeLessThan(1e-6);
      }),
      { numRuns: 15 },
    );
  });

  it('hangs where the ignited part settles below the pressure that ignites the remainder', () => {
    const hung = simulate(
      motor({ ignition: { partialFraction: 0.2, fullIgnitionPressure: '1.5 MPa' }, timeLimit: '0.4 s' }),
    );
    expect(hung.cautions.some((text) => text.startsWith('hang-fire: 20.0 %'))).toBe(true);
    expect(hung.events.some(({ name }) => name === 'remaining surface ignites')).toBe(false);
    // 20 % of the initial area by the closed form; gas storage and the first 0.2 mm of web change it by less than 2 %.
    const level = equilibriumPressure.si({
      density: 1780,
      characteristicVelocity: idealCharacteristicVelocity.si({
        gamma: 1.14,
        gasConstant: 8.31446261815324 / 0.04,
        temperature: 1600,
      }),
      burningAreaRatio: (0.2 * 7.79743e-3) / ((Math.PI / 4) * 0.007 ** 2),
      referenceRate: 0.007,
      referencePressure: 1e6,
      exponent: 0.32,
    });
    const at = hung.time.si.findIndex((t) => t > 0.15);
    expect(Math.abs(hung.pressure.si[at] / level - 1)).toBeLessThan(0.02);
    const lit = simulate(motor({ ignition: { partialFraction: 0.9, fullIgnitionPressure: '1.5 MPa' } }));
    expect(lit.events.some(({ name }) => name === 'remaining surface ignites')).toBe(true);
    expect(lit.cautions.filter((text) => text.includes('hang-fire'))).toEqual([]);
  });

  it('reports every stable level of a law of bands, those of equilibriumPressures', () => {
    const material = propellant({
      density: '1780 kg/m^3',
      law: {
        bands: [
          {
            from: '0.05 MPa',
            to: '2 MPa',
            referenceRate: '3 mm/s',
            referencePressure: '1 MPa',
            exponent: 0.3,
          },
          { from: '2 MPa', to: '20 MPa', referenceRate: '8 mm/s', referencePressure: '2 MPa', exponent: 0.3 },
        ],
      },
      gamma: 1.14,
      molarMass: '40 g/mol',
      flameTemperature: '1600 K',
    });
    const found = simulate(motor({ propellant: material }));
    const caution = found.cautions.find((text) => text.includes('stable pressures'));
    const levels = equilibriumPressures({
      propellant: material,
      burningAreaRatio: 7.79743297e-3 / ((Math.PI / 4) * 0.007 ** 2),
    }).filter(({ stable }) => stable);
    expect(levels.length).toBe(2);
    for (const { pressure } of levels) expect(caution).toContain(`${pressure.in('MPa').toPrecision(3)} MPa`);
  });

  it('the band of spreading times contains each run, and a fast spread rises faster', () => {
    const band = ignitionBand({ motor: motor() });
    expect(band.spreads.map(({ flameSpreadTime }) => Math.round(flameSpreadTime.in('ms')))).toEqual([
      2, 5, 10, 20, 50, 100,
    ]);
    const rates = band.spreads.map(({ maxRiseRate }) => maxRiseRate.si);
    expect(rates.every((rate, i) => i === 0 || rate < rates[i - 1])).toBe(true);
    const one = simulate(motor({ ignition: { flameSpreadTime: '20 ms' } }));
    expect(Math.abs(band.spreads[3].peakPressure.si / one.peakPressure.si - 1)).toBeLessThan(1e-12);
  });
});

describe('blockage', () => {
  it('pressure increases with the blocked fraction, up to the lasting level', () => {
    const { propellant: material } = segmentMotor();
    const pulse = (fraction: number) =>
      throatBlockagePulse({
        propellant: material,
        burningArea: '165 cm^2',
        freeVolume: '80 cm^3',
        throatDiameter: '8.5 mm',
        fraction,
        duration: '10 ms',
      });
    fc.assert(
      fc.property(share(0.7), share(0.7), (a, b) => {
        const [less, more] = [pulse(Math.min(a, b)), pulse(Math.max(a, b))];
        expect(more.peak.si).toBeGreaterThanOrEqual(less.peak.si * (1 - 1e-9));
        expect(more.peak.si).toBeLessThanOrEqual((more.lasting?.si ?? 0) * (1 + 1e-9));
      }),
      { numRuns: 25 },
    );
  });

  it('its times are events, and its pulse is that of the frozen chamber for a short one', () => {
    const free = simulate(motor());
    const found = simulate(motor({ throatBlockage: { fraction: 0.25, from: '0.6 s', duration: '4 ms' } }));
    expect(
      found.events.filter(({ name }) => name.startsWith('throat')).map(({ name, time }) => [name, time.si]),
    ).toEqual([
      ['throat partly blocked', 0.6],
      ['throat free again', 0.604],
    ]);
    const at = found.time.si.findIndex((t) => t >= 0.6);
    const end = found.time.si.findIndex((t) => t >= 0.604 - 1e-12);
    const pulse = throatBlockagePulse({
      propellant: segmentMotor().propellant,
      burningArea: free.burningArea.at(at),
      freeVolume: q(Math.PI * 0.025 ** 2 * 0.11 - found.propellantMass.si[at] / 1780, 'm^3'),
      throatDiameter: '7 mm',
      fraction: 0.25,
      duration: '4 ms',
    });
    expect(
      Math.abs(found.pressure.si[end] / found.pressure.si[at] / (pulse.peak.si / pulse.before.si) - 1),
    ).toBeLessThan(2e-3);
    // The choked area is reduced, not the exit: thrust falls at once by less than the blocked fraction.
    expect(found.massFlow.si[at + 1] / found.massFlow.si[at - 1]).toBeLessThan(0.8);
  });
});

describe('heat loss and size', () => {
  it('calibrates: the coefficient from the efficiency is the coefficient that gave it (round trip)', () => {
    fc.assert(
      fc.property(share(), share(), share(), (a, b, c) => {
        const common = {
          gamma: 1.14,
          gasConstant: '208 J/(kg*K)',
          flameTemperature: '1700 K',
          wallArea: q(20 + 300 * a, 'cm^2'),
          wallTemperature: q(300 + 600 * b, 'K'),
        } as const;
        const found = heatLossEfficiency({
          ...common,
          pressure: '3 MPa',
          throatDiameter: '4 mm',
          heatTransferCoefficient: q(100 + 2000 * c, 'W/(m^2*K)'),
        });
        const h = heatTransferFromEfficiency({
          ...common,
          massFlow: found.massFlow,
          efficiency: found.efficiency,
        });
        expect(Math.abs(h.si / (100 + 2000 * c) - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  it('lowers the pressure of the motor by its efficiency at the mean burning area', () => {
    const loss = { ...wall, heatTransferCoefficient: '1500 W/(m^2*K)' } as const;
    const [with_, without] = [simulate(motor({ heatLoss: loss })), simulate(motor())];
    // Mean area: cast volume/web, 1.498e-4 m³/17 mm. Its equilibrium by the closed form.
    const velocity = idealCharacteristicVelocity.si({
      gamma: 1.14,
      gasConstant: 8.31446261815324 / 0.04,
      temperature: 1600,
    });
    const pressure = equilibriumPressure.si({
      density: 1780,
      characteristicVelocity: velocity,
      burningAreaRatio:
        ((Math.PI / 4) * (0.05 ** 2 - 0.016 ** 2) * 0.085) / 0.017 / ((Math.PI / 4) * 0.007 ** 2),
      referenceRate: 0.007,
      referencePressure: 1e6,
      exponent: 0.32,
    });
    const { efficiency } = heatLossEfficiency({
      gamma: 1.14,
      gasConstant: q(8.31446261815324 / 0.04, 'J/(kg*K)'),
      flameTemperature: '1600 K',
      pressure: q(pressure, 'Pa'),
      throatDiameter: '7 mm',
      ...loss,
    });
    const found = (with_.peakPressure.si / without.peakPressure.si) ** (1 - 0.32);
    expect(efficiency).toBeLessThan(0.98);
    // The loss itself lowers the pressure at which it is taken, by 4 %: the loss then is 4 % higher.
    expect(Math.abs((1 - found) / (1 - efficiency) - 1)).toBeLessThan(0.06);
  });

  it('takes the loss from the temperature: the isothermal tail-off has the time constant V/(Γ²·c*·A_t)', () => {
    const found = simulate(motor({ heatLoss: { ...wall, heatTransferCoefficient: '3000 W/(m^2*K)' } }));
    const end = found.time.length - 1;
    const at = found.time.si.findIndex((t) => t > (found.burnoutTime?.si ?? 0) + 0.001);
    const throat = (Math.PI / 4) * 0.007 ** 2;
    const velocity = (found.pressure.si[at] * throat) / found.massFlow.si[at];
    expect(velocity).toBeLessThan(0.97 * 905.8798);
    const gammaSquared = 1.14 * (2 / 2.14) ** (2.14 / 0.14);
    const timeConstant = (Math.PI * 0.025 ** 2 * 0.11) / (gammaSquared * velocity * throat);
    const fallen = Math.log(found.pressure.si[at] / found.pressure.si[end]);
    expect(Math.abs((found.time.si[end] - found.time.si[at]) / (timeConstant * fallen) - 1)).toBeLessThan(
      1e-5,
    );
  });

  it('the wall area of a motor without one is its uncovered inside, by hand', () => {
    // An end burner covers its side until the front has passed: on average over the burn, half of 40 mm × 60 mm.
    const endBurning = motor({
      grain: endBurner({ outerDiameter: '40 mm', length: '60 mm' }),
      chamber: { innerDiameter: '40 mm', length: '75 mm' },
      nozzle: { throatDiameter: '2.5 mm', expansionRatio: 4 },
      heatLoss: { heatTransferCoefficient: '800 W/(m^2*K)', wallTemperature: '600 K' },
    });
    const byHand = 2 * (Math.PI / 4) * 0.04 ** 2 + Math.PI * 0.04 * (0.075 - 0.5 * 0.06);
    const found = motorHeatLoss({ motor: endBurning });
    expect(Math.abs(found.wallArea.si / byHand - 1)).toBeLessThan(0.01);
    // Several per cent for a small throat and the same order of wall, as docs/theory says.
    expect(1 - found.efficiency).toBeGreaterThan(0.03);
    expect(errorOf(() => motorHeatLoss({ motor: motor() }))?.path).toBe('motor.heatLoss');
  });

  it('a smaller motor of the same shape loses more', () => {
    const loss = (k: number): number =>
      1 -
      heatLossEfficiency({
        gamma: 1.14,
        gasConstant: '208 J/(kg*K)',
        flameTemperature: '1600 K',
        pressure: '4 MPa',
        throatDiameter: q(8 * k, 'mm'),
        heatTransferCoefficient: q(800 * k ** -0.2, 'W/(m^2*K)'),
        wallArea: q(100 * k * k, 'cm^2'),
        wallTemperature: '600 K',
      }).efficiency;
    expect(Math.abs(loss(0.5) / loss(1) / 2 ** 0.2 - 1)).toBeLessThan(0.01);
  });
});

describe('cautions', () => {
  const named = (input: SimulateInput, start: string): boolean =>
    simulate(input).cautions.some((text) => text.startsWith(start));

  it('low characteristic length: a slow propellant in a full chamber with a large throat', () => {
    const slow = propellant({
      density: '1780 kg/m^3',
      law: { coefficient: 2, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.3 },
      gamma: 1.14,
      molarMass: '40 g/mol',
      flameTemperature: '1600 K',
    });
    expect(named(motor({ propellant: slow }), 'low characteristic length')).toBe(true);
    expect(named(motor(), 'low characteristic length')).toBe(false);
  });

  it('venting that can extinguish: a large fragment leaves the throat of a small slow motor', () => {
    const slow = propellant({
      density: '1780 kg/m^3',
      law: { coefficient: 2, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.2 },
      gamma: 1.14,
      molarMass: '40 g/mol',
      flameTemperature: '1600 K',
    });
    const blocked = { throatBlockage: { fraction: 0.85, from: '0.2 s', duration: '0.1 s' } } as const;
    expect(named(motor({ propellant: slow, ...blocked }), 'the pressure falls')).toBe(true);
    expect(
      named(
        motor({ throatBlockage: { fraction: 0.1, from: '0.2 s', duration: '0.1 s' } }),
        'the pressure falls',
      ),
    ).toBe(false);
  });
});

describe('inputs that do not go together', () => {
  const pathOf = (ignition: SimulateInput['ignition']): string | undefined =>
    errorOf(() => simulate(motor({ ignition })))?.path;
  it('are refused with their path', () => {
    expect(pathOf({ igniterMass: '1 g', igniterDuration: '1 ms', igniterGasTemperature: '2000 K' })).toBe(
      'ignition.igniterMolarMass',
    );
    expect(pathOf({ flameSpreadTime: '1 ms', flameSpreadSpeed: '10 m/s' })).toBe('ignition.flameSpreadSpeed');
    expect(pathOf({ partialFraction: 0.5 })).toBe('ignition.fullIgnitionPressure');
    expect(pathOf({ fullIgnitionPressure: '1 MPa' })).toBe('ignition.partialFraction');
    const noArea = { heatTransferCoefficient: '800 W/(m^2*K)', wallTemperature: '600 K' } as const;
    const volume = motor({ chamber: { volume: '216 cm^3' } });
    expect(errorOf(() => simulate({ ...volume, heatLoss: noArea }))?.path).toBe('heatLoss.wallArea');
    expect(errorOf(() => simulate({ ...volume, tailOff: { law: 'heat-loss', ...noArea } }))?.path).toBe(
      'tailOff.wallArea',
    );
  });
});
