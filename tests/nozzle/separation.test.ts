// Limits between the regimes: laws and errors, no expected values but those with their origin beside them.
import { describe, expect, test } from 'vitest';
import * as nozzle from '../../src/nozzle';
import { separationCriteria } from '../../src/nozzle/inputs';
import { separationMachSi } from '../../src/nozzle/separation-mach';
import * as thermo from '../../src/thermo';

const near = (found: number, wanted: number, rel: number): void =>
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(rel * Math.abs(wanted));

describe('separation criteria', () => {
  // Computed with Python 3.11 from 0.541·r^(−0.136) and π/(3·M) (formulas from memory).
  test('Schilling for cones: 0.3599624 at p_c/p_a 20', () =>
    near(nozzle.schillingSeparationRatio({ chamberOverAmbient: 20 }), 0.3599624, 1e-6));
  test('Stark: 0.418879 at Mach 2.5', () => near(nozzle.starkSeparationRatio({ mach: 2.5 }), 0.418879, 1e-6));

  test.each(separationCriteria)('%s: the Mach number found satisfies the rule itself', (criterion) => {
    const rule = (mach: number, ratio: number): number => {
      switch (criterion) {
        case 'summerfield':
          return nozzle.summerfieldSeparationRatio({});
        case 'schmucker':
          return nozzle.schmuckerSeparationRatio({ mach });
        case 'kalt-badal':
          return nozzle.kaltBadalSeparationRatio({ chamberOverAmbient: ratio });
        case 'schilling':
          return nozzle.schillingSeparationRatio({ chamberOverAmbient: ratio });
        case 'stark':
          return nozzle.starkSeparationRatio({ mach });
      }
    };
    for (const gamma of [1.04, 1.2, 1.4, 1.67])
      for (const ratio of [3, 10, 50, 1000]) {
        const mach = separationMachSi(gamma, 1 / ratio, criterion);
        near(thermo.isentropicPressureRatio.si({ mach, gamma }) * ratio, rule(mach, ratio), 1e-11);
      }
  });

  test('the caution says how far apart they are', () => {
    const { lowest, highest, cautions } = nozzle.separationPressure({
      gamma: 1.2,
      chamberPressure: '30 bar',
      ambientPressure: '1 bar',
    });
    // Summerfield 0.4 against Stark 0.310: computed with Python 3.11 by bisection of p(M)·30 = π/(3·M).
    near(highest.si / lowest.si, 1.2914, 1e-4);
    expect(cautions.join()).toMatch(/differ by 29 % here/);
  });

  test('a criterion outside its tests is reported', () => {
    const { cautions } = nozzle.separationPressure({
      gamma: 1.2,
      chamberPressure: '2.05 bar',
      ambientPressure: '1 bar',
    });
    expect(cautions.join()).toMatch(/below Mach 1\.5/);
  });
});

describe('full-flowing thrust coefficient', () => {
  // ε = 1.05, γ = 1.4: choked, exit pressure above 0.4 of ambient, and yet a shock stands inside.
  const low = {
    gamma: 1.4,
    expansionRatio: 1.05,
    chamberPressure: '1.52 bar',
    ambientPressure: '1 bar',
  } as const;
  test('states where a shock is inside although the exit pressure is above 0.4 of ambient', () => {
    expect(nozzle.nozzleRegime(low).regime).toBe('shock in the divergent section');
    expect(nozzle.thrustCoefficient.cautions(low).join()).toMatch(/shock is in the divergent section/);
    const sized = nozzle.sizeNozzle({
      ...low,
      target: { thrust: '50 N' },
      characteristicVelocity: '900 m/s',
    });
    expect(sized.cautions.join()).toMatch(/shock is in the divergent section/);
  });
  test('and is silent where the nozzle flows full', () => {
    const full = { ...low, chamberPressure: '20 bar' } as const;
    expect(nozzle.thrustCoefficient.cautions(full)).toEqual([]);
  });
});
