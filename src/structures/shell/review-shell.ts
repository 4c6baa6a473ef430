import { length, optional, printable, procedure, ratio, unitFor, type Values } from '../../units';
import { completed, reviewFactors } from '../factors-of-safety';
import type { FailureMargin } from '../failure-mode';
import { failureMargin } from '../failure-mode/failure-margin';
import { governing, marginTable } from '../margin';
import { type Allowable, allowableOf } from '../materials/allowable';
import type { Material } from '../materials/material';
import { exposure } from '../materials/part-temperature';
import { meop } from '../operating-pressure';
import { type BurstPressure, burstPressure } from './burst-pressure';
import { shellModes } from './shell-modes';
import { type ThickWallStress, thickWallStress } from './thick-wall';
import { tube } from './tube';

const inputs = {
  tube,
  meop,
  exposure,
  factors: reviewFactors,
  ovality: optional(
    length('δ', 'ovality: maximum − minimum outside diameter, where measured', { example: '0.2 mm' }),
  ),
  strainHardening: optional(
    ratio('n', 'strain-hardening exponent, for the burst method of Svensson', { example: 0.05 }),
  ),
};

/** Failure modes of a plain tube, each with its margin of safety. */
export interface ShellReview {
  readonly margins: readonly FailureMargin[];
  readonly governing: FailureMargin;
  /** Stresses at the bore at MEOP. */
  readonly stress: ThickWallStress;
  readonly burst: BurstPressure;
  readonly cautions: readonly string[];
  toString(): string;
}

/**
 * Margins of safety of a plain tube by Lamé at its wall temperature: yield by hoop stress and by von Mises, out-of-round bending,
 * burst by the minimum of several methods, and yield at the proof test at room temperature.
 *
 * @throws MeopError `no-allowable` where the material has no minimum strength
 * @example reviewShell({ tube: { material: '6061-T6 drawn tube', outsideDiameter: '3.5 in', wall: '0.25 in' }, meop: '1000 psi' }).governing.mode // => 'burst, Barlow'
 */
export const reviewShell = /* @__PURE__ */ procedure({
  name: 'reviewShell',
  title: 'Review of a plain tube under pressure',
  source: 'the formula of each mode, with its source',
  inputs,
  gives: 'the margin of safety of every failure mode of the tube',
  example: {
    tube: { material: '6061-T6 drawn tube', outsideDiameter: '3.5 in', wall: '0.25 in' },
    meop: '1000 psi',
  },
  run: (given): ShellReview => reviewOf(given),
});

function reviewOf({
  tube,
  meop,
  exposure,
  ovality,
  strainHardening,
  ...given
}: Values<typeof inputs>): ShellReview {
  const { material, outsideDiameter, wall, wallTemperature: temperature } = tube;
  const outsideRadius = outsideDiameter.times(0.5);
  const insideRadius = outsideRadius.minus(wall);
  const factors = completed(given.factors ?? {});
  const bore = thickWallStress({ pressure: meop, insideRadius, outsideRadius });
  const strength = (property: 'yield' | 'ultimate', at: typeof temperature): Allowable =>
    allowableOf({
      material,
      property,
      temperature: at,
      exposure,
      edgeRatio: undefined,
      direction: 'least',
      basis: 'minimum',
    });
  const yielding = strength('yield', temperature);
  const ultimate = strength('ultimate', temperature);
  const burst = burstPressure({
    insideRadius,
    outsideRadius,
    ultimateStrength: ultimate.value,
    yieldStrength: yielding.value,
    strainHardening,
  });
  const margins = shellModes({
    pressure: meop.si,
    insideRadius: insideRadius.si,
    outsideRadius: outsideRadius.si,
    factors,
    yielding,
    ultimate,
    cold: strength('yield', undefined),
    burstMethod: burst.method,
    strainHardening,
    oval:
      ovality === undefined
        ? undefined
        : {
            ovality: ovality.si,
            // Without stiffness the pressure does not reduce the ovality: the upper bound.
            elasticModulus: material.elasticModulus?.value.si ?? 1e18,
            poissonRatio: material.poissonRatio?.value ?? 0.3,
          },
    stressUnit: unitFor('stress', bore.hoop.unit),
    pressureUnit: unitFor('gauge pressure', meop.unit),
  }).map((mode) => failureMargin(mode));
  const cautions = [...factors.cautions, ...unlike(material), ...burst.cautions, always];
  return printable({ margins, governing: governing(margins), stress: bore, burst, cautions }, () =>
    [marginTable(margins), ...cautions.map((caution) => `caution: ${caution}`)].join('\n'),
  );
}

const unlike = (material: Material): readonly string[] =>
  material.class === 'metal'
    ? []
    : [
        `${material.name} is of class '${material.class}', but these formulas are valid for ductile metal. Plastic creeps and weakens with temperature; a brittle material fragments without yielding.`,
      ];

const always = 'This review of a plain tube does not include buckling, joints, holes, threads and welds.';
