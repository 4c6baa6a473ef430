import { describe, expect, it } from 'vitest';
import {
  adiabaticBlowdown,
  chamberResidenceTime,
  chamberRiseRate,
  chamberTimeConstant,
  characteristicLength,
  closedChamberTime,
  coolingBlowdown,
  disturbanceTime,
  heatLossEfficiency,
  igniterFillingPressure,
  igniterPlateauPressure,
  ignitionTransient,
  propellant,
  storedGasMass,
  throatBlockagePulse,
} from '../../src/ballistics';
import { idealCharacteristicVelocity } from '../../src/thermo';
import { q } from '../../src/units';
import { checkValue } from '../cases/check-value';
import { caseOf, si, siList } from '../cases/read-case';

// Expected values are those of tests/cases/flow.json, each with its source and provenance there.

// Of every case of this file.
const gasConstant = 8.31446261815324 / 0.04;
const gas = { gamma: 1.14, molarMass: '40 g/mol', flameTemperature: '1600 K' } as const;
const velocity = idealCharacteristicVelocity.si({ gamma: 1.14, gasConstant, temperature: 1600 });
const material = propellant({
  density: '1780 kg/m^3',
  law: { coefficient: 7, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.32 },
  ...gas,
});
const throatArea = (Math.PI / 4) * 0.0085 ** 2;
const start = { burningArea: '165 cm^2', freeVolume: '80 cm^3', throatDiameter: '8.5 mm' } as const;

describe('ignition', () => {
  it('ignition-spreading', () => {
    const one = caseOf('flow', 'ignition-spreading');
    const found = ignitionTransient({
      propellant: material,
      ...start,
      startPressure: '101325 Pa',
      duration: '0.6 s',
      // 10 g/s for 20 ms, then linear to zero in 10 ms: 0.25 g.
      igniterMass: '0.25 g',
      igniterDuration: '20 ms',
      igniterFallTime: '10 ms',
      ignitionDelay: '5 ms',
      flameSpreadTime: '25 ms',
    });
    siList(one.inputs.times).forEach((t, i) => {
      checkValue(one, `pressure[${i}]`, found.pressureAt(q(t, 's')).si);
    });
    checkValue(one, 'maxPressure', found.maxPressure.si);
    checkValue(one, 'equilibriumWithoutStorage', found.equilibrium?.si ?? 0);
    checkValue(one, 'time10', found.timeTo10?.si ?? 0);
    checkValue(one, 'time90', found.timeTo90?.si ?? 0);
  });

  it('igniter-plateau', () => {
    const one = caseOf('flow', 'igniter-plateau');
    const plateau = igniterPlateauPressure.si({
      igniterFlow: si(one.inputs.igniterFlow),
      characteristicVelocity: velocity,
      throatArea,
    });
    checkValue(one, 'plateau', plateau);
    const timeConstant = chamberTimeConstant.si({
      freeVolume: si(one.inputs.freeVolume),
      characteristicVelocity: velocity,
      gasConstant,
      temperature: 1600,
      throatArea,
    });
    checkValue(one, 'timeConstant', timeConstant);
    siList(one.inputs.times).forEach((time, i) => {
      const startPressure = si(one.inputs.startPressure);
      checkValue(
        one,
        `pressure[${i}]`,
        igniterFillingPressure.si({ plateau, startPressure, time, timeConstant }),
      );
    });
  });

  it('closure-burst', () => {
    const one = caseOf('flow', 'closure-burst');
    const chamber = {
      gasConstant,
      temperature: 1600,
      freeVolume: si(one.inputs.freeVolume),
      burningArea: si(one.inputs.burningArea),
      density: 1780,
    };
    const law = { referenceRate: 0.007, referencePressure: 1e6, exponent: 0.32 };
    const startPressure = si(one.inputs.startPressure);
    const endPressure = si(one.inputs.openingPressure);
    checkValue(one, 'time', closedChamberTime.si({ ...chamber, ...law, startPressure, endPressure }));
    checkValue(one, 'riseRate', chamberRiseRate.si({ ...chamber, burnRate: 0.007 * 2 ** 0.32 }));
    checkValue(one, 'gasMass', storedGasMass.si({ ...chamber, pressure: endPressure }));
  });
});

