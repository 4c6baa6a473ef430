/**
 * The inputs and tables of structures that other modules and the motor document take: each is declared once and read from here.
 * Calculations and their types are in the index.
 */
export { closurePlate } from './closures/closure-plate';
export { closureThread } from './closures/closure-thread';
export { retainingRing } from './closures/retaining-ring-groove';
export { factorsOfSafety } from './factors-of-safety';
export { radialBolts } from './joint/radial-bolts';
export { cyclicConstants } from './life/cyclic-constants';
export { serviceHistory } from './life/service-history';
export { materials } from './materials/material-table';
export { restraint, standAnchors, standMembers } from './restraint/restraint-groups';
export { insertSeat } from './retention/insert-seat';
export { retainerPlate } from './retention/retainer-plate';
export { boreGland, faceGland } from './seals/seal-groups';
export { tube } from './shell/tube';
export { axialBolts } from './tension-bolts/axial-bolts';
export { endFlange } from './tension-bolts/review-tapped-end';
