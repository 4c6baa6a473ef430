import { count, force, formula, gaugePressure, length, stress } from '../../units';

const outsideDiameter = length('D_o', 'outside diameter of the tapped end');
const bore = length('D_b', 'diameter of the bore');
const holeDiameter = length('d', 'major diameter of the tapped holes');

/**
 * Tension in the end of a tube that bolts along the axis pull, across the row of tapped holes, with the bending that a bolt circle
 * off the middle of the wall adds to a strip that is free to bend.
 *
 * @example tappedEndTension({ load: '10 kN', outsideDiameter: '70 mm', bore: '50 mm', count: 8, holeDiameter: '5 mm', boltCircle: '60 mm' }).in('MPa').toFixed(3) // => '5.787'
 */
export const tappedEndTension = /* @__PURE__ */ formula({
  name: 'tappedEndTension',
  title: 'Tension in the tapped end of a tube',
  equation:
    'σ = F / (π/4·(D_o² − D_b² − n·d²))·(1 + 6·max(D_c − (D_o + D_b) / 2, (D_o + D_b) / 2 − D_c) / (D_o − D_b))',
  source:
    'Equilibrium of a strip of the wall with an offset load (engineering practice, no published source)',
  inputs: {
    load: force('F', 'force on the closure'),
    outsideDiameter,
    bore,
    count: count('n', 'holes on the circle'),
    holeDiameter,
    boltCircle: length('D_c', 'diameter of the bolt circle'),
  },
  output: stress('σ', 'maximum tension', { min: 0 }),
  example: {
    load: '10 kN',
    outsideDiameter: '76 mm',
    bore: '52 mm',
    count: 8,
    holeDiameter: '5 mm',
    boltCircle: '63 mm',
  },
  requires: [
    ({ outsideDiameter: o, bore: b, count: n, holeDiameter: d }) =>
      (o > b && o * o - b * b - n * d * d > 0) || 'the holes leave nothing of the end',
  ],
  si: ({ load, outsideDiameter: o, bore: b, count: n, holeDiameter: d, boltCircle }) =>
    (load / ((Math.PI / 4) * (o * o - b * b - n * d * d))) *
    (1 + (6 * Math.abs(boltCircle - (o + b) / 2)) / (o - b)),
});

/**
 * Hoop stress at tapped holes along the axis, with the pressure on the bore: the section through a hole leaves the wall less the
 * hole.
 *
 * @example tappedWallHoopStress({ pressure: '5 MPa', outsideDiameter: '70 mm', bore: '50 mm', holeDiameter: '5 mm' }).in('MPa') // => 25
 */
export const tappedWallHoopStress = /* @__PURE__ */ formula({
  name: 'tappedWallHoopStress',
  title: 'Hoop stress of a wall with holes along the axis',
  equation: 'σ_h = p·D_b / (D_o − D_b − 2·d)',
  source: 'Equilibrium of half of the tube, cut through two holes',
  inputs: { pressure: gaugePressure('p', 'pressure on the bore'), outsideDiameter, bore, holeDiameter },
  output: stress('σ_h', 'mean hoop stress at the holes'),
  example: { pressure: '5 MPa', outsideDiameter: '76 mm', bore: '52 mm', holeDiameter: '5 mm' },
  requires: [
    ({ outsideDiameter: o, bore: b, holeDiameter: d }) =>
      o - b > 2 * d || 'the holes leave nothing of the wall',
  ],
  si: ({ pressure, outsideDiameter: o, bore: b, holeDiameter: d }) => (pressure * b) / (o - b - 2 * d),
});
