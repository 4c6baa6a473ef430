// Writes the CalculiX input decks of this folder: node make-decks.mjs. Units: mm, N, MPa.
import { writeFileSync } from 'node:fs';
import { mesh, meshText, setText } from './mesh.mjs';

const metal = ['*MATERIAL,NAME=METAL', '*ELASTIC', '68900,0.33'];
const section = '*SOLID SECTION,ELSET=PART,MATERIAL=METAL';
const deck = (name, title, lines) =>
  writeFileSync(new URL(`${name}.inp`, import.meta.url), `${['*HEADING', title, ...lines].join('\n')}\n`);
const results = ['*NODE FILE,OUTPUT=2D', 'U', '*EL FILE,OUTPUT=2D', 'S', '*END STEP'];

/** Pressure on a side of the axisymmetric elements that hold it: side 1 is i-j, 2 j-k, 3 k-l, 4 l-i. */
const sides = (elements, side, value) => elements.map((e) => `${e},P${side},${value}`);

function cylinder(name, ri, ro, p) {
  const m = mesh();
  const [ni, nj, height] = [16, 4, 4];
  m.block2(ni, nj, (i, j) => [ri + ((ro - ri) * i) / (2 * ni), (height * j) / (2 * nj)]);
  const at = (i, j) => j * ni + i + 1;
  const rows = [...Array(nj).keys()];
  const columns = [...Array(ni).keys()];
  const endStress = (p * ri * ri) / (ro * ro - ri * ri);
  deck(name, `Thick cylinder, closed ends, r_i ${ri}, r_o ${ro}, p ${p}`, [
    meshText(m, 'CAX8'),
    ...metal,
    section,
    setText(
      'FOOT',
      m.where((_, z) => z < 1e-6),
    ),
    // The top stays plane, as it does far from the ends.
    setText(
      'TOP',
      m.where((_, z) => z > height - 1e-6),
    ),
    '*STEP',
    '*STATIC',
    '*BOUNDARY',
    'FOOT,2,2,0',
    '*DLOAD',
    ...sides(
      rows.map((j) => at(0, j)),
      4,
      p,
    ),
    ...sides(
      columns.map((i) => at(i, nj - 1)),
      3,
      -endStress,
    ),
    ...results,
  ]);
}

function plate(name, { a, b = 0, t, p, edge }) {
  const m = mesh();
  const [ni, nj] = [32, 8];
  // Finer towards the rim of the hole.
  const radius = (i) => b + (a - b) * (b > 0 ? (i / (2 * ni)) ** 1.5 : i / (2 * ni));
  // Midside nodes stand half way between their corners.
  const mid = (i) => (i % 2 === 0 ? radius(i) : (radius(i - 1) + radius(i + 1)) / 2);
  m.block2(ni, nj, (i, j) => [mid(i), (t * j) / (2 * nj)]);
  const at = (i, j) => j * ni + i + 1;
  const inner = [...Array(2 * nj + 1).keys()].map((j) => m.node(b, (t * j) / (2 * nj)));
  // What the plug takes goes into the rim as shear: the force of the pressure on the hole, consistent with a quadratic side.
  const plug = p * Math.PI * b * b;
  const weight = (j) => (j % 2 === 1 ? 4 / 6 : j === 0 || j === 2 * nj ? 1 / 6 : 2 / 6) / nj;
  deck(name, `Circular plate, ${edge}, a ${a}, b ${b}, t ${t}, p ${p}`, [
    meshText(m, 'CAX8'),
    ...metal,
    section,
    setText(
      'EDGE',
      m.where((r, z) => r > a - 1e-6 && (edge === 'clamped' || Math.abs(z - t / 2) < 1e-6)),
    ),
    ...(b === 0
      ? [
          setText(
            'AXIS',
            m.where((r) => r < 1e-6),
          ),
        ]
      : []),
    '*STEP',
    '*STATIC',
    '*BOUNDARY',
    edge === 'clamped' ? 'EDGE,1,2,0' : 'EDGE,2,2,0',
    ...(b === 0 ? ['AXIS,1,1,0'] : []),
    '*DLOAD',
    ...sides(
      [...Array(ni).keys()].map((i) => at(i, 0)),
      1,
      p,
    ),
    ...(b > 0 ? ['*CLOAD', ...inner.map((id, j) => `${id},2,${plug * weight(j)}`)] : []),
    ...results,
  ]);
}

