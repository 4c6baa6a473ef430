// Reads the program's results for the decks of this folder and writes results.json: node extract.mjs FOLDER, where FOLDER
// holds the .frd and .dat files of `ccx NAME` for every NAME.inp here.
import { readFileSync, writeFileSync } from 'node:fs';

const folder = process.argv[2];
const text = (file) => readFileSync(`${folder}/${file}`, 'utf8');

/** Nodes and nodal fields of a result file; fixed columns of 12 characters. */
function frd(name) {
  const nodes = new Map();
  const fields = {};
  let at;
  let version = '';
  for (const line of text(`${name}.frd`).split('\n')) {
    if (line.startsWith('    1UVERSION')) version = line.slice(13).trim();
    else if (line.startsWith('    2C')) at = nodes;
    else if (line.startsWith(' -4')) at = fields[line.slice(5, 13).trim()] = new Map();
    else if (line.startsWith(' -3')) at = undefined;
    else if (line.startsWith(' -1') && at) {
      const values = [];
      for (let i = 13; i + 12 <= line.length + 0 && line.slice(i, i + 12).trim() !== ''; i += 12)
        values.push(Number(line.slice(i, i + 12)));
      at.set(Number(line.slice(3, 13)), values);
    }
  }
  return { nodes, version, U: fields.DISP, S: fields.STRESS };
}

const near = (a, b) => Math.abs(a - b) < 1e-4;
const round = (v) => Number(v.toPrecision(6));
const rounded = (o) =>
  Object.fromEntries(
    Object.entries(o).map(([k, v]) => [
      k,
      typeof v === 'number' ? round(v) : Array.isArray(v) ? v.map(round) : v,
    ]),
  );

/** The value of a stress component at [r, z]. */
function stressAt({ nodes, S }, r, z, component) {
  for (const [id, [x, y]] of nodes) if (near(x, r) && near(y, z) && S.has(id)) return S.get(id)[component];
  throw new Error(`no node at ${r}, ${z}`);
}

/** Linear part of a stress through the thickness at radius r: 6/t²·∫σ·(z − t/2)·dz by Simpson over quadratic sides. */
function bending({ nodes, S }, r, t, component) {
  const line = [...nodes]
    .filter(([id, [x]]) => near(x, r) && S.has(id))
    .map(([id, [, y]]) => [y, S.get(id)[component]])
    .sort((a, b) => a[0] - b[0]);
  let moment = 0;
  for (let i = 0; i + 2 < line.length; i += 2) {
    const h = line[i + 2][0] - line[i][0];
    const f = (k) => line[k][1] * (line[k][0] - t / 2);
    moment += (h / 6) * (f(i) + 4 * f(i + 1) + f(i + 2));
  }
  return (6 / (t * t)) * moment;
}

/**
 * Bending stress at the edge. The corner of a clamped edge is singular, so the moment is taken at three radii one, two and
 * three thicknesses inside and carried to the edge: in a plate it is A + B·r² + C/r² (without a hole C is zero).
 */
function edgeBending(data, a, b, t) {
  const radii = [...new Set([...data.nodes].filter(([, [, y]]) => near(y, 0)).map(([, [x]]) => x))].sort(
    (p, q) => p - q,
  );
  const columns = [1, 1.5, 2].map((n) =>
    radii
      .filter((_, i) => i % 2 === 0)
      .reduce((best, r) =>
        Math.abs(r - (a - n * Math.min(t, a / 6))) < Math.abs(best - (a - n * Math.min(t, a / 6))) ? r : best,
      ),
  );
  const rows = columns.map((r) => [1, r * r, b > 0 ? 1 / (r * r) : 0, bending(data, r, t, 0)]);
  if (b === 0) {
    const [[, x, , y], , [, u, , v]] = rows;
    return y + ((v - y) / (u - x)) * (a * a - x);
  }
  const det = (m) =>
    m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1]) -
    m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0]) +
    m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
  const base = rows.map((row) => row.slice(0, 3));
  const solve = (c) => det(base.map((row, i) => row.map((v, j) => (j === c ? rows[i][3] : v)))) / det(base);
  return solve(0) + solve(1) * a * a + solve(2) / (a * a);
}

