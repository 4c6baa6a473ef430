import { closureForce } from '../closure-force';
import { type Evaluate, evaluated, numberOf, type Step } from '../failure-mode/calculation';
import { hoopStressBeyondSeal } from '../shell/beyond-seal';
import { edgeLength } from '../shell/edge-zone';
import { lameHoopStress, lameLongitudinalStress } from '../shell/lame';
import { internalThreadShearArea } from '../threads/shear-area';
import { threadShearStress } from '../threads/thread-shear';
import { bearingStress } from './bearing';
import { boltBendingStress, combinedBoltStress } from './bolt-bending';
import { boltShearStress } from './bolt-shear';
import { worstEdgeDistance } from './edge-distance';
import { headSeat } from './head-seat';
import { holeStressConcentration } from './hole-concentration';
import type { JointSi } from './joint-si';
import { boltShareFactor, boltStiffness } from './load-sharing';
import { netSectionStress } from './net-section';
import {
  offsetFoldingStress,
  offsetMomentShare,
  offsetWallStress,
  singleShearOffset,
} from './offset-bending';
import { worstOffsetDistance } from './offset-distance';
import { staggeredNetSectionStress } from './staggered-net-section';
import { tearOutStress } from './tear-out';
import { radialBoltPull, worstBoltLoad, yieldLimitedShareFactor } from './worst-bolt';

/** What a joint sees, in SI: numbers, or the steps that they come from. */
export interface JointStresses<V> {
  readonly endForce: V;
  readonly shareFactor: V | number;
  /** Of the worst bolt. */
  readonly boltLoad: V;
  readonly boltShear: V;
  readonly caseBearing: V;
  readonly closureBearing: V;
  /** Of the bolts themselves, on the thinner of what they bear on. */
  readonly boltBearing: V;
  /** Planes from the edge of the hole. */
  readonly tearOut: V;
  /** Planes at 40°. */
  readonly tearOutLug: V;
  /** Through the inner face of the closure, planes from the edge of the hole; infinite where nothing is left. */
  readonly closureTearOut: V | number;
  /** Infinite where the holes leave nothing of the wall. */
  readonly netSection: V | number;
  readonly netSectionConcentration: V;
  /** Stress concentration of the holes over that of plain ones. */
  readonly headConcentration: number;
  /** Net section as the offset of the load in single shear folds it: equivalent tension. */
  readonly offsetFolding: V | number;
  /** Tension at its surface, elastic. */
  readonly offsetSurface: V | number;
  readonly offset: V;
  readonly edgeZone: V;
  /** Pull of one bolt on the threads of the closure. */
  readonly threadLoad: V;
  /** Zero for pins. */
  readonly threadShear: V | number;
  /** Bending with shear; zero where nothing bends the bolts. */
  readonly boltBending: V | number;
  /** What is left of it at the holes. */
  readonly hoop: V;
  readonly longitudinal: V;
}

/** Every stress of a radial-bolt joint as plain SI numbers. */
export type JointStressesSi = JointStresses<number>;

/** The angle of the planes in lug practice. */
const lugAngle = (40 * Math.PI) / 180;

/**
 * Every stress of a radial-bolt joint on plain SI numbers, for embedding; checks nothing.
 *
 * @example reviewJoint.si({ pressure: 1e6, sealDiameter: 0.1, outsideDiameter: 0.11, wall: 0.005, count: 10, rows: 1, rowSpacing: 0, edgeDistance: 0.012, holeDiameter: 0.006, boltDiameter: 0.006, shearArea: 2e-5, rootDiameter: 0.0048, pitch: 0.001, externalMajorMin: 0.0058, internalPitchMax: 0.0055, engagement: 0.009, bendingArm: 0, preload: 0, shareFactor: 1, positionTolerance: 0, moduli: [2e11, 7e10, 7e10], bearingYieldStress: 3e8, sealToHoles: undefined, poissonRatio: 0.33 }).endForce // => 7853.981634
 */
export const jointStressesSi = (joint: JointSi): JointStressesSi => jointStresses(joint, evaluated);