/** A flat ring with a line load at the edge of its opening: a flange or retainer plate, or the lip of a seat. */
function ring(name, { a, b, t, load, edge }) {
  const m = mesh();
  const [ni, nj] = [24, 8];
  m.block2(ni, nj, (i, j) => [b + ((a - b) * i) / (2 * ni), (t * j) / (2 * nj)]);
  const inner = [...Array(2 * nj + 1).keys()].map((j) => m.node(b, (t * j) / (2 * nj)));
  // The load goes into the rim as shear, consistent with a quadratic side.
  const weight = (j) => (j % 2 === 1 ? 4 / 6 : j === 0 || j === 2 * nj ? 1 / 6 : 2 / 6) / nj;
  deck(name, `Flat ring, ${edge}, a ${a}, b ${b}, t ${t}, load ${load}`, [
    meshText(m, 'CAX8'),
    ...metal,
    section,
    setText(
      'EDGE',
      m.where((r, z) => r > a - 1e-6 && (edge === 'clamped' || Math.abs(z - t / 2) < 1e-6)),
    ),
    '*STEP',
    '*STATIC',
    '*BOUNDARY',
    edge === 'clamped' ? 'EDGE,1,2,0' : 'EDGE,2,2,0',
    '*CLOAD',
    ...inner.map((id, j) => `${id},2,${load * weight(j)}`),
    ...results,
  ]);
}

/** A lip as it is turned in a closure, which is held at its outside: the lip is at z from 0 to t, the pocket above it. */
function lipInClosure(name, { outside, pocket, opening, t, height, load }) {
  const m = mesh();
  const [nl, nb, nt, nu] = [20, 20, 8, 16];
  const radius = (from, to, n) => (i) => from + ((to - from) * i) / (2 * n);
  const [lip, body] = [radius(opening, pocket, nl), radius(pocket, outside, nb)];
  m.block2(nl, nt, (i, j) => [lip(i), (t * j) / (2 * nt)]);
  m.block2(nb, nt, (i, j) => [body(i), (t * j) / (2 * nt)]);
  m.block2(nb, nu, (i, j) => [body(i), t + ((height - t) * j) / (2 * nu)]);
  const inner = [...Array(2 * nt + 1).keys()].map((j) => m.node(opening, (t * j) / (2 * nt)));
  const weight = (j) => (j % 2 === 1 ? 4 / 6 : j === 0 || j === 2 * nt ? 1 / 6 : 2 / 6) / nt;
  deck(name, `Lip in a closure, pocket ${pocket}, opening ${opening}, t ${t}, load ${load}`, [
    meshText(m, 'CAX8'),
    ...metal,
    section,
    setText(
      'EDGE',
      m.where((r) => r > outside - 1e-6),
    ),
    '*STEP',
    '*STATIC',
    '*BOUNDARY',
    'EDGE,2,2,0',
    '*CLOAD',
    ...inner.map((id, j) => `${id},2,${-load * weight(j)}`),
    ...results,
  ]);
}

