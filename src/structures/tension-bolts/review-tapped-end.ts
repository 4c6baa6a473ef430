import {
  type Arguments,
  fromSiValue,
  inputs,
  length,
  named,
  optional,
  procedure,
  unitFor,
  type Values,
} from '../../units';
import { closureForce } from '../closure-force';
import type { ClosureReview } from '../closures/closure-review';
import { reviewFactors, yieldAndUltimate } from '../factors-of-safety';
import { type Step, step } from '../failure-mode/calculation';
import { failureMargin } from '../failure-mode/failure-margin';
import type { PressureDrivenMode } from '../failure-mode/failure-mode';
import type { PartId } from '../failure-mode/part-name';
import { materialMode, type StressedPart } from '../material-mode';
import { exposure } from '../materials/part-temperature';
import { meop } from '../operating-pressure';
import { edgeLength } from '../shell/edge-zone';
import { tube } from '../shell/tube';
import { threads } from '../threads/thread-table';
import { axialBolts } from './axial-bolts';
import { flangeRollingStress, flangeRotation, rolledWallStress } from './flange-rolling';
import { tappedEndTension, tappedWallHoopStress } from './tapped-end';

/** A flange on the end of the case. */
export const endFlange = /* @__PURE__ */ inputs(
  {
    outsideDiameter: length('D_f', 'outside diameter of the flange', { example: '80 mm', worse: 'low' }),
    thickness: length('h_f', 'thickness of the flange', { example: '10 mm', worse: 'low' }),
  },
  { meaning: 'flange on the end of the case, of one piece with it, into which the bolts are tapped' },
);

const fields = {
  pressure: meop,
  sealDiameter: length('D_s', 'diameter of the seal, on which the pressure acts', { example: '50 mm' }),
  tube,
  flange: optional(endFlange),
  thread: named('thread of the bolts', threads, { example: 'M4' }),
  count: axialBolts.fields.count,
  boltCircle: axialBolts.fields.boltCircle,
  exposure,
  factors: reviewFactors,
};

type End = Values<typeof fields>;

const end = /* @__PURE__ */ (() =>
  inputs<typeof fields>(fields, {
    meaning: 'the end of a case into which bolts along the axis are tapped',
    checks: [
      ({ tube: { outsideDiameter, wall }, flange, thread, boltCircle }) => {
        const outside = flange?.outsideDiameter.si ?? outsideDiameter.si;
        const bore = outsideDiameter.si - 2 * wall.si;
        const major = thread.majorDiameter.si;
        return boltCircle.si - major > bore && boltCircle.si + major < outside
          ? undefined
          : {
              path: 'boltCircle',
              given: boltCircle,
              expected: 'a circle on which the tapped holes are within the end of the case',
            };
      },
    ],
  }))();

/** The end of a case into which bolts along the axis are tapped, as a review takes it. */
export type TappedEnd = Arguments<typeof fields>;

/** Margins of the end of a case into which bolts along the axis are tapped. */
export type TappedEndMargins = Pick<ClosureReview, 'endForce' | 'margins' | 'cautions'>;

/**
 * Failure modes of the end of a case into which bolts along the axis are tapped: tension and hoop stress at the holes of a plain
 * end; of a flange, its rolling and the bending of the wall next to it.
 *
 * @throws MeopError `out-of-domain` where the holes are not within the metal, `no-allowable` where the material has no minimum strength
 * @example reviewTappedEnd({ pressure: '5 MPa', sealDiameter: '50 mm', tube: { outsideDiameter: '74 mm', wall: '12 mm', material: '6061-T6 drawn tube' }, thread: 'M4', count: 8, boltCircle: '62 mm' }).endForce.in('N').toFixed(1) // => '9817.5'
 */
export const reviewTappedEnd = /* @__PURE__ */ procedure({
  name: 'reviewTappedEnd',
  title: 'Review of the end of a case with tapped holes along the axis',
  source: 'the formula of each mode, with its source',
  inputs: end.fields,
  checks: end.checks,
  gives: 'the margin of safety of every failure mode of the tapped end or its flange',
  example: {
    pressure: '5 MPa',
    sealDiameter: '50 mm',
    tube: { outsideDiameter: '74 mm', wall: '12 mm', material: '6061-T6 drawn tube' },
    thread: 'M4',
    count: 8,
    boltCircle: '62 mm',
  },
  run: (given): TappedEndMargins => reviewOf(given, 'joint'),
});

