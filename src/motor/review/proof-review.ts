import {
  type FailureMargin,
  hotProofFactor,
  hotProofPressure,
  type PartId,
  partName,
  stressRatio,
} from '../../structures';
import { isFailureModeId } from '../../structures/failure-mode/mode-name';
import { proofPressure } from '../../structures/proof-factor';
import { fromSiValue, type Quantity, unitOf } from '../../units';
import type { Motor } from '../document';
import type { MotorSettings } from '../settings';
import { pressureParts } from './hardware-review';
import type { PartCheck } from './part-review';
import type { Attempt } from './refusals';

/** Stress in a proof test up to which a part counts as far from yield. */
export const nearYieldShare = 0.9;

/** A part that is weaker in the firing than in the proof test. */
export interface ProofAtTemperature extends Pick<FailureMargin, 'id' | 'part' | 'mode'> {
  /** Strength in the test/strength in the firing. */
  readonly stressRatio: number;
  /** The factor on its strength in the firing that the proof test shows. */
  readonly shownFactor: number;
  /** Pressure of a test that shows the proof factor on its strength in the firing. */
  readonly requiredPressure: Quantity<'gauge pressure'>;
  /** The mode that yields below that pressure; the part cannot be proved at room temperature where there is one. */
  readonly yieldsBefore: FailureMargin | undefined;
}

/** The proof test of a motor. */
export interface ProofReview {
  readonly pressure: Quantity<'gauge pressure'>;
  /** Undefined for room temperature. */
  readonly temperature: Quantity<'temperature'> | undefined;
  /** Margins against yield with a factor of 1, lowest first; modes without a yield limit are compared with their strength. */
  readonly margins: readonly FailureMargin[];
  /** The mode with the lowest margin. */
  readonly weakest: FailureMargin | undefined;
  /** Modes above 0.9 of their yield strength. */
  readonly nearYield: readonly FailureMargin[];
  readonly checks: readonly PartCheck[];
  /** For each part that is weaker in the firing, its mode with the highest stress ratio. */
  readonly atTemperature: readonly ProofAtTemperature[];
  readonly cautions: readonly string[];
}

/** What the proof test is evaluated with; the motor is at its worst-case limits. */
export interface ProofConditions {
  readonly motor: Motor;
  readonly meop: Quantity<'gauge pressure'>;
  readonly settings: MotorSettings;
  /** Margins at MEOP, at the temperatures of the firing. */
  readonly margins: readonly FailureMargin[];
  readonly attempt: Attempt;
}

/** Evaluates every part at proof pressure, at the temperature of the test. */
export function proofReview({
  motor,
  meop,
  settings,
  margins: fired,
  attempt,
}: ProofConditions): ProofReview {
  const { proofFactor } = settings.factors;
  const required = proofPressure({ pressure: meop, factor: proofFactor });
  const pressure = motor.proofTest?.pressure?.value ?? required;
  const conditions = {
    motor: atTestTemperature(motor),
    pressure,
    thrust: fromSiValue<'force'>(0, 'force', unitOf('N')),
    settings: { ...settings, factors: { ...settings.factors, ...unity } },
    attempt,
  };
  const margins = pressureParts(conditions)
    .found.margins.filter(isOfProof)
    .sort((a, b) => a.marginOfSafety - b.marginOfSafety);
  const atTemperature = provenAtTemperature({ margins, fired, meop, pressure, proofFactor });
  return {
    pressure,
    temperature: motor.proofTest?.temperature?.value,
    margins,
    weakest: margins[0],
    nearYield: margins.filter(
      ({ limit, applied, allowable }) => limit === 'yield' && applied.si > nearYieldShare * allowable.si,
    ),
    checks: motor.proofTest?.pressure === undefined ? [] : [pressureCheck(pressure, required, settings)],
    atTemperature,
    cautions: hotCaution(atTemperature, proofFactor),
  };
}

const unity = { yieldFactor: 1, ultimateFactor: 1, proofFactor: 1 };

