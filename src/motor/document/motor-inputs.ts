import { wallHeatLoss } from '../../ballistics/transient-inputs';
import { factorsOfSafety, serviceHistory } from '../../structures/inputs';
import { absolutePressure, inputs, list, optional, temperature, words } from '../../units';
import { caseInputs, linerInputs } from './case-inputs';
import { closuresInputs } from './closure-inputs';
import { ignitionInputs, nozzleInputs } from './nozzle-inputs';
import { proofInputs } from './proof-inputs';
import { propellantInputs } from './propellant-inputs';
import { limitsInputs, meopInputs } from './review-inputs';
import { grainInputs } from './segment-inputs';
import { instrumentsInputs, standInputs } from './stand-inputs';

// Ambient conditions for people (engineering practice, no published source): kPa for MPa or kelvin for degrees is a unit
// error that would lower the computed pressure unnoticed.
const outdoors = { min: 1e3, max: 2e5 };
const weather = { min: 213.15, max: 373.15 };

/** Ambient conditions. */
const ambientInputs = /* @__PURE__ */ inputs(
  {
    pressure: absolutePressure('p_a', 'ambient pressure', {
      ...outdoors,
      example: '101.3 kPaa',
      worse: 'neither',
    }),
    temperature: temperature('T_a', 'temperature of grain and motor at ignition', {
      ...weather,
      example: '20 degC',
      worse: 'neither',
    }),
  },
  { meaning: 'ambient conditions: pressure and temperature' },
);

const temperatureRangeInputs = /* @__PURE__ */ optional(
  inputs(
    {
      coldest: temperature('T_min', 'minimum grain temperature at firing', {
        ...weather,
        example: '0 degC',
        worse: 'low',
      }),
      hottest: temperature('T_max', 'maximum grain temperature at firing', {
        ...weather,
        example: '40 degC',
        worse: 'high',
      }),
    },
    { meaning: 'temperature range for firing' },
  ),
);

/** All parts of a motor document. */
export const motorInputs = /* @__PURE__ */ inputs(
  {
    name: words('name of the motor'),
    notes: optional(list('remarks', words('remark'))),
    case: caseInputs,
    liner: linerInputs,
    closures: closuresInputs,
    nozzle: nozzleInputs,
    propellant: propellantInputs,
    grain: grainInputs,
    ignition: ignitionInputs,
    heatLoss: optional(wallHeatLoss),
    ambient: ambientInputs,
    temperatureRange: temperatureRangeInputs,
    stand: standInputs,
    instruments: instrumentsInputs,
    factors: optional(factorsOfSafety),
    proofTest: proofInputs,
    limits: limitsInputs,
    meop: meopInputs,
    history: optional(serviceHistory),
  },
  { meaning: 'motor document' },
);
