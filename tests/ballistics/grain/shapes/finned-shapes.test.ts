import { describe, expect, test } from 'vitest';
import { finocyl, regress } from '../../../../src/ballistics/grain';
import { off } from '../grain-case';

describe('fins', () => {
  test('fins that touch or pass the wall are cut off there', () => {
    const options = {
      outerDiameter: '50 mm',
      boreDiameter: '16 mm',
      length: '50 mm',
      fins: 4,
      finThickness: '4 mm',
    } as const;
    const touching = regress(finocyl({ ...options, finTipDiameter: '49.999999 mm' }), { stations: 1 });
    const passing = regress(finocyl({ ...options, finTipDiameter: '70 mm' }), { stations: 1 });
    // The clipped fins differ by the slivers between a flat tip and the wall: h³/(3R) a fin and half, some 0.2 mm².
    expect(off(touching.si.volume[0], passing.si.volume[0])).toBeLessThan(1e-3);
    expect(passing.web.si).toBeCloseTo(0, 9);
  });
});
