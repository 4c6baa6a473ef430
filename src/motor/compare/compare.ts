import {
  explainDifference,
  type ImpliedArea,
  impliedBurningArea,
  type PredictionDifference,
  type SimulatedFiring,
} from '../../ballistics';
import { type ReducedFiring, reduceFiring } from '../../firing';
import { instance, MeopError, printable, procedure, type Quantity } from '../../units';
import type { Motor } from '../document';
import { motorSubject } from '../document/motor-subject';
import { propellantOf } from '../document/propellant-of';
import { type GivenFiring, isGivenFiring, isReducedFiring } from '../given-firing';
import { heatLossOf } from '../heat-loss-of';
import { meopOf } from '../meop/meop';
import { motorRegression } from '../motor-grain';
import { predict } from '../predict';
import type { RegressionCache } from '../regression-cache';
import { structureMargins } from '../review/hardware-review';
import { settingsOf } from '../settings';
import { atWorstCaseTolerances } from '../worst-case-tolerances';
import { reuseAfter } from './after-firing';
import {
  type ComparedFigure,
  comparisonText,
  type MotorComparison,
  type StrengthUtilisation,
} from './comparison';
import { diagnosisOf } from './diagnosis';
import { erosionCalibration } from './erosion-calibration';
import { heatLossCalibration } from './heat-loss-calibration';
import { factsOf } from './reduction-inputs';
import { reuseFindings } from './reuse-findings';
import { updatePatch } from './update-patch';

/**
 * A record is first reduced by `reduceFiring` with the values of the document. A saturated pressure channel is
 * reconstructed, and the upper limit of its 95 % confidence interval is used as the peak pressure for the hardware.
 *
 * @example compare(demoMotor(), { firing: predict(demoMotor()) }).patchReasons.length // => 0
 */
export const compare = /* @__PURE__ */ procedure({
  name: 'compare',
  title: 'Comparison of a firing with the prediction of its motor',
  source: 'The calculations of meop, review and explainDifference',
  subject: motorSubject,
  inputs: {
    firing: instance('the recorded firing, or its reduction', 'a Firing or a ReducedFiring', isGivenFiring, {
      remedy: 'Make one with firingFromLog or reduceFiring',
    }),
  },
  gives:
    'differences in performance, constants to change in the model, strength utilisation of each part, and findings for and against reuse of the hardware',
  example: 'compare(demoMotor(), { firing: predict(demoMotor()) })',
  run: (motor, { firing }) => comparisonOf(motor, firing),
});

function comparisonOf(motor: Motor, given: GivenFiring): MotorComparison {
  const cache: RegressionCache = new Map();
  const meop = meopOf(motor, cache);
  const predicted = meop.nominal.firing;
  const facts = factsOf(motor, predicted);
  const measured = isReducedFiring(given) ? given : reduceFiring(given, facts);
  // Reduced by the same rules, so that a rule excludes the same part of both.
  const expected = reduceFiring(predicted, { ...facts, ranges: {} });
  const settings = settingsOf(motor);
  const cautions: string[] = [...measured.cautions];
  const difference = attempt(() => explained(motor, predicted, measured), cautions);
  const impliedArea =
    measured.record.pressure === undefined
      ? undefined
      : attempt(() => areaOf(motor, measured, cache), cautions);
  const { patch, reasons, left } = updatePatch(motor, measured, expected, (changed) =>
    changed === motor ? difference : attempt(() => explained(changed, predict(changed), measured), []),
  );
  const calibrated = heatLossCalibration(motor, measured, expected, cache);
  const erosion = attempt(() => erosionCalibration(motor, predicted, measured, cache), cautions);
  const peakPressureUpperBound = measured.peakPressureUpperBound;
  const thrust = measured.peakThrust?.high ?? predicted.thrust.max();
  const utilisations =
    peakPressureUpperBound === undefined ? [] : strengthUtilisations(motor, peakPressureUpperBound, thrust);
  const { reuse: ledger, ledgerEntry } = reuseAfter(motor, measured, meop, settings);
  const reuse = reuseFindings(
    motor,
    measured,
    utilisations,
    peakPressureUpperBound,
    meop.pressure,
    settings,
    ledger,
  );
  const against = reuse.filter(({ effect }) => effect === 'adverse').length;
  const figures = figuresOf(expected, measured);
  const impulse = ratioOf(expected.totalImpulse?.value, measured.totalImpulse?.value);
  const found = {
    predicted,
    measured,
    figures,
    difference,
    impliedArea,
    patch,
    patchReasons: [...reasons, calibrated, erosion?.reason].filter((reason) => reason !== undefined),
    erosiveBurning: erosion?.fit,
    diagnosis: diagnosisOf(left, impliedArea, { impulse, isPatched: reasons.length > 0 }),
    peakPressureUpperBound,
    utilisations,
    reuse: {
      findings: reuse,
      inspections: ledger.inspections,
      parts: ledger.parts,
      ledgerEntry,
      summary:
        against > 0
          ? `${against} ${against === 1 ? 'finding argues' : 'findings argue'} against reusing this hardware.`
          : 'No finding in this record argues against reusing this hardware. This is not an approval to fire.',
    },
    cautions: [...new Set([...cautions, ...(difference?.cautions ?? []), ...(impliedArea?.cautions ?? [])])],
  };
  return printable(found, () => comparisonText(found));
}

