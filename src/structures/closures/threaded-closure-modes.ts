import { findRoot } from '../../numerics';
import { fromSiValue, MeopError, unitFor } from '../../units';
import { given, type Step, step } from '../failure-mode/calculation';
import type { PressureDrivenMode } from '../failure-mode/failure-mode';
import { materialMode, type StressedPart } from '../material-mode';
import { cutWallModes } from './cut-wall-modes';
import { type ThreadedClosureSi, threadAt } from './thread-at';
import { proportionalStress } from './thread-opening';

/** The modes of a threaded closure, and what they come from. */
export interface ThreadedClosureModes {
  readonly modes: readonly PressureDrivenMode[];
  readonly load: Step;
  readonly opening: Step;
  /** Gauge chamber pressure [Pa] at which the threads disengage, where that is not above the pressure. */
  readonly disengagement: number | undefined;
}

/**
 * The modes of a threaded closure: shear of both threads, tension, folding and hoop of the wall that they leave. Where the
 * threads disengage before the pressure is reached, their stress just before, in proportion from there on, and the
 * disengagement as a mode.
 */
export function threadedClosureModes(
  closure: ThreadedClosureSi,
  ofCase: StressedPart,
  ofClosure: StressedPart,
): ThreadedClosureModes {
  const { pressure } = ofCase;
  const now = threadAt(closure, pressure);
  const disengagement = now.shear === undefined ? disengagementPressure(closure, pressure) : undefined;
  const last = disengagement === undefined ? now : threadAt(closure, disengagement);
  const shear = (of: 'ofCase' | 'ofClosure'): Step => {
    const known = last.shear?.[of];
    if (known === undefined) throw noThread(closure, last.opening);
    return disengagement === undefined
      ? known
      : step(proportionalStress, { stress: known, pressure, at: disengagement });
  };
  const failure = (of: 'ofCase' | 'ofClosure', applied: number) => (strength: number) =>
    shearFailurePressure({ closure, of, applied, strength, pressure });
  const [caseShear, closureShear] = [shear('ofCase'), shear('ofClosure')];
  const inCase = { calculation: caseShear, failurePressure: failure('ofCase', caseShear.value) };
  const onClosure = { calculation: closureShear, failurePressure: failure('ofClosure', closureShear.value) };
  const { insideRadius, outsideRadius, thread } = closure;
  return {
    modes: [
      materialMode(ofCase, { id: 'case-thread-shear-yield', property: 'shear yield', ...inCase }),
      materialMode(ofCase, { id: 'case-thread-shear', property: 'shear ultimate', ...inCase }),
      materialMode(ofClosure, { id: 'closure-thread-shear-yield', property: 'shear yield', ...onClosure }),
      materialMode(ofClosure, { id: 'closure-thread-shear', property: 'shear ultimate', ...onClosure }),
      ...cutWallModes(ofCase, {
        cut: 'thread',
        load: now.load,
        hoop: now.hoop,
        insideRadius,
        outsideRadius,
        // The flanks bear at the pitch diameter.
        arm: (outsideRadius + insideRadius - thread.pitchDiameter.si) / 2,
      }),
      ...(disengagement === undefined ? [] : [disengagementMode(ofCase, disengagement)]),
    ],
    load: now.load,
    opening: last.opening,
    disengagement,
  };
}

/** The threads no longer meet: as certain as a broken part. */
const disengagementMode = (
  { part, pressure, factors, unit }: StressedPart,
  disengagement: number,
): PressureDrivenMode => ({
  id: 'thread-disengagement',
  part,
  limit: 'disengagement',
  calculation: given('gauge pressure', pressure),
  allowable: given('gauge pressure', disengagement),
  factor: factors.ultimate,
  pressure,
  unit,
  sources: ['Geometry of the case as it opens: pressure, flanks and heat'],
  cautions: [
    `The case grows until the threads disengage at ${fromSiValue(disengagement, 'gauge pressure', unitFor('gauge pressure', unit.text))}, so the other thread margins at MEOP are too high. Use a coarser thread or a thicker wall.`,
  ],
});

/** The error for a case that grows beyond its thread. */
export const noThread = ({ thread }: ThreadedClosureSi, opening: Step): MeopError =>
  new MeopError({
    code: 'out-of-domain',
    procedure: 'reviewThreadedClosure',
    path: 'thread',
    given: thread.name,
    problem: `the case grows by ${Number((opening.value * 1000).toPrecision(4))} mm and the threads of ${thread.name} disengage`,
    remedy: 'Use a coarser thread or a thicker wall',
  });

const least = 1; // [Pa]

/** The gauge pressure [Pa] up to which the threads meet. */
function disengagementPressure(closure: ThreadedClosureSi, pressure: number): number {
  const start = threadAt(closure, least);
  if (start.shear === undefined) throw noThread(closure, start.opening);
  return findRoot((p) => (threadAt(closure, p).shear === undefined ? 1 : -1), {
    lower: least,
    upper: pressure,
    tolerance: 1e-9 * pressure,
  }).lower;
}

interface ThreadShear {
  readonly closure: ThreadedClosureSi;
  readonly of: 'ofCase' | 'ofClosure';
  /** At the pressure [Pa]. */
  readonly applied: number;
  readonly strength: number;
  readonly pressure: number;
}

/** The gauge pressure [Pa] at which a thread shears: the more the case opens the less thread is left, so sooner than in proportion. */
function shearFailurePressure({ closure, of, applied, strength, pressure }: ThreadShear): number {
  const over = (p: number): number => {
    const stress = threadAt(closure, p).shear?.[of];
    return stress === undefined ? 1 : stress.value / strength - 1;
  };
  const upper = Math.max(pressure, (pressure * strength) / applied);
  // A case that does not open, but for rounding.
  if (over(upper) <= 0) return upper;
  return findRoot(over, { lower: least, upper, tolerance: 1e-9 * upper }).root;
}
