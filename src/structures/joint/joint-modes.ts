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
  | 'bearing, case wall'
  | 'bearing yield, case wall'
  | 'bearing, closure threads'
  | 'bearing yield, closure threads'
  | 'bearing yield, bolts'
  | 'tear-out of the case end, planes from the hole edge'
  | 'tear-out of the case end, planes at 40°'
  | 'tear-out of the closure, planes from the hole edge'
  | 'net section of the case'
  | 'net section of the case, yield'
  | "shear of the closure's threads"
  | 'combined bolt bending and shear'
  | 'combined bolt bending and shear, yield'
  | 'hoop stress, hole row'
  | 'hoop yield, hole row';

/** How a mode is worked out. */
export interface ModeRule {
  readonly mode: JointModeName;
  readonly stress: keyof JointStressesSi;
  readonly strength: keyof JointStrengths;
  readonly limit: 'yield' | 'ultimate';
  /** Bearing gives way slowly and shows; the others let go. */
  readonly failsGradually: boolean;
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
  limit: mode.includes('yield') ? 'yield' : 'ultimate',
  failsGradually: mode.startsWith('bearing'),
  source,
});

const bending = `bending of the fastener, Shigley 9th ed. section 8-12; ${combinedBoltStress.source}`;
const hoop = "Lamé, as in Roark's Formulas for Stress and Strain, thick-walled cylinders";

/** Every mode, in the order of the load's way from case to closure. */
export const modeRules: readonly ModeRule[] = /* @__PURE__ */ (() => [
  rule('bearing yield, case wall', 'caseBearing', 'caseBearingYield', bearingStress.source),
  rule('bearing, case wall', 'caseBearing', 'caseBearing', bearingStress.source),
  rule('tear-out of the case end, planes from the hole edge', 'tearOut', 'caseShear', tearOutStress.source),
  rule('tear-out of the case end, planes at 40°', 'tearOutLug', 'caseShear', tearOutStress.source),
  rule('net section of the case, yield', 'netSection', 'caseYield', netSectionStress.source),
  rule('net section of the case', 'netSection', 'caseUltimate', netSectionStress.source),
  rule('hoop yield, hole row', 'hoop', 'hoopYield', hoop),
  rule('hoop stress, hole row', 'hoop', 'hoopUltimate', hoop),
  rule('bolt shear, yield', 'boltShear', 'boltShearYield', boltShearStress.source),
  rule('bolt shear', 'boltShear', 'boltShear', boltShearStress.source),
  rule(
    'bearing yield, bolts',
    'boltBearing',
    'boltYield',
    "Shigley's Mechanical Engineering Design, 9th ed., example 8-6, bearing in bolts",
  ),
  rule('combined bolt bending and shear, yield', 'boltBending', 'boltYield', bending),
  rule('combined bolt bending and shear', 'boltBending', 'boltUltimate', bending),
  rule('bearing yield, closure threads', 'closureBearing', 'closureBearingYield', bearingStress.source),
  rule('bearing, closure threads', 'closureBearing', 'closureBearing', bearingStress.source),
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
