import { findRoot } from '../numerics';
import { formula, type QuantityInput, ratio, stress } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readPositive, refusal } from '../units/refusal';

const procedure = 'lowCycleLife';

/**
 * Strain range that a metal survives for a number of cycles, from a tensile test alone.
 *
 * @example universalSlopes({ ultimateStrength: '345 MPa', elasticModulus: '69 GPa', ductility: 1, cycles: 1 }) // => 1.0175
 */
export const universalSlopes = /* @__PURE__ */ formula({
  name: 'universalSlopes',
  title: 'Strain range for a life, method of universal slopes',
  equation: 'Δε = 3.5·S_u / E·N^(−0.12) + D^0.6·N^(−0.6)',
  source: 'S. S. Manson, Fatigue: a complex subject, Experimental Mechanics 5 (1965) (from memory)',
  inputs: {
    ultimateStrength: stress('S_u', 'ultimate tensile strength', { above: 0 }),
    elasticModulus: stress('E', 'elastic modulus', { above: 0 }),
    ductility: ratio('D', 'true strain at fracture', { above: 0 }),
    cycles: ratio('N', 'cycles to failure', { min: 1 }),
  },
  output: ratio('Δε', 'total strain range'),
  example: { ultimateStrength: '290 MPa', elasticModulus: '68.9 GPa', ductility: 0.1, cycles: 100 },
  si: ({ ultimateStrength, elasticModulus, ductility, cycles }) =>
    ((3.5 * ultimateStrength) / elasticModulus) * cycles ** -0.12 + ductility ** 0.6 * cycles ** -0.6,
});

/** A place in the hardware that is loaded once per firing, from nothing to the peak. */
export interface LowCycleInput {
  /** Nominal stress at the peak of a firing. */
  readonly stress: QuantityInput<'stress'>;
  /** Stress-concentration factor there: 2.5 on hoop at a small hole in a closed cylinder. 1 where left out. */
  readonly concentration?: number;
  readonly yieldStrength: QuantityInput<'stress'>;
  readonly ultimateStrength: QuantityInput<'stress'>;
  readonly elasticModulus: QuantityInput<'stress'>;
  /** As a fraction; the fracture strain is taken as ln(1 + elongation), which is low and so cautious. */
  readonly elongation: number;
}

/** A first-order estimate of how often hardware may be fired. */
export interface LowCycleLife {
  /** Always this label: it is no fatigue analysis. */
  readonly label: 'first-order estimate';
  /** Local strain range of one firing. */
  readonly strainRange: number;
  /** Estimated firings to a crack; a million stands for that many or more, zero for none. */
  readonly cyclesToFailure: number;
  /** Firings to plan on: the lesser of a factor 20 on cycles and 2 on strain, whole firings. */
  readonly plannedCycles: number;
  readonly source: string;
  readonly cautions: readonly string[];
}

const most = 1e6;

const lowCycleLifeFields: FieldsOf<LowCycleInput> = {
  stress: 'required',
  concentration: 'optional',
  yieldStrength: 'required',
  ultimateStrength: 'required',
  elasticModulus: 'required',
  elongation: 'required',
};

/**
 * First-order low-cycle life for reuse: local strain by Neuber's rule, life by universal slopes, with the factors 20 on cycles
 * and 2 on strain that pressure-vessel practice puts on mean curves. It says whether reuse is near a limit, not how near.
 *
 * @throws MeopError `out-of-domain`
 * @example lowCycleLife({ stress: '60 MPa', concentration: 2.5, yieldStrength: '241 MPa', ultimateStrength: '290 MPa', elasticModulus: '68.9 GPa', elongation: 0.1 }).label // => 'first-order estimate'
 */
export function lowCycleLife(input: LowCycleInput): LowCycleLife {
  requireFields(procedure, input, lowCycleLifeFields);
  const peak = positive('stress', input.stress);
  const yieldStrength = positive('yieldStrength', input.yieldStrength);
  const ultimateStrength = positive('ultimateStrength', input.ultimateStrength);
  const elasticModulus = positive('elasticModulus', input.elasticModulus);
  const { concentration = 1, elongation } = input;
  if (!(concentration >= 1 && Number.isFinite(concentration)))
    throw refusal(procedure, 'concentration', concentration, '1 or more');
  if (!(elongation > 0 && elongation <= 1))
    throw refusal(procedure, 'elongation', elongation, 'a fraction above 0 and up to 1', 'write 10 % as 0.1');
  const elastic = concentration * peak;
  // Neuber: stress range times strain range is kept; a range beyond twice the yield strength flows both ways.
  const reversed = Math.min(elastic, 2 * yieldStrength);
  const strainRange = (elastic * elastic) / (elasticModulus * reversed);
  const metal = { ultimateStrength, elasticModulus, ductility: Math.log1p(elongation) };
  const life = (strain: number): number => {
    const excess = (logN: number): number => universalSlopes.si({ ...metal, cycles: 10 ** logN }) - strain;
    if (excess(0) <= 0) return 0;
    const top = Math.log10(most);
    return excess(top) >= 0 ? most : 10 ** findRoot(excess, { lower: 0, upper: top }).root;
  };
  const cyclesToFailure = life(strainRange);
  return {
    label: 'first-order estimate',
    strainRange,
    cyclesToFailure,
    plannedCycles: Math.floor(Math.min(cyclesToFailure / 20, life(2 * strainRange))),
    source: `${universalSlopes.source}; Neuber's rule; factors 20 and 2 as in ASME BPVC VIII-2 mean-curve practice (from memory)`,
    cautions: [
      'a first-order estimate: no surface finish, no corrosion, no heat between firings is in it',
      'inspect for cracks at holes, threads and grooves after every firing whatever the estimate says',
      ...(peak > yieldStrength ? ['the nominal stress exceeds yield: the part grows with every firing'] : []),
    ],
  };
}

const positive = (field: string, value: unknown): number =>
  readPositive('stress', field, value, procedure).si;
