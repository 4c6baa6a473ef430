import { type Step, step } from '../failure-mode/calculation';
import { methodOf } from './axial-bolts';
import type { JointStiffness } from './joint-stiffness';
import { maximumPreload, minimumPreload } from './preload-range';
import type { TensionBoltJointValues } from './tension-bolt-joint';
import { thermalPreloadChange } from './thermal-preload';
import { tightenedBolt } from './tightened-bolt';

/** The preload of a bolt with its limits. */
export interface JointPreload {
  /** As tightened. */
  readonly nominal: Step | number;
  /** With scatter and thermal gain. */
  readonly max: Step;
  /** Less scatter, relaxation and thermal loss. */
  readonly min: Step;
  /** Torsion that tightening leaves. */
  readonly torsion: Step;
  readonly thermalGain: Step | undefined;
  readonly thermalLoss: Step | undefined;
  /** Whether temperatures differ from that of assembly and the expansion is not known. */
  readonly isHeatUnknown: boolean;
}

/** The preload of the bolts of a joint. */
export function jointPreload(joint: TensionBoltJointValues, stiffness: JointStiffness): JointPreload {
  const { bolts } = joint;
  const { nominal, torsion } = tightenedBolt(bolts, bolts.thread);
  const { scatter } = methodOf(bolts.tightening);
  const changes = thermalChanges(joint, stiffness);
  const gained = largest(changes ?? [], 1);
  const lost = largest(changes ?? [], -1);
  return {
    nominal,
    max: step(maximumPreload, { preload: nominal, scatter, ...(gained && { thermalChange: gained }) }),
    min: step(minimumPreload, {
      preload: nominal,
      scatter,
      relaxation: bolts.relaxation,
      ...(lost && { thermalChange: lost }),
    }),
    torsion,
    thermalGain: gained,
    thermalLoss: lost,
    isHeatUnknown: changes === undefined,
  };
}

/** Coefficients of linear expansion of bolts (from memory). */
const expansions = { steel: 12.3e-6, austenitic: 16e-6 };

/**
 * Changes of preload with the joint hot, with the bolts still cold in hot parts, and with all of it cold; undefined where the
 * expansion of the clamped part is not known.
 */
function thermalChanges(
  joint: TensionBoltJointValues,
  { bolt, members, grip }: JointStiffness,
): readonly Step[] | undefined {
  const { clampedTemperature, tappedTemperature, boltTemperature, coldest } = joint;
  const start = joint.assemblyTemperature.si;
  const parts = [clampedTemperature, tappedTemperature].flatMap((one) => (one === undefined ? [] : [one.si]));
  const hot = parts.length === 0 ? undefined : Math.max(...parts);
  if (hot === undefined && coldest === undefined && boltTemperature === undefined) return [];
  const memberExpansion = joint.clampedMaterial.thermalExpansion?.value.si;
  if (memberExpansion === undefined || members === undefined) return undefined;
  const isAustenitic = /^A[24]-/.test(joint.bolts.boltClass);
  const change = (ofMembers: number, ofBolt: number): Step =>
    step(thermalPreloadChange, {
      boltStiffness: bolt,
      memberStiffness: members,
      grip,
      memberExpansion,
      memberRise: ofMembers - start,
      boltExpansion: joint.boltExpansion?.si ?? expansions[isAustenitic ? 'austenitic' : 'steel'],
      boltRise: ofBolt - start,
    });
  const warmest = hot ?? start;
  return [
    change(warmest, boltTemperature?.si ?? warmest),
    ...(hot === undefined || boltTemperature !== undefined ? [] : [change(hot, start)]),
    ...(coldest === undefined ? [] : [change(coldest.si, coldest.si)]),
  ];
}

/** The largest gain (1) or loss (−1) of several changes. */
function largest(changes: readonly Step[], sign: 1 | -1): Step | undefined {
  const [most] = [...changes].sort((a, b) => sign * (b.value - a.value));
  return most !== undefined && sign * most.value > 0 ? most : undefined;
}