/** Every stress of a radial-bolt joint, from the pressure on, each formula evaluated by what is handed in. */
export function jointStresses<V extends Step | number>(joint: JointSi, run: Evaluate<V>): JointStresses<V> {
  const { pressure, outsideDiameter, wall, holeDiameter, boltDiameter: diameter, positionTolerance } = joint;
  const edgeDistance =
    positionTolerance > 0
      ? run(worstEdgeDistance, { edgeDistance: joint.edgeDistance, positionTolerance })
      : joint.edgeDistance;
  const count = joint.count * joint.rows;
  const endForce = run(closureForce, { pressure, sealDiameter: joint.sealDiameter });
  const shareFactor = joint.shareFactor ?? shareFrom(joint, run, endForce, count);
  const boltLoad = run(worstBoltLoad, { load: endForce, count, shareFactor });
  // Bearing is what yields to level the loads of misplaced holes: it takes the equal share. A share that is given counts.
  const isEqual = joint.shareFactor !== undefined || numberOf(shareFactor) === 1;
  const bearingLoad = isEqual ? boltLoad : run(worstBoltLoad, { load: endForce, count, shareFactor: 1 });
  const { bearingThickness, holeWidth, concentration } = headSeat(joint, run);
  const bearing = (thickness: V | number): V =>
    run(bearingStress, { load: bearingLoad, diameter, thickness });
  const boltShear = run(boltShearStress, { load: boltLoad, area: joint.shearArea });
  const tearOut = (planeAngle: number): V =>
    run(tearOutStress, {
      load: boltLoad,
      edgeDistance,
      holeDiameter,
      thickness: bearingThickness,
      planeAngle,
    });
  const threadLoad = run(radialBoltPull, { preload: joint.preload, shearLoad: boltLoad });
  const { engagement, pitch, externalMajorMin, internalPitchMax } = joint;
  const threadArea = run(internalThreadShearArea, { engagement, pitch, externalMajorMin, internalPitchMax });
  const outsideRadius = outsideDiameter / 2;
  const insideRadius = outsideRadius - wall;
  const cylinder = { pressure, insideRadius, outsideRadius };
  const netSection = netTension(joint, run, endForce, holeWidth);
  const edgeZone = run(edgeLength, {
    radius: (outsideDiameter - wall) / 2,
    wall,
    poissonRatio: joint.poissonRatio,
  });
  const offset = run(singleShearOffset, { wall, gap: joint.gap ?? 0 });
  const bent = (by: typeof offsetWallStress | typeof offsetFoldingStress, momentShare: V | number) =>
    typeof netSection === 'number' && !Number.isFinite(netSection)
      ? netSection
      : run(by, { tension: netSection, offset, wall, momentShare });
  const reach = worstOffsetDistance(numberOf(edgeDistance), numberOf(edgeZone));
  const momentShare = run(offsetMomentShare, {
    distance: reach > numberOf(edgeDistance) ? reach : edgeDistance,
    edgeLength: edgeZone,
  });
  const hoop = run(lameHoopStress, { pressure, insideRadius, outsideRadius, radius: insideRadius });
  return {
    endForce,
    shareFactor,
    boltLoad,
    boltShear,
    caseBearing: bearing(bearingThickness),
    closureBearing: bearing(engagement),
    boltBearing: bearing(numberOf(bearingThickness) < engagement ? bearingThickness : engagement),
    tearOut: tearOut(0),
    tearOutLug: tearOut(lugAngle),
    closureTearOut: throughClosure(joint, run, boltLoad),
    netSection,
    netSectionConcentration: run(holeStressConcentration, {
      holeDiameter: holeWidth,
      width: (Math.PI * (outsideDiameter - wall)) / joint.count,
    }),
    headConcentration: concentration,
    offsetFolding: bent(offsetFoldingStress, momentShare),
    offsetSurface: bent(offsetWallStress, momentShare),
    offset,
    edgeZone,
    threadLoad,
    threadShear: joint.arePins ? 0 : run(threadShearStress, { load: threadLoad, area: threadArea }),
    boltBending: bentBolt(joint, run, boltLoad, boltShear),
    hoop: beyondSeal(joint, run, hoop, edgeZone),
    longitudinal: run(lameLongitudinalStress, cylinder),
  };
}

// The bolts push towards the pressure, and the metal between the tapped holes and the inner face holds them.
function throughClosure<V>(joint: JointSi, run: Evaluate<V>, load: V): V | number {
  const { boltDiameter, engagement, closureEdgeDistance = 2 * boltDiameter } = joint;
  if (closureEdgeDistance <= boltDiameter / 2) return Number.POSITIVE_INFINITY;
  return run(tearOutStress, {
    load,
    edgeDistance: closureEdgeDistance,
    holeDiameter: boltDiameter,
    thickness: engagement,
    planeAngle: 0,
  });
}

// The row nearest the pressure sees the whole load; the zigzag to the next row may leave less of the wall. Holes that leave
// nothing of it are an infinite stress.
function netTension<V extends Step | number>(
  joint: JointSi,
  run: Evaluate<V>,
  load: V,
  holeDiameter: V | number,
): V | number {
  const { outsideDiameter, wall, count, rowSpacing } = joint;
  const ring = { load, outsideDiameter, wall, count, holeDiameter };
  const straight = run(netSectionStress, ring);
  if (joint.rows === 1) return straight;
  const zigzag = run(staggeredNetSectionStress, { ...ring, rowSpacing });
  if (!(numberOf(zigzag) > 0)) return Number.POSITIVE_INFINITY;
  return numberOf(zigzag) > numberOf(straight) ? zigzag : straight;
}

function bentBolt<V>(joint: JointSi, run: Evaluate<V>, load: V, shear: V): V | number {
  if (joint.bendingArm <= 0) return 0;
  const bending = run(boltBendingStress, { load, arm: joint.bendingArm, diameter: joint.rootDiameter });
  return run(combinedBoltStress, { bending, shear });
}

// The worst bolt carries no more than what makes its hole yield: from there the others take over.
function shareFrom<V>(joint: JointSi, run: Evaluate<V>, load: V, count: number): V | number {
  if (joint.positionTolerance === 0) return 1;
  const [boltModulus, wallModulus, closureModulus] = joint.moduli;
  const { boltDiameter: diameter, wall, engagement, positionTolerance, bearingYieldStress } = joint;
  const stiffness = run(boltStiffness, {
    diameter,
    boltModulus,
    wall,
    wallModulus,
    engagement,
    closureModulus,
  });
  const elasticShareFactor = run(boltShareFactor, { load, count, stiffness, positionTolerance });
  return run(yieldLimitedShareFactor, {
    elasticShareFactor,
    bearingYield: bearingYieldStress,
    diameter,
    wall,
    count,
    load,
  });
}

const beyondSeal = <V>({ sealToHoles }: JointSi, run: Evaluate<V>, hoop: V, zone: V): V =>
  sealToHoles === undefined
    ? hoop
    : run(hoopStressBeyondSeal, { hoop, distance: sealToHoles, edgeLength: zone });
