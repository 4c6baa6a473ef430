import {
  type Explanation,
  fromSiValue,
  type NamedKind,
  type Quantity,
  type Unit,
  unitFor,
} from '../../units';
import { closureForce } from '../closure-force';
import { marginOfSafety } from '../margin';
import { lameHoopStress } from '../shell/lame';
import { internalThreadShearArea } from '../threads/shear-area';
import { bearingStress } from './bearing';
import { boltBendingStress, combinedBoltStress } from './bolt-bending';
import { boltShearStress } from './bolt-shear';
import type { ModeRule } from './joint-modes';
import { type JointSi, type JointStressesSi, lugAngle } from './joint-stresses';
import { boltShareFactor, boltStiffness } from './load-sharing';
import { netSectionStress } from './net-section';
import { staggeredNetSectionStress } from './staggered-net-section';
import { tearOutStress } from './tear-out';

/** A mode written out as a hand calculation, step by step. */
export interface JointExplanation {
  readonly steps: readonly Explanation[];
  toString(): string;
  toHtml(): string;
}

/** The numbers an explanation is written from. */
export interface ExplainedMode {
  readonly rule: ModeRule;
  readonly joint: JointSi;
  readonly stresses: JointStressesSi;
  readonly allowable: number;
  readonly factor: number;
  /** Metric or inch, as the pressure was given. */
  readonly displayUnit: Unit;
}

/** The steps from the pressure to the margin of one mode. */
export function explainMode(mode: ExplainedMode): JointExplanation {
  const { rule, joint, stresses, displayUnit } = mode;
  const show = <const K extends NamedKind>(kind: K, si: number, metric: string, inch: string): Quantity<K> =>
    fromSiValue<K>(si, kind, unitFor(kind, displayUnit.us ? inch : metric));
  const length = (si: number): Quantity<'length'> => show('length', si, 'mm', 'in');
  const force = (si: number): Quantity<'force'> => show('force', si, 'N', 'lbf');
  const stress = (si: number): Quantity<'stress'> => show('stress', si, 'MPa', 'psi');
  const area = (si: number): Quantity<'area'> => show('area', si, 'mm^2', 'in^2');
  const pressure = show('gauge pressure', joint.pressure, 'MPa', 'psi');
  const { wall, holeDiameter, outsideDiameter } = joint;
  const count = joint.count * joint.rows;

  const end = (): Explanation => closureForce.explain({ pressure, sealDiameter: length(joint.sealDiameter) });
  const bearing = (thickness: number): Explanation =>
    bearingStress.explain({
      ...(joint.shareFactor === undefined ? { load: force(stresses.endForce), count } : load),
      diameter: length(joint.boltDiameter),
      thickness: length(thickness),
    });
  // A worst bolt that carries more than its share is explained on its own load.
  const shared = stresses.shareFactor === 1;
  const load = shared
    ? { load: force(stresses.endForce), count }
    : { load: force(stresses.boltLoad), count: 1 };
  const sharing = (): readonly Explanation[] => {
    if (shared || joint.shareFactor !== undefined) return [];
    const [boltModulus, wallModulus, closureModulus] = joint.moduli.map((si) =>
      show('stress', si, 'GPa', 'Msi'),
    );
    const stiffness = {
      diameter: length(joint.boltDiameter),
      boltModulus,
      wall: length(wall),
      wallModulus,
      engagement: length(joint.engagement),
      closureModulus,
    };
    return [
      boltStiffness.explain(stiffness),
      boltShareFactor.explain({
        load: force(stresses.endForce),
        count,
        stiffness: boltStiffness(stiffness),
        positionTolerance: length(joint.positionTolerance),
      }),
    ];
  };
  const shear = (): Explanation => boltShearStress.explain({ ...load, area: area(joint.shearArea) });
  const tearOut = (planeAngle: number): Explanation =>
    tearOutStress.explain({
      ...load,
      edgeDistance: length(joint.edgeDistance),
      holeDiameter: length(holeDiameter),
      thickness: length(wall),
      planeAngle: show('angle', planeAngle, 'deg', 'deg'),
    });

  const workings: { readonly [S in keyof JointStressesSi]?: () => readonly Explanation[] } = {
    caseBearing: () => [end(), bearing(wall)],
    closureBearing: () => [end(), bearing(joint.engagement)],
    boltBearing: () => [end(), bearing(Math.min(wall, joint.engagement))],
    boltShear: () => [end(), ...sharing(), shear()],
    tearOut: () => [end(), ...sharing(), tearOut(0)],
    tearOutLug: () => [end(), ...sharing(), tearOut(lugAngle)],
    closureTearOut: () => [
      end(),
      ...sharing(),
      tearOutStress.explain({
        ...load,
        edgeDistance: length(joint.closureEdgeDistance ?? 2 * joint.boltDiameter),
        holeDiameter: length(joint.boltDiameter),
        thickness: length(joint.engagement),
        planeAngle: show('angle', 0, 'deg', 'deg'),
      }),
    ],
    netSection: () => {
      const ring = {
        load: force(stresses.endForce),
        outsideDiameter: length(outsideDiameter),
        wall: length(wall),
        count: joint.count,
        holeDiameter: length(holeDiameter),
      };
      const straight = netSectionStress(ring).si >= stresses.netSection * (1 - 1e-12);
      return [
        end(),
        straight
          ? netSectionStress.explain(ring)
          : staggeredNetSectionStress.explain({ ...ring, rowSpacing: length(joint.rowSpacing) }),
      ];
    },
    boltBending: () => {
      const bending = {
        load: force(stresses.boltLoad),
        arm: length(joint.bendingArm),
        diameter: length(joint.rootDiameter),
      };
      const both = { bending: boltBendingStress(bending), shear: stress(stresses.boltShear) };
      return [
        end(),
        ...sharing(),
        shear(),
        boltBendingStress.explain(bending),
        combinedBoltStress.explain(both),
      ];
    },
    threadShear: () => {
      const stripping = {
        engagement: length(joint.engagement),
        pitch: length(joint.pitch),
        externalMajorMin: length(joint.externalMajorMin),
        internalPitchMax: length(joint.internalPitchMax),
      };
      const along = internalThreadShearArea(stripping).to(displayUnit.us ? 'in^2' : 'mm^2');
      return [
        end(),
        ...sharing(),
        internalThreadShearArea.explain(stripping),
        boltShearStress.explain({ load: force(stresses.threadLoad), count: 1, area: along }),
      ];
    },
    hoop: () => [
      lameHoopStress.explain({
        pressure,
        externalPressure: show('gauge pressure', 0, 'MPa', 'psi'),
        insideRadius: length(outsideDiameter / 2 - wall),
        outsideRadius: length(outsideDiameter / 2),
        radius: length(outsideDiameter / 2 - wall),
      }),
    ],
  };
  const steps = [
    ...(workings[rule.stress]?.() ?? []),
    marginOfSafety.explain({
      applied: stress(stresses[rule.stress]),
      allowable: stress(mode.allowable),
      factor: mode.factor,
    }),
  ];
  const carried =
    stresses.shareFactor === 1
      ? []
      : [
          `the worst bolt carries ${show('force', stresses.boltLoad, 'N', 'lbf')}, ${stresses.shareFactor.toFixed(3)} times the equal share${joint.shareFactor === undefined ? '; its hole yields before it carries more' : ', as given'}`,
        ];
  const text = (): string => [rule.mode, ...carried, ...steps.map(String)].join('\n');
  return {
    steps,
    toString: text,
    toHtml: () => steps.map((step) => step.toHtml()).join(''),
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
}
