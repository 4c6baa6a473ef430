import { angle, count, force, formula } from '../../units';

const inputs = {
  load: force('P', 'pull on the anchorage'),
  angle: angle('α', 'between the pull and the surface', { min: 0, max: Math.PI / 2 }),
  count: count('n', 'anchor bolts that share it'),
};
const example = { load: '5 kN', angle: '30 deg', count: 2 } as const;

/**
 * Shear load of one anchor bolt under an inclined pull.
 *
 * @example anchorShearLoad({ load: '4 kN', angle: '60 deg', count: 2 }).in('kN') // => 1
 */
export const anchorShearLoad = /* @__PURE__ */ formula({
  name: 'anchorShearLoad',
  title: 'Shear load of an anchor bolt',
  equation: 'V = P·cos(α) / n',
  source: 'Statics',
  inputs,
  output: force('V', 'shear load of one bolt'),
  example,
  si: ({ load, angle: alpha, count: n }) => (load * Math.cos(alpha)) / n,
});

/**
 * Tension of one anchor bolt under an inclined pull.
 *
 * @example anchorTensionLoad({ load: '4 kN', angle: '30 deg', count: 2 }).in('kN') // => 1
 */
export const anchorTensionLoad = /* @__PURE__ */ formula({
  name: 'anchorTensionLoad',
  title: 'Tension of an anchor bolt',
  equation: 'T = P·sin(α) / n',
  source: 'Statics',
  inputs,
  output: force('T', 'tension of one bolt'),
  example,
  si: ({ load, angle: alpha, count: n }) => (load * Math.sin(alpha)) / n,
});

/**
 * Shear and tension of an anchor bolt as one load.
 *
 * @example anchorResultant({ shear: '3 kN', tension: '4 kN' }).in('kN') // => 5
 */
export const anchorResultant = /* @__PURE__ */ formula({
  name: 'anchorResultant',
  title: 'Resultant load of an anchor bolt',
  equation: 'R = √(V² + T²)',
  source: 'Statics',
  inputs: { shear: force('V', 'shear load'), tension: force('T', 'tension') },
  output: force('R', 'resultant load'),
  example: { shear: '2 kN', tension: '1.2 kN' },
  si: ({ shear, tension }) => Math.hypot(shear, tension),
});

/**
 * Resultant load at which an anchor bolt breaks under shear and tension in the same proportion.
 *
 * @example anchorResultantStrength({ shear: '3 kN', tension: '4 kN', shearStrength: '6 kN', tensileStrength: '8 kN' }).in('kN').toFixed(4) // => '7.0711'
 */
export const anchorResultantStrength = /* @__PURE__ */ formula({
  name: 'anchorResultantStrength',
  title: 'Strength of an anchor bolt under shear and tension',
  equation: 'R_u = √(V² + T²) / √((V / V_u)² + (T / T_u)²)',
  source: 'Elliptical interaction of shear and tension (from memory)',
  inputs: {
    shear: force('V', 'shear load'),
    tension: force('T', 'tension'),
    shearStrength: force('V_u', 'breaking load in shear', { above: 0 }),
    tensileStrength: force('T_u', 'breaking load in tension', { above: 0 }),
  },
  output: force('R_u', 'resultant load at which the bolt breaks'),
  example: { shear: '2 kN', tension: '1.2 kN', shearStrength: '25 kN', tensileStrength: '40 kN' },
  si: ({ shear, tension, shearStrength, tensileStrength }) =>
    Math.hypot(shear, tension) / Math.hypot(shear / shearStrength, tension / tensileStrength),
});
