import { type QuantityInput, readInput, unitFor } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readPositive } from '../../units/refusal';
import { completed, type ReviewFactors, reviewFactors } from '../factors-of-safety';
import type { FailureMargin } from '../failure-mode';
import { failureMargin } from '../failure-mode/failure-margin';
import { governing, marginTable } from '../margin';
import { type Allowable, allowable } from '../materials/allowable';
import { type MaterialName, materialOf } from '../materials/library';
import type { Material } from '../materials/material';
import { type BurstPressure, burstPressure } from './burst-pressure';
import { shellModes } from './shell-modes';
import { type ThickWallStress, thickWallStress } from './thick-wall';

const name = 'reviewShell';

/** A plain tube to review. */
export interface ShellInput {
  readonly material: Material | MaterialName;
  readonly insideRadius: QuantityInput<'length'>;
  readonly outsideRadius: QuantityInput<'length'>;
  /** The maximum expected operating pressure: an upper bound, not the nominal peak. */
  readonly meop: QuantityInput<'gauge pressure'>;
  /** Of the wall, at the worst moment; room temperature where left out. */
  readonly temperature?: QuantityInput<'temperature'>;
  /** Time at that temperature; half an hour where left out. */
  readonly exposure?: QuantityInput<'time'>;
  /** Default `'ground test'`. */
  readonly factors?: ReviewFactors;
  /** Greatest less least diameter, where the tube was measured. */
  readonly ovality?: QuantityInput<'length'>;
  /** The strain-hardening exponent, for one more burst method. */
  readonly strainHardening?: number;
}

/** Every way a plain tube can let go, with its margin. */
export interface ShellReview {
  readonly margins: readonly FailureMargin[];
  readonly governing: FailureMargin;
  /** At the bore and MEOP. */
  readonly stress: ThickWallStress;
  readonly burst: BurstPressure;
  readonly cautions: readonly string[];
  toString(): string;
}

const reviewShellFields: FieldsOf<ShellInput> = {
  material: 'required',
  insideRadius: 'required',
  outsideRadius: 'required',
  meop: 'required',
  temperature: 'optional',
  exposure: 'optional',
  factors: 'optional',
  ovality: 'optional',
  strainHardening: 'optional',
};

/**
 * The margins of a plain tube by Lamé at its wall temperature: yield by hoop stress and by von Mises, out-of-round bending,
 * burst by the least of several methods, and yield at the cold proof test. Joints, holes and buckling are not in it.
 *
 * @throws MeopError as {@link allowable}, {@link thickWallStress} and {@link designFactors}
 * @example reviewShell({ material: '6061-T6 drawn tube', insideRadius: '1.5 in', outsideRadius: '1.75 in', meop: '1000 psi' }).governing.mode // => 'burst, Barlow'
 */
export function reviewShell(input: ShellInput): ShellReview {
  requireFields(name, input, reviewShellFields);
  const { insideRadius, outsideRadius, meop, temperature, exposure, ovality } = input;
  const material = materialOf(input.material);
  const factors = completed(
    reviewFactors.read(input.factors ?? {}, { procedure: name, path: 'factors' }) ?? {},
  );
  const bore = thickWallStress({ pressure: meop, insideRadius, outsideRadius });
  const strength = (property: 'yield' | 'ultimate'): Allowable =>
    allowable({ material, property, temperature, exposure });
  const yielding = strength('yield');
  const ultimate = strength('ultimate');
  const burst = burstPressure({
    insideRadius,
    outsideRadius,
    ultimateStrength: ultimate.value,
    yieldStrength: yielding.value,
    ...(input.strainHardening !== undefined && { strainHardening: input.strainHardening }),
  });
  const length = (field: 'insideRadius' | 'outsideRadius' | 'ovality'): number =>
    readInput('length', field, input[field], name).si;
  const pressure = readPositive('gauge pressure', 'meop', meop, name);
  const modes = shellModes({
    pressure: pressure.si,
    insideRadius: length('insideRadius'),
    outsideRadius: length('outsideRadius'),
    factors,
    yielding,
    ultimate,
    cold: allowable({ material, property: 'yield' }),
    burstMethod: burst.method,
    strainHardening: input.strainHardening,
    oval:
      ovality === undefined
        ? undefined
        : {
            ovality: length('ovality'),
            // Without stiffness the pressure rounds nothing out: the upper bound.
            elasticModulus: material.elasticModulus?.value.si ?? 1e18,
            poissonRatio: material.poissonRatio?.value ?? 0.3,
          },
    stressUnit: unitFor('stress', bore.hoop.unit),
    pressureUnit: pressure.unit,
  });
  return assembled(
    modes.map((mode) => failureMargin(mode)),
    bore,
    burst,
    [...factors.cautions, ...unlike(material)],
  );
}

const unlike = (material: Material): readonly string[] =>
  material.class === 'metal'
    ? []
    : [
        `${material.name} is of class ${String(material.class)}: these formulas are those of ductile metal; plastic creeps and weakens with warmth, and what is brittle bursts into splinters without yielding`,
      ];

const always = 'buckling, joints, holes, threads and welds are not in this review of a plain tube';

function assembled(
  margins: readonly FailureMargin[],
  stress: ThickWallStress,
  burst: BurstPressure,
  cautionsOfParts: readonly string[],
): ShellReview {
  const cautions = [...cautionsOfParts, ...burst.cautions, always];
  const text = (): string =>
    [marginTable(margins), ...cautions.map((caution) => `caution: ${caution}`)].join('\n');
  return {
    margins,
    governing: governing(margins),
    stress,
    burst,
    cautions,
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
}
