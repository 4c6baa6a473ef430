import { describe, expect, test } from 'vitest';
import {
  crack,
  drawGrain,
  endBurner,
  finocyl,
  freeRod,
  internalTube,
  tubularSegment,
  withFlaws,
} from '../../../../src/ballistics/grain';

const segment = tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' });

const tube = internalTube({ outerDiameter: '50 mm', boreDiameter: '20 mm', length: '60 mm' });

describe('the picture', () => {
  test('shows the port, the fronts, the flaws and both sections, and nothing that is not a number', () => {
    const flawed = withFlaws(segment, {
      flaws: [
        crack({
          plane: 'radial',
          angle: '20 deg',
          innerRadius: '7 mm',
          outerRadius: '18 mm',
          from: '30 mm',
          to: '60 mm',
        }),
      ],
    });
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
