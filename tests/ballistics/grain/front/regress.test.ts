import { describe, expect, test } from 'vitest';
import { finocyl, regress, tubularSegment } from '../../../../src/ballistics/grain';
import { off } from '../grain-case';

describe('long work', () => {
  const grain = finocyl({
    outerDiameter: '76 mm',
    boreDiameter: '20 mm',
    length: '90 mm',
    fins: 6,
    finThickness: '4 mm',
    finTipDiameter: '44 mm',
    finFrom: '40 mm',
  });

  test('tells how far it is, never backwards, and ends at 1', () => {
    const told: number[] = [];
    regress(grain, { accuracy: 5e-3, onProgress: (f) => told.push(f) });
    expect(told.length).toBeGreaterThan(10);
    expect(told.at(-1)).toBe(1);
    told.slice(1).forEach((f, i) => {
      expect(f).toBeGreaterThanOrEqual(told[i]);
    });
  });

  test('stops when told, with the reason given', () => {
    const controller = new AbortController();
    const reason = new Error('enough');
    const run = () =>
      regress(grain, {
        signal: controller.signal,
        onProgress: (f) => {
          if (f > 0.2) controller.abort(reason);
        },
      });
    expect(run).toThrow(reason);
  });
});

describe('what a regression says', () => {
  test('the wall of a segment is exposed by distance from bore and ends', () => {
    const r = regress(tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '80 mm' }));
    const { position, depth } = r.wallExposure;
    position.si.forEach((z, j) => {
      expect(depth.si[j]).toBeCloseTo(Math.min(0.017, z, 0.08 - z), 9);
    });
  });

  test('mass, centre and inertia of a tube are those of a hollow cylinder', () => {
    // Elementary: J = m (R² + r²)/2 about the axis, m (3 (R² + r²) + L²)/12 across it.
    const r = regress(
      tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '80 mm', burningEnds: 'aft' }),
    );
    const m = r.massProperties('1800 kg/m^3');
    const depth = r.depth.si;
    for (const k of [0, 100, 200]) {
      const [inner, length] = [0.008 + depth[k], 0.08 - depth[k]];
      const mass = 1800 * Math.PI * (0.025 ** 2 - inner ** 2) * length;
      const radii = 0.025 ** 2 + inner ** 2;
      expect(off(m.mass.si[k], mass)).toBeLessThan(1e-6);
      expect(off(m.centreAxial.si[k], length / 2)).toBeLessThan(1e-6);
      expect(off(m.axialInertia.si[k], (mass * radii) / 2)).toBeLessThan(2e-3);
      expect(off(m.inertiaX.si[k], (mass * (3 * radii + length ** 2)) / 12)).toBeLessThan(2e-3);
    }
  });

  test('the port at a station beside a burning end opens to the wall when the end has passed it', () => {
    const r = regress(tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '40 mm' }), {
      stations: 4,
    });
    const first = r.portArea[0];
    const k = r.depth.si.findIndex((w) => w > first.position.si);
    expect(off(first.area.si[k], Math.PI * 0.025 ** 2)).toBeLessThan(1e-9);
    expect(first.perimeter.si[k]).toBe(0);
    expect(off(first.perimeter.si[0], Math.PI * 0.016)).toBeLessThan(1e-6);
  });
});
