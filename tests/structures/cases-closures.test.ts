import { describe } from 'vitest';
import { allowable, material } from '../../src/structures';
import { caseTest } from './case-check';

describe('materials of retaining parts', () => {
  caseTest('mat-17-4ph-bar', () => {
    const ksi = (name: string, property: 'ultimate' | 'yield') =>
      allowable({ material: name, property }).value.in('ksi');
    const { elasticModulus, poissonRatio } = material('17-4PH H900 bar');
    return {
      H900_Ftu_ksi: ksi('17-4PH H900 bar', 'ultimate'),
      H900_Fty_ksi: ksi('17-4PH H900 bar', 'yield'),
      H1025_Ftu_ksi: ksi('17-4PH H1025 bar', 'ultimate'),
      H1025_Fty_ksi: ksi('17-4PH H1025 bar', 'yield'),
      E_Msi: (elasticModulus?.value.in('ksi') ?? Number.NaN) / 1000,
      nu: poissonRatio?.value ?? Number.NaN,
    };
  });
});
