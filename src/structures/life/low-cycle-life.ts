import {
  fromSiValue,
  MeopError,
  optional,
  procedure,
  type Quantity,
  ratio,
  stress,
  unitFor,
} from '../../units';
import { cyclicConstants, cyclicSi } from './cyclic-constants';
import { fatigueNotchFactor } from './fatigue-notch';
import { tensileTest } from './life-inputs';
import { type LifeVerdict, localLife, scatter } from './local-life';
import { meanStressSlopes } from './universal-slopes';

/** A first-order estimate of the number of firings of a part. */
export interface LowCycleLife {
  /** Constant label: the estimate is not a fatigue analysis. */
  readonly label: 'first-order estimate';
  /** Whether the root of the notch yields; a section that yields is refused. */
  readonly verdict: Exclude<LifeVerdict, 'section yields'>;
  readonly notchFactor: number;
  /** Maximum stress at the root of the notch. */
  readonly localStress: Quantity<'stress'>;
  /** Local strain range of one firing; half of it is the amplitude. */
  readonly strainRange: number;
  /** Estimated firings until a crack; a million means that many or more, zero means none. */
  readonly cyclesToFailure: number;
  /** Planned firings: the lesser of a factor of 20 on cycles and 2 on stress and strain, whole firings. */
  readonly plannedCycles: number;
  readonly source: string;
  readonly cautions: readonly string[];
}

/** What every estimate of life says. */
export const lifeCautions = [
  'This is a first-order estimate. It neglects surface finish, corrosion and heating between firings.',
  'Inspect holes, threads and grooves for cracks after every firing, whatever the estimate.',
] as const;

/**
 * First-order low-cycle life for reuse. The net section governs: a nominal stress above yield is refused, because the
 * section collapses before fatigue counts. Below it, local strain by Neuber's rule, life by universal slopes or by the
 * constants of tests, mean stress of a pressure that cycles from zero by Smith, Watson and Topper, and the factors 20 on
 * cycles and 2 on strain that pressure-vessel practice applies to mean curves. It shows whether reuse is near a limit, not
 * how near.
 *
 * @throws MeopError `section-yields` where the nominal stress exceeds the yield strength
 * @example lowCycleLife({ stress: '60 MPa', concentration: 2.5, yieldStrength: '241 MPa', ultimateStrength: '290 MPa', elasticModulus: '68.9 GPa', elongation: 0.1 }).label // => 'first-order estimate'
 */
export const lowCycleLife = /* @__PURE__ */ procedure({
  name: 'lowCycleLife',
  title: 'Low-cycle life of a part that is loaded once per firing (first-order estimate)',
  source: `${meanStressSlopes.source}; Neuber's rule; factors ${scatter.cycles} and ${scatter.strain} as in ASME BPVC VIII-2 mean-curve practice (from memory)`,
  inputs: {
    stress: stress('σ', 'nominal stress at the peak pressure of a firing', { above: 0, example: '60 MPa' }),
    concentration: optional(
      ratio('K_t', 'stress-concentration factor: 2.5 on hoop stress at a small hole in a closed cylinder', {
        min: 1,
        example: 2.5,
      }),
      1,
    ),
    notchSensitivity: fatigueNotchFactor.inputs.notchSensitivity,
    yieldStrength: stress('S_y', 'yield strength', { above: 0, example: '241 MPa' }),
    ...tensileTest,
    elongation: ratio(
      'A',
      'elongation at fracture as a fraction; the fracture strain is assumed ln(1 + A), which is low and so conservative',
      { above: 0, max: 1, example: 0.1 },
    ),
    cyclic: optional(cyclicConstants),
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
    const { stress: nominal, yieldStrength, concentration, notchSensitivity, cyclic } = given;
    const notchFactor = fatigueNotchFactor.si({ concentration, notchSensitivity });
    const { verdict, localStress, strainRange, cyclesToFailure, allowedCycles } = localLife(
      nominal.si,
      notchFactor,
      {
        yieldStrength: yieldStrength.si,
        ultimateStrength: given.ultimateStrength.si,
        elasticModulus: given.elasticModulus.si,
        elongation: given.elongation,
        cyclic: cyclic && cyclicSi(cyclic),
      },
    );
    if (verdict === 'section yields')
      throw new MeopError({
        code: 'section-yields',
        procedure: 'lowCycleLife',
        path: 'stress',
        given: nominal,
        expected: `at most the yield strength (${yieldStrength}): the section collapses at ${(yieldStrength.si / nominal.si).toPrecision(3)} of this load, before fatigue counts`,
        remedy:
          'Reduce the pressure or increase the section, and compare the load with netSectionCollapseLoad',
      });
    return {
      label: 'first-order estimate',
      verdict,
      notchFactor,
      localStress: fromSiValue(localStress, 'stress', unitFor('stress', nominal.unit)),
      strainRange,
      cyclesToFailure,
      plannedCycles: Math.floor(allowedCycles),
      source: cyclic === undefined ? lowCycleLife.source : `${cyclic.source}; ${lowCycleLife.source}`,
      cautions: lifeCautions,
    };
  },
});
