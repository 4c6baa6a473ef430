import { internalThreadShearArea } from '../threads/shear-area';
import { bearingStress } from './bearing';
import { combinedBoltStress } from './bolt-bending';
import { boltShearStress } from './bolt-shear';
import type { JointStrengths } from './joint-strengths';
import type { JointStressesSi } from './joint-stresses';
import { netSectionStress } from './net-section';
import { tearOutStress } from './tear-out';

/** The ways a radial-bolt joint can fail. */
export type JointModeName =
  | 'bolt shear'
  | 'bolt shear, yield'
  | 'bearing of the case'
  | 'bearing of the case, yield'
  | "bearing of the closure's threads"
  | "bearing of the closure's threads, yield"
  | 'bearing of the bolts, yield'
  | 'tear-out of the case end, planes from the hole edge'
  | 'tear-out of the case end, planes at 40°'
  | 'tear-out of the closure, planes from the hole edge'
  | 'net section of the case'
  | 'net section of the case, yield'
  | "shear of the closure's threads"
  | 'bolt bending with shear'
  | 'bolt bending with shear, yield'
  | 'hoop at the holes'
  | 'hoop at the holes, yield';

/** How a mode is worked out. */
export interface ModeRule {
  readonly mode: JointModeName;
  readonly stress: keyof JointStressesSi;
  readonly strength: keyof JointStrengths;
  readonly limit: 'yield' | 'ultimate';
  /** Bearing gives way slowly and shows; the others let go. */
  readonly gentle: boolean;
  readonly source: string;
}

const rule = (
  mode: JointModeName,
  stress: keyof JointStressesSi,
  strength: keyof JointStrengths,
  source: string,
): ModeRule => ({
  mode,
  stress,
  strength,
  limit: mode.endsWith('yield') ? 'yield' : 'ultimate',
  gentle: mode.startsWith('bearing'),
  source,
});

const bending = `bending of the fastener, Shigley 9th ed. section 8-12; ${combinedBoltStress.source}`;
const hoop = "Lamé, as in Roark's Formulas for Stress and Strain, thick-walled cylinders";

/** Every mode, in the order of the load's way from case to closure. */
export const modeRules: readonly ModeRule[] = /* @__PURE__ */ (() => [
  rule('bearing of the case, yield', 'caseBearing', 'caseBearingYield', bearingStress.source),
  rule('bearing of the case', 'caseBearing', 'caseBearing', bearingStress.source),
  rule('tear-out of the case end, planes from the hole edge', 'tearOut', 'caseShear', tearOutStress.source),
  rule('tear-out of the case end, planes at 40°', 'tearOutLug', 'caseShear', tearOutStress.source),
  rule('net section of the case, yield', 'netSection', 'caseYield', netSectionStress.source),
  rule('net section of the case', 'netSection', 'caseUltimate', netSectionStress.source),
  rule('hoop at the holes, yield', 'hoop', 'hoopYield', hoop),
  rule('hoop at the holes', 'hoop', 'hoopUltimate', hoop),
  rule('bolt shear, yield', 'boltShear', 'boltShearYield', boltShearStress.source),
  rule('bolt shear', 'boltShear', 'boltShear', boltShearStress.source),
  rule(
    'bearing of the bolts, yield',
    'boltBearing',
    'boltYield',
    "Shigley's Mechanical Engineering Design, 9th ed., example 8-6, bearing in bolts",
  ),
  rule('bolt bending with shear, yield', 'boltBending', 'boltYield', bending),
  rule('bolt bending with shear', 'boltBending', 'boltUltimate', bending),
  rule(
    "bearing of the closure's threads, yield",
    'closureBearing',
    'closureBearingYield',
    bearingStress.source,
  ),
  rule("bearing of the closure's threads", 'closureBearing', 'closureBearing', bearingStress.source),
  rule(
    'tear-out of the closure, planes from the hole edge',
    'closureTearOut',
    'closureShear',
    tearOutStress.source,
  ),
  rule("shear of the closure's threads", 'threadShear', 'closureShear', internalThreadShearArea.source),
])();

/** The rules that a joint has: without an arm nothing bends the bolts. */
export const rulesFor = (stresses: JointStressesSi): readonly ModeRule[] =>
  stresses.boltBending > 0 ? modeRules : modeRules.filter(({ stress }) => stress !== 'boltBending');
