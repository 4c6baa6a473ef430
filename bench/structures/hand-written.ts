// The same joint as one would write it by hand for one motor: no units, no checks, no sources. The peer of the benchmark.

export interface HandJoint {
  readonly p: number;
  readonly seal: number;
  readonly od: number;
  readonly t: number;
  readonly n: number;
  readonly e: number;
  readonly d: number;
  readonly As: number;
  readonly P: number;
  readonly Ds: number;
  readonly En: number;
  readonly L: number;
}

export interface HandStrengths {
  readonly su: number;
  readonly sy: number;
  readonly by: number;
  readonly bru: number;
  readonly bry: number;
  readonly cbru: number;
  readonly cbry: number;
  readonly fsu: number;
  readonly ftu: number;
  readonly fty: number;
  readonly cfsu: number;
}

/** The least margin over sixteen modes. */
export function handWritten(j: HandJoint, s: HandStrengths): number {
  const force = (j.p * Math.PI * j.seal * j.seal) / 4;
  const bolt = force / j.n;
  const shear = bolt / j.As;
  const bearing = bolt / (j.d * j.t);
  const closure = bolt / (j.d * j.L);
  const tear = bolt / (2 * j.t * (j.e - j.d / 2));
  const lug = bolt / (2 * j.t * (j.e - (j.d / 2) * Math.cos((40 * Math.PI) / 180)));
  const net = force / (Math.PI * j.t * (j.od - j.t) - j.n * j.d * j.t);
  const edge = Math.sqrt(((j.od - j.t) / 2) * j.t) / (3 * (1 - 0.33 * 0.33)) ** 0.25;
  const x = (2 * j.e) / edge;
  const moment = (1 + Math.exp(-x) * (1 + Math.sin(x))) / 2;
  const fold = net * (Math.sqrt(1 + moment * moment) + moment);
  const strip = bolt / (Math.PI * j.L * j.Ds * (0.5 + (j.Ds - j.En) / (Math.sqrt(3) * j.P)));
  const closureTear = bolt / (2 * j.L * (2 * j.d - j.d / 2));
  const ro = j.od / 2;
  const ri = ro - j.t;
  const hoop = (j.p * (ro * ro + ri * ri)) / (ro * ro - ri * ri);
  return Math.min(
    s.su / (2 * shear) - 1,
    s.sy / (1.5 * shear) - 1,
    s.bru / (2 * bearing) - 1,
    s.bry / (1.5 * bearing) - 1,
    s.cbru / (2 * closure) - 1,
    s.cbry / (1.5 * closure) - 1,
    s.fsu / (2 * tear) - 1,
    s.fsu / (2 * lug) - 1,
    s.ftu / (2 * net) - 1,
    s.fty / (1.5 * net) - 1,
    s.fty / (1.5 * fold) - 1,
    s.cfsu / (2 * strip) - 1,
    s.cfsu / (2 * closureTear) - 1,
    s.by / (1.5 * bearing) - 1,
    s.ftu / (2 * hoop) - 1,
    s.fty / (1.5 * hoop) - 1,
  );
}