/** Half of one bolt's share of a tube end, the hole drilled radially; the pin pushes towards the free end at z = 0. */
function tubeEnd(name, { ri, ro, bolts, d, e, length, flow, travel }) {
  const m = mesh();
  const rm = (ri + ro) / 2;
  const hole = d / 2;
  const half = (rm * Math.PI) / bolts;
  const box = e + 4 * hole;
  const [nx, nside, nr, nz, nt] = [6, 12, 10, 6, 3];
  const nphi = 2 * nx + nside;
  // A straight hole near it, a cut along the sector's plane far from it.
  const angle = (x, r) => {
    const s = (Math.max(0, x - hole) / (half - hole)) ** 2;
    return (1 - s) * Math.asin(x / r) + (s * x) / rm;
  };
  const place = (x, z, k) => {
    const r = ro - ((ro - ri) * k) / (2 * nt); // inwards, so that the elements are right-handed
    const theta = angle(x, r);
    return [r * Math.cos(theta), r * Math.sin(theta), z];
  };
  const outer = (v) => {
    if (v <= nx) return [(half * v) / nx, 0];
    if (v <= nx + nside) return [half, (box * (v - nx)) / nside];
    return [(half * (nphi - v)) / nx, box];
  };
  m.block3(nphi, nr, nt, (i, j, k) => {
    const corner = (ii, jj) => {
      const phi = (Math.PI * ii) / (2 * nphi);
      const [ox, oz] = outer(ii / 2);
      const s = (jj / (2 * nr)) ** 1.6;
      const [hx, hz] = [hole * Math.sin(phi), e - hole * Math.cos(phi)];
      return [hx + s * (ox - hx), hz + s * (oz - hz)];
    };
    // Midside nodes of the radial lines stand half way; on the hole they stand on the circle.
    const [x, z] =
      j % 2 === 0 ? corner(i, j) : [0, 1].map((c) => (corner(i, j - 1)[c] + corner(i, j + 1)[c]) / 2);
    return place(Math.max(0, Math.min(half, x)), z, k);
  });
  m.block3(nx, nz, nt, (i, j, k) =>
    place((half * (2 * nx - i)) / (2 * nx), box + ((length - box) * j) / (2 * nz), k),
  );
  const theta = (x, y) => Math.atan2(y, x);
  const onHole = (_x, y, z) => Math.abs(Math.hypot(y, z - e) - hole) < 1e-3;
  // A pin without friction touches the half towards the end, to 75° from the direction of the load.
  const touched = (x, y, z) => onHole(x, y, z) && e - z >= hole * Math.cos((75 * Math.PI) / 180) - 1e-6;
  const plastic = flow === undefined ? [] : ['*PLASTIC', ...flow.map((row) => row.join(','))];
  deck(name, `Tube end, one of ${bolts} holes, d ${d}, e ${e}, r_i ${ri}, r_o ${ro}, pin travel ${travel}`, [
    meshText(m, 'C3D20R'),
    ...metal,
    ...plastic,
    section,
    setText('HOLE', m.where(onHole)),
    setText('PIN', m.where(touched)),
    setText(
      'SYM',
      m.where((x, y) => Math.abs(theta(x, y)) < 1e-6 || Math.abs(theta(x, y) - Math.PI / bolts) < 1e-6),
    ),
    setText(
      'FAR',
      m.where((_x, _y, z) => z > length - 1e-6),
    ),
    '*TRANSFORM,NSET=ALL,TYPE=C',
    '0,0,0,0,0,1',
    flow === undefined ? '*STEP' : '*STEP,INC=200',
    '*STATIC',
    ...(flow === undefined ? [] : ['0.05,1,1e-5,0.05']),
    '*BOUNDARY',
    'SYM,2,2,0',
    'FAR,3,3,0',
    `PIN,3,3,${-travel}`,
    '*NODE PRINT,NSET=PIN,TOTALS=ONLY',
    'RF',
    ...(flow === undefined ? ['*NODE FILE', 'U', '*EL FILE', 'S', '*END STEP'] : ['*END STEP']),
  ]);
}

/**
 * The end of a closed tube, its far end plane and loaded by the end thrust. `end` is what it joins at z = 0: nothing that moves
 * (`built in`), nothing that grows but may tilt (`pinned`, at the middle of the wall), or a flat head of one piece with it, whose
 * thickness is given and whose inner face is at z = 0.
 */
function tubeAtHead(name, { ri, ro, length, p, end }) {
  const m = mesh();
  const wall = ro - ri;
  const [ni, nj] = [4, 48];
  // Finer towards the end; midside nodes half way.
  const height = (j) => length * (j / (2 * nj)) ** 1.8;
  const mid = (j) => (j % 2 === 0 ? height(j) : (height(j - 1) + height(j + 1)) / 2);
  m.block2(ni, nj, (i, j) => [ri + (wall * i) / (2 * ni), mid(j)]);
  const at = (i, j) => j * ni + i + 1;
  const head = typeof end === 'number' ? end : 0;
  const [nr, nh] = [16, 6];
  const below = (j) => -head + (head * j) / (2 * nh);
  const first = m.elements.length;
  if (head > 0) {
    m.block2(nr, nh, (i, j) => [(ri * i) / (2 * nr), below(j)]);
    m.block2(ni, nh, (i, j) => [ri + (wall * i) / (2 * ni), below(j)]);
  }
  const rows = [...Array(nj).keys()];
  const columns = [...Array(ni).keys()];
  const thrust = (p * ri * ri) / (ro * ro - ri * ri);
  const isEnd = (r, z) => Math.abs(z) < 1e-6 && (end === 'built in' || Math.abs(r - (ri + ro) / 2) < 1e-6);
  deck(name, `Tube at its end, ${head > 0 ? `head of ${head}` : end}, r_i ${ri}, r_o ${ro}, p ${p}`, [
    meshText(m, 'CAX8'),
    ...metal,
    section,
    ...(head > 0
      ? [
          setText(
            'AXIS',
            m.where((r) => r < 1e-6),
          ),
        ]
      : [setText('END', m.where(isEnd))]),
    setText(
      'FAR',
      m.where((_, z) => z > length - 1e-6),
    ),
    // The far end stays plane, as the middle of a long tube does.
    '*EQUATION',
    ...planeRows(m, length),
    '*STEP',
    '*STATIC',
    '*BOUNDARY',
    ...(head > 0 ? ['AXIS,1,1,0', `${m.node(0, -head / 2)},2,2,0`] : ['END,1,2,0']),
    '*DLOAD',
    ...sides(
      rows.map((j) => at(0, j)),
      4,
      p,
    ),
    ...(head > 0
      ? sides(
          [...Array(nr).keys()].map((i) => first + (nh - 1) * nr + i + 1),
          3,
          p,
        )
      : []),
    ...sides(
      columns.map((i) => at(i, nj - 1)),
      3,
      -thrust,
    ),
    ...results,
  ]);
}

