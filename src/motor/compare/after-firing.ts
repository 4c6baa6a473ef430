import type { ReducedFiring } from '../../firing';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { Meop } from '../meop/meop-result';
import type { Pressurisation } from '../reuse/cycles-seen';
import type { ReuseReview } from '../reuse/reuse-result';
import { reuseReview } from '../reuse/reuse-review';
import { hardwareReview } from '../review/hardware-review';
import type { MotorSettings } from '../settings';
import type { LedgerEntry } from './comparison';

/** The hottest channel of a record. */
const hottestOf = ({ record }: ReducedFiring): Quantity<'temperature'> | undefined =>
  Object.values(record.temperatures)
    .map((series) => series.max().to('degC'))
    .reduce<Quantity<'temperature'> | undefined>(
      (most, next) => (most === undefined || next.si > most.si ? next : most),
      undefined,
    );

/** The reuse of the hardware with the firing just compared counted, and its entry for the ledger. */
export function reuseAfter(
  motor: Motor,
  measured: ReducedFiring,
  { pressure: meop, thrust }: Meop,
  settings: MotorSettings,
): { readonly reuse: ReuseReview; readonly ledgerEntry: LedgerEntry | undefined } {
  const { worst, structure, seals } = hardwareReview(motor, meop, thrust, settings);
  const { margins, joints } = structure;
  const pressure = measured.peakPressureUpperBound;
  const hottest = hottestOf(measured);
  const fired: readonly Pressurisation[] =
    pressure === undefined || pressure.si <= 0
      ? []
      : [
          {
            kind: 'firing',
            pressure: { value: pressure, plusMinus: 0 },
            ...(hottest && { wallTemperature: { value: hottest, plusMinus: 0 } }),
          },
        ];
  return {
    reuse: reuseReview({ motor, worst, meop, margins, joints, seals, more: fired }),
    ledgerEntry:
      fired.length === 0 || pressure === undefined
        ? undefined
        : {
            kind: 'firing',
            pressure: `${Number(pressure.in('MPag').toPrecision(4))} MPag`,
            ...(hottest && { wallTemperature: `${Number(hottest.in('degC').toPrecision(4))} degC` }),
          },
  };
}
