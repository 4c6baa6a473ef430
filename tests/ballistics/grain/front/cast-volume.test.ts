import { describe, expect, test } from 'vitest';
import { endBurner, type Grain, voidBubble, withFlaws } from '../../../../src/ballistics/grain';
import { castVolume } from '../../../../src/ballistics/grain/front/cast-volume';
import { litSources } from '../../../../src/ballistics/grain/front/regress-shape';
import { outsideBy } from '../../../../src/ballistics/grain/surface';
import { drawFrom, randomFlaw, soundGrain, soundKinds } from '../random-grains';

const exact = (grain: Grain): number => castVolume(grain.shape, litSources(grain.shape));

/**
 * Propellant as cast by a lattice of lines parallel to x: the lengths of their stretches in no cavity, whose ends are
 * found by bisection. Lines are spread evenly over y and z by the golden ratio.
 */
function latticeVolume(grain: Grain, lines: number, steps: number): number {
  const { envelope, ports, inert, flaws } = grain.shape;
  const { radius, length } = envelope;
  const foot = new Float64Array(3);
  const bodies = [...ports, ...inert, ...flaws.map((f) => f.source)].filter((s) => !s.sheet);
  const solid = (x: number, y: number, z: number): number =>
    bodies.reduce(
      (least, s) => Math.min(least, s.cavity?.(x, y, z) ?? s.nearest(x, y, z, foot)),
      -outsideBy(envelope, x, y, z),
    );
  let sum = 0;
  for (let i = 0; i < lines; i++) {
    const y = radius * (-1 + (2 * (i + 0.5)) / lines);
    const z = length * ((i * 0.6180339887498949) % 1);
    const at = (k: number): number => radius * (-1 + (2 * k) / steps);
    let last = solid(at(0), y, z);
    for (let k = 1; k <= steps; k++) {
      const next = solid(at(k), y, z);
      let [a, b] = [at(k - 1), at(k)];
      if (last > 0 === next > 0) sum += last > 0 ? b - a : 0;
      else {
        for (let n = 0; n < 40; n++) {
          const m = (a + b) / 2;
          if (solid(m, y, z) > 0 === last > 0) a = m;
          else b = m;
        }
        sum += last > 0 ? a - at(k - 1) : at(k) - b;
      }
      last = next;
    }
  }
  return (sum * 2 * radius * length) / lines;
}

describe('cast volume', () => {
  test('sections with a closed form, to 1e-6; sheets take nothing, buried balls their own volume', () => {
    for (let seed = 0; seed < 4 * soundKinds; seed++) {
      const draw = drawFrom(seed);
      const sound = soundGrain(draw, seed);
      const { closedForm } = sound;
      if (closedForm === undefined) continue;
      const whole = exact(sound);
      expect(Math.abs(whole / (closedForm.section(0) * 0.06) - 1), `${sound}`).toBeLessThan(1e-6);
      const grain = withFlaws(sound, { flaws: [randomFlaw(draw, seed % 2)] });
      expect(exact(grain)).toBe(whole);
    }
    const solid = endBurner({ outerDiameter: '40 mm', length: '60 mm' });
    const one = voidBubble({ diameter: '6 mm', distanceFromAxis: '8 mm', position: '30 mm' });
    const ball = Math.PI * 1e-9 * 36;
    expect(Math.abs(exact(withFlaws(solid, { flaws: [one] })) - exact(solid) + ball)).toBeLessThan(
      1e-9 * ball,
    );
  });

  test('two balls that overlap: the volume of their union by the lens of two spheres', () => {
    // Lens of spheres of radius 3 at the distance 4 (in mm): π (4r + d)(2r - d)²/12, the textbook formula, from memory.
    const solid = endBurner({ outerDiameter: '40 mm', length: '60 mm' });
    const at = (position: `${number} mm`) =>
      voidBubble({ diameter: '6 mm', distanceFromAxis: '0 mm', position });
    const taken = exact(solid) - exact(withFlaws(solid, { flaws: [at('28 mm'), at('32 mm')] }));
    const lens = (Math.PI * (12 + 4) * (6 - 4) ** 2) / 12;
    expect(Math.abs(taken / (1e-9 * (72 * Math.PI - lens)) - 1)).toBeLessThan(1e-3);
    expect(Math.abs(taken - 1e-9 * (72 * Math.PI - lens))).toBeLessThan(1e-6 * exact(solid));
  });

  test('every shape with a void and a chip against a lattice of lines', () => {
    for (let seed = 0; seed < soundKinds; seed++) {
      const draw = drawFrom(seed + 1000);
      const grain = withFlaws(soundGrain(draw, seed), { flaws: [randomFlaw(draw, 2), randomFlaw(draw, 4)] });
      // 2,000 lines are good to about 5e-4.
      expect(Math.abs(exact(grain) / latticeVolume(grain, 2000, 60) - 1), `${grain}`).toBeLessThan(1e-3);
    }
  });
});
