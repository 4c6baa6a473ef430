// Heat in walls: published and independently computed values, and the laws that tie the solutions together.
// "Incropera" is Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th/7th ed.; its numbers are from memory.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as nozzle from '../../src/nozzle';
import * as thermo from '../../src/thermo';

const near = (found: number, wanted: number, rel: number): void =>
  expect(Math.abs(found - wanted), `${found} against ${wanted}`).toBeLessThanOrEqual(rel * Math.abs(wanted));
const graphite = {
  conductivity: '105 W/(m*K)',
  density: '1780 kg/m^3',
  specificHeat: '710 J/(kg*K)',
} as const;

describe('first root and coefficient [Incropera, table 5.1, from memory]', () => {
  test.each([
    ['wall', 0.1, 0.3111, 1.0161],
    ['wall', 1, 0.8603, 1.1191],
    ['cylinder', 1, 1.2558, 1.2071],
    ['cylinder', 10, 2.1795, 1.5677],
    ['sphere', 1, 1.5708, 1.2732],
  ] as const)('%s at Bi %d', (shape, biot, root, coefficient) => {
    const found = thermo.transientConduction({ shape, biot, fourier: 1 });
    near(found.firstRoot, root, 1.7e-4);
    near(found.firstCoefficient, coefficient, 1.7e-4);
  });
});

describe('transient conduction', () => {
  // Exact series, computed with scipy 1.10.1 / Python 3.11.
  test('slab, Bi 1, Fo 0.5, middle: 0.77252638', () =>
    near(thermo.transientConduction({ shape: 'wall', biot: 1, fourier: 0.5 }).theta, 0.77252638, 2e-8));
  test('cylinder, Bi 1, Fo 0.4, axis: 0.6420022', () =>
    near(thermo.transientConduction({ shape: 'cylinder', biot: 1, fourier: 0.4 }).theta, 0.6420022, 1e-7));

  test('oil pipeline, both faces and the heat taken up [Incropera, example 5.5, from memory]', () => {
    const wall = { thickness: '40 mm', h: '500 W/(m^2*K)', k: '63.9 W/(m*K)' } as const;
    const biot = thermo.biotNumber({ coefficient: wall.h, length: wall.thickness, conductivity: wall.k });
    const fourier = thermo.fourierNumber({
      diffusivity: '18.8e-6 m^2/s',
      time: '480 s',
      length: wall.thickness,
    });
    near(biot, 0.313, 5e-3);
    near(fourier, 5.64, 5e-3);
    const at = (position: number) => thermo.transientConduction({ shape: 'wall', biot, fourier, position });
    near(60 - 80 * at(0).theta, 42.9, 5e-3);
    near(60 - 80 * at(1).theta, 45.2, 5e-3);
    near((1 - at(0).averageTheta) * 7832 * 434 * 0.04 * Math.PI * 80, 2.73e7, 4e-3);
  });

  test('before the heat reaches the middle a wall is a thick body', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 50, noNaN: true }),
        fc.double({ min: 3e-4, max: 0.02, noNaN: true }),
        fc.double({ min: 0.8, max: 1, noNaN: true }),
        (biot, fourier, position) => {
          const { theta } = thermo.transientConduction({ shape: 'wall', biot, fourier, position });
          const deep = thermo.convectionStepTemperature.si({
            initialTemperature: 1,
            gasTemperature: 2,
            coefficient: biot,
            conductivity: 1,
            depth: 1 - position,
            diffusivity: 1,
            time: fourier,
          });
          // What the far half of the wall adds at Fo 0.02 is erfc((1 + x)/(2·√Fo)), below 1e-9.
          expect(Math.abs(2 - theta - deep)).toBeLessThan(1e-9);
        },
      ),
    );
  });

  test('at small Biot number every shape is lumped: exp(−Fo·Bi·surface/volume)', () => {
    for (const [shape, sides] of [
      ['wall', 1],
      ['cylinder', 2],
      ['sphere', 3],
    ] as const)
      for (const fourier of [10, 1e3, 1e4]) {
        const { theta, averageTheta } = thermo.transientConduction({ shape, biot: 1e-4, fourier });
        near(theta, Math.exp(-1e-4 * fourier * sides), 2e-4);
        near(averageTheta, Math.exp(-1e-4 * fourier * sides), 2e-4);
      }
  });

  test('a body warms from the surface inwards and its average lies between', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('wall' as const, 'cylinder' as const, 'sphere' as const),
        fc.double({ min: 1e-2, max: 100, noNaN: true }),
        fc.double({ min: 1e-3, max: 3, noNaN: true }),
        (shape, biot, fourier) => {
          const at = (position: number) => thermo.transientConduction({ shape, biot, fourier, position });
          expect(at(1).theta).toBeLessThan(at(0).theta * (1 + 1e-12));
          expect(at(0).averageTheta).toBeLessThanOrEqual(at(0).theta * (1 + 1e-12) + 1e-12);
          expect(at(0).averageTheta).toBeGreaterThanOrEqual(at(1).theta * (1 - 1e-12));
          expect(at(0).theta).toBeLessThanOrEqual(1 + 1e-9);
        },
      ),
    );
  });

  test.each([
    [{ shape: 'wall', biot: 0, fourier: 1 }, /lumpedTemperature/],
    [{ shape: 'wall', biot: 1, fourier: 1e-6 }, /convectionStepTemperature/],
    [{ shape: 'wall', biot: 1, fourier: 1, position: 1.1 }, /at least 0 and at most 1/],
  ] as const)('refuses %o', (options, message) => {
    expect(() => thermo.transientConduction(options)).toThrowError(message);
  });
});

