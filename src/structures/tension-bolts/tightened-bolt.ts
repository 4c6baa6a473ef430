import type { Quantity } from '../../units';
import { type Step, step } from '../failure-mode/calculation';
import { type NutFactor, preloadFromTorque } from '../threads/preload';
import type { ThreadGeometry } from '../threads/thread-geometry';
import { finishOf, methodOf } from './axial-bolts';
import { threadTorque, threadTorsionStress } from './combined-bolt-stress';
import { maximumPreload } from './preload-range';
import type { TighteningMethod } from './tightening-method';

/** How a bolt is tightened: by a preload or by a torque. */
export interface Tightening {
  readonly preload: Quantity<'force'> | undefined;
  readonly torque: Quantity<'torque'> | undefined;
  readonly finish: NutFactor | undefined;
  readonly tightening: TighteningMethod | undefined;
}

/** A bolt as tightened. */
export interface TightenedBolt {
  readonly nominal: Step | number;
  /** With the scatter of the method. */
  readonly max: Step;
  /** Torsion that tightening leaves at maximum preload. */
  readonly torsion: Step;
}

/** A bolt as its method of tightening leaves it. */
export function tightenedBolt(
  { preload, torque, finish, tightening }: Tightening,
  thread: ThreadGeometry,
): TightenedBolt {
  const { scatter, method } = methodOf(tightening);
  const nominal =
    torque === undefined
      ? (preload?.si ?? 0)
      : step(preloadFromTorque, {
          torque: torque.si,
          nutFactor: finishOf(finish).value,
          diameter: thread.majorDiameter.si,
        });
  const max = step(maximumPreload, { preload: nominal, scatter });
  return {
    nominal,
    max,
    torsion: step(threadTorsionStress, {
      torque: step(threadTorque, {
        preload: max,
        pitch: thread.pitch.si,
        pitchDiameter: thread.pitchDiameter.si,
      }),
      kept: method === 'hydraulic tensioner' ? 0 : 0.5,
      rootDiameter: thread.rootDiameter.si,
    }),
  };
}
