import type { FailureSequenceEntry } from '../../structures';
import { failureSequence } from '../../structures/failure-mode/failure-sequence';
import { fromSiValue, printable, procedure, type Quantity, table, unitOf } from '../../units';
import type { Motor } from '../document';
import { motorSubject } from '../document/motor-subject';
import { withAssumedErosion } from '../erosion-of';
import { fullPeak } from '../meop/full-peak';
import { meopOf } from '../meop/meop';
import { peakResponse } from '../meop/peak-response';
import { worstCorner } from '../meop/worst-corner';
import { columnWith, motorRegression } from '../motor-grain';
import { namedRows } from '../part-rows';
import type { RegressionCache } from '../regression-cache';
import { structureMargins } from '../review/hardware-review';
import { settingsOf } from '../settings';
import { withValues } from '../varied-motor';
import { atWorstCaseTolerances, worstCaseFiringValues } from '../worst-case-tolerances';
import { type FlawFamily, type FlawKind, type FlawSize, flawFamilies } from './flaw-family';

/** The critical flaw of one kind for a failure mode. */
export interface FlawLimit {
  readonly kind: FlawKind;
  /** Burning area that the flaw adds; undefined where the largest possible flaw does not cause failure. */
  readonly addedArea: Quantity<'area'> | undefined;
  /** Description of the flaw, or statement that the largest flaw does not cause failure. */
  readonly message: string;
}

/** A failure mode with its critical flaws. */
export interface FlawEnvelopeRow extends FailureSequenceEntry {
  readonly limits: readonly FlawLimit[];
}

/** Critical flaw sizes of each failure mode, without factors of safety. */
export interface FlawEnvelope {
  /** Name of the motor. */
  readonly name: string;
  /** Worst-case peak gauge pressure without additional flaws, including the allowance. */
  readonly flawFreePeakPressure: Quantity<'gauge pressure'>;
  /** Failure modes, smallest critical flaw first. */
  readonly rows: readonly FlawEnvelopeRow[];
  /** Peak gauge pressure against added area by kind of flaw, for a plot. */
  readonly curves: readonly {
    readonly kind: FlawKind;
    readonly points: readonly {
      readonly addedArea: Quantity<'area'>;
      readonly peak: Quantity<'gauge pressure'>;
      readonly words: string;
    }[];
  }[];
  readonly cautions: readonly string[];
  toString(): string;
}

/**
 * Every computed flaw is simulated in full, with linear interpolation between them. The flaws of the document are included; the assumed flaw is not.
 *
 * @example flawEnvelope(demoMotor()).rows[0].limits.length // => 3
 */
export const flawEnvelope = /* @__PURE__ */ procedure({
  name: 'flawEnvelope',
  title: 'Critical flaw size of each failure mode',
  source: 'The calculations of meop and review, without factors of safety',
  subject: motorSubject,
  inputs: {},
  gives:
    'the crack, debond or void that raises peak pressure until the stress equals the allowable, with worst-case tolerances, temperature and dimensions',
  example: 'flawEnvelope(demoMotor())',
  run: (motor) => envelopeOf(withAssumedErosion(withoutAssumedFlaw(motor))),
});

