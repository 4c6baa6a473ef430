import type { HeadSi } from './fastener-type';

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
  /** What the heads take from the wall; nothing where left out. */
  readonly head?: HeadSi | undefined;
  /** Plain pins, which have no thread; false where left out. */
  readonly arePins?: boolean;
  readonly boltDiameter: number;
  /** Of one bolt in the shear plane. */
  readonly shearArea: number;
  readonly rootDiameter: number;
  readonly pitch: number;
  /** Minimum major diameter of the thread of the bolt, maximum pitch diameter of that of the closure. */
  readonly externalMajorMin: number;
  readonly internalPitchMax: number;
  readonly engagement: number;
  /** From the holes in the closure to its inner face; two bolt diameters where left out. */
  readonly closureEdgeDistance?: number | undefined;
  /** Radial gap between wall and closure; none where left out. */
  readonly gap?: number | undefined;
  /** Arm that bends the bolts; zero for none. */
  readonly bendingArm: number;
  readonly preload: number;
  /** Given, or computed from the position tolerance. */
  readonly shareFactor: number | undefined;
  readonly positionTolerance: number;
  /** Of bolts, case and closure; needed for a position tolerance. */
  readonly moduli: readonly [bolt: number, wall: number, closure: number];
  /** The load at which a hole yields in bearing and lets the other bolts take their share. */
  readonly bearingYieldStress: number;
  /** From the seal to the holes; `undefined` for the full hoop stress. */
  readonly sealToHoles: number | undefined;
  readonly poissonRatio: number;
}