/** Runs a step of the comparison. On a record that does not permit it, the error becomes a caution. */
function attempt<T>(make: () => T, cautions: string[]): T | undefined {
  try {
    return make();
  } catch (error) {
    if (!(error instanceof MeopError)) throw error;
    cautions.push(error.statement);
    return undefined;
  }
}

function explained(motor: Motor, predicted: SimulatedFiring, measured: ReducedFiring): PredictionDifference {
  const { burnLaw } = motor.propellant;
  const exponent = burnLaw.exponent ?? burnLaw.bands?.[0]?.exponent;
  return explainDifference({ predicted, measured: measured.record, exponent: exponent?.value.si });
}

function areaOf(motor: Motor, measured: ReducedFiring, cache: RegressionCache): ImpliedArea {
  const { law, density, characteristicVelocity: withoutLoss } = propellantOf(motor.propellant);
  const characteristicVelocity = heatLossOf(motor, cache)?.characteristicVelocity ?? withoutLoss;
  return impliedBurningArea({
    record: measured.record,
    law,
    density,
    characteristicVelocity,
    throatDiameter: motor.nozzle.throatDiameter.value,
    grainTemperature: motor.ambient.temperature.value,
    flawFreeGrain: motorRegression(motor, 'none', cache),
  });
}

function strengthUtilisations(
  motor: Motor,
  pressure: Quantity<'gauge pressure'>,
  thrust: Quantity<'force'>,
): readonly StrengthUtilisation[] {
  return structureMargins(atWorstCaseTolerances(motor), pressure, thrust, settingsOf(motor))
    .margins.filter(({ part, failurePressure }) => failurePressure !== undefined || part === 'stand')
    .map(({ id, part, mode, limit, applied, allowable, marginOfSafety }) => ({
      id,
      part,
      mode,
      limit,
      applied,
      allowable,
      utilisation: applied.si / allowable.si,
      marginOfSafety,
    }))
    .sort((a, b) => b.utilisation - a.utilisation);
}

const ratioOf = (expected: Quantity | undefined, found: Quantity | undefined): number | undefined =>
  expected === undefined || found === undefined || expected.si === 0 ? undefined : found.si / expected.si;

function figuresOf(expected: ReducedFiring, measured: ReducedFiring): readonly ComparedFigure[] {
  const row = (figure: string, of: (one: ReducedFiring) => Quantity | undefined): ComparedFigure => {
    const [predicted, found] = [of(expected), of(measured)];
    return { figure, predicted, measured: found, ratio: ratioOf(predicted, found) };
  };
  return [
    row('peak pressure', ({ peakPressure }) => peakPressure?.value),
    row('peak thrust', ({ peakThrust }) => peakThrust?.value),
    row('total impulse', ({ totalImpulse }) => totalImpulse?.value),
    row('specific impulse', ({ specificImpulse }) => specificImpulse),
    row('average thrust', ({ averageThrust }) => averageThrust),
    row('action time', ({ burnTime }) => burnTime),
    row('pressure integral', ({ pressureIntegral }) => pressureIntegral?.value),
    row('characteristic velocity', ({ characteristicVelocity }) => characteristicVelocity),
  ];
}