function envelopeOf(motor: Motor): FlawEnvelope {
  const cache: RegressionCache = new Map();
  const meop = meopOf(motor, cache);
  const { worstCase } = meop;
  const response = peakResponse(motor, 'as documented', cache);
  const { frame } = response;
  const kelvin = worstCase.grainTemperature.si;
  const shares = worstCorner(response, kelvin);
  // Every value but those of the grain at its worst-case limit; the grain is the nominal one with the flaw.
  const moved = response.inputs.flatMap(({ name, path, value, plusMinus, shapesGrain }, i) =>
    shapesGrain || shares[i] === 0 ? [] : [{ name, path, si: value.si + shares[i] * plusMinus }],
  );
  const counted = new Set(moved.map(({ name }) => name));
  const corner = withValues(motor, [
    ...moved,
    ...worstCaseFiringValues(motor).filter(({ name }) => !counted.has(name)),
  ]);
  const ambient = motor.ambient.pressure.value.si;
  const column = motorRegression(motor, 'as documented', cache);
  const scale = (worstCase.pressure.si + ambient) / fullPeak(corner, column, kelvin);
  const { allowance } = meop;
  const peakWith = (size: FlawSize): number =>
    allowance *
    (scale * fullPeak(corner, columnWith(motor, column, size.regression, size.segments, cache), kelvin) -
      ambient);
  const flawFreePeakPressure = fromSiValue<'gauge pressure'>(
    allowance * worstCase.pressure.si,
    'gauge pressure',
    unitOf('MPa'),
  );

  const structure = structureMargins(
    atWorstCaseTolerances(motor),
    flawFreePeakPressure,
    meop.thrust,
    settingsOf(motor),
  );
  const families = flawFamilies(motor, frame.depth).map((family) => ({
    family,
    peaks: greatestSoFar(family.sizes.map(peakWith)),
  }));
  const rows = failureSequence(structure.margins, flawFreePeakPressure).map((step) => ({
    ...step,
    limits: families.map(({ family, peaks }) =>
      limitOf(family, peaks, step.failurePressure.si, flawFreePeakPressure.si),
    ),
  }));
  const area = (si: number): Quantity<'area'> => fromSiValue(si, 'area', unitOf('cm^2'));
  const found = {
    name: motor.name,
    flawFreePeakPressure,
    rows,
    curves: families.map(({ family, peaks }) => ({
      kind: family.kind,
      points: family.sizes.map(({ addedArea, words }, i) => ({
        addedArea: area(addedArea),
        peak: fromSiValue<'gauge pressure'>(peaks[i], 'gauge pressure', unitOf('MPa')),
        words,
      })),
    })),
    cautions: [
      'Cracks can ignite late, run at a higher pressure than the bore and propagate. The areas are upper bounds of the critical size.',
      'No factors of safety are included: at these flaws the stress equals the allowable.',
      ...meop.cautions,
    ],
  };
  return printable(found, () => envelopeText(found));
}

function withoutAssumedFlaw(motor: Motor): Motor {
  const { assumedFlaw: _, ...grain } = motor.grain;
  return { ...motor, grain };
}

/**
 * Running maximum of the peaks: a larger flaw can burn out before the peak and lower it, but a limit on size must
 * also cover smaller flaws.
 */
function greatestSoFar(peaks: readonly number[]): readonly number[] {
  let most = Number.NEGATIVE_INFINITY;
  return peaks.map((peak) => {
    most = Math.max(most, peak);
    return most;
  });
}

function limitOf(family: FlawFamily, peaks: readonly number[], limit: number, sound: number): FlawLimit {
  const { kind, sizes, describe } = family;
  if (sound >= limit)
    return {
      kind,
      addedArea: fromSiValue(0, 'area', unitOf('cm^2')),
      message: 'fails without an additional flaw',
    };
  const k = peaks.findIndex((peak) => peak >= limit);
  if (k < 0)
    return {
      kind,
      addedArea: undefined,
      message: `does not fail with the largest flaw: ${sizes[sizes.length - 1].words}`,
    };
  const [from, low] = k === 0 ? [0, sound] : [sizes[k - 1].addedArea, peaks[k - 1]];
  const share = (limit - low) / (peaks[k] - low);
  const area = from + share * (sizes[k].addedArea - from);
  return { kind, addedArea: fromSiValue(area, 'area', unitOf('cm^2')), message: describe(area) };
}

const mostInWords = 4;

function envelopeText({ flawFreePeakPressure, rows, cautions }: Omit<FlawEnvelope, 'toString'>): string {
  const alike = namedRows(rows, ({ mode, failurePressure, limits }) => [
    mode,
    failurePressure,
    ...limits.map(({ message }) => message),
  ]);
  const lines = alike.map(({ part, mode, failurePressure, limits }) => ({
    part,
    mode,
    at: failurePressure,
    ...Object.fromEntries(limits.map(({ kind, addedArea }) => [kind, addedArea ?? 'does not fail'])),
  }));
  return [
    `Worst-case peak pressure without additional flaws: ${flawFreePeakPressure}. Added burning area at which each mode fails:`,
    table(lines),
    ...alike
      .slice(0, mostInWords)
      .flatMap(({ part, mode, limits }) => [
        `${part}, ${mode}:`,
        ...limits.map(({ kind, message }) => `  ${kind}: ${message}`),
      ]),
    ...cautions.map((caution) => `caution: ${caution}`),
  ].join('\n');
}