describe('thick bodies', () => {
  const diffusivity = thermo.thermalDiffusivityOf(graphite);
  // Incropera eq. 5.60, 5.61 and 5.63, computed with scipy 1.10.1 / Python 3.11.
  test('graphite held at 1500 K: 825.46613 K at 10 mm after 1 s, 7799021.8 W/m² into the surface', () => {
    const at = {
      initialTemperature: '300 K',
      surfaceTemperature: '1500 K',
      diffusivity,
      time: '1 s',
    } as const;
    near(thermo.surfaceStepTemperature({ ...at, depth: '10 mm' }).si, 825.46613, 1e-8);
    const { conductivity } = graphite;
    const flux = thermo.surfaceStepFlux({
      conductivity,
      surfaceRise: '1200 delta_K',
      diffusivity,
      time: '1 s',
    });
    near(flux.si, 7799021.8, 1e-8);
  });
  test('graphite in hot gas: shares 0.39484783 and 0.24287927 at the surface and 5 mm deep', () => {
    const at = (depth: '0 mm' | '5 mm') =>
      thermo.convectionStepTemperature({
        initialTemperature: '300 K',
        gasTemperature: '1300 K',
        coefficient: '6000 W/(m^2*K)',
        conductivity: graphite.conductivity,
        depth,
        diffusivity,
        time: '1 s',
      }).si;
    near(at('0 mm'), 300 + 394.84783, 1e-8);
    near(at('5 mm'), 300 + 242.87927, 1e-8);
  });
  test('frost goes 0.68 m deep in 60 days [Incropera, example 5.6, from memory]', () => {
    const depth = thermo.surfaceStepTemperature.solveFor('depth', {
      result: '0 degC',
      initialTemperature: '20 degC',
      surfaceTemperature: '-15 degC',
      diffusivity: '0.138e-6 m^2/s',
      time: '5184000 s',
    });
    near(depth.si, 0.68, 8e-3);
  });
  test('a step has fallen to 1 % at 3.6427727·√(α·t) [computed with scipy 1.10.1]', () => {
    const depth = thermo.surfaceStepTemperature.solveFor('depth', {
      result: '101 K',
      initialTemperature: '100 K',
      surfaceTemperature: '200 K',
      diffusivity: '1 m^2/s',
      time: '1 s',
    });
    near(depth.si, 3.6427727, 1e-7);
  });
  test('a coefficient without end holds the surface at the temperature of the gas, and nothing overflows', () => {
    const at = { initialTemperature: 300, depth: 0.005, diffusivity: 8e-5, time: 1 };
    near(
      thermo.convectionStepTemperature.si({
        ...at,
        gasTemperature: 1500,
        coefficient: 1e12,
        conductivity: 1,
      }),
      thermo.surfaceStepTemperature.si({ ...at, surfaceTemperature: 1500 }),
      1e-9,
    );
  });
  test('under constant flux the surface warms in the time that the nozzle counts with', () => {
    const rise = thermo.constantFluxTemperature.si({
      initialTemperature: 300,
      heatFlux: 1e7,
      conductivity: 105,
      depth: 0,
      diffusivity: diffusivity.si,
      time: 0.7,
    });
    const time = nozzle.wallHeatingTime.si({
      conductivity: 105,
      density: 1780,
      specificHeat: 710,
      temperatureRise: rise - 300,
      heatFlux: 1e7,
    });
    near(time, 0.7, 1e-13);
  });
  test('under constant flux the temperature obeys the heat equation and lets the flux in', () => {
    const at = (depth: number, time: number) =>
      thermo.constantFluxTemperature.si({
        initialTemperature: 0,
        heatFlux: 3,
        conductivity: 2,
        depth,
        diffusivity: 0.5,
        time,
      });
    for (const [x, t] of [
      [0.3, 0.4],
      [1.2, 0.9],
    ] as const) {
      const d = 1e-3;
      const curve = (at(x + d, t) - 2 * at(x, t) + at(x - d, t)) / (d * d);
      near((at(x, t + d) - at(x, t - d)) / (2 * d), 0.5 * curve, 1e-5);
    }
    near((-2 * (at(1e-6, 0.4) - at(0, 0.4))) / 1e-6, 3, 1e-5); // −k·dT/dx at the surface
  });
});

