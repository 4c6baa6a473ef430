import { closureForce } from '../closure-force';
import { type Step, step } from '../failure-mode/calculation';
import type { Material } from '../materials';
import { radialDisplacement } from '../shell/growth';
import { lameHoopStress, lameRadialStress } from '../shell/lame';
import type { ThreadGeometry } from '../threads';
import { externalThreadShearArea, internalThreadShearArea } from '../threads/shear-area';
import { threadShearStress } from '../threads/thread-shear';
import { openedDiameter, pressureInThread, threadOpening } from './thread-opening';
import { threadRadialPressure } from './thread-radial-pressure';

/** A closure that screws into the case, read and in SI. */
export interface ThreadedClosureSi {
  readonly thread: ThreadGeometry;
  readonly engagement: number;
  readonly sealDiameter: number;
  /** Of the roots of the thread, or of a groove deeper than those. */
  readonly insideRadius: number;
  readonly outsideRadius: number;
  readonly tube: Material;
  readonly closure: Material;
  /** Above room temperature [K]. */
  readonly caseRise: number;
  readonly closureRise: number;
}

/** What a threaded closure sees at a pressure, each from the pressure on. */
export interface ThreadAt {
  readonly load: Step;
  /** Hoop stress of the case at the thread. */
  readonly hoop: Step;
  /** How far the case opens in diameter against the closure. */
  readonly opening: Step;
  /** Shear stress of the thread in the case, and of that on the closure; undefined where they no longer meet. */
  readonly shear: { readonly ofCase: Step; readonly ofClosure: Step } | undefined;
}

/** Loads and stresses at a gauge chamber pressure [Pa]. */
export function threadAt(closure: ThreadedClosureSi, pressure: number): ThreadAt {
  const { thread, engagement, insideRadius, outsideRadius } = closure;
  const load = step(closureForce, { pressure, sealDiameter: closure.sealDiameter });
  const flankPressure = step(threadRadialPressure, {
    load,
    pitchDiameter: thread.pitchDiameter.si,
    engagement,
  });
  const inside = step(pressureInThread, { pressure, flankPressure });
  const cylinder = { pressure: inside, insideRadius, outsideRadius, radius: insideRadius };
  const hoop = step(lameHoopStress, cylinder);
  const opening = openingOf(closure, hoop, () => step(lameRadialStress, cylinder));
  return { load, hoop, opening, shear: shearOf(closure, load, opening) };
}

function openingOf(
  { tube, closure, insideRadius, caseRise, closureRise }: ThreadedClosureSi,
  hoop: Step,
  radial: () => Step,
): Step {
  const { elasticModulus, poissonRatio } = tube;
  const isHeated = caseRise !== 0 || closureRise !== 0;
  const [ofCase, ofClosure] = [tube.thermalExpansion, closure.thermalExpansion];
  return step(threadOpening, {
    growth:
      elasticModulus && poissonRatio
        ? step(radialDisplacement, {
            radius: insideRadius,
            elasticModulus: elasticModulus.value.si,
            poissonRatio: poissonRatio.value,
            hoop,
            radial: radial(),
            longitudinal: 0, // tension along the tube would draw it in again
          })
        : 0,
    diameter: 2 * insideRadius,
    ...(isHeated &&
      ofCase &&
      ofClosure && {
        caseExpansion: ofCase.value.si,
        caseRise,
        closureExpansion: ofClosure.value.si,
        closureRise,
      }),
  });
}

function shearOf({ thread, engagement }: ThreadedClosureSi, load: Step, opening: Step): ThreadAt['shear'] {
  const { limits, pitch } = thread;
  const opened = (diameter: number): Step => step(openedDiameter, { diameter, opening });
  const sizes = { engagement, pitch: pitch.si };
  const internalMinorMax = opened(limits.internalMinorMax.si);
  const ofCase = step(internalThreadShearArea, {
    ...sizes,
    externalMajorMin: limits.externalMajorMin.si,
    internalPitchMax: opened(limits.internalPitchMax.si),
  });
  const ofClosure = step(externalThreadShearArea, {
    ...sizes,
    internalMinorMax,
    externalPitchMin: limits.externalPitchMin.si,
  });
  const meets =
    ofCase.value > 0 && ofClosure.value > 0 && internalMinorMax.value < limits.externalMajorMin.si;
  return meets
    ? {
        ofCase: step(threadShearStress, { load, area: ofCase }),
        ofClosure: step(threadShearStress, { load, area: ofClosure }),
      }
    : undefined;
}
