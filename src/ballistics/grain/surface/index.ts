/**
 * Surfaces that burn, in plain SI numbers: outlines in a plane, the cavities made of them (prisms, bodies of revolution, balls,
 * tapered fins), flat ends, and the outer form of a grain. Each gives an exact distance and the rays that leave it along its
 * normals. Nothing here reads a quantity or depends on the use of a cavity.
 *
 * The lowest folder: imports no other folder of the grain.
 *
 * @module
 */
export { ball } from './ball';
export { endPlane } from './end-plane';
export { type Envelope, exitDistance, outsideBy, wallRadius } from './envelope';
export { frameAt } from './frame';
export {
  arc,
  elementLength,
  elementX,
  elementY,
  line,
  type Outline,
  type OutlineElement,
  outline,
  outlineReach,
} from './outline';
export { clippedOutline } from './outline-clip';
export {
  annulusOutline,
  circleOutline,
  finOutline,
  starOutline,
  wagonWheelOutline,
  wallOutline,
} from './outline-shapes';
export { prism } from './prism';
export { revolve } from './revolve';
export { RAY, type RayPatch, type Source } from './source';
export { commonWedge, type Wedge } from './symmetry';
export { taperedFin } from './tapered-fin';
