import { describe, expect, test } from 'vitest';
import {
  grainColumn,
  internalTube,
  regress,
  regressColumn,
  tubularSegment,
} from '../../../../src/ballistics/grain';
import { off } from '../grain-case';

const segment = tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' });
const tube = internalTube({ outerDiameter: '50 mm', boreDiameter: '20 mm', length: '60 mm' });

describe('a column of grains', () => {
  test('area and volume are the sums at equal depth', () => {
    const column = regressColumn(
      grainColumn({ segments: [segment, tube, segment], spacers: ['3 mm', '2 mm'] }),
    );
    const [a, b] = [regress(segment).si, regress(tube).si];
    for (const w of [0, 0.004, 0.0149, 0.0151, 0.0169]) {
      expect(off(column.si.areaAt(w), 2 * a.areaAt(w) + b.areaAt(w))).toBeLessThan(1e-6);
      expect(off(column.si.volumeAt(w), 2 * a.volumeAt(w) + b.volumeAt(w))).toBeLessThan(1e-6);
    }
    expect(column.burnout.in('mm')).toBeCloseTo(17, 9);
    expect(column.portArea[0].position.si).toBeLessThan(0.085);
    expect(column.portArea.at(-1)?.position.si).toBeGreaterThan(0.085 + 0.06 + 0.005);
  });

  test('centre and inertia by parallel axes: two halves weigh as one grain', () => {
    const half = internalTube({ outerDiameter: '50 mm', boreDiameter: '20 mm', length: '30 mm' });
    const two = regressColumn(grainColumn({ segments: [half, half] })).massProperties('1800 kg/m^3');
    const one = regress(tube).massProperties('1800 kg/m^3');
    for (const name of ['mass', 'centreAxial', 'axialInertia', 'inertiaX', 'inertiaY'] as const)
      expect(off(two[name].si[0], one[name].si[0]), name).toBeLessThan(1e-9);
  });

  test('spacers are counted', () => {
    expect(() => grainColumn({ segments: [segment, tube], spacers: ['1 mm', '2 mm'] })).toThrow(
      /spacers must be one length or a list of 1, one for each gap, got \["1 mm","2 mm"\]/,
    );
    expect(() => grainColumn({ segments: [] })).toThrow(/segments must be a list of 1 or more, got \[\]/);
  });
});
