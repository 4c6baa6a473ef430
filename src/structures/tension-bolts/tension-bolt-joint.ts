import {
  type Arguments,
  type Conflict,
  inputs,
  length,
  named,
  optional,
  ratio,
  stress,
  temperature,
  thermalExpansion,
  type Values,
} from '../../units';
import { reviewFactors } from '../factors-of-safety';
import { materials } from '../materials/material-table';
import { exposure, partTemperature } from '../materials/part-temperature';
import { meop } from '../operating-pressure';
import { axialBolts } from './axial-bolts';

const fields = {
  pressure: meop,
  sealDiameter: length('D_s', 'diameter of the seal, on which the pressure acts', { example: '50 mm' }),
  bolts: axialBolts,
  clampedMaterial: named('material of the clamped part', materials, { example: '6061-T6 bar' }),
  tappedMaterial: named('material of the tapped part', materials, { example: '6061-T6 bar' }),
  insideDiameter: optional(
    length('D_b', 'inside diameter of the tapped part at the bolts', { example: '50 mm' }),
  ),
  outsideDiameter: optional(
    length('D_o', 'outside diameter of the tapped part at the bolts', { example: '80 mm' }),
  ),
  jointConstant: optional(
    ratio('C', 'joint constant, where it is known from elsewhere', { above: 0, below: 1, example: 0.25 }),
  ),
  shareFactor: optional(
    ratio('κ', 'load of the most heavily loaded bolt/equal share, with prying', { min: 1, example: 1 }),
    1,
  ),
  clampedTemperature: partTemperature,
  tappedTemperature: partTemperature,
  boltTemperature: optional(
    temperature('T_b', 'maximum temperature of the bolts; that of the hotter part where omitted', {
      above: 0,
      example: '60 degC',
    }),
  ),
  coldest: optional(
    temperature('T_c', 'minimum temperature of the joint under load', { above: 0, example: '0 degC' }),
  ),
  assemblyTemperature: optional(
    temperature('T_0', 'temperature at which the bolts are tightened', { above: 0, example: '20 degC' }),
    293.15,
  ),
  boltModulus: optional(
    stress('E_b', "Young's modulus of the bolts", { above: 0, example: '200 GPa' }),
    200e9,
  ),
  boltExpansion: optional(
    thermalExpansion(
      'α_b',
      'coefficient of linear expansion of the bolts; 12.3e-6 1/K for steel, 16e-6 1/K for A2 and A4 where omitted (from memory)',
      { example: '12.3e-6 1/K' },
    ),
  ),
  exposure,
  factors: reviewFactors,
};

type Joint = Values<typeof fields>;

const tightened = ({ bolts: { preload, torque } }: Joint): Conflict | undefined =>
  (preload === undefined) === (torque === undefined)
    ? {
        code: preload === undefined ? 'missing-field' : 'contradiction',
        path: preload === undefined ? 'bolts.preload' : 'bolts.torque',
        given: torque,
        expected: 'either preload or torque of the bolts',
      }
    : undefined;

const faceOverHole = ({ bolts: { headDiameter, holeDiameter, thread } }: Joint): Conflict | undefined => {
  const face = headDiameter?.si ?? 1.5 * thread.majorDiameter.si;
  return face > holeDiameter.si
    ? undefined
    : {
        path: headDiameter === undefined ? 'bolts.holeDiameter' : 'bolts.headDiameter',
        given: headDiameter ?? holeDiameter,
        expected: 'heads wider than their holes',
      };
};

const boltInHole = ({ bolts: { holeDiameter, thread } }: Joint): Conflict | undefined =>
  holeDiameter.si >= thread.majorDiameter.si * 0.999
    ? undefined
    : {
        path: 'bolts.holeDiameter',
        given: holeDiameter,
        expected: `at least the diameter of ${thread.name} (${thread.majorDiameter})`,
      };

/** Diameter of the widest cylinder round a bolt in the tapped part [m]; infinite where neither diameter is known. */
export const roomRound = ({ bolts: { boltCircle }, insideDiameter, outsideDiameter }: Joint): number =>
  Math.min(
    insideDiameter === undefined ? Infinity : boltCircle.si - insideDiameter.si,
    outsideDiameter === undefined ? Infinity : outsideDiameter.si - boltCircle.si,
  );

const insideMetal = (joint: Joint): Conflict | undefined =>
  roomRound(joint) > joint.bolts.thread.majorDiameter.si
    ? undefined
    : {
        path: 'bolts.boltCircle',
        given: joint.bolts.boltCircle,
        expected: 'a circle on which the tapped holes are within the metal of the tapped part',
      };

/** Two parts that bolts in tension hold together against a pressure. */
export const tensionBoltJoint = /* @__PURE__ */ (() =>
  inputs<typeof fields>(fields, {
    meaning: 'two parts that bolts in tension hold together against a pressure',
    checks: [tightened, faceOverHole, boltInHole, insideMetal],
  }))();

/** Two parts that bolts in tension hold together, as a review takes them. */
export type TensionBoltJoint = Arguments<typeof fields>;

/** The same, read. */
export type TensionBoltJointValues = Joint;
