// A circular plate with a built-in rim that cannot move, over the fraction ρ of its radius: slope θ = dω/dρ of the deflection in
// thicknesses, radial tension n = N·a²/D, load P = q·a⁴/(D·t).
//   d/dρ[(1/ρ)·d(ρ·θ)/dρ] = P·ρ/2 + n·θ,   ρ·(3·n' + ρ·n'') = −6·(1 − ν²)·θ²;   θ = 0 and n' + (1 − ν)·n = 0 at ρ = 1.

const terms = 40;

/** The centre deflection in thicknesses and what is left of the conditions at the rim, from slope and tension at the centre. */
function shoot(
  load: number,
  nu: number,
  slope: number,
  tension: number,
): { readonly deflection: number; readonly misses: readonly [number, number] } {
  const a = [slope];
  const b = [tension];
  const product = (x: readonly number[], y: readonly number[], m: number): number => {
    let sum = 0;
    for (let i = 0; i <= m; i++) sum += x[i] * y[m - i];
    return sum;
  };
  for (let m = 0; m < terms; m++) {
    const scale = (2 * m + 2) * (2 * m + 4);
    a.push(((m === 0 ? load / 2 : 0) + product(b, a, m)) / scale);
    b.push((-6 * (1 - nu ** 2) * product(a, a, m)) / scale);
  }
  const sum = (of: (k: number) => number): number => a.reduce((total, _, k) => total + of(k), 0);
  return {
    deflection: -sum((k) => a[k] / (2 * k + 2)),
    misses: [sum((k) => a[k]), sum((k) => (2 * k + 1 - nu) * b[k])],
  };
}

/** The centre deflection of the plate in thicknesses under P = q·a⁴/(D·t). The load is raised in steps that Newton's method follows. */
export function stretchedPlateSi(load: number, nu: number): number {
  const steps = Math.max(1, Math.ceil(load / 16));
  let [slope, tension] = [0, 0];
  for (let i = 1; i <= steps; i++) {
    const now = (load * i) / steps;
    for (let n = 0; n < 40; n++) {
      const { misses } = shoot(now, nu, slope, tension);
      const [h, k] = [1e-6 * (1 + Math.abs(slope)), 1e-6 * (1 + Math.abs(tension))];
      const up = shoot(now, nu, slope + h, tension).misses;
      const across = shoot(now, nu, slope, tension + k).misses;
      const [p, q, r, s] = [
        (up[0] - misses[0]) / h,
        (across[0] - misses[0]) / k,
        (up[1] - misses[1]) / h,
        (across[1] - misses[1]) / k,
      ];
      const det = p * s - q * r;
      const [ds, dt] = [(misses[0] * s - misses[1] * q) / det, (misses[1] * p - misses[0] * r) / det];
      [slope, tension] = [slope - ds, tension - dt];
      if (Math.abs(ds) < 1e-10 * (1 + Math.abs(slope)) && Math.abs(dt) < 1e-10 * (1 + Math.abs(tension)))
        break;
    }
  }
  return shoot(load, nu, slope, tension).deflection;
}
