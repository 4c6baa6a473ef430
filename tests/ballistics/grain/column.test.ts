import { describe, expect, test } from 'vitest';
import {
  crack,
  drawGrain,
  endBurner,
  finocyl,
  freeRod,
  grainColumn,
  internalTube,
  regress,
  regressColumn,
  tubularSegment,
  withFlaws,
} from '../../../src/ballistics/grain';
import { off } from './grain-case';

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
    expect(() => grainColumn({ segments: [segment, tube], spacers: ['1 mm', '2 mm'] })).toThrow(/1 spacers/);
    expect(() => grainColumn({ segments: [] })).toThrow(/at least one grain/);
  });
});

describe('the picture', () => {
  test('shows the port, the fronts, the flaws and both sections, and nothing that is not a number', () => {
    const flawed = withFlaws(
      segment,
      crack({
        plane: 'radial',
        angle: '20 deg',
        innerRadius: '7 mm',
        outerRadius: '18 mm',
        from: '30 mm',
        to: '60 mm',
      }),
    );
    const picture = drawGrain(flawed);
    expect(picture.match(/class="port"/g)).toHaveLength(2);
    expect(picture.match(/class="flaw"/g)).toHaveLength(2);
    expect(picture.match(/class="front"/g)?.length).toBeGreaterThan(8);
    expect(picture).not.toMatch(/NaN|Infinity|undefined/);
    expect(drawGrain(segment)).not.toMatch(/class="flaw"/);
    expect(drawGrain(endBurner({ outerDiameter: '40 mm', length: '60 mm' }))).not.toMatch(
      /NaN|Infinity|undefined/,
    );
  });

  test('cuts through fins that run part of the way, draws no inhibitor where the surface burns or the port goes through', () => {
    const fins = { fins: 6, finThickness: '4 mm', finTipDiameter: '44 mm', finFrom: '100 mm' } as const;
    const finned = drawGrain(
      finocyl({ outerDiameter: '76 mm', boreDiameter: '20 mm', length: '180 mm', ...fins }),
    );
    expect(finned).toContain('section at 140 mm from the head end');
    // All of a free rod burns; of an inhibited tube two runs of either end, beside the bore, do not.
    expect(drawGrain(freeRod({ outerDiameter: '30 mm', length: '80 mm' }))).not.toContain('class="wall"');
    const ends = [...drawGrain(tube).matchAll(/class="wall" d="([^"]*V[^"]*)"/g)].map(([, d]) => d);
    expect(ends.map((d) => d?.match(/V/g)?.length)).toEqual([2, 2]);
    // Lines are straight where the front is: a picture is no table of every cell.
    expect(finned.length).toBeLessThan(4e4);
  });
});