describe('lumped heating', () => {
  // Incropera eq. 5.6 to 5.13, computed with scipy 1.10.1 / Python 3.11.
  test('bare aluminium case wall: Bi 0.016167665, τ 8.064 s, 574.56555 K after 2 s', () => {
    near(
      thermo.biotNumber({ coefficient: '900 W/(m^2*K)', length: '3 mm', conductivity: '167 W/(m*K)' }),
      0.016167665,
      1e-7,
    );
    const timeConstant = thermo.lumpedTimeConstant({
      density: '2700 kg/m^3',
      specificHeat: '896 J/(kg*K)',
      thickness: '3 mm',
      coefficient: '900 W/(m^2*K)',
    });
    near(timeConstant.si, 8.064, 1e-12);
    const warm = thermo.lumpedTemperature({
      initialTemperature: '300 K',
      gasTemperature: '1550 K',
      time: '2 s',
      timeConstant,
    });
    near(warm.si, 574.56555, 1e-8);
  });
  test('thermocouple junction of 1 s: 0.706 mm, and 199 °C after 5.2 s [Incropera, example 5.1, from memory]', () => {
    const third = thermo.lumpedTimeConstant.solveFor('thickness', {
      result: '1 s',
      density: '8500 kg/m^3',
      specificHeat: '400 J/(kg*K)',
      coefficient: '400 W/(m^2*K)',
    });
    near(6 * third.si, 7.06e-4, 8e-3);
    const time = thermo.lumpedTemperature.solveFor('time', {
      result: '199 degC',
      initialTemperature: '25 degC',
      gasTemperature: '200 degC',
      timeConstant: '1 s',
    });
    near(time.si, 5.2, 8e-3);
  });
});

