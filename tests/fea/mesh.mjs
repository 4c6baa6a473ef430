// Structured quadratic meshes as CalculiX reads them: nodes at half indices, midside nodes only where one index is odd.

/** A mesh that joins blocks where their nodes fall on one another. */
export function mesh() {
  const nodes = [];
  const elements = [];
  const seen = new Map();
  const node = (...x) => {
    const key = x.map((v) => Math.round(v * 1e6)).join(',');
    if (!seen.has(key)) seen.set(key, nodes.push(x));
    return seen.get(key);
  };

  /** CAX8: at(i, j) with i in 0..2·ni, j in 0..2·nj gives [r, z]. */
  const block2 = (ni, nj, at) => {
    const id = (i, j) => node(...at(i, j));
    for (let j = 0; j < nj; j++)
      for (let i = 0; i < ni; i++) {
        const [a, b] = [2 * i, 2 * j];
        const corners = [
          [a, b],
          [a + 2, b],
          [a + 2, b + 2],
          [a, b + 2],
        ];
        const middles = [
          [a + 1, b],
          [a + 2, b + 1],
          [a + 1, b + 2],
          [a, b + 1],
        ];
        elements.push([...corners, ...middles].map(([p, q]) => id(p, q)));
      }
  };

  /** C3D20R: at(i, j, k) gives [x, y, z]. */
  const block3 = (ni, nj, nk, at) => {
    const id = ([i, j, k]) => node(...at(i, j, k));
    for (let k = 0; k < nk; k++)
      for (let j = 0; j < nj; j++)
        for (let i = 0; i < ni; i++) {
          const [a, b, c] = [2 * i, 2 * j, 2 * k];
          const ring = (h) => [
            [a, b, h],
            [a + 2, b, h],
            [a + 2, b + 2, h],
            [a, b + 2, h],
          ];
          const between = (h) => [
            [a + 1, b, h],
            [a + 2, b + 1, h],
            [a + 1, b + 2, h],
            [a, b + 1, h],
          ];
          const order = [...ring(c), ...ring(c + 2), ...between(c), ...between(c + 2), ...ring(c + 1)];
          elements.push(order.map(id));
        }
  };

  const where = (test) => nodes.flatMap((x, i) => (test(...x) ? [i + 1] : []));
  return { nodes, elements, node, block2, block3, where };
}

const number = (v) => (Object.is(v, -0) ? 0 : Number(v.toPrecision(9)));

/** The *NODE and *ELEMENT blocks; long element lines go on as the program allows, 16 entries a line. */
export function meshText({ nodes, elements }, type) {
  const rows = (list) => {
    const lines = [];
    for (let i = 0; i < list.length; i += 15) lines.push(list.slice(i, i + 15).join(','));
    return lines.join(',\n');
  };
  return [
    '*NODE,NSET=ALL',
    ...nodes.map((x, i) => [i + 1, ...(x.length === 2 ? [...x, 0] : x).map(number)].join(',')),
    `*ELEMENT,TYPE=${type},ELSET=PART`,
    ...elements.map((list, i) => rows([i + 1, ...list])),
  ].join('\n');
}

/** A node set. */
export function setText(name, ids) {
  const lines = [];
  for (let i = 0; i < ids.length; i += 12) lines.push(ids.slice(i, i + 12).join(','));
  return [`*NSET,NSET=${name}`, ...lines.map((line) => `${line},`)].join('\n');
}
