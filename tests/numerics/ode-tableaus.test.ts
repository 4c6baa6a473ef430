import { describe, expect, it } from 'vitest';
import { DORMAND_PRINCE_TABLEAU } from '../../src/numerics/dormand-prince';
import { solveLinear } from '../../src/numerics/linear-solve';
import { RODAS5P_TABLEAU } from '../../src/numerics/rodas5p';

type Matrix = number[][];
/** A rooted tree as the list of its subtrees: [] is a single vertex. */
type Tree = Tree[];

/** Rooted trees by number of vertices. */
const leaf: Tree = [];
const treesByOrder: Record<number, Tree[]> = {
  1: [leaf],
  2: [[leaf]],
  3: [[leaf, leaf], [[leaf]]],
  4: [[leaf, leaf, leaf], [leaf, [leaf]], [[leaf, leaf]], [[[leaf]]]],
  5: [
    [leaf, leaf, leaf, leaf],
    [leaf, leaf, [leaf]],
    [[leaf], [leaf]],
    [leaf, [leaf, leaf]],
    [leaf, [[leaf]]],
    [[leaf, leaf, leaf]],
    [[leaf, [leaf]]],
    [[[leaf, leaf]]],
    [[[[leaf]]]],
  ],
};

const vertices = (tree: Tree): number => 1 + tree.reduce((sum, child) => sum + vertices(child), 0);
/** Density of a tree: Hairer, Norsett and Wanner, volume I, II.2. */
const density = (tree: Tree): number =>
  tree.reduce((product, child) => product * density(child), vertices(tree));

/**
 * Elementary weights by stage. A vertex with one branch takes the matrix `single`, one with several takes `several`:
 * for a Rosenbrock method alpha + gamma and alpha (Hairer and Wanner, volume II, IV.7, table 7.1), for a Runge-Kutta
 * method its matrix in both places.
 */
function stageWeights(tree: Tree, single: Matrix, several: Matrix): number[] {
  return single.map((_, i) => {
    const matrix = tree.length === 1 ? single : several;
    return tree.reduce((product, child) => {
      const below = stageWeights(child, single, several);
      return product * matrix[i].reduce((sum, entry, j) => sum + entry * below[j], 0);
    }, 1);
  });
}

function expectOrder(
  weights: number[],
  single: Matrix,
  several: Matrix,
  order: number,
  tolerance: number,
): void {
  for (let p = 1; p <= order; p++) {
    for (const tree of treesByOrder[p]) {
      const sum = stageWeights(tree, single, several).reduce(
        (total, value, i) => total + weights[i] * value,
        0,
      );
      expect(Math.abs(sum - 1 / density(tree)), `order ${p}, tree ${JSON.stringify(tree)}`).toBeLessThan(
        tolerance,
      );
    }
  }
}

function worstCondition(weights: number[], single: Matrix, several: Matrix, order: number): number {
  return Math.max(
    ...treesByOrder[order].map((tree) => {
      const sum = stageWeights(tree, single, several).reduce(
        (total, value, i) => total + weights[i] * value,
        0,
      );
      return Math.abs(sum - 1 / density(tree));
    }),
  );
}

