import { describe } from 'vitest';
import {
  allowable,
  clampedDeflection,
  clampedEdgeStress,
  clampedLargeDeflection,
  flatClosureThickness,
  material,
  stretchedPlateDeflection,
  supportedCentreStress,
} from '../../src/structures';
import { quantity } from '../../src/units';
import { siList } from '../cases/read-case';
import { caseTest } from './case-check';

describe('closures', () => {
  caseTest('ug-34-locked-head', (_, input) => {
    const plate = { pressure: 1, radius: 0.5, thickness: 1 };
    return {
      thickness_mm:
        flatClosureThickness.si({
          pressure: input('pressure'),
          sealDiameter: input('sealDiameter'),
          allowable: input('allowable'),
          attachmentFactor: input('C'),
          weldEfficiency: input('efficiency'),
        }) * 1e3,
      simplySupportedFactor: supportedCentreStress.si({ ...plate, poissonRatio: input('nu') }),
      clampedFactor: clampedEdgeStress.si(plate),
    };
  });
  caseTest('large-deflection-clamped', (one, input) => {
    const poissonRatio = input('nu');
    // Any plate: the pressure for a linear deflection of the fraction of its thickness that the case states.
    const plate = { radius: 0.05, thickness: 0.001, elasticModulus: 70e9, poissonRatio };
    const exact = (fraction: number): number =>
      clampedLargeDeflection({
        pressure: quantity(
          'pressure difference',
          `${(fraction * plate.thickness) / clampedDeflection.si({ ...plate, pressure: 1 })} Pa`,
        ),
        radius: '50 mm',
        thickness: '1 mm',
        elasticModulus: '70 GPa',
        poissonRatio,
      }).in('mm');
    const fractions = siList(one.inputs.linearDeflectionOverThickness);
    return Object.fromEntries(
      fractions.flatMap((linearDeflection, i) => [
        [`deflectionOverThickness[${i}]`, exact(linearDeflection)],
        [`approximateCubic[${i}]`, stretchedPlateDeflection.si({ linearDeflection })],
      ]),
    );
  });
});

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
