import { describe, expect, test } from 'vitest';
import { allowable, graphiteRanges, material, strengthRetention } from '../../src/structures';

import { caseTest } from './case-check';

describe('materials', () => {
  caseTest('mat-6061-t6-typical', () => {
    const record = material('6061-T6 bar');
    return {
      ultimate_MPa: record.typical?.ultimateStrength?.value.in('MPa') ?? Number.NaN,
      yield_MPa: record.typical?.yieldStrength?.value.in('MPa') ?? Number.NaN,
      shearUltimate_MPa: record.typical?.shearUltimate?.value.in('MPa') ?? Number.NaN,
      E_GPa: record.elasticModulus?.value.in('GPa') ?? Number.NaN,
      nu: record.poissonRatio?.value ?? Number.NaN,
      'alpha_20_100_1e-6_per_K': (record.thermalExpansion?.value.si ?? Number.NaN) * 1e6,
      k_W_mK: record.thermalConductivity?.value.si ?? Number.NaN,
      cp_J_kgK: record.specificHeat?.value.si ?? Number.NaN,
      density_kg_m3: record.density?.value.si ?? Number.NaN,
    };
  });
  caseTest('mat-6061-t6-minimum', () => {
    const at = (name: string, property: 'ultimate' | 'yield') =>
      allowable({ material: material(name), property, direction: 'longitudinal' }).value;
    return {
      extruded_ultimate_ksi: at('6061-T6 extruded tube', 'ultimate').in('ksi'),
      extruded_yield_ksi: at('6061-T6 extruded tube', 'yield').in('ksi'),
      EN_ultimate_MPa: at('6061-T6 extrusion EN 755-2', 'ultimate').in('MPa'),
      EN_yield_MPa: at('6061-T6 extrusion EN 755-2', 'yield').in('MPa'),
      '6063_ultimate_ksi': at('6063-T6 extrusion', 'ultimate').in('ksi'),
      '6063_yield_ksi': at('6063-T6 extrusion', 'yield').in('ksi'),
    };
  });
  caseTest('mat-6061-welded', () => {
    const at = (property: 'ultimate' | 'yield' | 'shear ultimate' | 'bearing ultimate' | 'bearing yield') =>
      allowable({ material: '6061-T6 welded', property, basis: 'typical', edgeRatio: 2 }).value.in('ksi');
    return {
      ultimate_ksi: at('ultimate'),
      yield_ksi: at('yield'),
      shearUltimate_ksi: at('shear ultimate'),
      bearingUltimate_ksi: at('bearing ultimate'),
      bearingYield_ksi: at('bearing yield'),
    };
  });
  caseTest('mat-6061-t6-hot', () => {
    const rows = material('6061-T6 bar').typical?.atTemperature?.value ?? [];
    const entries = [24, 100, 149, 204].flatMap((celsius) => {
      const row = rows.find(({ temperature }) => Math.abs(temperature.in('degC') - celsius) < 1);
      return [
        [`ultimate_${celsius}_MPa`, row?.ultimateStrength.in('MPa') ?? Number.NaN],
        [`yield_${celsius}_MPa`, row?.yieldStrength.in('MPa') ?? Number.NaN],
      ] as const;
    });
    return Object.fromEntries(entries);
  });
  caseTest('mat-6061-after-exposure', () => {
    const tests = material('6061-T6 extruded tube').reheatingTests?.value ?? [];
    const hours = (f: number) =>
      tests.find(({ temperature }) => Math.abs(temperature.in('degF') - f) < 0.1)?.time.in('h') ?? Number.NaN;
    return { hours_390F: hours(390), hours_425F: hours(425) };
  });
  test('the handbook curve after exposure agrees with the reheating tests', () => {
    // Typical yield 276 MPa (Aluminum Association) falls to the minimum 241 MPa (MIL-HDBK-5J) at the times that
    // the tests of mat-6061-after-exposure found, within the 7 % that reading a small figure and a log scale allow.
    const left = (temperature: '390 degF' | '425 degF', exposure: '16 h' | '4 h') =>
      276 *
      strengthRetention({
        material: '6061-T6 extruded tube',
        property: 'yield',
        temperature,
        exposure,
        state: 'after exposure',
      }).fraction;
    expect(Math.abs(left('390 degF', '16 h') / 241 - 1)).toBeLessThan(0.07);
    expect(Math.abs(left('425 degF', '4 h') / 241 - 1)).toBeLessThan(0.07);
  });
  caseTest('mat-graphite-ranges', () => {
    const { value } = graphiteRanges();
    const pair = (name: string, [low, high]: readonly [{ si: number }, { si: number }], scale: number) => [
      [`${name}_min`, low.si / scale] as const,
      [`${name}_max`, high.si / scale] as const,
    ];
    return Object.fromEntries([
      ...pair('density', value.density, 1e3),
      ...pair('E_GPa', value.elasticModulus, 1e9),
      ...pair('compressive_MPa', value.compressiveStrength, 1e6),
      ...pair('flexural_MPa', value.flexuralStrength, 1e6),
      ...pair('cte_1e-6', value.thermalExpansion, 1e-6),
      ...pair('k', value.thermalConductivity, 1),
      ...pair('cp', value.specificHeat, 1),
    ]);
  });
});
