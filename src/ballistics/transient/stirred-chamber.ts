// Gas temperature in a well-stirred chamber with heat loss, in plain numbers.

/**
 * √(T/T_0) of the gas, from 1 − x² = N·x·(x² − ω): the positive root.
 *
 * @param transfer N, heat-transfer coefficient times wall area/(flow without loss times c_p)
 * @param wallRatio ω, wall temperature/temperature without loss
 */
export function stirredRootSi(transfer: number, wallRatio: number): number {
  // Convex for x > 0 and increasing at its positive root: Newton's steps converge from 1, from above.
  let x = 1;
  for (let i = 0; i < 60; i++) {
    const value = transfer * x * (x * x - wallRatio) + x * x - 1;
    const step = value / (transfer * (3 * x * x - wallRatio) + 2 * x);
    const next = x - step;
    // A step from left of the minimum could leave the domain.
    x = next > 0 ? next : x / 2;
    if (Math.abs(step) <= 1e-16 * x) break;
  }
  return x;
}
