import { fromSiValue, type Quantity, unitFor } from '../../units';
import type { Measured, Motor } from '../document';

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
