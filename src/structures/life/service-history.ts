import {
  choice,
  count,
  flag,
  gaugePressure,
  inputs,
  length,
  list,
  optional,
  ratio,
  temperature,
  time,
  variants,
  words,
} from '../../units';

const pressureParts = [
  'case',
  'head-closure',
  'head-joint',
  'aft-closure',
  'aft-joint',
  'throat-insert',
] as const;

const joint = (what: string) => choice(`joint ${what}`, ['head-joint', 'aft-joint']);
const date = optional(words('date', { example: '2026-05-02' }));

/** One pressurisation of the hardware. */
const pressurisation = /* @__PURE__ */ inputs(
  {
    kind: choice('kind of pressurisation', ['proof', 'firing']),
    pressure: gaugePressure('p', 'maximum pressure', { above: 0, example: '4.2 MPag', worse: 'high' }),
    date,
    wallTemperature: optional(
      temperature('T', 'maximum temperature of the case wall', {
        above: 0,
        example: '90 degC',
        worse: 'high',
      }),
    ),
    timeHot: optional(
      time('t', 'time of the case wall near its maximum temperature; half an hour where omitted', {
        above: 0,
        example: '10 min',
        worse: 'high',
      }),
    ),
    times: optional(
      count('n', 'number of pressurisations like this one; one where omitted', { example: 1 }),
      1,
    ),
    parts: optional(
      list(
        'parts that saw it; all parts where omitted, so that a new part is left out',
        choice('part', pressureParts),
      ),
    ),
  },
  { meaning: 'one pressurisation of the hardware' },
);

const before = (meaning: string) =>
  optional(length('L_0', `${meaning} as made; the size in this document where omitted`, { worse: 'low' }));

/** What was measured on the hardware after use. */
const measurement = /* @__PURE__ */ variants('measure', 'measurement of the hardware after use', {
  'hole length': inputs(
    {
      part: joint('whose holes in the case were measured'),
      date,
      length: length('L', 'length of the longest hole, in the direction of its load', {
        example: '5.33 mm',
        worse: 'high',
      }),
      asMade: before('diameter of that hole'),
    },
    { meaning: 'length of bolt holes in the case' },
  ),
  bore: inputs(
    {
      date,
      diameter: length('D', 'maximum mean diameter of the bore', { example: '51.02 mm', worse: 'high' }),
      asMade: before('diameter of the bore'),
    },
    { meaning: 'diameter of the bore' },
  ),
  ovality: inputs(
    {
      date,
      difference: length(
        'ΔD',
        'largest difference between the maximum and the minimum diameter of the bore',
        {
          min: 0,
          example: '0.03 mm',
          worse: 'high',
        },
      ),
      asMade: optional(
        length('ΔD_0', 'the same difference as made; zero where omitted', {
          min: 0,
          example: '0.01 mm',
          worse: 'low',
        }),
      ),
    },
    { meaning: 'ovality of the bore' },
  ),
  hardness: inputs(
    {
      part: choice('part', ['case', 'head-closure', 'aft-closure']),
      date,
      hardness: ratio('H', 'minimum Brinell hardness found', { above: 0, example: 93, worse: 'low' }),
      asNew: optional(
        ratio('H_0', 'Brinell hardness as new; the typical value of the alloy where omitted', {
          above: 0,
          example: 95,
          worse: 'high',
        }),
      ),
    },
    { meaning: 'Brinell hardness' },
  ),
  'groove burr': inputs(
    {
      part: joint('whose ring groove was measured'),
      date,
      height: length('b', 'height of the burr or roll-over at the lip', {
        min: 0,
        example: '0.02 mm',
        worse: 'high',
      }),
    },
    { meaning: 'burr or roll-over of the lip of a ring groove' },
  ),
  'thread gauge': inputs(
    {
      part: joint('whose thread was gauged'),
      date,
      accepted: flag('whether the go gauge enters freely and the no-go gauge does not'),
    },
    { meaning: 'thread by go and no-go gauge' },
  ),
  crack: inputs(
    {
      part: choice('part', pressureParts),
      date,
      found: flag('whether dye penetrant, or a lens on graphite, shows a crack'),
    },
    { meaning: 'search for cracks' },
  ),
  'screw length': inputs(
    {
      part: joint('whose screws were measured'),
      date,
      length: length('L', 'length of the longest screw', { example: '16.02 mm', worse: 'high' }),
      asMade: length('L_0', 'length of that screw as new', { example: '16 mm', worse: 'low' }),
      grip: length('L_g', 'grip: length of the screw between head and thread in use', {
        example: '12 mm',
        worse: 'low',
      }),
    },
    { meaning: 'length of the screws' },
  ),
});

/** The ledger of the hardware: what it has seen, and what was measured on it. */
export const serviceHistory = /* @__PURE__ */ inputs(
  {
    pressurisations: optional(list('pressurisations so far, proof tests and firings', pressurisation)),
    measurements: optional(list('measurements after use', measurement)),
  },
  { meaning: 'ledger of reuse: pressurisations of the hardware, and measurements after use' },
);
