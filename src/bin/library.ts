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

/** Everything the library exports, by name: what the prompt has in scope. */
export const library: Readonly<Record<string, unknown>> = {
  ...thermo,
  ...structures,
  ...nozzle,
  ...firing,
  ...ballistics,
  ...motor,
  // Of units by name: the symbols of declarations (`length`, `time`, …) would hide names that people use for their own values.
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