describe('throat-plug', () => {
  it('throat-plug-pulse', () => {
    const one = caseOf('flow', 'throat-plug-pulse');
    const pulse = throatBlockagePulse({ propellant: material, ...start, fraction: 0.3, duration: '10 ms' });
    checkValue(one, 'before', pulse.before.si);
    checkValue(one, 'peak', pulse.peak.si);
    checkValue(one, 'ifLasting', pulse.lasting?.si ?? 0);
    siList(one.inputs.timesAfterEjection).forEach((t, i) => {
      checkValue(one, `after[${i}]`, pulse.after(q(t, 's')).si);
    });
    checkValue(one, 'timeConstant', pulse.timeConstant.si);
    // Its decay back: from 5 ms to 20 ms a small disturbance falls by exp(−15 ms/t_d), within its nonlinearity.
    const decay = disturbanceTime.si({ timeConstant: pulse.timeConstant.si, exponent: 0.32 });
    const fallen = (pulse.after('20 ms').si - pulse.before.si) / (pulse.after('5 ms').si - pulse.before.si);
    expect(Math.abs(Math.log(fallen) * decay + 0.015)).toBeLessThan(1.5e-3);
  });
});

describe('heat loss', () => {
  it('heat-loss-efficiency', () => {
    const one = caseOf('flow', 'heat-loss-efficiency');
    const found = heatLossEfficiency({
      gamma: 1.14,
      gasConstant: q(gasConstant, 'J/(kg*K)'),
      flameTemperature: '1600 K',
      pressure: '4 MPa',
      throatDiameter: '8.5 mm',
      heatTransferCoefficient: '800 W/(m^2*K)',
      wallArea: '60 cm^2',
      wallTemperature: '600 K',
    });
    checkValue(one, 'gasTemperature', found.gasTemperature.si);
    checkValue(one, 'cStarEfficiency', found.efficiency);
    checkValue(one, 'lossFraction', found.lossFraction);
    checkValue(one, 'massFlow', found.massFlow.si);
    const lStar = characteristicLength.si({ freeVolume: si(one.inputs.freeVolume), throatArea });
    checkValue(one, 'lStar', lStar);
    const residence = chamberResidenceTime.si({
      characteristicLength: lStar,
      characteristicVelocity: found.efficiency * velocity,
      gamma: 1.14,
    });
    checkValue(one, 'residenceTime', residence);
  });

  const tail = {
    pressure: '4 MPa',
    temperature: '1600 K',
    freeVolume: '200 cm^3',
    throatDiameter: '8 mm',
    gamma: 1.14,
    gasConstant: q(gasConstant, 'J/(kg*K)'),
    wallArea: '200 cm^2',
    wallTemperature: '500 K',
  } as const;

  it('tail-off-with-heat-loss', () => {
    const one = caseOf('flow', 'tail-off-with-heat-loss');
    siList(one.inputs.times).forEach((t, i) => {
      const found = coolingBlowdown({ ...tail, heatTransferCoefficient: '500 W/(m^2*K)', time: q(t, 's') });
      checkValue(one, `pressure[${i}]`, found.pressure.si);
      checkValue(one, `temperature[${i}]`, found.temperature.si);
    });
  });

  it('without heat transfer the tail-off is adiabatic (closed form)', () => {
    const timeConstant = (200e-6 * velocity) / (gasConstant * 1600 * (Math.PI / 4) * 0.008 ** 2);
    for (const time of [0.001, 0.01, 0.05]) {
      const law = adiabaticBlowdown.si({ pressure: 4e6, time, timeConstant, gamma: 1.14 });
      const found = coolingBlowdown({ ...tail, heatTransferCoefficient: '0 W/(m^2*K)', time: q(time, 's') });
      expect(Math.abs(found.pressure.si / law - 1)).toBeLessThan(1e-8);
    }
  });
});