/** Equations that keep the axial displacement of the far end the same at every node. */
function planeRows(m, length) {
  const [lead, ...others] = m.where((_, z) => z > length - 1e-6);
  return others.flatMap((id) => ['2', `${id},2,1,${lead},2,-1`]);
}

/** A thick hub in a thin ring, both even about the middle of the ring, held there at the outer edge; pressure from below. */
function steppedPlate(name, { a, b, t, h, p }) {
  const m = mesh();
  const [nb, nr, nt, nh] = [12, 20, 6, 4];
  const inner = (i) => (b * i) / (2 * nb);
  const outer = (i) => b + ((a - b) * i) / (2 * nr);
  const middle = (j) => -t / 2 + (t * j) / (2 * nt);
  const step = (h - t) / 2;
  m.block2(nb, nh, (i, j) => [inner(i), -h / 2 + (step * j) / (2 * nh)]);
  m.block2(nb, nt, (i, j) => [inner(i), middle(j)]);
  m.block2(nb, nh, (i, j) => [inner(i), t / 2 + (step * j) / (2 * nh)]);
  const ring = m.elements.length;
  m.block2(nr, nt, (i, j) => [outer(i), middle(j)]);
  deck(name, `Stepped circular plate, supported, a ${a}, b ${b}, t ${t}, h ${h}, p ${p}`, [
    meshText(m, 'CAX8'),
    ...metal,
    section,
    setText(
      'EDGE',
      m.where((r, z) => r > a - 1e-6 && Math.abs(z) < 1e-6),
    ),
    setText(
      'AXIS',
      m.where((r) => r < 1e-6),
    ),
    '*STEP',
    '*STATIC',
    '*BOUNDARY',
    'EDGE,2,2,0',
    'AXIS,1,1,0',
    '*DLOAD',
    ...sides(
      [...Array(nb).keys()].map((i) => i + 1),
      1,
      p,
    ),
    ...sides(
      [...Array(nr).keys()].map((i) => ring + i + 1),
      1,
      p,
    ),
    ...results,
  ]);
}

/** A head of one thickness on a cylinder of the same, by the inner side of its meridian from the skirt to the apex. */
function dishedHead(name, { radius, t, p, skirt, head }) {
  const m = mesh();
  const [ni, nj, ns] = [4, 48, 24];
  const place = (i, [r, z, nr, nz]) => [r + (nr * t * i) / (2 * ni), skirt + z + (nz * t * i) / (2 * ni)];
  m.block2(ni, ns, (i, j) => place(i, [radius, (skirt * j) / (2 * ns) - skirt, 1, 0]));
  m.block2(ni, nj, (i, j) => place(i, head(j / (2 * nj))));
  deck(name, `Head on a tube, ${name}, r_i ${radius}, t ${t}, p ${p}`, [
    meshText(m, 'CAX8'),
    ...metal,
    section,
    setText(
      'FOOT',
      m.where((_, z) => z < 1e-6),
    ),
    setText(
      'AXIS',
      m.where((r) => r < 1e-6),
    ),
    '*STEP',
    '*STATIC',
    '*BOUNDARY',
    'FOOT,2,2,0',
    'AXIS,1,1,0',
    '*DLOAD',
    ...sides(
      [...Array(ns + nj).keys()].map((j) => j * ni + 1),
      4,
      p,
    ),
    ...results,
  ]);
}

/** Point and outward normal of a torispherical meridian, over the angle from the skirt to the apex. */
function torisphere(radius, crown, knuckle) {
  // The knuckle turns from the horizontal normal to the angle where it meets the crown.
  const turn = Math.acos((radius - knuckle) / (crown - knuckle));
  const top = Math.sqrt((crown - knuckle) ** 2 - (radius - knuckle) ** 2);
  const share = knuckle === crown ? 1 : 0.5;
  return (s) => {
    const inKnuckle = s <= share;
    const angle = inKnuckle ? (turn * s) / share : turn + ((Math.PI / 2 - turn) * (s - share)) / (1 - share);
    const [c, n] = [Math.cos(angle), Math.sin(angle)];
    return inKnuckle
      ? [radius - knuckle + knuckle * c, knuckle * n, c, n]
      : [s === 1 ? 0 : crown * c, crown * n - top, s === 1 ? 0 : c, n];
  };
}