describe('steady walls, ducts and radiation', () => {
  test('liner, joint and case [computed with scipy 1.10.1 / Python 3.11]', () => {
    const wall = thermo.layeredWallHeat({
      gasTemperature: '1500 K',
      gasCoefficient: '2000 W/(m^2*K)',
      steps: [
        { name: 'liner', thickness: '1.5 mm', conductivity: '0.15 W/(m*K)' },
        { contact: '2.75e-4 m^2*K/W' },
        { name: 'case', thickness: '3 mm', conductivity: '167 W/(m*K)' },
      ],
      outsideTemperature: '300 K',
      outsideCoefficient: '15 W/(m^2*K)',
    });
    near(wall.heatFlux.si, 15491.941, 1e-7);
    near(wall.overallCoefficient.si, 12.909951, 1e-7);
    near(wall.temperatures[0].si, 1492.254, 1e-6);
    near(wall.temperatures[2].si, 1333.0743, 1e-6);
    // What leaves the outside is what came in.
    near(15 * (wall.temperatures[3].si - 300), wall.heatFlux.si, 1e-12);
  });
  test('a wall without steps is refused', () => {
    expect(() =>
      thermo.layeredWallHeat({
        gasTemperature: '1500 K',
        gasCoefficient: '2000 W/(m^2*K)',
        steps: [],
        outsideTemperature: '300 K',
        outsideCoefficient: '15 W/(m^2*K)',
      }),
    ).toThrowError(/a list of 1 or more/);
  });
  test('critical radius 11 mm [Incropera, example 3.5, from memory]', () =>
    near(
      thermo.criticalInsulationRadius({ conductivity: '0.055 W/(m*K)', coefficient: '5 W/(m^2*K)' }).in('mm'),
      11,
      1e-9,
    ));
  test('a thin tube wall resists as a flat one of its mean surface', () => {
    const tube = { innerRadius: 1, outerRadius: 1 + 1e-6, length: 2, conductivity: 0.2 };
    near(
      thermo.cylinderWallResistance.si(tube),
      1e-6 / (0.2 * 2 * Math.PI * (1 + 0.5e-6) * 2),
      1e-9, // of (t/r)²/12
    );
  });
  test('air in a duct: Re 20384, Nu 57.9, h 11.6 [Incropera, example 8.6, from memory]', () => {
    const reynolds = thermo.ductReynolds({
      massFlow: '0.050 kg/s',
      diameter: '0.15 m',
      viscosity: '208.2e-7 Pa*s',
    });
    near(reynolds, 20384, 3e-3);
    const nusselt = thermo.dittusBoelterNusselt({ reynolds, prandtl: 0.7 });
    near(nusselt, 57.9, 3e-3);
    near(
      thermo.coefficientFromNusselt({ nusselt, conductivity: '0.030 W/(m*K)', diameter: '0.15 m' }).si,
      11.6,
      3e-3,
    );
  });
  test('a 25 mm port: Re 379734.32, Nu 626.89244, h 2805.8705 [eq. 8.60, computed with scipy 1.10.1 / Python 3.11]', () => {
    const reynolds = thermo.ductReynolds({
      massFlow: '0.35 kg/s',
      diameter: '25 mm',
      viscosity: '4.6941645e-5 Pa*s',
    });
    near(reynolds, 379734.32, 1e-7);
    const prandtl = 0.8058813;
    const nusselt = thermo.dittusBoelterNusselt({ reynolds, prandtl });
    near(nusselt, 626.89244, 1e-7);
    const conductivity = `${(4.6941645e-5 * 1921) / prandtl} W/(m*K)` as const; // Pr = μ·c_p/k
    near(thermo.coefficientFromNusselt({ nusselt, conductivity, diameter: '25 mm' }).si, 2805.8705, 1e-7);
  });
  test('Gnielinski lies a fifth or more below at the Prandtl number of combustion gas [engineering practice, no published source]', () => {
    const at = { reynolds: 1e5, prandtl: 0.55 };
    const share = thermo.gnielinskiNusselt(at) / thermo.dittusBoelterNusselt(at);
    expect(share).toBeGreaterThan(0.74);
    expect(share).toBeLessThan(0.82);
  });
  test('grey plates: 59801.615 W/m² [Incropera eq. 13.19, computed with scipy 1.10.1 / Python 3.11]', () => {
    const flux = thermo.greyPlatesFlux({
      hotTemperature: '1400 K',
      coldTemperature: '500 K',
      hotEmissivity: 0.8,
      coldEmissivity: 0.3,
    });
    near(flux.si, 59801.615, 1e-8);
  });
  test('a black body at 1600 K radiates 371613.66 W/m² [Stefan-Boltzmann law, computed with scipy 1.10.1]', () =>
    near(thermo.gasRadiationFlux({ emissivity: 1, temperature: '1600 K' }).si, 371613.66, 1e-8));
});

