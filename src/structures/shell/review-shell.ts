import { fromSiValue, type Quantity, type QuantityInput, readInput, unitFor } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { designPressures, proofCheck } from '../design-pressures';
import { designFactors, type FactorSet, type FactorSetName } from '../factor-sets';
import { governing, type Margin, margin, marginTable } from '../margin';
import { type Allowable, allowable } from '../materials/allowable';
import { type MaterialName, materialOf } from '../materials/library';
import type { Material } from '../materials/material';
import { type BurstPressure, burstPressure } from './burst-pressure';
import { outOfRoundStress } from './out-of-round';
import { type ThickWallStress, thickWallStress } from './thick-wall';
import { yieldPressuresAtTemperature } from './yield-pressure';

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
  readonly factors?: FactorSetName | Partial<FactorSet>;
  /** Greatest less least diameter, where the tube was measured. */
  readonly ovality?: QuantityInput<'length'>;
  /** The strain-hardening exponent, for one more burst method. */
  readonly strainHardening?: number;
}

/** Every way a plain tube can let go, with its margin. */
export interface ShellReview {
  readonly margins: readonly Margin[];
  readonly governing: Margin;
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
  requireFields('reviewShell', input, reviewShellFields);
  const { insideRadius, outsideRadius, meop, temperature, exposure, ovality } = input;
  const material = materialOf(input.material);
  const factors = designFactors(input.factors);
  const bore = thickWallStress({ pressure: meop, insideRadius, outsideRadius });
  const strength = (property: 'yield' | 'ultimate'): Allowable =>
    allowable({ material, property, temperature, exposure });
  const yielding = strength('yield');
  const ultimate = strength('ultimate');
  const hot = yielding.temperature;
  const burst = burstPressure({
    insideRadius,
    outsideRadius,
    ultimateStrength: ultimate.value,
    yieldStrength: yielding.value,
    ...(input.strainHardening !== undefined && { strainHardening: input.strainHardening }),
  });
  const pressures = designPressures({ meop, factors });
  const cold = yieldPressuresAtTemperature({ material, insideRadius, outsideRadius });
  // A wall in millimetres and a pressure in psi are shown as the pressure was given.
  const displayUnit = readInput('gauge pressure', 'meop', meop, 'reviewShell').unit;
  const shown = ({ si }: Quantity<'gauge pressure'>): Quantity<'gauge pressure'> =>
    fromSiValue(si, 'gauge pressure', displayUnit);
  const stressMargin = (mode: string, applied: Quantity<'stress'>, source: string): Margin =>
    margin({
      mode,
      applied,
      allowable: fromSiValue(yielding.value.si, 'stress', unitFor('stress', applied.unit)),
      factor: factors.yieldFactor,
      temperature: hot,
      source,
      cautions: yielding.cautions,
    });
  const margins = [
    stressMargin('yield at the bore, hoop stress', bore.hoop, 'Lamé, maximum stress'),
    stressMargin('yield at the bore, von Mises', bore.vonMises, 'Lamé, distortion energy'),
    ...(ovality === undefined
      ? []
      : [
          stressMargin(
            'yield of an oval tube',
            ovalStress(input, material, ovality, bore.hoop),
            outOfRoundStress.source,
          ),
        ]),
    margin({
      mode: `burst, ${burst.method}`,
      applied: pressures.meop,
      allowable: shown(burst.pressure),
      factor: factors.ultimateFactor,
      temperature: hot,
      source: burst.estimates.find(({ method }) => method === burst.method)?.source ?? '',
      cautions: ultimate.cautions,
    }),
    proofCheck({
      proofPressure: pressures.proof,
      yieldPressure: shown(cold.firstYield),
      cautions: cold.cautions,
    }),
  ];
  return assembled(margins, bore, burst, [...factors.cautions, ...unlike(material)]);
}

function ovalStress(
  { insideRadius, outsideRadius, meop }: ShellInput,
  material: Material,
  ovality: QuantityInput<'length'>,
  hoop: Quantity<'stress'>,
): Quantity<'stress'> {
  const read = (field: string, value: unknown): number => readInput('length', field, value, 'reviewShell').si;
  const [a, b] = [read('insideRadius', insideRadius), read('outsideRadius', outsideRadius)];
  const metres = (si: number): Quantity<'length'> => fromSiValue(si, 'length', unitFor('length', 'mm'));
  const { elasticModulus, poissonRatio } = material;
  const bending = outOfRoundStress({
    pressure: meop,
    meanRadius: metres((a + b) / 2),
    wall: metres(b - a),
    ovality,
    // Without stiffness the pressure rounds nothing out: the upper bound.
    elasticModulus: elasticModulus?.value ?? '1e9 GPa',
    poissonRatio: poissonRatio?.value ?? 0.3,
  });
  return fromSiValue(hoop.si + bending.si, 'stress', unitFor('stress', hoop.unit));
}

const unlike = (material: Material): readonly string[] =>
  material.class === 'metal'
    ? []
    : [
        `${material.name} is of class ${String(material.class)}: these formulas are those of ductile metal; plastic creeps and weakens with warmth, and what is brittle bursts into splinters without yielding`,
      ];

const always = 'buckling, joints, holes, threads and welds are not in this review of a plain tube';

function assembled(
  margins: readonly Margin[],
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