/** The same of half an ellipsoid. */
const ellipsoid = (radius, depth) => (s) => {
  const angle = (Math.PI / 2) * s;
  const [c, n] = [s === 1 ? 0 : Math.cos(angle), Math.sin(angle)];
  const length = Math.hypot(c / radius, n / depth);
  return [radius * c, depth * n, c / radius / length, n / depth / length];
};

cylinder('thick-cylinder', 38.1, 44.45, 6.894757);
cylinder('thick-cylinder-k2', 20, 40, 10);
const closure = { a: 38.1, t: 9.525, p: 6.894757 };
plate('plate-clamped', { ...closure, edge: 'clamped' });
plate('plate-supported', { ...closure, edge: 'supported' });
plate('plate-clamped-hole', { ...closure, b: 6.35, edge: 'clamped' });
plate('plate-supported-hole', { ...closure, b: 6.35, edge: 'supported' });
plate('plate-thin-clamped', { a: 38.1, t: 2.54, p: 0.5, edge: 'clamped' });
plate('plate-thin-clamped-hole', { a: 38.1, t: 2.54, p: 0.5, b: 6.35, edge: 'clamped' });
plate('plate-thin-supported-hole', { a: 38.1, t: 2.54, p: 0.5, b: 6.35, edge: 'supported' });
// The flange of the hand calculation, slender and twice as thick as half its width; a lip wider than it is thick.
ring('flange-slender', { a: 30, b: 18, t: 3, load: 1000, edge: 'supported' });
ring('flange-thick', { a: 30, b: 18, t: 12, load: 8000, edge: 'supported' });
ring('lip-clamped', { a: 13.1, b: 8, t: 3, load: 2000, edge: 'clamped' });
lipInClosure('lip-in-closure', { outside: 25.5, pocket: 13.1, opening: 8, t: 3, height: 18, load: 2000 });
const joint = { ri: 38.1, ro: 44.45, bolts: 12, d: 6.35, length: 60 };
// Perfectly plastic at the minimum yield of 6061-T6 drawn tube, 35 ksi; and hardening to its minimum ultimate of 42 ksi at
// 10 % elongation, true stress against true plastic strain.
const perfect = [
  [241.3, 0],
  [241.5, 1],
];
const hardening = [
  [241.3, 0],
  [318.5, 0.0907],
  [318.7, 1],
];
tubeEnd('tube-end-elastic', { ...joint, e: 12.7, travel: 0.01 });
tubeEnd('tube-end-plastic', { ...joint, e: 12.7, travel: 1, flow: perfect });
tubeEnd('tube-end-hardening', { ...joint, e: 12.7, travel: 1, flow: hardening });
tubeEnd('tube-end-plastic-1d', { ...joint, e: 6.35, travel: 1, flow: perfect });
// Mean radius over wall 40, 12.5 and 5.
for (const [wall, ro, ends] of [
  ['40', 39.06, { 'built-in': 'built in', head: 6 }],
  ['12', 41.275, { 'built-in': 'built in', head: 12, 'thin-head': 6, pinned: 'pinned' }],
  ['5', 46.5, { 'built-in': 'built in', head: 12 }],
])
  for (const [name, end] of Object.entries(ends))
    tubeAtHead(`tube-at-${name}-${wall}`, { ri: 38.1, ro, length: 100, p: 6.894757, end });
plate('plate-block', { a: 38.1, t: 19.05, p: 6.894757, edge: 'supported' });
plate('plate-cube', { a: 38.1, t: 38.1, p: 6.894757, edge: 'supported' });
steppedPlate('plate-stepped', { a: 38.1, b: 25.4, t: 5.08, h: 15.24, p: 6.894757 });
steppedPlate('plate-stepped-thin-hub', { a: 38.1, b: 25.4, t: 5.08, h: 7.62, p: 6.894757 });
const dished = { radius: 38.1, t: 3, p: 6.894757, skirt: 40 };
dishedHead('head-hemisphere', { ...dished, head: ellipsoid(38.1, 38.1) });
dishedHead('head-ellipsoid', { ...dished, head: ellipsoid(38.1, 19.05) });
dishedHead('head-torisphere', { ...dished, head: torisphere(38.1, 76.2, 7.62) });
