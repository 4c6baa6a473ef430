import { formula, length, optional, ratio } from '../../units';

/**
 * Minimum edge distance of a hole within the tolerances of its drawing: the hole may lie half of its position tolerance nearer
 * to the end, and the end may be cut short.
 *
 * @example worstEdgeDistance({ edgeDistance: '10 mm', positionTolerance: '0.2 mm', endFaceTolerance: '0.1 mm' }).in('mm') // => 9.8
 */
export const worstEdgeDistance = /* @__PURE__ */ formula({
  name: 'worstEdgeDistance',
  title: 'Minimum edge distance within tolerances',
  equation: 'e_w = e − δ / 2 − u',
  source: 'Tolerance stack; δ is the diameter of the tolerance zone, as in ISO 1101',
  inputs: {
    edgeDistance: length('e', 'nominal distance from the centre of the hole to the end'),
    positionTolerance: length('δ', 'position tolerance of the hole: diameter of its zone', { min: 0 }),
    endFaceTolerance: optional(length('u', 'amount by which the end may be short', { min: 0 }), 0),
  },
  output: length('e_w', 'minimum edge distance'),
  example: { edgeDistance: '10 mm', positionTolerance: '0.2 mm', endFaceTolerance: '0.1 mm' },
  requires: [
    ({ edgeDistance, positionTolerance, endFaceTolerance = 0 }) =>
      edgeDistance > positionTolerance / 2 + endFaceTolerance || 'the tolerances reach the end',
  ],
  si: ({ edgeDistance, positionTolerance, endFaceTolerance = 0 }) =>
    edgeDistance - positionTolerance / 2 - endFaceTolerance,
});

/**
 * Edge distance in diameters of the bolt, for which handbooks state the bearing strength. A hole larger than the bolt does not
 * change it: the tear-out planes, which start at the edge of the hole, include the clearance.
 *
 * @example edgeDistanceRatio({ edgeDistance: '9.8 mm', diameter: '5 mm' }) // => 1.96
 */
export const edgeDistanceRatio = /* @__PURE__ */ formula({
  name: 'edgeDistanceRatio',
  title: 'Edge distance in bolt diameters',
  equation: 'r = e / D',
  source: 'MIL-HDBK-5J section 1.4.7, bearing properties: e/D with e from the centre of the hole',
  inputs: {
    edgeDistance: length('e', 'distance from the centre of the hole to the end'),
    diameter: length('D', 'diameter of the bolt'),
  },
  output: ratio('r', 'edge distance/bolt diameter'),
  example: { edgeDistance: '9.8 mm', diameter: '5 mm' },
  si: ({ edgeDistance, diameter }) => edgeDistance / diameter,
});