const [RADIAL, , HOOP] = [0, 1, 2];
const out = { program: 'CalculiX ccx', versions: [], units: 'mm, N, MPa', results: {} };
const record = (name, values, data) => {
  if (data && !out.versions.includes(data.version)) out.versions.push(data.version);
  out.results[name] = rounded(values);
};

for (const [name, ri, ro] of [
  ['thick-cylinder', 38.1, 44.45],
  ['thick-cylinder-k2', 20, 40],
]) {
  const d = frd(name);
  const at = (r) => [...d.nodes].find(([, [x, y]]) => near(x, r) && near(y, 2))[0];
  record(
    name,
    {
      boreHoop: d.S.get(at(ri))[HOOP],
      outerHoop: d.S.get(at(ro))[HOOP],
      boreRadial: d.S.get(at(ri))[RADIAL],
      boreLongitudinal: d.S.get(at(ri))[1],
      boreGrowth: d.U.get(at(ri))[0],
      outerGrowth: d.U.get(at(ro))[0],
    },
    d,
  );
}

for (const [name, a, b, t] of [
  ['plate-clamped', 38.1, 0, 9.525],
  ['plate-supported', 38.1, 0, 9.525],
  ['plate-clamped-hole', 38.1, 6.35, 9.525],
  ['plate-supported-hole', 38.1, 6.35, 9.525],
  ['plate-block', 38.1, 0, 19.05],
  ['plate-cube', 38.1, 0, 38.1],
  ['plate-thin-clamped', 38.1, 0, 2.54],
  ['plate-thin-clamped-hole', 38.1, 6.35, 2.54],
  ['plate-thin-supported-hole', 38.1, 6.35, 2.54],
]) {
  const d = frd(name);
  // The top face is in tension at the centre: the pressure is below.
  const values = {
    innerSurfaceHoop: stressAt(d, b, t, HOOP),
    innerBendingHoop: bending(d, b, t, HOOP),
    edgeBendingRadial: -edgeBending(d, a, b, t),
  };
  const centre = [...d.nodes].find(([id, [x, y]]) => near(x, b) && near(y, t / 2) && d.U.has(id));
  record(name, { ...values, deflection: centre ? d.U.get(centre[0])[1] : Number.NaN }, d);
}

/** Bending stress at the clamped edge of a ring with a line load: the moment further in is A + B·ln r + C/r² in a plate. */
function ringEdgeBending(data, a, t) {
  // Only within the ring: the metal outside belongs to a closure.
  const radii = [...new Set([...data.nodes].filter(([, [, y]]) => near(y, 0)).map(([, [x]]) => x))]
    .sort((p, q) => p - q)
    .filter((_, i) => i % 2 === 0);
  const rows = [0.4, 0.7, 1].map((n) => {
    const wanted = a - n * t;
    const r = radii.reduce((best, x) => (Math.abs(x - wanted) < Math.abs(best - wanted) ? x : best));
    return [1, Math.log(r), 1 / (r * r), bending(data, r, t, 0)];
  });
  const det = ([p, q, s]) =>
    p[0] * (q[1] * s[2] - q[2] * s[1]) -
    p[1] * (q[0] * s[2] - q[2] * s[0]) +
    p[2] * (q[0] * s[1] - q[1] * s[0]);
  const base = rows.map((row) => row.slice(0, 3));
  const solve = (c) => det(base.map((row, i) => row.map((v, j) => (j === c ? rows[i][3] : v)))) / det(base);
  return solve(0) + solve(1) * Math.log(a) + solve(2) / (a * a);
}

