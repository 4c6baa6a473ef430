// Closed outlines of the region where a field on a rectangular grid is at most a level: marching squares.

/** A grid of `columns` × `rows` values, row by row; the region is closed along the grid's border. */
export interface FieldGrid {
  readonly columns: number;
  readonly rows: number;
  readonly values: Float64Array;
}

// Segments of a cell by which corners are inside (1 lower left, 2 lower right, 4 upper right, 8 upper left), from side to side:
// 0 south, 1 east, 2 north, 3 west. Each keeps the region on its left.
const SEGMENTS: readonly (readonly (readonly [number, number])[])[] = [
  [],
  [[0, 3]],
  [[1, 0]],
  [[1, 3]],
  [[2, 1]],
  [
    [0, 3],
    [2, 1],
  ],
  [[2, 0]],
  [[2, 3]],
  [[3, 2]],
  [[0, 2]],
  [
    [1, 0],
    [3, 2],
  ],
  [[1, 2]],
  [[3, 1]],
  [[0, 1]],
  [[3, 0]],
  [],
];

/** Loops of [column, row] points around the region value <= level. */
export function regionLoops(grid: FieldGrid, level: number): (readonly [number, number])[][] {
  const { columns, rows, values } = grid;
  // One ring of outside nodes around the grid closes every loop.
  const at = (i: number, j: number): number =>
    i < 0 || j < 0 || i >= columns || j >= rows ? Number.POSITIVE_INFINITY : values[j * columns + i];
  const inside = (i: number, j: number): boolean => at(i, j) <= level;
  const width = columns + 2;
  // An edge is identified by its lower left node and whether it runs upwards; segments connect edges.
  const next = new Map<number, number>();
  const edge = (i: number, j: number, up: 0 | 1): number => 2 * ((j + 1) * width + i + 1) + up;
  for (let j = -1; j < rows; j++)
    for (let i = -1; i < columns; i++) {
      const code =
        (inside(i, j) ? 1 : 0) |
        (inside(i + 1, j) ? 2 : 0) |
        (inside(i + 1, j + 1) ? 4 : 0) |
        (inside(i, j + 1) ? 8 : 0);
      if (code === 0 || code === 15) continue;
      const south = edge(i, j, 0);
      const east = edge(i + 1, j, 1);
      const north = edge(i, j + 1, 0);
      const west = edge(i, j, 1);
      const sides = [south, east, north, west];
      for (const [from, to] of SEGMENTS[code]) next.set(sides[from], sides[to]);
    }
  const point = (name: number): readonly [number, number] => {
    const up = name % 2;
    const node = (name - up) / 2;
    const i = (node % width) - 1;
    const j = Math.floor(node / width) - 1;
    const a = at(i, j);
    const b = up === 1 ? at(i, j + 1) : at(i + 1, j);
    const t = !Number.isFinite(a) ? 1 : !Number.isFinite(b) ? 0 : (level - a) / (b - a);
    return up === 1 ? [i, j + t] : [i + t, j];
  };
  const loops: (readonly [number, number])[][] = [];
  while (next.size > 0) {
    const [first] = next.keys();
    const loop: (readonly [number, number])[] = [];
    let name: number | undefined = first;
    while (name !== undefined) {
      loop.push(point(name));
      const following: number | undefined = next.get(name);
      next.delete(name);
      name = following;
    }
    loops.push(loop);
  }
  return loops;
}
