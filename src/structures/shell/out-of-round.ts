import { formula, gaugePressure, length, stress } from '../../units';
import { elasticModulus, poissonRatio } from './elastic-inputs';

/**
 * Bending stress of a tube that is not round, under pressure inside, which rounds it out. Add it to the hoop stress.
 *
 * @example outOfRoundStress({ pressure: '7 MPa', meanRadius: '40 mm', wall: '4 mm', ovality: '0.2 mm', elasticModulus: '70 GPa', poissonRatio: 0.33 }).in('MPa').toFixed(2) // => '3.87'
 */
export const outOfRoundStress = /* @__PURE__ */ formula({
  name: 'outOfRoundStress',
  title: 'Bending stress of an oval tube under internal pressure',
  equation: 'σ_b = 3·p·r·δ / (2·t²·(1 + 4·p·(1 − ν²)·r³ / (E·t³)))',
  source:
    'Timoshenko and Gere, Theory of Elastic Stability, ring of small ovality, with the stiffening by internal pressure; the form used in PD 5500 and EN 13445 (from memory)',
  inputs: {
    pressure: gaugePressure('p', 'internal pressure above ambient', { min: 0 }),
    meanRadius: length('r', 'mean radius of the wall'),
    wall: length('t', 'wall thickness'),
    ovality: length('δ', 'maximum − minimum diameter', { min: 0 }),
    elasticModulus,
    poissonRatio,
  },
  output: stress('σ_b', 'bending stress in the wall, tension on one face'),
  example: {
    pressure: '7 MPa',
    meanRadius: '40 mm',
    wall: '3 mm',
    ovality: '0.2 mm',
    elasticModulus: '70 GPa',
    poissonRatio: 0.33,
  },
  valid: [
    ({ ovality, meanRadius }) =>
      ovality <= 0.1 * meanRadius || 'the ovality is not small: the formula is a first-order one',
    ({ wall, meanRadius }) => meanRadius / wall >= 5 || 'the wall is thick for ring bending (r/t < 5)',
  ],
  si: ({ pressure, meanRadius, wall, ovality, elasticModulus, poissonRatio }) => {
    // Radial deviation w = δ/4 in two lobes; the pressure divides it by 1 + p/p_ring.
    const stiffening = (4 * pressure * (1 - poissonRatio ** 2) * (meanRadius / wall) ** 3) / elasticModulus;
    return (1.5 * pressure * meanRadius * ovality) / (wall * wall * (1 + stiffening));
  },
});

/**
 * Maximum stress of an oval tube: hoop stress and bending together.
 *
 * @example ovalTubeStress({ hoop: '80 MPa', bending: '20 MPa' }).in('MPa') // => 100
 */
export const ovalTubeStress = /* @__PURE__ */ formula({
  name: 'ovalTubeStress',
  title: 'Stress of an oval tube',
  equation: 'σ = σ_h + σ_b',
  source: 'Superposition of hoop stress and bending',
  inputs: { hoop: stress('σ_h', 'hoop stress'), bending: stress('σ_b', 'bending stress of the oval') },
  output: stress('σ', 'stress of the tube'),
  example: { hoop: '80 MPa', bending: '4 MPa' },
  si: ({ hoop, bending }) => hoop + bending,
});
