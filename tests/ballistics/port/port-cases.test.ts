import { describe, expect, it } from 'vitest';
import {
  chokedPort,
  erosiveThresholdFlux,
  headPressureEstimate,
  injectedFlow,
  lumpedCriterion,
  mukundaPaulRate,
  portChokingMach,
  portPressure,
  portStagnationPressureRatio,
  portStaticPressureRatio,
  propellant,
  reducedMassFlux,
  segmentGapFlow,
  uniformPort,
} from '../../../src/ballistics';
import { constants } from '../../../src/units';
import { checkValue } from '../../cases/check-value';
import { type Case, type CaseValue, caseOf, si, siList } from '../../cases/read-case';

// Expected values are those of tests/cases/flow.json, each with its source and provenance there.

const record = (value: CaseValue | undefined): Readonly<Record<string, CaseValue>> => {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) throw new Error('no record');
  return Object.fromEntries(Object.entries(value));
};

const words = (value: CaseValue | undefined): string => {
  if (typeof value !== 'string') throw new Error('no words');
  return value;
};

const propellantOf = (value: CaseValue | undefined) => {
  const { density, coefficient, exponent, gamma, molarMass, flameTemperature } = record(value);
  return propellant({
    density: `${si(density)} kg/m^3`,
    law: {
      coefficient: Number.parseFloat(words(coefficient)),
      rateUnit: 'mm/s',
      pressureUnit: 'MPa',
      exponent: si(exponent),
    },
    gamma: si(gamma),
    molarMass: `${Number.parseFloat(words(molarMass))} g/mol`,
    flameTemperature: `${si(flameTemperature)} K`,
  });
};

describe('the profile of injected flow', () => {
  it('profile-factor-round', () => {
    const one = caseOf('flow', 'profile-factor-round');
    const given = {
      gasDensity: '4.5 kg/m^3',
      injectionSpeed: '3.2 m/s',
      distance: '300 mm',
      halfWidth: '10 mm',
    } as const;
    const found = injectedFlow({ shape: 'round', ...given });
    checkValue(one, 'momentumFactor', found.momentumFactor);
    checkValue(one, 'meanSpeed', found.meanSpeed.si);
    checkValue(one, 'centreSpeed', found.centreSpeed.si);
    checkValue(one, 'pressureDrop', found.pressureDrop.si);
    // The note of the case: a slot of the same half width drops a quarter as much.
    expect(4 * injectedFlow({ shape: 'slot', ...given }).pressureDrop.si).toBeCloseTo(
      found.pressureDrop.si,
      6,
    );
  });

  it('profile-factor-compressible', () => {
    const one = caseOf('flow', 'profile-factor-compressible');
    const rest = { gamma: si(one.inputs.gamma), momentumFactor: si(one.inputs.momentumFactor) };
    siList(one.inputs.machAft).forEach((mach, i) => {
      checkValue(one, `headToAftStatic[${i}]`, portStaticPressureRatio({ mach, ...rest }));
      checkValue(one, `aftStagnationToHead[${i}]`, portStagnationPressureRatio({ mach, ...rest }));
    });
    checkValue(one, 'chokingMach', portChokingMach(rest));
  });
});

describe('port flow', () => {
  it('mach-along-uniform-port', () => {
    const one = caseOf('flow', 'mach-along-uniform-port');
    const { gamma, portToThroat, fractionOfLength } = one.inputs;
    const stations = siList(fractionOfLength);
    const found = uniformPort({ gamma: si(gamma), portToThroat: si(portToThroat), stations });
    checkValue(one, 'machAft', found.aftMach);
    stations.forEach((_, i) => {
      checkValue(one, `mach[${i}]`, found.mach[i]);
      checkValue(one, `pressureRatio[${i}]`, found.pressureRatio[i]);
      checkValue(one, `temperatureRatio[${i}]`, found.temperatureRatio[i]);
    });
  });

  it('choked-port', () => {
    const one = caseOf('flow', 'choked-port');
    const { density, gamma, flameTemperature } = record(one.inputs.propellant);
    const found = chokedPort({
      boreDiameter: '12 mm',
      length: '250 mm',
      headPressure: '5 MPa',
      density: `${si(density)} kg/m^3`,
      gasConstant: `${constants.molarGasConstant.value / 0.04} J/(kg*K)`,
      gasTemperature: `${si(flameTemperature)} K`,
      gamma: si(gamma),
    });
    checkValue(one, 'massFlux', found.massFlux.si);
    checkValue(one, 'massFlow', found.massFlow.si);
    checkValue(one, 'exitStatic', found.exitPressure.si);
    checkValue(one, 'exitStagnation', found.exitStagnation.si);
    checkValue(one, 'chokingMeanRate', found.chokingRate.si);
  });

  it('segment-gap', () => {
    const one = caseOf('flow', 'segment-gap');
    const found = segmentGapFlow({
      boreMach: si(one.inputs.machBoreExit),
      borePressure: '3 MPa',
      boreArea: '314.159 mm^2',
      gapArea: '1963.5 mm^2',
      nextArea: '314.159 mm^2',
      gamma: si(one.inputs.gamma),
    });
    checkValue(one, 'machGap', found.gapMach);
    checkValue(one, 'staticGap', found.gapPressure.si);
    checkValue(one, 'stagnationLoss', found.stagnationRatio);
    checkValue(one, 'machNextBore', found.nextMach);
    checkValue(one, 'staticNextBore', found.nextPressure.si);
  });

  it('lumped-criterion', () => {
    const one = caseOf('flow', 'lumped-criterion');
    const gamma = si(one.inputs.gamma);
    siList(one.inputs.portToThroat).forEach((portToThroat, i) => {
      const found = lumpedCriterion({ portToThroat, gamma });
      checkValue(one, `headToNozzleStagnation[${i}]`, found.headToNozzleStagnation);
      checkValue(one, `estimate[${i}]`, found.estimate);
      expect(headPressureEstimate({ portToThroat, gamma })).toBe(found.estimate);
      expect(found.lumped).toBe(portToThroat > 3);
    });
  });
});

