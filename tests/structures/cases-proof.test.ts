import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hotProofFactor, hotProofPressure, stressRatio } from '../../src/structures';
import { caseTest } from './case-check';

describe('a proof test of a part that is hot in service', () => {
  // Source and provenance of the case: tests/cases/hardware.json.
  caseTest('proof-hot-ratio', ({ inputs }, input) => {
    const meop = input('mawp');
    const ratio = stressRatio.si({ strengthCold: input('strengthCold'), strengthHot: input('strengthHot') });
    return {
      stressRatio: ratio,
      testPressure_MPa: hotProofPressure.si({ meop, factor: Number(inputs.factor), ratio }) / 1e6,
      // The 1.5 rule without correction.
      factorOnHotWithout: hotProofFactor.si({ proofPressure: 1.5 * meop, meop, ratio }),
    };
  });

  const positive = fc.double({ min: 0.1, max: 10, noNaN: true });

  test('the factor shown by the required pressure is the factor required', () => {
    fc.assert(
      fc.property(positive, positive, positive, (meop, factor, ratio) => {
        const pressure = hotProofPressure.si({ meop, factor, ratio });
        expect(hotProofFactor.si({ proofPressure: pressure, meop, ratio })).toBeCloseTo(factor, 9);
      }),
    );
  });

  test('a part that is as strong in service needs no higher pressure, a weaker one does', () => {
    fc.assert(
      fc.property(positive, positive, positive, (meop, factor, strength) => {
        const at = (strengthHot: number): number =>
          hotProofPressure.si({
            meop,
            factor,
            ratio: stressRatio.si({ strengthCold: strength, strengthHot }),
          });
        expect(at(strength)).toBeCloseTo(factor * meop, 9);
        expect(at(0.5 * strength)).toBeCloseTo(2 * factor * meop, 9);
      }),
    );
  });
});
