import type { Quantity, Unit } from '../../units';
import { given, numberOf, type Step } from '../failure-mode/calculation';
import type { PressureDrivenMode } from '../failure-mode/failure-mode';
import { type PlaceInOrder, placeInOrder } from '../failure-mode/failure-order';
import type { FailureModeId } from '../failure-mode/mode-name';
import type { PartId } from '../failure-mode/part-name';
import type { JointStrengths } from './joint-strengths';
import type { JointStresses, JointStressesSi } from './joint-stresses';

/** A stress of the joint that governs a mode. */
type ModeStress = Exclude<
  keyof JointStresses<number>,
  | 'endForce'
  | 'shareFactor'
  | 'boltLoad'
  | 'threadLoad'
  | 'netSectionConcentration'
  | 'headConcentration'
  | 'offsetSurface'
  | 'offset'
  | 'edgeZone'
  | 'longitudinal'
>;

/** The rule for a mode of the joint. */
export interface ModeRule {
  readonly id: FailureModeId;
  readonly stress: ModeStress;
  readonly strength: keyof JointStrengths;
  readonly limit: 'yield' | 'ultimate';
  /** What would fail: its temperature counts. */
  readonly of: 'case' | 'bolt' | 'closure';
  /** Its place in the failure order. */
  readonly order: PlaceInOrder;
}

type Row = readonly [
  id: FailureModeId,
  stress: ModeStress,
  strength: keyof JointStrengths,
  limit: ModeRule['limit'],
  of: ModeRule['of'],
];

// In the order of the load's way from case to closure.
const rows: readonly Row[] = [
  ['case-bearing-yield', 'caseBearing', 'caseBearingYield', 'yield', 'case'],
  ['case-bearing', 'caseBearing', 'caseBearing', 'ultimate', 'case'],
  ['case-tear-out', 'tearOut', 'caseShear', 'ultimate', 'case'],
  ['case-tear-out-40', 'tearOutLug', 'caseShear', 'ultimate', 'case'],
  ['net-section-yield', 'netSection', 'caseYield', 'yield', 'case'],
  ['net-section', 'netSection', 'caseUltimate', 'ultimate', 'case'],
  ['case-folding-yield', 'offsetFolding', 'caseYield', 'yield', 'case'],
  ['hole-row-hoop-yield', 'hoop', 'hoopYield', 'yield', 'case'],
  ['hole-row-hoop', 'hoop', 'hoopUltimate', 'ultimate', 'case'],
  ['bolt-shear-yield', 'boltShear', 'boltShearYield', 'yield', 'bolt'],
  ['bolt-shear', 'boltShear', 'boltShear', 'ultimate', 'bolt'],
  ['bolt-bearing-yield', 'boltBearing', 'boltYield', 'yield', 'bolt'],
  ['bolt-bending-yield', 'boltBending', 'boltYield', 'yield', 'bolt'],
  ['bolt-bending', 'boltBending', 'boltUltimate', 'ultimate', 'bolt'],
  ['closure-bearing-yield', 'closureBearing', 'closureBearingYield', 'yield', 'closure'],
  ['closure-bearing', 'closureBearing', 'closureBearing', 'ultimate', 'closure'],
  ['closure-tear-out', 'closureTearOut', 'closureShear', 'ultimate', 'closure'],
  ['closure-hole-thread-shear', 'threadShear', 'closureShear', 'ultimate', 'closure'],
];

// Made once: a search evaluates thousands of joints.
const rules = /* @__PURE__ */ (() => {
  const all = rows.map(
    ([id, stress, strength, limit, of]): ModeRule => ({
      id,
      stress,
      strength,
      limit,
      of,
      order: placeInOrder(id, limit),
    }),
  );
  const without = (...left: readonly ModeStress[]): readonly ModeRule[] =>
    all.filter(({ stress }) => !left.includes(stress));
  return {
    all,
    upright: without('boltBending'),
    pins: without('threadShear'),
    uprightPins: without('boltBending', 'threadShear'),
  };
})();

/** The rules that a joint has: without an arm nothing bends the bolts, and pins have no thread. */
export function rulesFor({
  boltBending,
  threadShear,
}: JointStressesSi | JointStresses<Step>): readonly ModeRule[] {
  const bends = numberOf(boltBending) > 0;
  if (numberOf(threadShear) > 0) return bends ? rules.all : rules.upright;
  return bends ? rules.pins : rules.uprightPins;
}

/** What the modes of a joint are made of. */
export interface JointModeParts {
  readonly part: PartId;
  /** Gauge [Pa]. */
  readonly pressure: number;
  readonly factors: { readonly yield: number; readonly ultimate: number };
  readonly temperature: { readonly [P in ModeRule['of']]: Quantity<'temperature'> | undefined };
  readonly stresses: JointStresses<Step>;
  readonly strengths: JointStrengths;
  /** Of the stresses. */
  readonly unit: Unit;
}

/** The failure mode of a rule. */
export function jointMode(
  { id, stress, strength, limit, of }: ModeRule,
  { part, pressure, factors, temperature, stresses, strengths, unit }: JointModeParts,
): PressureDrivenMode {
  const applied = stresses[stress];
  const { si, source, cautions } = strengths[strength];
  return {
    id,
    part,
    limit,
    calculation: typeof applied === 'number' ? given('stress', applied) : applied,
    allowable: given('stress', si),
    factor: factors[limit],
    pressure,
    temperature: temperature[of],
    unit,
    sources: [`strength: ${source}`],
    cautions,
  };
}