describe('Rodas5P', () => {
  const { gamma, a, c, times, timeWeights, dense } = RODAS5P_TABLEAU;
  const s = 8;
  const rowsA: Matrix = [...a.map((row) => [...row]), [...a[5], 1], [...a[5], 1, 1]];
  const resultWeights = [...rowsA[7], 1];
  const at = (row: readonly number[], j: number) => (j < row.length ? row[j] : 0);
  // u = Gamma k, so that Gamma^-1 = I / gamma - C, alpha = A Gamma, b = m Gamma.
  const inverse: Matrix = Array.from({ length: s }, (_, i) =>
    Array.from({ length: s }, (_, j) => (i === j ? 1 / gamma : -at(c[i], j))),
  );
  const Gamma: Matrix = Array.from({ length: s }, () => new Array<number>(s).fill(0));
  for (let j = 0; j < s; j++) {
    const unit = new Array<number>(s).fill(0);
    unit[j] = 1;
    solveLinear(inverse.flat(), unit).forEach((value, i) => {
      Gamma[i][j] = value;
    });
  }
  const times_ = (row: readonly number[]) =>
    Gamma.map((_, j) => row.reduce((sum, value, k) => sum + value * Gamma[k][j], 0));
  const alpha: Matrix = rowsA.map(times_);
  const beta: Matrix = alpha.map((row, i) => row.map((value, j) => value + Gamma[i][j]));
  const b = times_(resultWeights);

  it('has row sums that match its stage times and time weights', () => {
    alpha.forEach((row, i) => {
      expect(row.reduce((x, y) => x + y, 0)).toBeCloseTo(times[i], 13);
      expect(Gamma[i].reduce((x, y) => x + y, 0)).toBeCloseTo(timeWeights[i], 12);
    });
  });

  it('meets all 17 order conditions up to order 5', () => {
    expectOrder(b, beta, alpha, 5, 2e-13);
  });

  it('has an embedded method of order 4, not 5', () => {
    // The error estimate is the last stage, so the embedded result leaves it out.
    const embedded = times_([...rowsA[7], 0]);
    expectOrder(embedded, beta, alpha, 4, 2e-13);
    expect(worstCondition(embedded, beta, alpha, 5)).toBeGreaterThan(1e-4);
  });

  it('is stiffly accurate, so the stability function vanishes at infinity', () => {
    // b equals the last row of beta: Hairer and Wanner, volume II, IV.7. Then R(infinity) = 0.
    b.forEach((value, j) => {
      expect(value).toBeCloseTo(beta[7][j], 12);
    });
    // R(z) = 1 + z b (I - z beta)^-1 1, evaluated far out on the negative axis and along the imaginary axis below.
    const stability = (z: number) => {
      const system = beta.map((row, i) => row.map((value, j) => (i === j ? 1 : 0) - z * value));
      return (
        1 +
        z * solveLinear(system.flat(), new Array<number>(s).fill(1)).reduce((sum, k, i) => sum + b[i] * k, 0)
      );
    };
    expect(Math.abs(stability(-1e6))).toBeLessThan(1e-4);
    for (let z = -0.1; z > -1e4; z *= 1.3) expect(Math.abs(stability(z)), `z = ${z}`).toBeLessThan(1);
    expect(stability(-0.1)).toBeCloseTo(Math.exp(-0.1), 7);
  });

  it('stays below one along the imaginary axis: A-stable', () => {
    for (let w = 0.05; w < 1e4; w *= 1.2) {
      // (I - i w beta) k = 1 as a real system of twice the size.
      const system = Array.from({ length: 2 * s }, (_, i) =>
        Array.from({ length: 2 * s }, (_, j) => {
          const entry = w * beta[i % s][j % s];
          if (i < s) return j < s ? (i === j ? 1 : 0) : entry;
          return j < s ? -entry : i === j ? 1 : 0;
        }),
      );
      const rhs = [...new Array<number>(s).fill(1), ...new Array<number>(s).fill(0)];
      const k = solveLinear(system.flat(), rhs);
      let re = 1;
      let im = 0;
      for (let i = 0; i < s; i++) {
        re -= w * b[i] * k[s + i];
        im += w * b[i] * k[i];
      }
      expect(Math.hypot(re, im), `w = ${w}`).toBeLessThan(1 + 1e-12);
    }
  });

  it('has dense output of order 4 at every share of the step', () => {
    for (const theta of [0.1, 0.3, 0.5, 0.77, 0.95]) {
      // y0 + theta ((y1 - y0) + (1 - theta) (d1 + theta (d2 + theta d3))), in the stages u.
      const weights = resultWeights.map(
        (m, i) => theta * (m + (1 - theta) * (dense[0][i] + theta * (dense[1][i] + theta * dense[2][i]))),
      );
      const inner = times_(weights);
      for (let p = 1; p <= 4; p++) {
        for (const tree of treesByOrder[p]) {
          const sum = stageWeights(tree, beta, alpha).reduce(
            (total, value, i) => total + inner[i] * value,
            0,
          );
          expect(
            Math.abs(sum - theta ** p / density(tree)),
            `theta ${theta}, ${JSON.stringify(tree)}`,
          ).toBeLessThan(1e-12);
        }
      }
    }
  });
});

describe('Dormand-Prince', () => {
  const { a, times, error, dense } = DORMAND_PRINCE_TABLEAU;
  const matrix: Matrix = a.map((row) => Array.from({ length: 7 }, (_, j) => (j < row.length ? row[j] : 0)));
  const b = matrix[6];

  it('has row sums equal to its stage times, and an error estimate that sums to nothing', () => {
    matrix.forEach((row, i) => {
      expect(row.reduce((x, y) => x + y, 0)).toBeCloseTo(times[i], 14);
    });
    expect(error.reduce((x: number, y) => x + y, 0)).toBeCloseTo(0, 15);
    expect(dense.reduce((x: number, y) => x + y, 0)).toBeCloseTo(0, 13);
  });

  it('meets all 17 order conditions up to order 5, its embedded method those up to order 4', () => {
    expectOrder(b, matrix, matrix, 5, 1e-14);
    const embedded = b.map((value, i) => value - error[i]);
    expectOrder(embedded, matrix, matrix, 4, 1e-14);
    expect(worstCondition(embedded, matrix, matrix, 5)).toBeGreaterThan(1e-4);
  });

  it('has dense output of order 4', () => {
    for (const theta of [0.2, 0.5, 0.9]) {
      const weights = b.map((m, i) => {
        const first = (i === 0 ? 1 : 0) - m;
        const second = 2 * m - (i === 0 ? 1 : 0) - (i === 6 ? 1 : 0) + dense[i];
        return theta * (m + (1 - theta) * (first + theta * (second - theta * dense[i])));
      });
      for (let p = 1; p <= 4; p++) {
        for (const tree of treesByOrder[p]) {
          const sum = stageWeights(tree, matrix, matrix).reduce(
            (total, value, i) => total + weights[i] * value,
            0,
          );
          expect(
            Math.abs(sum - theta ** p / density(tree)),
            `theta ${theta}, ${JSON.stringify(tree)}`,
          ).toBeLessThan(1e-13);
        }
      }
    }
  });
});