for (const [name, a, b, t, edge] of [
  ['flange-slender', 30, 18, 3, 'supported'],
  ['flange-thick', 30, 18, 12, 'supported'],
  ['lip-clamped', 13.1, 8, 3, 'clamped'],
  ['lip-in-closure', 13.1, 8, 3, 'clamped'],
]) {
  const d = frd(name);
  record(
    name,
    {
      innerSurfaceHoop: stressAt(d, b, t, HOOP),
      innerBendingHoop: bending(d, b, t, HOOP),
      ...(edge === 'clamped' && { edgeBendingRadial: Math.abs(ringEdgeBending(d, a, t)) }),
    },
    d,
  );
}

/** The values of A + B·r² + C/r² through three columns, at another radius. */
function carried(columns, to) {
  const basis = (r) => [1, r * r, 1 / (r * r)];
  const det = (m) =>
    m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1]) -
    m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0]) +
    m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
  const base = columns.map(([r]) => basis(r));
  const whole = det(base);
  return basis(to).reduce(
    (sum, factor, c) =>
      sum + (factor * det(base.map((row, i) => row.map((v, j) => (j === c ? columns[i][1] : v))))) / whole,
    0,
  );
}

/** Linear part of a stress through the thickness t about z = 0 at radius r. */
function evenBending(d, r, t, component) {
  const moved = { ...d, nodes: new Map([...d.nodes].map(([id, [x, y]]) => [id, [x, y + t / 2]])) };
  return bending(moved, r, t, component);
}

for (const [name, b, a, t, h] of [
  ['plate-stepped', 25.4, 38.1, 5.08, 15.24],
  ['plate-stepped-thin-hub', 25.4, 38.1, 5.08, 7.62],
]) {
  const d = frd(name);
  // The corner at the hub is singular: the moment is taken in the ring and carried to the hub.
  const columns = [8, 12, 16].map((i) => {
    const r = b + ((a - b) * i) / 40;
    return [r, evenBending(d, r, t, 0)];
  });
  record(name, { ringBendingAtHub: carried(columns, b), hubSurfaceCentre: stressAt(d, 0, h / 2, HOOP) }, d);
}

for (const name of ['head-hemisphere', 'head-ellipsoid', 'head-torisphere']) {
  const d = frd(name);
  const mises = ([sr, sz, sh, srz]) =>
    Math.sqrt(((sr - sz) ** 2 + (sz - sh) ** 2 + (sh - sr) ** 2) / 2 + 3 * srz ** 2);
  const tension = ([sr, sz, sh, srz]) => Math.max(sh, (sr + sz) / 2 + Math.hypot((sr - sz) / 2, srz));
  const ids = [...d.nodes].filter(([id, [, y]]) => d.S.has(id) && y > 40 - 1e-6).map(([id]) => id);
  const most = (of) => Math.max(...ids.map((id) => of(d.S.get(id))));
  record(
    name,
    {
      maxMises: most(mises),
      maxTension: most(tension),
      minHoop: Math.min(...ids.map((id) => d.S.get(id)[HOOP])),
    },
    d,
  );
}

// Growth of the bore at the nodes nearest to these distances from the inner face of the end.
for (const [name, ro] of [
  ['tube-at-built-in-40', 39.06],
  ['tube-at-head-40', 39.06],
  ['tube-at-built-in-12', 41.275],
  ['tube-at-head-12', 41.275],
  ['tube-at-thin-head-12', 41.275],
  ['tube-at-pinned-12', 41.275],
  ['tube-at-built-in-5', 46.5],
  ['tube-at-head-5', 46.5],
]) {
  const d = frd(name);
  const bore = [...d.nodes]
    .filter(([id, [x, y]]) => near(x, 38.1) && y > -1e-6 && d.U.has(id))
    .map(([id, [, y]]) => [y, d.U.get(id)[0]])
    .sort((a, b) => a[0] - b[0]);
  const chosen = [0.3, 0.6, 1, 2, 3, 5, 8, 12, 16, 20, 25, 30, 40, 50].map((z) =>
    bore.reduce((best, one) => (Math.abs(one[0] - z) < Math.abs(best[0] - z) ? one : best)),
  );
  record(name, { outsideRadius: ro, distance: chosen.map(([z]) => z), growth: chosen.map(([, u]) => u) }, d);
}