describe('what a thermocouple tells wrongly', () => {
  test('24 K behind a ramp of 60 K/s at 0.4 s [first-order lag, computed with scipy 1.10.1 / Python 3.11]', () =>
    near(thermo.rampLag({ timeConstant: '0.4 s', rate: '60 K/s' }).si, 24, 1e-12));
  test('a step of 200 K reads 203.583 °C after 1 s at 0.4 s [first-order lag, computed with scipy 1.10.1 / Python 3.11]', () => {
    const reading = thermo.lumpedTemperature({
      initialTemperature: '20 degC',
      gasTemperature: '220 degC',
      time: '1 s',
      timeConstant: '0.4 s',
    });
    near(reading.in('degC'), 203.583, 1e-5);
  });
  test('a radiating junction: what it radiates is what the gas gives it, and black walls as hot as it leave it right', () => {
    const bare = { reading: '1000 K', emissivity: 0.3, coefficient: '400 W/(m^2*K)' } as const;
    const gas = thermo.radiationCorrectedTemperature({ ...bare, wallTemperature: '500 K' }).si;
    const away = thermo.gasRadiationFlux.si({ emissivity: 0.3, temperature: 1000 });
    const back = thermo.gasRadiationFlux.si({ emissivity: 0.3, temperature: 500 });
    near(400 * (gas - 1000), away - back, 1e-12);
    near(thermo.radiationCorrectedTemperature({ ...bare, wallTemperature: '1000 K' }).si, 1000, 1e-15);
  });
});

