import { closureForce } from '../closure-force';
import { edgeLength } from '../shell/edge-zone';
import { lameHoopStress, lameLongitudinalStress } from '../shell/lame';
import { internalThreadShearArea } from '../threads/shear-area';
import { bearingStress } from './bearing';
import { boltBendingStress, combinedBoltStress } from './bolt-bending';
import { boltShearStress } from './bolt-shear';
import { holeStressConcentration } from './hole-concentration';
import { boltShareFactor, boltStiffness } from './load-sharing';
import { netSectionStress } from './net-section';
import { staggeredNetSectionStress } from './staggered-net-section';
import { tearOutStress } from './tear-out';

/** A joint in plain SI numbers. */
export interface JointSi {
  readonly pressure: number;
  readonly sealDiameter: number;
  readonly outsideDiameter: number;
  readonly wall: number;
  /** Bolts in a row. */
  readonly count: number;
  readonly rows: number;
  /** Between rows, which are staggered; 0 for one row. */
  readonly rowSpacing: number;
  readonly edgeDistance: number;
  readonly holeDiameter: number;
  readonly boltDiameter: number;
  /** Of one bolt in the shear plane. */
  readonly shearArea: number;
  readonly rootDiameter: number;
  readonly pitch: number;
  /** Least major diameter of the bolt's thread, greatest pitch diameter of the closure's. */
  readonly externalMajorMin: number;
  readonly internalPitchMax: number;
  readonly engagement: number;
  /** From the holes in the closure to its inner face; two bolt diameters where left out. */
  readonly closureEdgeDistance?: number | undefined;
  /** Arm that bends the bolts; zero for none. */
  readonly bendingArm: number;
  readonly preload: number;
  /** Given, or computed from the positionTolerance. */
  readonly shareFactor: number | undefined;
  readonly positionTolerance: number;
  /** Of bolts, case and closure; needed for a positionTolerance. */
  readonly moduli: readonly [bolt: number, wall: number, closure: number];
  /** The load at which a hole yields in bearing and lets the other bolts take their share. */
  readonly bearingYieldStress: number;
  /** From the seal to the holes; undefined where the full hoop stress is taken. */
  readonly sealToHoles: number | undefined;
  readonly poissonRatio: number;
}

/** What a joint sees, in SI. */
export interface JointStressesSi {
  readonly endForce: number;
  readonly shareFactor: number;
  /** Of the worst bolt. */
  readonly boltLoad: number;
  readonly boltShear: number;
  readonly caseBearing: number;
  readonly closureBearing: number;
  /** Of the bolts themselves, on the thinner of what they bear on. */
  readonly boltBearing: number;
  /** Planes from the edge of the hole. */
  readonly tearOut: number;
  /** Planes at 40°. */
  readonly tearOutLug: number;
  /** Through the inner face of the closure, planes from the edge of the hole; infinite where nothing is left. */
  readonly closureTearOut: number;
  readonly netSection: number;
  readonly netSectionConcentration: number;
  readonly threadShear: number;
  /** Pull of one bolt on the threads of the closure. */
  readonly threadLoad: number;
  /** Bending with shear; zero where nothing bends the bolts. */
  readonly boltBending: number;
  readonly hoop: number;
  readonly longitudinal: number;
  /** What is left of the hoop stress at the holes. */
  readonly hoopFraction: number;
}

/** The angle of the planes in lug practice. */
export const lugAngle = (40 * Math.PI) / 180;

/**
 * Every stress of a radial-bolt joint on plain SI numbers, for embedding; checks nothing.
 *
 * @example jointStressesSi({ pressure: 1e6, sealDiameter: 0.1, outsideDiameter: 0.11, wall: 0.005, count: 10, rows: 1, rowSpacing: 0, edgeDistance: 0.012, holeDiameter: 0.006, boltDiameter: 0.006, shearArea: 2e-5, rootDiameter: 0.0048, pitch: 0.001, externalMajorMin: 0.0058, internalPitchMax: 0.0055, engagement: 0.009, bendingArm: 0, preload: 0, shareFactor: 1, positionTolerance: 0, moduli: [2e11, 7e10, 7e10], bearingYieldStress: 3e8, sealToHoles: undefined, poissonRatio: 0.33 }).endForce // => 7853.981634
 */
