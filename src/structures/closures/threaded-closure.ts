import type { QuantityInput } from '../../units';
import type { FieldsOf } from '../../units/known-fields';
import type { JointFactors } from '../joint';
import type { Material, MaterialName } from '../materials';
import type { ThreadGeometry } from '../threads';

/** A closure that screws into the end of the case. */
export interface ThreadedClosure {
  readonly pressure: QuantityInput<'gauge pressure'>;
  /** A name as `threadGeometry` takes it, or a `customThread`. */
  readonly thread: string | ThreadGeometry;
  /** Full threads engaged: take off the chamfers, about one pitch at each end. */
  readonly engagement: QuantityInput<'length'>;
  readonly caseOutsideDiameter: QuantityInput<'length'>;
  readonly caseMaterial: Material | MaterialName;
  readonly closureMaterial: Material | MaterialName;
  /** The pressure acts on this diameter; the major diameter of the thread where left out. */
  readonly sealDiameter?: QuantityInput<'length'>;
  /** Of the runout groove, where it is deeper than the thread. */
  readonly reliefDiameter?: QuantityInput<'length'>;
  /** Of the metal at the thread; room temperature where left out. */
  readonly caseTemperature?: QuantityInput<'temperature'>;
  readonly closureTemperature?: QuantityInput<'temperature'>;
  /** Time at these temperatures; half an hour where left out. */
  readonly exposure?: QuantityInput<'time'>;
  /** 1.5 and 2.0 where left out (common practice). */
  readonly factors?: JointFactors;
}

/** The fields of a threaded closure. */
export const threadedClosureFields: FieldsOf<ThreadedClosure> = {
  pressure: 'required',
  thread: 'required',
  engagement: 'required',
  caseOutsideDiameter: 'required',
  caseMaterial: 'required',
  closureMaterial: 'required',
  sealDiameter: 'optional',
  reliefDiameter: 'optional',
  caseTemperature: 'optional',
  closureTemperature: 'optional',
  exposure: 'optional',
  factors: 'optional',
};
