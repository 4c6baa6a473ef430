import * as ballistics from '../ballistics';
import * as firing from '../firing';
import * as motor from '../motor';
import * as nozzle from '../nozzle';
import * as structures from '../structures';
import * as thermo from '../thermo';
import {
  absolute,
  calculations,
  constants,
  formula,
  gauge,
  isClose,
  isQuantity,
  MeopError,
  namedKinds,
  q,
  quantity,
  series,
  seriesOf,
  table,
} from '../units';

/** All exports of the library by name, which are in scope at the prompt. */
export const library: Readonly<Record<string, unknown>> = {
  ...thermo,
  ...structures,
  ...nozzle,
  ...firing,
  ...ballistics,
  ...motor,
  // Units by name: the symbols of declarations (`length`, `time`, …) would hide variables of the user.
  absolute,
  calculations,
  constants,
  formula,
  gauge,
  isClose,
  isQuantity,
  MeopError,
  namedKinds,
  q,
  quantity,
  series,
  seriesOf,
  table,
};
