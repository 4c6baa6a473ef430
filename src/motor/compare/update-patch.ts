import type { PredictionDifference } from '../../ballistics';
import type { ReducedFiring } from '../../firing';
import { fromSiValue, type Quantity, unitFor } from '../../units';
import type { Measured, Motor } from '../document';
import type { MotorPatch } from './comparison';
import { patchMotor } from './patch-motor';

/** Changes of model constants implied by a firing. */
export interface UpdatePatch {
  readonly patch: MotorPatch;
  readonly reasons: readonly string[];
  /** Difference that no change explains: with c* and throat changed, before the last change. */
  readonly left: PredictionDifference | undefined;
}

/** Minimum relative change of a constant; smaller changes are not proposed. */
const worthwhile = 0.005;

/**
 * Returns the patch that adjusts the document to the firing: c* from the pressure integral, unless thrust
 * indicates a throat change, and the one other constant that explains the traces best. If that is the burning
 * area, nothing else changes, because a grain that differs from the document gives little information on its
 * propellant.
 */
export function updatePatch(
  motor: Motor,
  measured: ReducedFiring,
  expected: ReducedFiring,
  explain: (motor: Motor) => PredictionDifference | undefined,
): UpdatePatch {
  const { propellant, nozzle } = motor;
  const changes: Change[] = [];
  const change = (path: readonly string[], old: Measured, factor: number, why: string): void => {
    if (Math.abs(factor - 1) < worthwhile) return;
    const value = scaled(old, factor);
    changes.push({
      path,
      value: written(value),
      reason: `${path.join('.')}: ${String(old.value)} becomes ${String(value.value)} (${why})`,
    });
  };
  const patched = (): Motor => (changes.length > 0 ? patchMotor(motor, patchOf(changes)) : motor);
  const ofVelocity = velocityRatio(measured, expected);
  const first = explain(motor);
  const throat = ofVelocity === undefined ? undefined : throatTold(first, ofVelocity, measured, expected);
  if (throat !== undefined)
    change(
      ['nozzle', 'throatDiameter'],
      nozzle.throatDiameter,
      Math.sqrt(throat),
      'pressure differs and impulse does not, as with another throat area. Measure the throat: it may have eroded or closed',
    );
  if (ofVelocity !== undefined)
    change(
      ['propellant', 'characteristicVelocityEfficiency'],
      propellant.characteristicVelocityEfficiency,
      // c* is proportional to the throat area used to compute it.
      ofVelocity * (throat ?? 1),
      throat === undefined
        ? `delivered c* ${String(measured.characteristicVelocity)}, with throat and propellant mass as documented`
        : 'delivered c* with that throat',
    );
  // The traces are explained with the delivered c* already changed, because it is measured independently.
  const difference = changes.length > 0 ? explain(patched()) : first;
  const [best] = difference?.explanations ?? [];
  if (
    best !== undefined &&
    difference !== undefined &&
    difference.residual >= 0.01 &&
    best.explained >= 0.5
  ) {
    const why = `explains ${(100 * best.explained).toFixed(0)} % of the difference by itself`;
    const { referenceRate } = propellant.burnLaw;
    if (best.id === 'burning-rate' && referenceRate)
      change(['propellant', 'burnLaw', 'referenceRate'], referenceRate, best.factor, why);
    if (best.id === 'burning-rate' && !referenceRate) changes.push(...bandChange(motor, best.factor, why));
    if (best.id === 'throat-area' && throat === undefined)
      change(['nozzle', 'throatDiameter'], nozzle.throatDiameter, Math.sqrt(best.factor), why);
    if (best.id === 'characteristic-velocity' && ofVelocity === undefined)
      change(
        ['propellant', 'characteristicVelocityEfficiency'],
        propellant.characteristicVelocityEfficiency,
        best.factor,
        why,
      );
  }
  return {
    patch: patchOf(changes),
    reasons: changes.map(({ reason }) => reason),
    left: difference,
  };
}

/** Measured/predicted ratio of the delivered c*; undefined where the record does not give it. */
function velocityRatio(measured: ReducedFiring, expected: ReducedFiring): number | undefined {
  const [found, wanted] = [measured.characteristicVelocity, expected.characteristicVelocity];
  return found === undefined || wanted === undefined || measured.clipping.pressure !== undefined
    ? undefined
    : found.si / wanted.si;
}

/**
 * Factor on the throat area where the throat explains the difference: the pressure integral differs and the
 * impulse does not; with another c* both would differ.
 */
function throatTold(
  difference: PredictionDifference | undefined,
  ofVelocity: number,
  measured: ReducedFiring,
  expected: ReducedFiring,
): number | undefined {
  const [best] = difference?.explanations ?? [];
  const [found, wanted] = [measured.totalImpulse?.value.si, expected.totalImpulse?.value.si];
  if (best?.id !== 'throat-area' || best.explained < 0.5 || found === undefined || wanted === undefined)
    return undefined;
  const impulseHolds = Math.abs(Math.log(found / wanted)) < 0.5 * Math.abs(Math.log(ofVelocity));
  return impulseHolds && Math.abs(ofVelocity - 1) >= worthwhile ? best.factor : undefined;
}

/** Burn rates of every band of a law; a list is replaced as a whole. */
function bandChange(motor: Motor, factor: number, why: string): readonly Change[] {
  const documented = motor.document.propellant.burnLaw.bands;
  const { bands } = motor.propellant.burnLaw;
  if (documented === undefined || bands === undefined || Math.abs(factor - 1) < worthwhile) return [];
  return [
    {
      path: ['propellant', 'burnLaw', 'bands'],
      value: documented.map((band, i) => ({
        ...band,
        referenceRate: written(scaled(bands[i].referenceRate, factor)),
      })),
      reason: `propellant.burnLaw.bands: every rate multiplied by ${Number(factor.toPrecision(4))} (${why})`,
    },
  ];
}

interface Change {
  readonly path: readonly string[];
  readonly value: unknown;
  readonly reason: string;
}

const patchOf = (changes: readonly Change[]): MotorPatch =>
  changes.reduce<MotorPatch>((patch, { path, value }) => withPath(patch, path, value), {});

function scaled({ value, plusMinus }: Measured, factor: number): Measured {
  return {
    // Four significant figures are within the accuracy of a firing.
    value: fromSiValue(
      Number((value.si * factor).toPrecision(4)),
      value.kind,
      unitFor(value.kind, value.unit),
    ),
    plusMinus,
  };
}

/** A value in document form, with its previous tolerance. */
function written({ value, plusMinus }: Measured): unknown {
  const bare = (quantity: Quantity): unknown => {
    const number = Number(quantity.in(quantity.unit).toPrecision(6));
    return quantity.kind === 'dimensionless' ? number : `${number} ${quantity.unit}`;
  };
  if (plusMinus === 0) return bare(value);
  return {
    value: bare(value),
    plusMinus: bare(fromSiValue(plusMinus, value.kind, unitFor(value.kind, value.unit))),
  };
}

function withPath(patch: MotorPatch, [key, ...rest]: readonly string[], value: unknown): MotorPatch {
  const inner = patch[key];
  const record: MotorPatch = typeof inner === 'object' && inner !== null ? { ...inner } : {};
  return { ...patch, [key]: rest.length === 0 ? value : withPath(record, rest, value) };
}