const lawOf = (value: CaseValue | undefined) => {
  const erosion = record(value);
  switch (erosion.law) {
    case 'none':
      return { law: 'none' } as const;
    case 'Mukunda-Paul':
      return { law: 'mukunda-paul' } as const;
    default:
      return {
        law: 'lenoir-robillard',
        coefficient: Number.parseFloat(words(erosion.alpha)),
        lengthOf: words(erosion.length).startsWith('hydraulic')
          ? 'hydraulic diameter'
          : 'distance from the head',
      } as const;
  }
};

const portOf = (one: Case) => {
  const { type, boreDiameter, length, boreHead, boreAft } = record(one.inputs.geometry);
  const mm = (value: CaseValue | undefined) => `${Number.parseFloat(words(value))} mm` as const;
  return type === 'tube'
    ? ({ shape: 'tube', boreDiameter: mm(boreDiameter), length: mm(length) } as const)
    : ({
        shape: 'conical bore',
        headDiameter: mm(boreHead),
        aftDiameter: mm(boreAft),
        length: mm(length),
      } as const);
};

describe('the coupled port', () => {
  it.each([
    'port-tube-no-erosion',
    'port-tube-lenoir-robillard-x',
    'port-tube-lenoir-robillard-d',
    'port-tube-mukunda-paul',
    'port-conical-bore',
  ])('%s', (id) => {
    const one = caseOf('flow', id);
    const stations = siList(one.inputs.stations).map((z) => `${1000 * z} mm` as const);
    const [found] = portPressure({
      propellant: propellantOf(one.inputs.propellant),
      port: portOf(one),
      throatDiameter: `${1000 * si(one.inputs.throatDiameter)} mm`,
      laws: [lawOf(one.inputs.erosion)],
      stations,
    }).laws;
    checkValue(one, 'headPressure', found.headPressure.si);
    checkValue(one, 'nozzleStagnation', found.nozzleStagnation.si);
    checkValue(one, 'aftStatic', found.aftPressure.si);
    checkValue(one, 'massFlow', found.massFlow.si);
    checkValue(one, 'machAft', found.aftMach);
    stations.forEach((_, i) => {
      checkValue(one, `pressureAt[${i}]`, found.pressure.at(i).si);
      checkValue(one, `rateAt[${i}]`, found.rate.at(i).si);
      checkValue(one, `fluxAt[${i}]`, found.massFlux.at(i).si);
    });
  });
});

describe('erosive burning', () => {
  it('mukunda-paul-point', () => {
    const one = caseOf('flow', 'mukunda-paul-point');
    const surface = { baseRate: '7 mm/s', density: '1780 kg/m^3', hydraulicDiameter: '20 mm' } as const;
    siList(one.inputs.massFlux).forEach((value, i) => {
      const flow = { ...surface, massFlux: `${value} kg/(m^2*s)` } as const;
      checkValue(one, `g[${i}]`, reducedMassFlux(flow));
      checkValue(one, `augmentation[${i}]`, mukundaPaulRate(flow).si / 0.007);
    });
    checkValue(one, 'thresholdFlux', erosiveThresholdFlux(surface).si);
    // Re_0 = ρ·r_0·d/μ, an input of the law.
    checkValue(one, 'reynolds', (1780 * 0.007 * 0.02) / si('5e-5 Pa s'));
  });
});