/** Axial reaction of the pin at each load step of a run: [fraction of the travel, force of the whole bolt]. */
function pinForces(name) {
  const lines = text(`${name}.dat`).split('\n');
  return lines.flatMap((line, i) => {
    const time = line.match(/total force.*time\s+(\S+)/)?.[1];
    if (time === undefined) return [];
    const [, , fz] = lines[i + 2].trim().split(/\s+/).map(Number);
    return [[Number(time), -2 * fz]];
  });
}

{
  const d = frd('tube-end-elastic');
  const [, force] = pinForces('tube-end-elastic')[0];
  const [dia, e, wall] = [6.35, 12.7, 6.35];
  const onHole = [...d.nodes].filter(([, [, y, z]]) => near(Math.hypot(y, z - e), dia / 2));
  const principal = ([sx, sy, sz, sxy, syz, szx]) => {
    // Greatest root of the characteristic cubic.
    const m = (sx + sy + sz) / 3;
    const [a, b, c] = [sx - m, sy - m, sz - m];
    const j2 = (a * a + b * b + c * c) / 2 + sxy ** 2 + syz ** 2 + szx ** 2;
    const j3 = a * b * c + 2 * sxy * syz * szx - a * syz ** 2 - b * szx ** 2 - c * sxy ** 2;
    const angle = Math.acos(Math.max(-1, Math.min(1, (j3 / 2) * (3 / j2) ** 1.5))) / 3;
    return m + 2 * Math.sqrt(j2 / 3) * Math.cos(angle);
  };
  const peak = Math.max(...onHole.map(([id]) => principal(d.S.get(id))));
  record(
    'tube-end-elastic',
    {
      force,
      bearing: force / (dia * wall),
      peakPrincipal: peak,
      peakOverBearing: peak / (force / (dia * wall)),
    },
    d,
  );
}

for (const [name, travel] of [
  ['tube-end-plastic', 1],
  ['tube-end-hardening', 1],
  ['tube-end-plastic-1d', 1],
]) {
  const curve = pinForces(name);
  const at = (u) => {
    const i = curve.findIndex(([time]) => time * travel >= u);
    if (i < 0) return Number.NaN;
    if (i === 0) return curve[0][1];
    const [[t0, f0], [t1, f1]] = [curve[i - 1], curve[i]];
    return f0 + ((u / travel - t0) / (t1 - t0)) * (f1 - f0);
  };
  // Bearing yield is defined by a permanent set of 2 % of the hole (MIL-HDBK-5): the elastic part is taken off.
  const stiffness = name.endsWith('1d')
    ? curve[0][1] / (curve[0][0] * travel)
    : pinForces('tube-end-elastic')[0][1] / 0.01;
  let offset = Number.NaN;
  for (let i = 1; i < curve.length && Number.isNaN(offset); i++) {
    const set = ([time, force]) => time * travel - force / stiffness - 0.02 * 6.35;
    const [s0, s1] = [set(curve[i - 1]), set(curve[i])];
    if (s0 <= 0 && s1 > 0) offset = curve[i - 1][1] + (-s0 / (s1 - s0)) * (curve[i][1] - curve[i - 1][1]);
  }
  record(name, {
    travel: curve.at(-1)[0] * travel,
    force: curve.at(-1)[1],
    forceAt8Percent: at(0.08 * 6.35),
    forceAt2PercentSet: offset,
  });
}

writeFileSync(new URL('results.json', import.meta.url), `${JSON.stringify(out, null, 2)}\n`);
console.log(JSON.stringify(out, null, 1));
