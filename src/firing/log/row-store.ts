/** Rows of numbers, stored in blocks because their number is not known beforehand, so that growth needs no copying. */
export interface RowStore {
  /** The block of each column into which the next row is written; to be requested again after each {@link next}. */
  readonly blocks: readonly Float64Array[];
  /** Reserves space for one more row and returns its position in the blocks. */
  next(): number;
  /** The columns, one array each. The blocks of one column are released before the next is assembled. */
  take(): Float64Array[];
}

const rowsInBlock = 1 << 16;

export function rowStore(width: number): RowStore {
  const full: Float64Array[][] = Array.from({ length: width }, () => []);
  const fresh = (): Float64Array[] => Array.from({ length: width }, () => new Float64Array(rowsInBlock));
  const store = {
    blocks: fresh(),
    used: 0,
    next(): number {
      if (store.used === rowsInBlock) {
        full.forEach((blocks, k) => {
          blocks.push(store.blocks[k]);
        });
        store.blocks = fresh();
        store.used = 0;
      }
      return store.used++;
    },
    take(): Float64Array[] {
      return full.map((blocks, k) => {
        const before = blocks.length * rowsInBlock;
        const column = new Float64Array(before + store.used);
        blocks.forEach((block, b) => {
          column.set(block, b * rowsInBlock);
        });
        column.set(store.blocks[k].subarray(0, store.used), before);
        blocks.length = 0;
        return column;
      });
    },
  };
  return store;
}
