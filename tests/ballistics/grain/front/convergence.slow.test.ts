import { describe, expect, test } from 'vitest';
import {
  crack,
  finocyl,
  type Grain,
  internalTube,
  slottedTube,
  voidBubble,
  withFlaws,
} from '../../../../src/ballistics/grain';
import { regressShape } from '../../../../src/ballistics/grain/front/regress-shape';

const steps = 60;
const tube = internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '60 mm' });
const grains: readonly (readonly [string, Grain])[] = [
  [
    'slotted tube',
    slottedTube({
      outerDiameter: '50 mm',
      boreDiameter: '18 mm',
      length: '80 mm',
      slots: 4,
      slotWidth: '3 mm',
      slotTo: '40 mm',
    }),
  ],
  [
    'finocyl',
    finocyl({
      outerDiameter: '76 mm',
      boreDiameter: '20 mm',
      length: '120 mm',
      fins: 6,
      finThickness: '4 mm',
      finTipDiameter: '44 mm',
      finFrom: '60 mm',
    }),
  ],
  [
    'cracked tube',
    withFlaws(tube, {
      flaws: [
        crack({
          plane: 'radial',
          angle: '0 deg',
          innerRadius: '8 mm',
          outerRadius: '18 mm',
          from: '20 mm',
          to: '40 mm',
        }),
      ],
    }),
  ],
  [
    'tube with a void',
    withFlaws(tube, {
      flaws: [voidBubble({ diameter: '6 mm', distanceFromAxis: '16 mm', position: '30 mm' })],
    }),
  ],
];

/** Mean over depth of the difference of the burned volumes of a step, against their mean: the error of the mean areas. */
function difference(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let k = 1; k < a.length; k++) sum += Math.abs(a[k - 1] - a[k] - (b[k - 1] - b[k]));
  return sum / b[0];
}

describe('convergence', () => {
  test('the error of the burning area falls at least with the square of the cell size', () => {
    for (const [name, grain] of grains) {
      const radius = grain.shape.envelope.radius;
      const at = (k: number) => regressShape(grain.shape, { accuracy: 1e-3, steps, spacing: radius / k });
      const reference = at(80);
      // Fewer cells do not resolve fins of a tenth of the radius.
      const sizes = [10, 20, 40];
      // The depths of the tables are the same to rounding: burnout is a corner of the wall that every spacing finds.
      const errors = sizes.map((k) => difference(at(k).volume, reference.volume));
      const n = sizes.length;
      const x = sizes.map((k) => Math.log(1 / k));
      const y = errors.map(Math.log);
      const mx = x.reduce((s, v) => s + v, 0) / n;
      const my = y.reduce((s, v) => s + v, 0) / n;
      const slope =
        x.reduce((s, v, i) => s + (v - mx) * (y[i] - my), 0) / x.reduce((s, v) => s + (v - mx) ** 2, 0);
      console.log(
        `${name}: errors ${errors.map((e) => e.toExponential(1)).join(', ')}, order ${slope.toFixed(2)}`,
      );
      expect(slope, name).toBeGreaterThanOrEqual(2);
    }
  });
});
