import { findRoot } from '../numerics';
import { formula, optional, procedure, ratio, stress } from '../units';

const inputs = {
  ultimateStrength: stress('S_u', 'ultimate tensile strength', { above: 0, example: '290 MPa' }),
  elasticModulus: stress('E', 'elastic modulus', { above: 0, example: '68.9 GPa' }),
};

/**
 * Strain range for a number of cycles to failure, from a tensile test alone.
 *
 * @example universalSlopes({ ultimateStrength: '345 MPa', elasticModulus: '69 GPa', ductility: 1, cycles: 1 }) // => 1.0175
 */
export const universalSlopes = /* @__PURE__ */ formula({
  name: 'universalSlopes',
  title: 'Strain range for a life, method of universal slopes',
  equation: 'Δε = 3.5·S_u / E·N^(−0.12) + D^0.6·N^(−0.6)',
  source: 'S. S. Manson, Fatigue: a complex subject, Experimental Mechanics 5 (1965) (from memory)',
  inputs: {
    ...inputs,
    ductility: ratio('D', 'true strain at fracture', { above: 0 }),
    cycles: ratio('N', 'cycles to failure', { min: 1 }),
  },
  output: ratio('Δε', 'total strain range'),
  example: { ultimateStrength: '290 MPa', elasticModulus: '68.9 GPa', ductility: 0.1, cycles: 100 },
  si: ({ ultimateStrength, elasticModulus, ductility, cycles }) =>
    ((3.5 * ultimateStrength) / elasticModulus) * cycles ** -0.12 + ductility ** 0.6 * cycles ** -0.6,
});

/** A first-order estimate of the number of firings of a part. */
export interface LowCycleLife {
  /** Constant label: the estimate is not a fatigue analysis. */
  readonly label: 'first-order estimate';
  /** Local strain range of one firing. */
  readonly strainRange: number;
  /** Estimated firings until a crack; a million means that many or more, zero means none. */
  readonly cyclesToFailure: number;
  /** Planned firings: the lesser of a factor of 20 on cycles and 2 on strain, whole firings. */
  readonly plannedCycles: number;
  readonly source: string;
  readonly cautions: readonly string[];
}

const most = 1e6;

/**
 * First-order low-cycle life for reuse: local strain by Neuber's rule, life by universal slopes, with the factors 20 on cycles
 * and 2 on strain that pressure-vessel practice applies to mean curves. It shows whether reuse is near a limit, not how near.
 *
 * @example lowCycleLife({ stress: '60 MPa', concentration: 2.5, yieldStrength: '241 MPa', ultimateStrength: '290 MPa', elasticModulus: '68.9 GPa', elongation: 0.1 }).label // => 'first-order estimate'
 */
export const lowCycleLife = /* @__PURE__ */ procedure({
  name: 'lowCycleLife',
  title: 'Low-cycle life of a part that is loaded once per firing (first-order estimate)',
  source: `${universalSlopes.source}; Neuber's rule; factors 20 and 2 as in ASME BPVC VIII-2 mean-curve practice (from memory)`,
  inputs: {
    stress: stress('σ', 'nominal stress at the peak pressure of a firing', { above: 0, example: '60 MPa' }),
    concentration: optional(
      ratio('K_t', 'stress-concentration factor: 2.5 on hoop stress at a small hole in a closed cylinder', {
        min: 1,
        example: 2.5,
      }),
      1,
    ),
    yieldStrength: stress('S_y', 'yield strength', { above: 0, example: '241 MPa' }),
    ...inputs,
    elongation: ratio(
      'A',
      'elongation at fracture as a fraction; the fracture strain is assumed ln(1 + A), which is low and so conservative',
      { above: 0, max: 1, example: 0.1 },
    ),
  },
  gives: 'the estimated and planned number of firings',
  example: {
    stress: '60 MPa',
    concentration: 2.5,
    yieldStrength: '241 MPa',
    ultimateStrength: '290 MPa',
    elasticModulus: '68.9 GPa',
    elongation: 0.1,
  },
  run: (given): LowCycleLife => {
    const { concentration, elongation } = given;
    const [peak, yieldStrength] = [given.stress.si, given.yieldStrength.si];
    const [ultimateStrength, elasticModulus] = [given.ultimateStrength.si, given.elasticModulus.si];
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
      source: lowCycleLife.source,
      cautions: [
        'This is a first-order estimate. It neglects surface finish, corrosion and heating between firings.',
        'Inspect holes, threads and grooves for cracks after every firing, whatever the estimate.',
        ...(peak > yieldStrength
          ? ['The nominal stress exceeds the yield strength: the part grows with every firing.']
          : []),
      ],
    };
  },
});
