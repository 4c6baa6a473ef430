import { describe, expect, test } from 'vitest';
import { regressShape } from '../../../../src/ballistics/grain/front/regress-shape';
import { ball } from '../../../../src/ballistics/grain/surface/ball';
import { circleOutline } from '../../../../src/ballistics/grain/surface/outline-shapes';
import { prism } from '../../../../src/ballistics/grain/surface/prism';
import { codeOf } from '../../../error-code';
import { off } from '../grain-case';

describe('what cannot be burned', () => {
  test('no burning surface, or nothing left to burn, is an error', () => {
    const envelope = { form: 'cylinder', radius: 0.025, length: 0.1 } as const;
    const shape = { envelope, ports: [], inert: [], flaws: [], headBurns: false, aftBurns: false };
    const options = { accuracy: 1e-3, steps: 50 };
    expect(codeOf(() => regressShape(shape, options))).toBe('grain-nothing-burns');
    const flaw = { source: ball({ name: 'void', x: 0, y: 0, z: 0.05, radius: 0.004 }), open: undefined };
    expect(codeOf(() => regressShape({ ...shape, flaws: [flaw] }, options))).toBe('grain-nothing-burns');
    const bore = prism({
      name: 'bore',
      outline: circleOutline(0.03),
      from: 0,
      to: 0.1,
      faces: { side: [0, 0.1], start: 'through', end: 'through' },
    });
    expect(codeOf(() => regressShape({ ...shape, ports: [bore] }, options))).toBe('grain-no-propellant');
  });

  test('an inhibited cavity in the way is refused, one at the side of the way is not', () => {
    const envelope = { form: 'cylinder', radius: 0.03, length: 0.1 } as const;
    const core = (
      side: readonly [number, number] | undefined,
      start: 'burning' | 'inhibited',
      from: number,
    ) =>
      prism({
        name: 'core',
        outline: circleOutline(0.008),
        from,
        to: 0.1,
        faces: { side, start, end: 'through' },
      });
    const hole = prism({
      name: 'hole',
      outline: circleOutline(0.003, 0.02),
      from: 0,
      to: 0.1,
      faces: { side: [0, 0.1], start: 'through', end: 'through' },
    });
    const shape = {
      envelope,
      ports: [core([0.03, 0.1], 'burning', 0.03)],
      inert: [],
      flaws: [],
      headBurns: false,
      aftBurns: false,
    };
    const options = { accuracy: 1e-3, steps: 50 };
    expect(codeOf(() => regressShape({ ...shape, inert: [hole] }, options))).toBe('grain-path-blocked');
    // Below an inhibited floor beside an inhibited stretch of side, the front would have to burn around the corner.
    const corner = core([0.05, 0.08], 'inhibited', 0.03);
    expect(codeOf(() => regressShape({ ...shape, ports: [corner] }, options))).toBe('grain-path-blocked');
    // A blind bore whose floor, or whose side, is inhibited: every way is straight, and all propellant burns in the end.
    const cast = Math.PI * (0.03 ** 2 * 0.1 - 0.008 ** 2 * 0.07);
    for (const port of [core([0.03, 0.1], 'inhibited', 0.03), core(undefined, 'burning', 0.03)])
      expect(off(regressShape({ ...shape, ports: [port] }, options).volume[0], cast)).toBeLessThan(1e-6);
  });
});
