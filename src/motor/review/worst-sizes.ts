import { fromSiValue, type Quantity, unitFor } from '../../units';
import type { Measured, Motor } from '../document';

/** The least that a toleranced length may be. */
export const least = (size: Measured<'length'>): Quantity<'length'> => moved(size, -1);
/** The most that a toleranced length may be. */
export const most = (size: Measured<'length'>): Quantity<'length'> => moved(size, 1);

const moved = ({ value, plusMinus }: Measured<'length'>, sign: 1 | -1): Quantity<'length'> =>
  plusMinus === 0 ? value : fromSiValue(value.si + sign * plusMinus, 'length', unitFor('length', value.unit));

/** A length with its limits, as the seals want it. */
export const toleranced = ({ value, plusMinus }: Measured<'length'>) => ({
  nominal: value,
  plusMinus: fromSiValue<'length'>(plusMinus, 'length', unitFor('length', value.unit)),
});

/** The case at its weakest: the thinnest wall on the widest tube. */
export function weakestCase({ case: tube }: Motor): {
  readonly wall: Quantity<'length'>;
  readonly outsideDiameter: Quantity<'length'>;
  readonly outsideRadius: Quantity<'length'>;
  readonly insideRadius: Quantity<'length'>;
  readonly bore: Quantity<'length'>;
} {
  const wall = least(tube.wall);
  const outsideDiameter = most(tube.outsideDiameter);
  const bore = outsideDiameter.minus(wall.times(2));
  return {
    wall,
    outsideDiameter,
    outsideRadius: outsideDiameter.per(2),
    insideRadius: bore.per(2),
    bore,
  };
}