/** {@link reviewTappedEnd} under the name of a part of a motor. */
export const reviewTappedEndAs = (given: TappedEnd, part: PartId): TappedEndMargins =>
  reviewOf(end.read(given, { procedure: 'reviewTappedEnd', path: '' }), part);

function reviewOf(given: End, part: PartId): TappedEndMargins {
  const { material, wallTemperature } = given.tube;
  const { us } = unitFor('gauge pressure', given.pressure.unit);
  const load = step(closureForce, { pressure: given.pressure.si, sealDiameter: given.sealDiameter.si });
  const stressed: StressedPart = {
    part,
    material,
    temperature: wallTemperature,
    exposure: given.exposure,
    factors: yieldAndUltimate(given.factors),
    pressure: given.pressure.si,
    unit: unitFor('stress', us ? 'psi' : 'MPa'),
  };
  const modes =
    given.flange === undefined ? plainModes(given, stressed, load) : flangeModes(given, stressed, load);
  const { elasticModulus, poissonRatio } = material;
  const isWallUnknown = given.flange !== undefined && !(elasticModulus && poissonRatio);
  return {
    endForce: fromSiValue(load.value, 'force', unitFor('force', us ? 'lbf' : 'N')),
    margins: modes.map((mode) => failureMargin(mode)),
    cautions: [
      ...(given.factors?.cautions ?? []),
      ...(isWallUnknown
        ? [
            `${material.name} has no elasticModulus and poissonRatio: the wall next to the flange is not evaluated.`,
          ]
        : []),
      ...(given.flange === undefined
        ? []
        : ['The flange is assumed of one piece with the case. A weld or a screwed flange is not evaluated.']),
    ],
  };
}

function hoopModes({ tube, flange, thread, pressure }: End, stressed: StressedPart): PressureDrivenMode[] {
  const hoop = step(tappedWallHoopStress, {
    pressure: pressure.si,
    outsideDiameter: flange?.outsideDiameter.si ?? tube.outsideDiameter.si,
    bore: tube.outsideDiameter.si - 2 * tube.wall.si,
    holeDiameter: thread.majorDiameter.si,
  });
  return [
    materialMode(stressed, { id: 'tapped-end-hoop-yield', calculation: hoop, property: 'yield' }),
    materialMode(stressed, { id: 'tapped-end-hoop', calculation: hoop, property: 'ultimate' }),
  ];
}

function plainModes(given: End, stressed: StressedPart, load: Step): readonly PressureDrivenMode[] {
  const { tube, thread, count, boltCircle } = given;
  const tension = step(tappedEndTension, {
    load,
    outsideDiameter: tube.outsideDiameter.si,
    bore: tube.outsideDiameter.si - 2 * tube.wall.si,
    count,
    holeDiameter: thread.majorDiameter.si,
    boltCircle: boltCircle.si,
  });
  return [
    materialMode(stressed, { id: 'tapped-end-tension-yield', calculation: tension, property: 'yield' }),
    materialMode(stressed, { id: 'tapped-end-tension', calculation: tension, property: 'ultimate' }),
    ...hoopModes(given, stressed),
  ];
}

function flangeModes(given: End, stressed: StressedPart, load: Step): readonly PressureDrivenMode[] {
  const { tube, flange, boltCircle } = given;
  if (flange === undefined) return [];
  const wall = tube.wall.si;
  const meanDiameter = tube.outsideDiameter.si - wall;
  const ring = {
    load,
    boltCircle: boltCircle.si,
    meanDiameter,
    outsideDiameter: flange.outsideDiameter.si,
    bore: meanDiameter - wall,
    thickness: flange.thickness.si,
  };
  const rolling = step(flangeRollingStress, ring);
  const elasticModulus = tube.material.elasticModulus?.value.si;
  const poissonRatio = tube.material.poissonRatio?.value;
  const inWall =
    elasticModulus === undefined || poissonRatio === undefined
      ? []
      : [
          materialMode(stressed, {
            id: 'flange-wall-bending-yield',
            property: 'yield',
            calculation: step(rolledWallStress, {
              load,
              meanDiameter,
              wall,
              rotation: step(flangeRotation, { ...ring, elasticModulus }),
              thickness: flange.thickness.si,
              edgeLength: step(edgeLength, { radius: meanDiameter / 2, wall, poissonRatio }),
              elasticModulus,
              poissonRatio,
            }),
          }),
        ];
  return [
    materialMode(stressed, { id: 'flange-bending-yield', calculation: rolling, property: 'yield' }),
    materialMode(stressed, { id: 'flange-bending', calculation: rolling, property: 'ultimate' }),
    ...inWall,
    ...hoopModes(given, stressed),
  ];
}
