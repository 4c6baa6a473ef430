/**
 * The inputs and tables of structures that other modules and the motor document take: each is declared once and read from here.
 * Calculations and their types are in the index.
 */
export { closurePlate } from './closures/closure-plate';
export { closureThread } from './closures/closure-thread';
export { retainingRing } from './closures/retaining-ring-groove';
export { threadedClosure } from './closures/threaded-closure';
export { factorSets, factorsOfSafety, reviewFactors } from './factors-of-safety';
export { boltClasses } from './fasteners/bolt-class-table';
export { radialBoltJoint } from './joint/joint-inputs';
export { radialBolts } from './joint/radial-bolts';
export { materials } from './materials/material-table';
export { exposure, partTemperature } from './materials/part-temperature';
export { anchor, restraint, rope, standAnchors, standMembers } from './restraint/restraint-groups';
export { oRings } from './seals/o-ring-sizes';
export { boreGland, faceGland } from './seals/seal-groups';
export { tube } from './shell/tube';
export { pipeThreads } from './threads/pipe-thread';
export { nutFactors } from './threads/preload';
export { threads } from './threads/thread-table';
