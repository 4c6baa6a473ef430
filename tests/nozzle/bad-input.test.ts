// What a person mistypes: each gives a typed error that names the field and says what is allowed.
import { describe, expect, test } from 'vitest';
import * as nozzle from '../../src/nozzle';
import * as thermo from '../../src/thermo';
import { series, seriesOf } from '../../src/units';
import { codeAndPathOf, errorOf } from '../error-code';

const calls: readonly (readonly [what: string, call: () => unknown, field: string, message: RegExp])[] = [
  ['γ of 1', () => thermo.isentropicPressureRatio({ mach: 2, gamma: 1 }), 'gamma', /above 1/],
  [
    'γ below 1',
    () => thermo.machFromAreaRatio({ areaRatio: 2, gamma: 0.9, branch: 'subsonic' }),
    'gamma',
    /above 1/,
  ],
  [
    'an area below the sonic one',
    () => thermo.machFromAreaRatio({ areaRatio: 0.5, gamma: 1.4, branch: 'supersonic' }),
    'areaRatio',
    /at least 1/,
  ],
  [
    'a pressure ratio above 1',
    () => thermo.machFromPressureRatio({ pressureRatio: 1.2, gamma: 1.4 }),
    'pressureRatio',
    /above 0 and at most 1/,
  ],
  ['a subsonic shock', () => thermo.normalShock({ mach: 0.8, gamma: 1.4 }), 'mach', /at least 1/],
  [
    'a shock that lowers pressure',
    () => thermo.normalShock({ pressureRatio: 0.9, gamma: 1.4 }),
    'pressureRatio',
    /at least 1/,
  ],
  [
    'two ways to say which shock',
    () => thermo.normalShock({ mach: 2, pressureRatio: 4.5, gamma: 1.4 }),
    'mach',
    /exactly one/,
  ],
  [
    'a turn beyond vacuum',
    () => thermo.machFromPrandtlMeyerAngle({ angle: '131 deg', gamma: 1.4 }),
    'angle',
    /below 130\.454/,
  ],
  [
    'a deflection that detaches the shock',
    () => thermo.obliqueShock({ mach: 2, gamma: 1.4, deflection: '30 deg' }),
    'deflection',
    /at most 22\.97/,
  ],
  [
    'flow that runs backwards',
    () =>
      thermo.orificeFlow({
        stagnationPressure: '1 bar',
        stagnationTemperature: '300 K',
        backPressure: '2 bar',
        area: '1 mm^2',
        gamma: 1.4,
        gasConstant: '287 J/(kg*K)',
      }),
    'backPressure',
    /backwards/,
  ],
  [
    'a condensed fraction of 1',
    () =>
      thermo.twoPhaseMixture({
        condensedMassFraction: 1,
        gasSpecificHeat: '2000 J/(kg*K)',
        condensedSpecificHeat: '1500 J/(kg*K)',
        gasMolarMass: '30 g/mol',
      }),
    'condensedMassFraction',
    /below 1/,
  ],
  [
    'more flow than a choked stream carries',
    () => thermo.machFromMassFlowParameter({ massFlowParameter: 0.7, gamma: 1.4, branch: 'subsonic' }),
    'massFlowParameter',
    /at most 0\.6847315/, // the Vandenkerckhove function at 1.4, computed with mpmath 1.3.0
  ],
  ['a shock too strong for doubles', () => thermo.normalShock({ mach: 1e200, gamma: 1.4 }), 'mach', /finite/],
  [
    'a negative chamber pressure',
    () =>
      nozzle.thrustCoefficient({
        gamma: 1.2,
        expansionRatio: 6,
        chamberPressure: '-5 MPa',
        ambientPressure: '1 atm',
      }),
    'chamberPressure',
    /above 0/,
  ],
  [
    'a negative ambient pressure',
    () =>
      nozzle.nozzleRegime({
        gamma: 1.2,
        expansionRatio: 6,
        chamberPressure: '5 MPa',
        ambientPressure: '-1 bar',
      }),
    'ambientPressure',
    /at least 0/,
  ],
  [
    'an exit smaller than the throat',
    () => nozzle.vacuumThrustCoefficient({ gamma: 1.2, expansionRatio: 0.2 }),
    'expansionRatio',
    /at least 1/,
  ],
  [
    'exit and throat exchanged',
    () =>
      nozzle.exitConditions({
        gamma: 1.2,
        gasConstant: '300 J/(kg*K)',
        temperature: '2000 K',
        chamberPressure: '5 MPa',
        expansionRatio: 0.2,
      }),
    'expansionRatio',
    /at least 1/,
  ],
  [
    'separation without over-expansion',
    () => nozzle.separationPressure({ gamma: 1.2, chamberPressure: '1 bar', ambientPressure: '1 bar' }),
    'ambientPressure',
    /below half/,
  ],
];