describe('a layered wall through a firing and after it', () => {
  const liner = {
    name: 'liner',
    thickness: '1.5 mm',
    conductivity: '0.15 W/(m*K)',
    density: '900 kg/m^3',
    specificHeat: '1500 J/(kg*K)',
  } as const;
  const tube = {
    name: 'case',
    thickness: '3 mm',
    conductivity: '167 W/(m*K)',
    density: '2700 kg/m^3',
    specificHeat: '896 J/(kg*K)',
  } as const;
  const fire = {
    gasTemperature: '1550 K',
    gasCoefficient: '1500 W/(m^2*K)',
    heatingTime: '2 s',
    initialTemperature: '300 K',
  } as const;
  const lined = [liner, { contact: '2.75e-4 m^2*K/W' }, tube] as const;

  // Cell-centred finite volumes, 240 + 48 cells, Richardson-extrapolated, computed with scipy 1.10.1 / Python 3.11.
  test('liner, joint and case after 2 s: 1403.5556, 307.66721, 301.6088, 301.41348, mean 301.47824 K', () => {
    const { layers, estimatedError } = thermo.layeredWallHeating({ ...fire, duration: '2 s', steps: lined });
    near(layers[0].hotFace.at(-1).si, 1403.5556, 1e-6);
    near(layers[0].coldFace.at(-1).si, 307.66721, 1e-6);
    near(layers[1].hotFace.at(-1).si, 301.6088, 1e-6);
    near(layers[1].coldFace.at(-1).si, 301.41348, 1e-6);
    near(layers[1].mean.at(-1).si, 301.47824, 1e-6);
    expect(Math.abs(layers[0].hottestFace.si - 1403.5556)).toBeLessThan(estimatedError.si);
    expect(estimatedError.si).toBeLessThan(0.1);
  });

  test('the case is hottest long after burnout, and keeps all the heat that nothing takes away', () => {
    const soak = thermo.layeredWallHeating({ ...fire, duration: '600 s', steps: lined });
    const [inner, outer] = soak.layers;
    expect(outer.hottestMeanAt.si).toBeGreaterThan(20);
    expect(outer.hottestMean.si).toBeGreaterThan(outer.mean.si[0] + 50);
    // Heat at burnout is heat in the end, spread evenly: ρ·c·L by hand.
    const [a, b] = [900 * 1500 * 0.0015, 2700 * 896 * 0.003];
    const at = soak.time.si.indexOf(2);
    near(
      (a * inner.mean.si[at] + b * outer.mean.si[at]) / (a + b),
      (a * inner.mean.at(-1).si + b * outer.mean.at(-1).si) / (a + b),
      1e-8,
    );
    near(inner.mean.at(-1).si, outer.mean.at(-1).si, 1e-6);
    expect(soak.cautions.join()).not.toMatch(/longer duration/);
    expect(thermo.layeredWallHeating({ ...fire, duration: '2 s', steps: lined }).cautions.join()).toMatch(
      /soak/,
    );
    expect(thermo.layeredWallHeating({ ...fire, duration: '6 s', steps: lined }).cautions.join()).toMatch(
      /case still heating/,
    );
    expect(String(soak)).toMatch(/liner .*\ncase /);
  });

  test('one layer, insulated behind, is the exact series', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 30, noNaN: true }),
        fc.double({ min: 0.05, max: 4, noNaN: true }),
        (biot, fourier) => {
          const { layers } = thermo.layeredWallHeating({
            ...fire,
            gasCoefficient: `${biot * 1000} W/(m^2*K)`,
            heatingTime: `${fourier} s`,
            duration: `${fourier} s`,
            steps: [
              // k/L = 1000 and α/L² = 1: Biot and Fourier numbers are coefficient and time.
              {
                thickness: '10 mm',
                conductivity: '10 W/(m*K)',
                density: '100 kg/m^3',
                specificHeat: '1000 J/(kg*K)',
              },
            ],
          });
          const exact = (position: number) =>
            thermo.transientConduction({ shape: 'wall', biot, fourier, position });
          const kelvin = (theta: number): number => 1550 - 1250 * theta;
          near(layers[0].hotFace.at(-1).si, kelvin(exact(1).theta), 2e-6);
          near(layers[0].coldFace.at(-1).si, kelvin(exact(0).theta), 2e-6);
          near(layers[0].mean.at(-1).si, kelvin(exact(0).averageTheta), 2e-6);
        },
      ),
      { numRuns: 30 },
    );
  });

  test('given time, it is the steady wall: flat against layeredWallHeat, a tube against its resistances', () => {
    const long = {
      ...fire,
      heatingTime: '20000 s',
      duration: '20000 s',
      steps: lined,
      outsideTemperature: '300 K',
      outsideCoefficient: '15 W/(m^2*K)',
    } as const;
    const flat = thermo.layeredWallHeating(long);
    const steady = thermo.layeredWallHeat({
      gasTemperature: fire.gasTemperature,
      gasCoefficient: fire.gasCoefficient,
      outsideTemperature: long.outsideTemperature,
      outsideCoefficient: long.outsideCoefficient,
      steps: [
        { thickness: liner.thickness, conductivity: liner.conductivity },
        { contact: '2.75e-4 m^2*K/W' },
        { thickness: tube.thickness, conductivity: tube.conductivity },
      ],
    }).temperatures;
    near(flat.layers[0].hotFace.at(-1).si, steady[0].si, 1e-7);
    near(flat.layers[1].hotFace.at(-1).si, steady[2].si, 1e-7);
    near(flat.layers[1].coldFace.at(-1).si, steady[3].si, 1e-7);

    const round = thermo.layeredWallHeating({ ...long, innerRadius: '20 mm' });
    const wallOf = (
      innerRadius: `${number} mm`,
      outerRadius: `${number} mm`,
      conductivity: `${number} W/(m*K)`,
    ) => thermo.cylinderWallResistance({ innerRadius, outerRadius, conductivity, length: '1 m' }).si;
    const ring = (radius: number): number => 2 * Math.PI * radius;
    const parts = [
      1 / (1500 * ring(0.02)),
      wallOf('20 mm', '21.5 mm', '0.15 W/(m*K)'),
      2.75e-4 / ring(0.0215),
      wallOf('21.5 mm', '24.5 mm', '167 W/(m*K)'),
      1 / (15 * ring(0.0245)),
    ];
    const heat = 1250 / parts.reduce((sum, r) => sum + r, 0);
    // Cells of a tube hold the logarithm exactly, so that nothing but time is left.
    near(round.layers[0].hotFace.at(-1).si, 1550 - heat * parts[0], 1e-7);
    near(round.layers[0].coldFace.at(-1).si, 1550 - heat * (parts[0] + parts[1]), 1e-7);
    near(round.layers[1].coldFace.at(-1).si, 300 + heat * parts[4], 1e-7);
  });

  test.each([
    [{ steps: [] }, /a list of 1 or more/],
    [{ steps: [{ contact: '1e-4 m^2*K/W' }, tube] }, /a layer on either side/],
    [{ steps: [liner, { contact: '1e-4 m^2*K/W' }] }, /a layer on either side/],
    [{ duration: '1 s' }, /at least the heating time/],
    [{ steps: [{ ...tube, thickness: '0 mm' }] }, /steps\.0\.thickness must be above 0 mm, got '0 mm'/],
    [{ outsideCoefficient: '-1 W/(m^2*K)' }, /outsideCoefficient must be at least 0/],
  ] as const)('refuses %#', (wrong, message) => {
    expect(() =>
      thermo.layeredWallHeating({ ...fire, duration: '9 s', steps: lined, ...wrong }),
    ).toThrowError(message);
  });
});
