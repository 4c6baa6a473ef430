import { force, formula, length, optional } from '../../units';

const memory = "retaining-ring manufacturers' design guides (quoted from memory, not verified)";

const boreDiameter = length('D', 'bore that the groove is cut in', { example: '38 mm' });

/**
 * Lever arm by which a sharp-edged part tilts a retaining ring: the capacity of a ring is stated for it.
 *
 * @example sharpEdgeLever({ boreDiameter: '50 mm' }).in('mm') // => 0.4
 */
export const sharpEdgeLever = /* @__PURE__ */ formula({
  name: 'sharpEdgeLever',
  title: 'Lever arm of a sharp-edged part on a retaining ring',
  equation: 'h_0 = h_c + 0.002·D',
  source: memory,
  inputs: {
    boreDiameter,
    constant: optional(length('h_c', 'constant of the lever arm', { example: '0.3 mm' }), 3e-4),
  },
  output: length('h_0', 'lever arm of a sharp-edged part'),
  si: ({ boreDiameter: bore, constant = 3e-4 }) => constant + 0.002 * bore,
});

const chamfer = length('c', 'chamfer or corner radius of the part', { min: 0, example: '0.2 mm' });
const play = length('j', 'radial clearance between part and bore', { min: 0, example: '0.05 mm' });

/** @example tiltLever({ sharpLever: '0.4 mm', chamfer: '0.2 mm', play: '0.1 mm' }).in('mm') // => 0.7 */
export const tiltLever = /* @__PURE__ */ formula({
  name: 'tiltLever',
  title: 'Lever arm of a part on a retaining ring',
  equation: 'h = h_0 + c + j',
  source: `Chamfer and play move the line of contact inward; play acts as a chamfer of the same size (page of a ring manufacturer); added to the lever arm of the sharp edge, which is conservative`,
  inputs: {
    sharpLever: length('h_0', 'lever arm of a sharp-edged part', { example: '0.38 mm' }),
    chamfer,
    play,
  },
  output: length('h', 'lever arm'),
  si: ({ sharpLever, chamfer: c, play: j }) => sharpLever + c + j,
});

/** @example chamferLever({ statedChamfer: '2 mm', chamfer: '2.4 mm', play: '0.1 mm' }).in('mm') // => 2.5 */
export const chamferLever = /* @__PURE__ */ formula({
  name: 'chamferLever',
  title: 'Lever arm of a chamfered part on a retaining ring',
  equation: 'h = max(g, c + j)',
  source:
    'Chamfer and play move the line of contact inward; a smaller chamfer than the stated one is not credited',
  inputs: {
    statedChamfer: length('g', 'chamfer for which the capacity is stated', { example: '2 mm' }),
    chamfer,
    play,
  },
  output: length('h', 'lever arm'),
  si: ({ statedChamfer, chamfer: c, play: j }) => Math.max(statedChamfer, c + j),
});

/**
 * Axial capacity of a retaining ring against dishing, from the capacity that its manufacturer states for another lever arm: the
 * moment that tilts the ring is the same.
 *
 * @example dishingCapacity({ statedCapacity: '40 kN', statedLever: '0.4 mm', lever: '0.8 mm' }).in('kN') // => 20
 */
export const dishingCapacity = /* @__PURE__ */ formula({
  name: 'dishingCapacity',
  title: 'Axial capacity of a retaining ring against dishing',
  equation: 'F_d = F_R·h_s / h',
  source: `Statics: equal tilting moment on the ring; form of the ${memory}`,
  inputs: {
    statedCapacity: force('F_R', 'capacity that the manufacturer states', { above: 0, example: '40 kN' }),
    statedLever: length('h_s', 'lever arm for which it is stated', { example: '0.4 mm' }),
    lever: length('h', 'lever arm of the part', { example: '0.8 mm' }),
  },
  output: force('F_d', 'capacity against dishing'),
  si: ({ statedCapacity, statedLever, lever }) => (statedCapacity * statedLever) / lever,
});