describe('bad input', () => {
  test.each(calls)('%s', (_, call, field, message) => {
    const thrown = errorOf(call);
    expect(thrown?.path).toBe(field);
    expect(thrown?.message).toMatch(message);
    expect(['out-of-domain', 'missing-field', 'no-solution']).toContain(thrown?.code);
  });

  test('a mixture without species is of the wrong kind', () => {
    expect(codeAndPathOf(() => thermo.gasMixture({ by: 'mole', species: [] }))).toBe('wrong-kind species');
  });

  test('values that do not go together say the limit', () => {
    expect(() =>
      nozzle.thrustCoefficient({
        gamma: 1.2,
        expansionRatio: 6,
        chamberPressure: '0.1 MPa',
        ambientPressure: '0.1 MPa',
      }),
    ).toThrowError(/not choked/);
    expect(() =>
      nozzle.optimumExpansionRatio({ gamma: 1.4, chamberPressure: '1 MPa', ambientPressure: '0.6 MPa' }),
    ).toThrowError(/critical pressure, 528282 Pa/);
    expect(() => nozzle.expansionRatioOf({ throatDiameter: '30 mm', exitDiameter: '10 mm' })).toThrowError(
      /exchanged/,
    );
  });

  test('a gauge pressure is not taken for an absolute one', () => {
    expect(() =>
      // @ts-expect-error: a gauge pressure where an absolute one is needed
      nozzle.thrust({ thrustCoefficient: 1.5, chamberPressure: '500 psig', throatArea: '100 mm^2' }),
    ).toThrowError(/absolute/);
  });

  test('a nozzle that will separate carries a caution', () => {
    const text = nozzle.thrustCoefficient.cautions({
      gamma: 1.2,
      expansionRatio: 20,
      chamberPressure: '1 MPa',
      ambientPressure: '1 atm',
    });
    expect(text.join()).toMatch(/separate/);
  });
});

describe('a misspelt field inside a part is refused: its default would be taken unheard', () => {
  // Held in variables, for the compiler refuses them where they are written out.
  const bell = { shape: 'bell', initialAngle: '24 deg', exitAngle: '9 deg', lengthShar: 0.6 } as const;
  const part = {
    diameter: '40 mm',
    plusminus: '0.05 mm',
    expansion: '5e-6 1/K',
    temperature: '900 K',
  } as const;
  const law = {
    law: 'pressure power',
    referenceRate: '0.1 mm/s',
    referencePressure: '5 MPa',
    exponent: 0.8,
    heatTime: '1 s',
  } as const;
  const thrust = { thrust: '300 N', margin: 2 } as const;
  const contact = { contact: '1e-4 m^2*K/W', thicknes: '1 mm' } as const;
  const plate = { thickness: '3 mm', conductivity: '167 W/(m*K)' } as const;
  const chamber = {
    chamberPressure: '4 MPa',
    ambientPressure: '1 atm',
    gamma: 1.13,
    characteristicVelocity: '900 m/s',
  } as const;
  const wall = {
    gasTemperature: '1500 K',
    gasCoefficient: '900 W/(m^2*K)',
    outsideTemperature: '300 K',
    outsideCoefficient: '15 W/(m^2*K)',
  } as const;
  const gas = { molarMass: '28 g/mol', specificHeat: '1040 J/(kg*K)', parts: 1, nam: 'nitrogen' } as const;
  const none = {};
  const time = series([0, 1], 's');
  const chamberPressure = seriesOf('absolute pressure', [5, 5], 'MPa');

  test.each([
    [
      () =>
        nozzle.nozzleContour({
          throatDiameter: '10 mm',
          exitDiameter: '20 mm',
          inletDiameter: '30 mm',
          divergent: bell,
        }),
      /unknown field 'divergent\.lengthShar'/,
    ],
    [
      () => nozzle.insertFit({ insert: part, housing: part, roomTemperature: '300 K' }),
      /unknown field 'insert\.plusminus'/,
    ],
    [
      () => nozzle.throatHistory({ throatDiameter: '12 mm', law, time, chamberPressure }),
      /unknown field 'law\.heatTime'/,
    ],
    [() => nozzle.sizeNozzle({ target: thrust, ...chamber }), /unknown field 'target\.margin'/],
    [
      () => nozzle.sizeNozzle({ target: none, ...chamber }),
      /target: a thrust, or a burning area with its rate, is required/,
    ],
    [
      () => thermo.layeredWallHeat({ ...wall, steps: [plate, contact, plate] }),
      /unknown field 'steps\.1\.thicknes'/,
    ],
    [() => thermo.gasMixture({ by: 'mole', species: [gas] }), /unknown field 'species\.0\.nam'/],
  ] as const)('%#', (call, message) => {
    expect(call).toThrowError(message);
  });
});

describe('names that do not exist', () => {
  const run = { gamma: 1.2, expansionRatio: 6, chamberPressure: '5 MPa', ambientPressure: '1 atm' } as const;
  test.each([
    // @ts-expect-error: no such rule
    [() => nozzle.nozzleRegime({ ...run, criterion: 'nobody' }), 'criterion'],
    // @ts-expect-error: no such behaviour
    [() => nozzle.nozzleRegime({ ...run, divergent: 'nothing' }), 'divergent'],
    // @ts-expect-error: no such branch
    [() => thermo.obliqueShock({ gamma: 1.4, mach: 2, deflection: '10 deg', branch: 'middle' }), 'branch'],
    [
      // @ts-expect-error: no such branch
      () => thermo.machFromMassFlowParameter({ gamma: 1.4, massFlowParameter: 0.5, branch: 'middle' }),
      'branch',
    ],
  ])('are refused by %s', (call, field) => {
    expect(errorOf(call)?.path).toBe(field);
  });
});
