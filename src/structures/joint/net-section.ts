import { count, force, formula, length, stress } from '../../units';

const ringArea = (outside: number, wall: number, n: number, hole: number): number =>
  Math.PI * wall * (outside - wall) - n * hole * wall;

/**
 * Tension in the wall of a tube across a row of holes: the load over what the holes leave of the ring.
 * It is the average; for fatigue multiply it by {@link holeStressConcentration}.
 *
 * @example netSectionStress({ load: '10 kN', outsideDiameter: '60 mm', wall: '3 mm', count: 8, holeDiameter: '6 mm' }).in('MPa') // => 25.43155157
 */
export const netSectionStress = /* @__PURE__ */ formula({
  name: 'netSectionStress',
  title: 'Net-section tension of a tube across a row of holes',
  equation: 'σ_n = F / (π·t·(D − t) − n·d·t)',
  source:
    "Shigley's Mechanical Engineering Design, 9th ed., section 8-12, tension of members, on the ring of the tube",
  inputs: {
    load: force('F', 'load across the row'),
    outsideDiameter: length('D', 'outside diameter of the tube'),
    wall: length('t', 'thickness of the wall'),
    count: count('n', 'holes in the row'),
    holeDiameter: length('d', 'diameter of a hole'),
  },
  output: stress('σ_n', 'average tension between the holes'),
  example: { load: '31.4 kN', outsideDiameter: '88 mm', wall: '6 mm', count: 12, holeDiameter: '6.4 mm' },
  requires: [
    ({ outsideDiameter, wall }) =>
      outsideDiameter > 2 * wall || 'twice the wall exceeds the outside diameter',
    ({ outsideDiameter, wall, count: n, holeDiameter }) =>
      ringArea(outsideDiameter, wall, n, holeDiameter) > 0 || 'the holes leave nothing of the wall',
  ],
  si: ({ load, outsideDiameter, wall, count: n, holeDiameter }) =>
    load / ringArea(outsideDiameter, wall, n, holeDiameter),
  solve: {
    load: (sigma, { outsideDiameter, wall, count: n, holeDiameter }) =>
      sigma * ringArea(outsideDiameter, wall, n, holeDiameter),
    holeDiameter: (sigma, { load, outsideDiameter, wall, count: n }) =>
      (Math.PI * wall * (outsideDiameter - wall) - load / sigma) / (n * wall),
  },
});
