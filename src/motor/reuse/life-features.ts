import {
  customThread,
  type FailureMargin,
  type FailureModeId,
  grooveBendingStress,
  grooveConcentration,
  type JointReview,
  type Material,
  type PartId,
  pinHoleStressConcentration,
  threadConcentration,
  threadGeometry,
} from '../../structures';
import { partAt } from '../../structures/failure-mode/part-name';
import { fromSiValue, unitOf } from '../../units';
import type { Motor } from '../document';
import type { Closure } from '../review/closure-heat';
import { narrowestCase, weakestCase } from '../review/worst-sizes';

/** A feature of a part: its nominal stress is that of a failure mode, which a notch multiplies. */
export interface LifeFeature {
  readonly part: PartId;
  readonly feature: string;
  readonly margin: FailureMargin;
  readonly material: Material;
  readonly notchFactor: number;
  readonly basis: string;
  /** True where the factor is an upper bound of the local stress and not an estimate. */
  readonly isBound: boolean;
}

/** What the features of a motor are made from: the motor at its worst-case limits, its margins and its joints. */
export interface FeatureSource {
  readonly motor: Motor;
  readonly margins: readonly FailureMargin[];
  readonly joints: Readonly<Partial<Record<'head' | 'aft', JointReview>>>;
}

interface Place extends FeatureSource {
  readonly end: 'head' | 'aft' | undefined;
  readonly closure: Closure | undefined;
  readonly margin: FailureMargin;
}

interface Notch {
  readonly feature: string;
  readonly factor: number;
  readonly basis: string;
  /** The part of the motor whose metal it is in. */
  readonly of: 'case' | 'closure';
  readonly isBound?: boolean;
}

const plain = (feature: string): Notch => ({ feature, factor: 1, basis: 'no notch', of: 'case' });

const cornerLeftOut = 'no notch; the corner at its root is not evaluated';

/** A bolt with clearance concentrates 35 to 50 % more than a closely fitting one. */
const clearance = 1.5;

/** The notch at the stress of a yield mode; the other modes have no life. */
const notches: Partial<Record<FailureModeId, (place: Place) => Notch | undefined>> = {
  'bore-hoop-yield': () => plain('bore, hoop stress'),
  'net-section-yield': boltHoles,
  'hole-row-hoop-yield': holesInHoop,
  'case-bearing-yield': contactEdge,
  'groove-wall-tension-yield': ringGroove,
  'groove-hoop-yield': () => plain('ring groove, hoop stress'),
  'thread-wall-tension-yield': threadRoot,
  'thread-hoop-yield': () => plain('thread of the case, hoop stress'),
  'tapped-end-hoop-yield': () => ({
    feature: 'tapped holes of the case, hoop stress',
    factor: smallHole,
    basis: 'small hole in a wall stressed in one direction; its thread is not evaluated',
    of: 'case',
  }),
  'flange-bending-yield': () => ({ ...plain('flange, bending'), basis: cornerLeftOut }),
  'flange-wall-bending-yield': () => ({ ...plain('wall next to the flange'), basis: cornerLeftOut }),
  'lip-bending-yield': () => ({ ...plain('lip of the seat, bending'), basis: cornerLeftOut, of: 'closure' }),
  'plate-bending-yield': ({ closure }) => ({
    feature: closure?.opening === undefined ? 'plate, bending' : 'edge of the opening, bending',
    factor: 1,
    basis:
      closure?.opening === undefined
        ? 'no notch in the plate; a corner at its rim is not evaluated'
        : 'the stress at the edge of the opening contains its concentration; a thread or a corner adds to it and is not evaluated',
    of: 'closure',
  }),
};

/** A hole in a wall that is stressed in one direction. */
const smallHole = 3;

function boltHoles({ motor, closure, end, joints }: Place): Notch | undefined {
  if (closure?.joint === undefined || end === undefined) return undefined;
  const { count, thread } = closure.joint;
  const { wall, outsideDiameter } = weakestCase(motor);
  const holeDiameter = closure.joint.holeDiameter.value;
  const width = fromSiValue<'length'>(
    (Math.PI * (outsideDiameter.si - wall.si)) / count,
    'length',
    unitOf('mm'),
  );
  const fitted = pinHoleStressConcentration.si({ holeDiameter: holeDiameter.si, width: width.si });
  const isLoose = holeDiameter.si > threadGeometry(thread).majorDiameter.si * 1.001;
  const share = joints[end]?.shareFactor ?? 1;
  return {
    feature: 'bolt holes of the case in tension',
    factor: fitted * (isLoose ? clearance : 1) * share,
    basis: [
      `loaded hole ${fitted.toPrecision(3)} on the net section`,
      ...(isLoose ? [`× ${clearance} for clearance (Shigley, figure A-15-12)`] : []),
      ...(share > 1 ? [`× ${share.toPrecision(3)} for the share of the worst bolt`] : []),
    ].join(' '),
    of: 'case',
  };
}

