import { fromSiValue, type Quantity, unitFor, unitOf } from '../../units';
import type { Measured, Motor } from '../document';
import { isFaceSeal } from '../document/seal-schema';
import type { Closure } from './closure-heat';

/** A length with its limits, as the seals want it. */
export const toleranced = ({ value, plusMinus }: Measured<'length'>) => ({
  nominal: value,
  plusMinus: fromSiValue<'length'>(plusMinus, 'length', unitFor('length', value.unit)),
});

/** The case of a motor at its worse ends: the thinnest wall on the widest tube. */
export function weakestCase({ case: tube }: Motor): {
  readonly wall: Quantity<'length'>;
  readonly outsideDiameter: Quantity<'length'>;
  readonly outsideRadius: Quantity<'length'>;
  readonly insideRadius: Quantity<'length'>;
  readonly bore: Quantity<'length'>;
} {
  const wall = tube.wall.value;
  const outsideDiameter = tube.outsideDiameter.value;
  const bore = outsideDiameter.minus(wall.times(2));
  return {
    wall,
    outsideDiameter,
    outsideRadius: outsideDiameter.per(2),
    insideRadius: bore.per(2),
    bore,
  };
}

/**
 * The diameter on which the pressure pushes a closure out: the bore; with a thread all of it, since a leak past the seal
 * gets there; with a seal in a face all within its groove.
 */
export function pressureAreaDiameter(motor: Motor, { thread, seals }: Closure): Quantity<'length'> {
  const { bore } = weakestCase(motor);
  const others = [
    ...(thread === undefined ? [] : [thread.majorDiameter.value.si]),
    ...seals
      .filter(isFaceSeal)
      .map(({ grooveOutsideDiameter: { value, plusMinus } }) => value.si + plusMinus),
  ];
  const most = Math.max(bore.si, ...others);
  return most === bore.si ? bore : fromSiValue<'length'>(most, 'length', unitOf('mm'));
}

/** The narrowest tube, of a motor at its worse ends: what is cut to a diameter of its own, as a thread is, leaves least of it. */
export function narrowestCase({ case: { outsideDiameter } }: Motor): Quantity<'length'> {
  const { value, plusMinus } = outsideDiameter;
  return fromSiValue<'length'>(value.si - 2 * plusMinus, 'length', unitFor('length', value.unit));
}
