import { formula, length, stress } from '../../units';

/**
 * Bound on the hoop stress of a tube at a distance beyond its seal, where no pressure acts. Whether and where the tube ends
 * there does not matter.
 *
 * @example hoopStressBeyondSeal({ hoop: '100 MPa', distance: '0 mm', edgeLength: '10 mm' }).in('MPa') // => 100
 */
export const hoopStressBeyondSeal = /* @__PURE__ */ formula({
  name: 'hoopStressBeyondSeal',
  title: 'Hoop stress beyond the seal',
  equation: 'σ_z = σ_h·min(1, √2·exp(−z / λ))',
  source:
    'Beam on an elastic foundation, loaded up to the seal: bound of the growth beyond it (Hetényi, Beams on Elastic Foundation, from memory)',
  inputs: {
    hoop: stress('σ_h', 'hoop stress under pressure'),
    distance: length('z', 'distance from the seal', { min: 0 }),
    edgeLength: length('λ', 'length of the edge zone'),
  },
  output: stress('σ_z', 'hoop stress at that distance, at most'),
  example: { hoop: '90 MPa', distance: '12 mm', edgeLength: '8 mm' },
  si: ({ hoop, distance, edgeLength }) => Math.min(1, Math.SQRT2 * Math.exp(-distance / edgeLength)) * hoop,
});
