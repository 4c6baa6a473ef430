import type { QuantityInput } from '../../units';
import type { Material, MaterialName } from '../materials';
import type { JointFactors } from './joint-factors';

/** What the case and closure are, whichever bolts hold them. */
export interface JointParts {
  /** Maximum expected operating pressure, above ambient. */
  readonly pressure: QuantityInput<'gauge pressure'>;
  readonly caseOutsideDiameter: QuantityInput<'length'>;
  readonly caseWall: QuantityInput<'length'>;
  readonly caseMaterial: Material | MaterialName;
  readonly closureMaterial: Material | MaterialName;
  /** The pressure acts on this diameter; the bore of the case where left out. */
  readonly sealDiameter?: QuantityInput<'length'>;
  /** Where the bolts are; less than the bore leaves a gap that bends them. The bore where left out. */
  readonly closureDiameter?: QuantityInput<'length'>;
  /** Radial thickness of metal in the closure that a bolt can go into; solid to the axis where left out. */
  readonly closureThickness?: QuantityInput<'length'>;
  /** From the holes in the closure to its inner face, which their bolts push towards; 2 diameters or more where left out. */
  readonly closureEdgeDistance?: QuantityInput<'length'>;
  /** Such as `'8.8'`, `'A2-70'`, `'grade 8'`. */
  readonly boltClass: string;
  /** What crosses the gap between case and closure: threads (their stress area) unless surely the shank. */
  readonly shearPlane?: 'thread' | 'root' | 'shank';
  /** A soft washer, or none that clamps, lets the head turn and bends the bolt; `'hard'` where left out. */
  readonly washer?: 'hard' | 'soft';
  /** How far one hole may lie out of line with the others: loads its bolt first. Zero (drilled together) where left out. */
  readonly positionTolerance?: QuantityInput<'length'>;
  /** The worst bolt's load over the equal share, instead of a tolerance; 2 takes half of the bolts as idle. */
  readonly shareFactor?: number;
  /** Of each bolt, from its torque; pulls on the threads of the closure. */
  readonly preload?: QuantityInput<'force'>;
  /** From the seal to the holes: beyond the seal the hoop stress dies away. The full hoop stress where left out. */
  readonly sealToHoles?: QuantityInput<'length'>;
  /** Of the metal at the bolts; room temperature where left out. */
  readonly caseTemperature?: QuantityInput<'temperature'>;
  readonly closureTemperature?: QuantityInput<'temperature'>;
  /** Time at these temperatures; half an hour where left out. */
  readonly exposure?: QuantityInput<'time'>;
  readonly factors?: JointFactors;
}

/** A closure held in a case by radial bolts. */
export interface RadialBoltJoint extends JointParts {
  /** Such as `'M6'` or `'1/4-20'`. */
  readonly thread: string;
  /** Bolts in a row. */
  readonly count: number;
  /** 1 where left out. */
  readonly rows?: number;
  readonly rowSpacing?: QuantityInput<'length'>;
  /** From the end of the case to the centres of the nearest row. */
  readonly edgeDistance: QuantityInput<'length'>;
  /** In the case; the bolt's diameter where left out. */
  readonly holeDiameter?: QuantityInput<'length'>;
  /** Full threads in the closure; 1.5 bolt diameters where left out. */
  readonly engagement?: QuantityInput<'length'>;
}
