import type { Difference } from '../../ballistics';
import type { ReducedFiring } from '../../firing';
import { fromSiValue, type Quantity, unitFor } from '../../units';
import type { Measured, Motor } from '../document';
import type { MotorPatch } from './comparison';
import { patchMotor } from './patch-motor';

/** Constants that a firing asks to change. */
export interface UpdatePatch {
  readonly patch: MotorPatch;
  readonly reasons: readonly string[];
}

/** A value closer than this to the document's is no reason to change it. */
const worthwhile = 0.005;

/**
 * The patch that brings the document to what the firing says: c* from the pressure integral, and the one other constant
 * that explains the traces best. Where that is the burning area nothing else changes: a grain that was not as documented
 * says little of its propellant.
 */
export function updatePatch(
  motor: Motor,
  measured: ReducedFiring,
  predictedVelocity: number | undefined,
  explain: (motor: Motor) => Difference | undefined,
): UpdatePatch {
  const { propellant, nozzle } = motor;
  const changes: { readonly path: readonly string[]; readonly value: unknown; readonly reason: string }[] =
    [];
  const change = (path: readonly string[], old: Measured, factor: number, why: string): void => {
    if (Math.abs(factor - 1) < worthwhile) return;
    const value = scaled(old, factor);
    changes.push({
      path,
      value: written(value),
      reason: `${path.join('.')}: ${String(old.value)} becomes ${String(value.value)} (${why})`,
    });
  };
  const clipped = measured.clipping.pressure !== undefined;
  const velocity = measured.characteristicVelocity;
  const ofVelocity =
    velocity !== undefined && predictedVelocity !== undefined && !clipped
      ? velocity.si / predictedVelocity
      : undefined;
  if (ofVelocity !== undefined)
    change(
      ['propellant', 'characteristicVelocityEfficiency'],
      propellant.characteristicVelocityEfficiency,
      ofVelocity,
      `delivered c* ${String(velocity)}`,
    );
  // The traces are explained with the delivered c* already in: it is measured by itself.
  const difference = explain(changes.length > 0 ? patchMotor(motor, patchOf(changes)) : motor);
  const [best] = difference?.explanations ?? [];
  if (
    best !== undefined &&
    difference !== undefined &&
    difference.residual >= 0.01 &&
    best.explained >= 0.5
  ) {
    const why = `explains ${(100 * best.explained).toFixed(0)} % of the difference alone`;
    const { rate } = propellant.burnLaw;
    if (best.cause === 'burning rate' && rate)
      change(['propellant', 'burnLaw', 'rate'], rate, best.factor, why);
    if (best.cause === 'throat area')
      change(['nozzle', 'throatDiameter'], nozzle.throatDiameter, Math.sqrt(best.factor), why);
    if (best.cause === 'characteristic velocity' && ofVelocity === undefined)
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
  };
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
    // Four figures: a firing tells no more.
    value: fromSiValue(
      Number((value.si * factor).toPrecision(4)),
      value.kind,
      unitFor(value.kind, value.unit),
    ),
    plusMinus,
  };
}

/** As the document writes it, with the tolerance it had. */
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
