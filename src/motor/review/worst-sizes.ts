import { fromSiValue, type Quantity, unitFor, unitOf } from '../../units';
import type { Measured, Motor } from '../document';
import { boreOf } from '../document/case-size';
import { isFaceSeal } from '../document/closure-inputs';
import type { Closure } from './closure-heat';

/** A length with its limits, as required by the seal calculations. */
export const toleranced = ({ value, plusMinus }: Measured<'length'>) => ({
  nominal: value,
  plusMinus: fromSiValue<'length'>(plusMinus, 'length', unitFor('length', value.unit)),
});

/** The case of a motor at its worst-case limits: minimum wall and maximum bore. */
export function weakestCase({ case: tube }: Motor): {
  readonly wall: Quantity<'length'>;
  readonly outsideDiameter: Quantity<'length'>;
  readonly outsideRadius: Quantity<'length'>;
  readonly insideRadius: Quantity<'length'>;
  readonly bore: Quantity<'length'>;
} {
  const wall = tube.wall.value;
  const bore = boreOf(tube).value;
  // With a bore as given, the minimum wall and the maximum bore occur with the minimum outside diameter.
  const outsideDiameter =
    tube.insideDiameter === undefined ? tube.outsideDiameter.value : bore.plus(wall.times(2));
  return {
    wall,
    outsideDiameter,
    outsideRadius: outsideDiameter.per(2),
    insideRadius: bore.per(2),
    bore,
  };
}

/**
 * Diameter of the pressure area of a closure: the bore; with a thread its full diameter, because a leak past the
 * seal reaches it; with a face seal the outside diameter of its groove.
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

/**
 * Diameter of the support of a closure as a plate: that of the pressure area; with bolts along the axis the bolt circle where it is
 * larger, with the pressure conservatively on all of it.
 */
export function plateDiameter(motor: Motor, closure: Closure): Quantity<'length'> {
  const area = pressureAreaDiameter(motor, closure);
  const circle = closure.axialBolts?.boltCircle.value;
  return circle !== undefined && circle.si > area.si ? circle : area;
}

/**
 * The minimum tube of a motor at its worst-case limits, which leaves the minimum wall under a feature machined to
 * a fixed diameter, such as a thread.
 */
export function narrowestCase({ case: { outsideDiameter } }: Motor): Quantity<'length'> {
  const { value, plusMinus } = outsideDiameter;
  return fromSiValue<'length'>(value.si - 2 * plusMinus, 'length', unitFor('length', value.unit));
}

/** Minimum diameter [m] of a closure in the bore, from its layout or next to its radial seals; undefined where neither states it. */
export function leastClosureDiameter({ layout, seals }: Closure): number | undefined {
  const least = ({ value, plusMinus }: Measured<'length'>): number => value.si - plusMinus;
  if (layout !== undefined) return least(layout.diameter);
  const lands = seals.flatMap((seal) => (isFaceSeal(seal) ? [] : [least(seal.closureDiameter)]));
  return lands.length === 0 ? undefined : Math.min(...lands);
}
