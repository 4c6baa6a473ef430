// A tree over surfaces that each lie in a ball, so that the nearest of many is found without trying all.

/** The surfaces that may give less than a limit at a point, nearest regions first. */
export interface FlawTree {
  /**
   * Calls `each` with the index of every surface whose ignition depth plus distance may be less than the limit.
   * `each` returns the limit from then on.
   */
  readonly visit: (x: number, y: number, z: number, limit: number, each: (index: number) => number) => void;
}

const LEAF = 4;
const NODE = 7;

/** `balls` holds x, y, z and radius of each surface, `litAt` its ignition depth, `indices` its number in the list. */
export function flawTree(balls: Float64Array, litAt: Float64Array, indices: Int32Array): FlawTree {
  const order = Array.from(indices, (_, i) => i);
  // Per node: low and high corner of the centres, and the minimum of ignition depth minus radius.
  const box: number[] = [];
  const first: number[] = [];
  const count: number[] = [];
  const right: number[] = [];
  const build = (from: number, to: number): number => {
    const node = first.length;
    first.push(from);
    count.push(to - from);
    right.push(-1);
    const low = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
    const high = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
    let head = Number.POSITIVE_INFINITY;
    for (let i = from; i < to; i++) {
      const at = order[i];
      for (let k = 0; k < 3; k++) {
        low[k] = Math.min(low[k], balls[4 * at + k]);
        high[k] = Math.max(high[k], balls[4 * at + k]);
      }
      head = Math.min(head, litAt[at] - balls[4 * at + 3]);
    }
    box.push(...low, ...high, head);
    if (to - from <= LEAF) return node;
    let axis = 0;
    for (let k = 1; k < 3; k++) if (high[k] - low[k] > high[axis] - low[axis]) axis = k;
    const part = order.slice(from, to).sort((a, b) => balls[4 * a + axis] - balls[4 * b + axis]);
    for (let i = from; i < to; i++) order[i] = part[i - from];
    const middle = (from + to) >> 1;
    build(from, middle);
    right[node] = build(middle, to);
    return node;
  };
  if (indices.length > 0) build(0, indices.length);
  const boxes = Float64Array.from(box);
  const firsts = Int32Array.from(first);
  const counts = Int32Array.from(count);
  const rights = Int32Array.from(right);
  const sorted = Int32Array.from(order, (i) => indices[i]);
  const radius = Float64Array.from(order, (i) => balls[4 * i + 3]);
  const lit = Float64Array.from(order, (i) => litAt[i]);
  const centre = Float64Array.from(order.flatMap((i) => [balls[4 * i], balls[4 * i + 1], balls[4 * i + 2]]));
  /** Least value that any surface of the node can have at the point. */
  const least = (node: number, x: number, y: number, z: number): number => {
    const at = NODE * node;
    const dx = Math.max(boxes[at] - x, 0, x - boxes[at + 3]);
    const dy = Math.max(boxes[at + 1] - y, 0, y - boxes[at + 4]);
    const dz = Math.max(boxes[at + 2] - z, 0, z - boxes[at + 5]);
    return Math.sqrt(dx * dx + dy * dy + dz * dz) + boxes[at + 6];
  };
  const stack = new Int32Array(128);
  const bound = new Float64Array(128);
  return {
    visit: (x, y, z, limit, each) => {
      if (sorted.length === 0) return;
      let left = limit;
      let top = 1;
      stack[0] = 0;
      bound[0] = least(0, x, y, z);
      while (top > 0) {
        top--;
        if (bound[top] > left) continue;
        const node = stack[top];
        const other = rights[node];
        if (other < 0) {
          const end = firsts[node] + counts[node];
          for (let i = firsts[node]; i < end; i++) {
            const dx = x - centre[3 * i];
            const dy = y - centre[3 * i + 1];
            const dz = z - centre[3 * i + 2];
            const room = left - lit[i] + radius[i];
            if (room > 0 && dx * dx + dy * dy + dz * dz <= room * room) left = each(sorted[i]);
          }
          continue;
        }
        const a = least(node + 1, x, y, z);
        const b = least(other, x, y, z);
        const near = a < b ? node + 1 : other;
        stack[top] = near === other ? node + 1 : other;
        bound[top] = Math.max(a, b);
        top++;
        stack[top] = near;
        bound[top] = Math.min(a, b);
        top++;
      }
    },
  };
}
