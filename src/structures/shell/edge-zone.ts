import { formula, length, ratio } from '../../units';

/**
 * Length over which an edge (a stiff closure, a step in the wall) disturbs a cylinder: 1/β of shell theory. The
 * disturbance is down to 4 % after π of these lengths.
 *
 * @example edgeLength({ radius: '1.625 in', wall: '0.25 in', poissonRatio: 0.33 }).in('in') // => 0.4984651066
 */
export const edgeLength = /* @__PURE__ */ formula({
  name: 'edgeLength',
  title: 'Length of the edge zone of a cylinder',
  equation: 'λ = √(r·t) / (3·(1 − ν²))^(1/4)',
  source:
    "Roark's Formulas for Stress and Strain, long thin-walled cylinders with axisymmetric end loads, 1/λ there (from memory)",
  inputs: {
    radius: length('r', 'mean radius of the wall'),
    wall: length('t', 'wall thickness'),
    poissonRatio: ratio('ν', "Poisson's ratio", { min: 0, max: 0.5 }),
  },
  output: length('λ', 'length of the edge zone'),
  example: { radius: '1.625 in', wall: '0.25 in', poissonRatio: 0.33 },
  valid: [
    ({ radius, wall }) =>
      radius / wall >= 5 || 'shell theory is rough below r/t = 5: take the growth as not reduced',
  ],
  si: ({ radius, wall, poissonRatio }) => Math.sqrt(radius * wall) / (3 * (1 - poissonRatio ** 2)) ** 0.25,
});

/**
 * Upper bound of the fraction of the free growth that a bore reaches at a distance from an end that neither grows nor lets the
 * wall tilt outward: a built-in end, or a flat head of one piece with the tube. Shell theory alone is low near the end, where
 * the wall also shears: on a bore of 76 mm finite elements give 5 % more (r/t = 40) to 3.4 times as much (r/t = 5) at 3 mm and
 * 1.4 to 14 times as much at 1 mm. Beyond π edge lengths a thin head raises the growth to 6 % above the free growth. The shift by
 * 0.25 edge lengths and the factor 1.04 cover all of these (r/t from 5 to 40, ν = 0.33). An end that lets the wall tilt, or a
 * closure that the tube can slide on, is not covered: take the free growth there.
 *
 * @example edgeGrowthFactor({ distance: '10 mm', edgeLength: '10 mm' }).toFixed(3) // => '0.663'
 */
export const edgeGrowthFactor = /* @__PURE__ */ formula({
  name: 'edgeGrowthFactor',
  title: 'Growth near a stiff end over free growth, at most',
  equation:
    'k = 1.04·(1 − exp(−min(z / λ + 0.25, π))·(cos(min(z / λ + 0.25, π)) + sin(min(z / λ + 0.25, π))))',
  source:
    'Beam on an elastic foundation, long cylinder with a built-in edge, Timoshenko, Theory of Plates and Shells (from memory), shifted and scaled to cover finite elements',
  inputs: {
    distance: length('z', 'distance from the stiff end', { min: 0 }),
    edgeLength: length('λ', 'length of the edge zone'),
  },
  output: ratio('k', 'growth over free growth, at most'),
  example: { distance: '10 mm', edgeLength: '12 mm' },
  si: ({ distance, edgeLength: zone }) => {
    const y = Math.min(distance / zone + 0.25, Math.PI);
    return 1.04 * (1 - Math.exp(-y) * (Math.cos(y) + Math.sin(y)));
  },
});