function holesInHoop({ margin, end, joints }: Place): Notch | undefined {
  const peak = end && joints[end]?.modes.find(({ id }) => id === margin.id)?.peak;
  return (
    peak && {
      feature: 'bolt holes of the case, hoop stress',
      factor: Math.max(1, peak.concentration),
      basis: 'small hole in a biaxially stressed wall, on the gross section',
      of: 'case',
    }
  );
}

// The finite-element model of a tube end with a rigid pin has its peak where the contact ends: a bound, since a real bolt gives way.
function contactEdge({ margin, end, joints }: Place): Notch | undefined {
  const peak = end && joints[end]?.modes.find(({ id }) => id === margin.id)?.peak;
  return (
    peak && {
      feature: 'edge of the contact of a bolt',
      factor: peak.concentration,
      basis: 'upper bound: finite-element model of one tube end with a rigid bolt, on the bearing stress',
      of: 'case',
      isBound: true,
    }
  );
}

function ringGroove({ motor, closure, margin }: Place): Notch | undefined {
  if (closure?.retainingRing === undefined) return undefined;
  const { wall } = weakestCase(motor);
  const { value, plusMinus } = closure.retainingRing.grooveDepth;
  const grooveDepth = fromSiValue<'length'>(value.si + plusMinus, 'length', unitOf('mm'));
  const rootRadius = closure.retainingRing.grooveRootRadius?.value;
  const concentration = grooveConcentration({ grooveDepth, wall, rootRadius });
  const tension = margin.applied.si;
  // The thrust comes in on the middle of the depth of the groove, half of the wall off the middle of what is left of it; a land
  // as short as its edge margin carries little of that moment. An upper bound.
  const bending = grooveBendingStress.si({ tension, arm: wall.si / 2, wall: wall.si - grooveDepth.si });
  const withBending = 1 + bending / tension;
  return {
    feature: 'root of the ring groove',
    factor: concentration.factor * withBending,
    basis: `groove ${concentration.factor.toPrecision(3)} × ${withBending.toPrecision(3)} for the bending of the wall under it, upper bound; ${concentration.provenance}`,
    of: 'case',
  };
}

function threadRoot({ motor, closure, margin }: Place): Notch | undefined {
  if (closure?.thread === undefined) return undefined;
  const { majorDiameter, pitch, reliefDiameter } = closure.thread;
  const { factor, source } = threadConcentration({ forming: 'cut' });
  const outside = narrowestCase(motor).si;
  // Roots as deep as a sharp V, as in the margins of the thread.
  const roots = majorDiameter.value.si + (pitch.value.si * Math.sqrt(3)) / 8;
  const inside = Math.max(roots, reliefDiameter?.value.si ?? 0);
  const flanks = customThread({ majorDiameter: majorDiameter.value, pitch: pitch.value }).pitchDiameter.si;
  const tension = margin.applied.si;
  const bending = grooveBendingStress.si({
    tension,
    arm: Math.max(0, (outside + inside) / 4 - flanks / 2),
    wall: (outside - inside) / 2,
  });
  const withBending = 1 + bending / tension;
  return {
    feature: 'thread run-out of the case',
    factor: factor * withBending,
    basis: `cut thread ${factor}, for steel screws, × ${withBending.toPrecision(3)} for the bending of the wall by the thrust of the flanks, upper bound; ${source}`,
    of: 'case',
  };
}

/** The features of all parts whose life at the local stress can be estimated. */
export function lifeFeatures(source: FeatureSource): readonly LifeFeature[] {
  return source.margins.flatMap((margin) => {
    const { end } = partAt(margin.part);
    const closure = end && source.motor.closures?.[end];
    const notch = notches[margin.id]?.({ ...source, margin, end, closure });
    if (notch === undefined || margin.failurePressure === undefined) return [];
    const material = notch.of === 'closure' ? closure?.material : source.motor.case.material;
    if (material === undefined) return [];
    const { feature, factor: notchFactor, basis, isBound = false } = notch;
    return [{ part: margin.part, feature, margin, material, notchFactor, basis, isBound }];
  });
}
