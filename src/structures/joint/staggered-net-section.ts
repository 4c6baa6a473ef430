import { count, force, formula, length, stress } from '../../units';

interface Ring {
  readonly outsideDiameter: number;
  readonly wall: number;
  readonly count: number;
  readonly holeDiameter: number;
  readonly rowSpacing: number;
}

/** What is left of the wall along a line that goes from hole to hole of two staggered rows. */
const zigzagArea = ({ outsideDiameter, wall, count: n, holeDiameter, rowSpacing }: Ring): number => {
  const round = Math.PI * (outsideDiameter - wall);
  return wall * (round - 2 * n * holeDiameter + (n * n * rowSpacing * rowSpacing) / round);
};

/**
 * Tension in the wall of a tube along the zigzag from hole to hole of two staggered rows: through twice as many holes as
 * the straight line of {@link netSectionStress}, on a longer way. Where rows are close together it is the greater stress.
 *
 * @example staggeredNetSectionStress({ load: '10 kN', outsideDiameter: '60 mm', wall: '3 mm', count: 8, holeDiameter: '6 mm', rowSpacing: '8 mm' }).in('MPa') // => 31.46303880
 */
export const staggeredNetSectionStress = /* @__PURE__ */ formula({
  name: 'staggeredNetSectionStress',
  title: 'Net-section tension of a tube along two staggered rows of holes',
  equation: 'σ_n = F / (t·(π·(D − t) − 2·n·d + n²·s² / (π·(D − t))))',
  source:
    "Cochrane's rule for staggered holes, s²/(4·g) added for each slanting step, as in AISC 360 section B4.3 (from memory), round the tube: 2·n steps of g = π·(D − t)/(2·n)",
  inputs: {
    load: force('F', 'load across the rows'),
    outsideDiameter: length('D', 'outside diameter of the tube'),
    wall: length('t', 'thickness of the wall'),
    count: count('n', 'holes in a row'),
    holeDiameter: length('d', 'diameter of a hole'),
    rowSpacing: length('s', 'distance between the rows along the tube'),
  },
  output: stress('σ_n', 'average tension along the zigzag'),
  example: {
    load: '31.4 kN',
    outsideDiameter: '88 mm',
    wall: '6 mm',
    count: 12,
    holeDiameter: '6.4 mm',
    rowSpacing: '10 mm',
  },
  requires: [
    ({ outsideDiameter, wall }) =>
      outsideDiameter > 2 * wall || 'twice the wall exceeds the outside diameter',
    (ring) => zigzagArea(ring) > 0 || 'the holes leave nothing of the wall',
  ],
  si: (ring) => ring.load / zigzagArea(ring),
});
