/** Rows of numbers collected without knowing how many will come: in blocks, so that growing never copies. */
export interface RowStore {
  /** The block that rows go into now; ask anew after each {@link next}. */
  readonly block: Float64Array;
  /** Makes room for one more row and tells where in the block it starts. */
  next(): number;
  /** The columns, one array each. The blocks are given up one by one as they are copied. */
  take(): Float64Array[];
}

const rowsInBlock = 1 << 14;

export function rowStore(width: number): RowStore {
  let full: (Float64Array | undefined)[] = [];
  const store = {
    block: new Float64Array(rowsInBlock * width),
    used: 0,
    next(): number {
      if (store.used === rowsInBlock) {
        full.push(store.block);
        store.block = new Float64Array(rowsInBlock * width);
        store.used = 0;
      }
      return store.used++ * width;
    },
    take(): Float64Array[] {
      const rows = full.length * rowsInBlock + store.used;
      const columns = Array.from({ length: width }, () => new Float64Array(rows));
      const last = full.length;
      full.push(store.block);
      for (let b = 0; b <= last; b++) {
        const block = full[b];
        full[b] = undefined;
        if (block === undefined) continue;
        const count = b < last ? rowsInBlock : store.used;
        for (let k = 0; k < width; k++) {
          const column = columns[k];
          for (let i = 0; i < count; i++) column[b * rowsInBlock + i] = block[i * width + k];
        }
      }
      full = [];
      store.used = 0;
      return columns;
    },
  };
  return store;
}