/** A motor in its proof test: every part at the temperature of the test. */
function atTestTemperature(motor: Motor): Motor {
  const temperature = motor.proofTest?.temperature;
  const { wallTemperature: _, ...tube } = motor.case;
  const tested = temperature === undefined ? tube : { ...tube, wallTemperature: temperature };
  const closureOf = (end: 'head' | 'aft'): Motor['closures'] => {
    const closure = motor.closures?.[end];
    if (closure === undefined) return {};
    const { temperature: __, ...unheated } = closure;
    return { [end]: temperature === undefined ? unheated : { ...unheated, temperature } };
  };
  return {
    ...motor,
    case: tested,
    ...(motor.closures && { closures: { ...motor.closures, ...closureOf('head'), ...closureOf('aft') } }),
  };
}

/** Yield limits, and modes that have none, such as those of graphite. Before a burst the tube yields. */
const isOfProof = ({ id, limit }: FailureMargin): boolean =>
  limit === 'yield' || !(isFailureModeId(`${id}-yield`) || id.startsWith('burst-'));

interface Hot {
  readonly margins: readonly FailureMargin[];
  readonly fired: readonly FailureMargin[];
  readonly meop: Quantity<'gauge pressure'>;
  readonly pressure: Quantity<'gauge pressure'>;
  readonly proofFactor: number;
}

const significant = 1.005; // a ratio that rounds to 1.00 is not reported

function provenAtTemperature({
  margins,
  fired,
  meop,
  pressure,
  proofFactor,
}: Hot): readonly ProofAtTemperature[] {
  const weaker = margins.flatMap((cold): readonly ProofAtTemperature[] => {
    const hot = fired.find(({ id, part }) => id === cold.id && part === cold.part);
    if (hot === undefined || cold.limit !== 'yield' || hot.allowable.kind !== cold.allowable.kind) return [];
    if (hot.allowable.si <= 0) return []; // yields as it is tightened: no proof test would show it
    // Of loads and pressures as of stresses: the quotient has no dimension.
    const ratio = stressRatio.si({ strengthCold: cold.allowable.si, strengthHot: hot.allowable.si });
    if (!(ratio >= significant)) return []; // also where neither has a strength
    const requiredPressure = hotProofPressure({ meop, factor: proofFactor, ratio });
    return [
      {
        id: cold.id,
        part: cold.part,
        mode: cold.mode,
        stressRatio: ratio,
        shownFactor: hotProofFactor({ proofPressure: pressure, meop, ratio }),
        requiredPressure,
        yieldsBefore: soonestBelow(margins, requiredPressure),
      },
    ];
  });
  const most = new Map<PartId, ProofAtTemperature>();
  for (const one of weaker)
    if (one.stressRatio > (most.get(one.part)?.stressRatio ?? 0)) most.set(one.part, one);
  return [...most.values()].sort((a, b) => b.stressRatio - a.stressRatio);
}

/** The mode that yields first, where it does below a pressure. */
const soonestBelow = (
  margins: readonly FailureMargin[],
  pressure: Quantity<'gauge pressure'>,
): FailureMargin | undefined =>
  margins
    .filter(({ failurePressure }) => failurePressure !== undefined && failurePressure.si < pressure.si)
    .sort((a, b) => (a.failurePressure?.si ?? 0) - (b.failurePressure?.si ?? 0))[0];

/** The caution for the part that the proof test shows least of. */
function hotCaution([worst]: readonly ProofAtTemperature[], proofFactor: number): readonly string[] {
  if (worst === undefined || worst.shownFactor >= proofFactor * (1 - 1e-12)) return [];
  const { part, mode, shownFactor, requiredPressure, yieldsBefore } = worst;
  const shows = `The proof test does not prove the strength in the firing: it shows a factor of ${shownFactor.toPrecision(3)} on it for ${partName(part)}, ${mode} (required ${proofFactor}).`;
  return [
    yieldsBefore === undefined
      ? `${shows} A test at ${requiredPressure} would show the factor.`
      : `${shows} A test at ${requiredPressure} would yield the ${partName(yieldsBefore.part)} (${yieldsBefore.mode}, ${yieldsBefore.failurePressure}), so that it cannot be proved cold.`,
  ];
}

function pressureCheck(
  pressure: Quantity<'gauge pressure'>,
  required: Quantity<'gauge pressure'>,
  { factors }: MotorSettings,
): PartCheck {
  return {
    part: 'case',
    check: 'proof pressure',
    value: pressure,
    limit: required,
    passes: pressure.si >= required.si,
    message: `${pressure} (required ≥ ${required}, ${factors.proofFactor} × MEOP)`,
    source: factors.source,
  };
}