export function jointStressesSi(joint: JointSi): JointStressesSi {
  const { pressure, outsideDiameter, wall, holeDiameter, boltDiameter: diameter, edgeDistance } = joint;
  const bolts = joint.count * joint.rows;
  const endForce = closureForce.si({ pressure, sealDiameter: joint.sealDiameter });
  const equal = endForce / bolts;
  const shareFactor = joint.shareFactor ?? shareFrom(joint, endForce, bolts);
  const boltLoad = equal * shareFactor;
  // Bearing is what yields to level the loads of misplaced holes: it takes the equal share. A share that is given counts.
  const bearingLoad = joint.shareFactor === undefined ? equal : boltLoad;
  const thinner = Math.min(wall, joint.engagement);
  const boltShear = boltShearStress.si({ load: boltLoad, area: joint.shearArea });
  // Written out rather than spread: an object that is spread and added to takes microseconds to make.
  const tearOut = (planeAngle: number): number =>
    tearOutStress.si({ load: boltLoad, edgeDistance, holeDiameter, thickness: wall, planeAngle });
  const bending =
    joint.bendingArm > 0
      ? boltBendingStress.si({ load: boltLoad, arm: joint.bendingArm, diameter: joint.rootDiameter })
      : 0;
  // A bolt that tilts under its shear pulls on its threads; its shear load bounds that pull.
  const threadLoad = Math.max(joint.preload, boltLoad);
  const outsideRadius = outsideDiameter / 2;
  const insideRadius = outsideRadius - wall;
  const hoopFraction = hoopLeft(joint);
  return {
    endForce,
    shareFactor,
    boltLoad,
    boltShear,
    caseBearing: bearingStress.si({ load: bearingLoad, diameter, thickness: wall }),
    closureBearing: bearingStress.si({ load: bearingLoad, diameter, thickness: joint.engagement }),
    boltBearing: bearingStress.si({ load: bearingLoad, diameter, thickness: thinner }),
    tearOut: tearOut(0),
    tearOutLug: tearOut(lugAngle),
    closureTearOut: throughClosure(joint, boltLoad),
    netSection: netTension(joint, endForce),
    netSectionConcentration: holeStressConcentration.si({
      holeDiameter,
      width: (Math.PI * (outsideDiameter - wall)) / joint.count,
    }),
    threadLoad,
    threadShear: threadLoad / internalThreadShearArea.si(joint),
    boltBending: bending > 0 ? combinedBoltStress.si({ bending, shear: boltShear }) : 0,
    hoop: hoopFraction * lameHoopStress.si({ pressure, insideRadius, outsideRadius, radius: insideRadius }),
    longitudinal: lameLongitudinalStress.si({ pressure, insideRadius, outsideRadius }),
    hoopFraction,
  };
}

// The bolts push towards the pressure, and the metal between the tapped holes and the inner face holds them.
function throughClosure(joint: JointSi, load: number): number {
  const { boltDiameter, engagement, closureEdgeDistance = 2 * boltDiameter } = joint;
  if (closureEdgeDistance <= boltDiameter / 2) return Number.POSITIVE_INFINITY;
  return tearOutStress.si({
    load,
    edgeDistance: closureEdgeDistance,
    holeDiameter: boltDiameter,
    thickness: engagement,
    planeAngle: 0,
  });
}

// The row nearest the pressure sees the whole load; the zigzag to the next row may leave less of the wall. Holes that leave
// nothing of it are an infinite stress.
function netTension(joint: JointSi, load: number): number {
  const { outsideDiameter, wall, count, holeDiameter, rowSpacing } = joint;
  const straight = netSectionStress.si({ load, outsideDiameter, wall, count, holeDiameter });
  if (joint.rows === 1) return straight;
  const zigzag = staggeredNetSectionStress.si({
    load,
    outsideDiameter,
    wall,
    count,
    holeDiameter,
    rowSpacing,
  });
  return zigzag > 0 ? Math.max(straight, zigzag) : Number.POSITIVE_INFINITY;
}

// The worst bolt carries no more than what makes its hole yield: from there the others take over.
function shareFrom(joint: JointSi, endForce: number, bolts: number): number {
  if (joint.positionTolerance === 0) return 1;
  const [boltModulus, wallModulus, closureModulus] = joint.moduli;
  const { boltDiameter: diameter, wall, engagement, positionTolerance } = joint;
  const stiffness = boltStiffness.si({
    diameter,
    boltModulus,
    wall,
    wallModulus,
    engagement,
    closureModulus,
  });
  const elastic = boltShareFactor.si({ load: endForce, count: bolts, stiffness, positionTolerance });
  const yielding = (joint.bearingYieldStress * diameter * wall * bolts) / endForce;
  return Math.max(1, Math.min(elastic, yielding));
}

// Beam on an elastic foundation, pressure up to the seal: beyond it the radial growth, and with it the hoop stress, stays
// below √2·e^(−z/λ) of the full one, wherever the tube ends (Hetényi, Beams on Elastic Foundation, from memory).
function hoopLeft({ sealToHoles, outsideDiameter, wall, poissonRatio }: JointSi): number {
  if (sealToHoles === undefined) return 1;
  const zone = edgeLength.si({ radius: (outsideDiameter - wall) / 2, wall, poissonRatio });
  return Math.min(1, Math.SQRT2 * Math.exp(-sealToHoles / zone));
}
