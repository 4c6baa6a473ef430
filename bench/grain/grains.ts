// What is measured: a six-finned section, and a finocyl with two cracks.
import { crack, finocyl, withFlaws } from '../../src/ballistics/grain';
import { regressShape, tableDifference } from '../../src/ballistics/grain/front/regress-shape';
import { regressionKernel } from '../../src/ballistics/grain/front/regression-kernel';

const measures = {
  outerDiameter: '76 mm',
  boreDiameter: '20 mm',
  fins: 6,
  finThickness: '4 mm',
  finTipDiameter: '44 mm',
} as const;

const section = finocyl({ ...measures, length: '1000 mm' });

/** Perimeter of the section at the depths [mm], at an accuracy. */
export function sectionPerimeter(depths: readonly number[], accuracy: number): number[] {
  const found = regressShape(section.shape, { accuracy, steps: 200 });
  const { areaAt } = regressionKernel(
    found.depth,
    found.area,
    found.volume,
    found.breaks.map((b) => b.depth),
    found.burnout,
  );
  return depths.map((w) => 1e3 * areaAt(w / 1e3));
}

export const cracked = withFlaws(finocyl({ ...measures, length: '180 mm', finFrom: '100 mm' }), {
  flaws: [
    crack({
      plane: 'radial',
      angle: '20 deg',
      innerRadius: '10 mm',
      outerRadius: '25 mm',
      from: '30 mm',
      to: '60 mm',
    }),
    crack({
      plane: 'radial',
      angle: '126 deg',
      innerRadius: '10 mm',
      outerRadius: '20 mm',
      from: '50 mm',
      to: '70 mm',
    }),
  ],
});

export const solve = (accuracy: number) => regressShape(cracked.shape, { accuracy, steps: 200 });
/** Rays of every surface, as the program in C samples them. */
export const solveAt = (cells: number) =>
  regressShape(cracked.shape, {
    accuracy: 1e-3,
    steps: 200,
    spacing: 0.038 / cells,
    ignoreSymmetry: true,
  });

/** Error of a regression against a finer one: mean area of each step of the finer table, root mean square. */
export function error(a: ReturnType<typeof solve>, fine: ReturnType<typeof solve>): number {
  const kernel = regressionKernel(
    a.depth,
    a.area,
    a.volume,
    a.breaks.map((b) => b.depth),
    a.burnout,
  );
  return tableDifference({ area: fine.area, volume: fine.depth.map(kernel.volumeAt) }, fine, fine.depth);
}
