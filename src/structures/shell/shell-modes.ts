import { findRoot } from '../../numerics';
import type { Unit } from '../../units';
import { given, type Step, step } from '../failure-mode/calculation';
import type { FailureMode, PressureDrivenMode } from '../failure-mode/failure-mode';
import type { FailureModeId } from '../failure-mode/mode-name';
import type { Allowable } from '../materials/allowable';
import { proofPressure } from '../proof-factor';
import { barlowBurst, faupelBurst, meanDiameterBurst, svenssonBurst, turnerBurst } from './burst-formulas';
import type { BurstMethod } from './burst-pressure';
import { lameHoopStress, lameLongitudinalStress, lameRadialStress, vonMisesStress } from './lame';
import { outOfRoundStress, ovalTubeStress } from './out-of-round';
import { yieldPressure } from './yield-pressure';

/** A plain tube read and in SI, with what it can carry. */
export interface ShellSi {
  /** Maximum expected operating pressure, gauge [Pa]. */
  readonly pressure: number;
  readonly insideRadius: number;
  readonly outsideRadius: number;
  readonly factors: {
    readonly yieldFactor: number;
    readonly ultimateFactor: number;
    readonly proofFactor: number;
  };
  /** Of the wall at its temperature. */
  readonly yielding: Allowable;
  readonly ultimate: Allowable;
  /** Yield strength of the wall as it is proof-tested. */
  readonly cold: Allowable;
  readonly burstMethod: BurstMethod;
  /** For Svensson's burst. */
  readonly strainHardening: number | undefined;
  /** Of an oval tube; undefined where it was not measured. */
  readonly oval:
    | { readonly ovality: number; readonly elasticModulus: number; readonly poissonRatio: number }
    | undefined;
  readonly stressUnit: Unit;
  readonly pressureUnit: Unit;
}

/** The modes of a plain tube: yield at the bore, yield of an oval tube, burst, yield at the proof test. */
export function shellModes(shell: ShellSi): readonly FailureMode[] {
  const { pressure, oval } = shell;
  const hoop = hoopAt(shell, pressure);
  return [
    yieldMode(shell, 'bore-hoop-yield', hoop),
    yieldMode(shell, 'bore-von-mises-yield', vonMises(shell, hoop)),
    ...(oval === undefined
      ? []
      : [
          {
            ...yieldMode(shell, 'oval-tube-yield', ovalAt(shell, oval, pressure)),
            failurePressure: ovalFailure(shell, oval),
          },
        ]),
    burstMode(shell),
    proofMode(shell),
  ];
}

function yieldMode(shell: ShellSi, id: FailureModeId, calculation: Step): PressureDrivenMode {
  const { yielding, factors, pressure, stressUnit } = shell;
  return {
    id,
    part: 'case',
    limit: 'yield',
    calculation,
    allowable: given('stress', yielding.value.si),
    factor: factors.yieldFactor,
    pressure,
    temperature: yielding.temperature,
    unit: stressUnit,
    sources: [`strength: ${yielding.source}`],
    cautions: yielding.cautions,
  };
}

function burstMode({ ultimate, factors, pressure, pressureUnit, ...shell }: ShellSi): PressureDrivenMode {
  const { burstMethod, insideRadius, outsideRadius, yielding, strainHardening = 0 } = shell;
  const tube = {
    outsideDiameter: 2 * outsideRadius,
    wall: outsideRadius - insideRadius,
    ultimateStrength: ultimate.value.si,
  };
  const [id, allowable] = {
    Barlow: () => ['burst-barlow', step(barlowBurst, tube)] as const,
    'mean diameter': () => ['burst-mean-diameter', step(meanDiameterBurst, tube)] as const,
    Turner: () => ['burst-turner', step(turnerBurst, tube)] as const,
    Faupel: () => ['burst-faupel', step(faupelBurst, { ...tube, yieldStrength: yielding.value.si })] as const,
    Svensson: () => ['burst-svensson', step(svenssonBurst, { ...tube, strainHardening })] as const,
  }[burstMethod]();
  return {
    id,
    part: 'case',
    limit: 'ultimate',
    calculation: given('gauge pressure', pressure),
    allowable,
    factor: factors.ultimateFactor,
    pressure,
    temperature: yielding.temperature,
    unit: pressureUnit,
    sources: [`strength: ${ultimate.source}`],
    cautions: ultimate.cautions,
  };
}

/** The proof test is at room temperature and at the proof pressure, independent of the chamber pressure of a firing. */
function proofMode({
  cold,
  factors,
  pressure,
  insideRadius,
  outsideRadius,
  pressureUnit,
}: ShellSi): FailureMode {
  return {
    id: 'proof-yield',
    part: 'case',
    limit: 'yield',
    calculation: step(proofPressure, { pressure, factor: factors.proofFactor }),
    allowable: step(yieldPressure, { yieldStrength: cold.value.si, insideRadius, outsideRadius }),
    factor: 1,
    unit: pressureUnit,
    sources: [
      'A proof test must leave no permanent set (in every pressure-vessel standard)',
      `strength: ${cold.source}`,
    ],
    cautions: cold.cautions,
  };
}

const hoopAt = ({ insideRadius, outsideRadius }: ShellSi, pressure: number): Step =>
  step(lameHoopStress, { pressure, insideRadius, outsideRadius, radius: insideRadius });

function vonMises({ pressure, insideRadius, outsideRadius }: ShellSi, hoop: Step): Step {
  const cylinder = { pressure, insideRadius, outsideRadius };
  return step(vonMisesStress, {
    first: hoop,
    second: step(lameLongitudinalStress, cylinder),
    third: step(lameRadialStress, { ...cylinder, radius: insideRadius }),
  });
}

function ovalAt(shell: ShellSi, oval: NonNullable<ShellSi['oval']>, pressure: number): Step {
  const { insideRadius: a, outsideRadius: b } = shell;
  const bending = step(outOfRoundStress, { pressure, meanRadius: (a + b) / 2, wall: b - a, ...oval });
  return step(ovalTubeStress, { hoop: hoopAt(shell, pressure), bending });
}

/** Pressure rounds an oval tube out, so that its stress rises by less than in proportion. */
function ovalFailure(shell: ShellSi, oval: NonNullable<ShellSi['oval']>): number {
  const strength = shell.yielding.value.si;
  const excess = (p: number): number => ovalAt(shell, oval, p).value / strength - 1;
  // Hoop stress alone reaches the strength here; bending only adds to it.
  const upper = (shell.pressure * strength) / hoopAt(shell, shell.pressure).value;
  return findRoot(excess, { lower: 0, upper, tolerance: 1e-12 * upper }).root;
}
