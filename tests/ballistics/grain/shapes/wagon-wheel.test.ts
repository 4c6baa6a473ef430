import { describe, expect, test } from 'vitest';
import { regress, wagonWheel } from '../../../../src/ballistics/grain';
import { off } from '../grain-case';
import { wheelPerimeter } from './wagon-wheel-perimeter';

describe('the wagon wheel', () => {
  test('wagon wheel: perimeter of the distance method, before and after the spokes are gone', () => {
    const wheel = { spokes: 5, ringRadius: 0.028, halfThickness: 0.0025, spokeRadius: 0.009 };
    const grain = wagonWheel({
      spokes: 5,
      outerDiameter: '76 mm',
      ringInnerDiameter: '56 mm',
      spokeThickness: '5 mm',
      spokeTipDiameter: '18 mm',
      length: '1000 mm',
    });
    const { si } = regress(grain);
    for (const w of [0, 0.001, 0.0024, 0.0026, 0.005, 0.0098])
      expect(off(si.areaAt(w), wheelPerimeter(wheel, w)), `${w}`).toBeLessThan(1e-3);
  });
});
