// Characteristic velocity, two-phase mixtures and heat to a wall: how each case is computed here.
import * as nozzle from '../../../src/nozzle';
import * as thermo from '../../../src/thermo';
import { si } from '../../cases/read-case';
import { type Check, is } from './check';

export const gasChecks: Readonly<Record<string, Check>> = {
  'cstar-mur-7-7': (i) => {
    const flow = si(i.weightFlow) / si(i.g);
    const force = is('force', si(i.weightFlow) * 127.42); // the source's Isp in seconds times its weight flow
    const chamber = {
      chamberPressure: is('absolute pressure', si(i.chamberPressure)),
      throatArea: is('area', si(i.throatArea)),
    };
    return {
      thrustCoefficient: nozzle.thrust.solveFor('thrustCoefficient', { result: force, ...chamber }),
      characteristicVelocity: nozzle.nozzleMassFlow.solveFor('characteristicVelocity', {
        result: is('mass flow', flow),
        ...chamber,
      }).si,
    };
  },
  'cstar-inverse-far-11-4': (i) => {
    const r = thermo.idealCharacteristicVelocity.solveFor('gasConstant', {
      result: is('speed', si(i.characteristicVelocity)),
      gamma: si(i.gamma),
      temperature: is('temperature', si(i.chamberTemperature)),
    });
    return {
      specificGasConstant: r.si,
      molarMass: thermo.gasConstantOf.solveFor('molarMass', {
        result: r,
        molarGasConstant: is('molar heat capacity', si(i.universalGasConstant)),
      }).si,
    };
  },
  'cstar-sugar-class': (i) => ({
    characteristicVelocity: thermo.gas({
      gamma: si(i.gamma),
      molarMass: is('molar mass', si(i.molarMass)),
      temperature: is('temperature', si(i.chamberTemperature)),
    }).characteristicVelocity.si,
  }),
  'cstar-efficiency': (i) => {
    const delivered = thermo.deliveredCharacteristicVelocity({
      throatArea: is('area', si(i.throatArea)),
      pressureIntegral: is('pressure integral', si(i.pressureIntegral)),
      propellantMass: is('mass', si(i.propellantMass)),
    });
    return {
      deliveredCharacteristicVelocity: delivered.si,
      efficiency: thermo.characteristicVelocityEfficiency({
        delivered,
        ideal: is('speed', si(i.idealCharacteristicVelocity)),
      }),
    };
  },
  'wall-heat-far-11-12': (i) => {
    const heat = thermo.steadyWallHeat({
      gasTemperature: is('temperature', si(i.gasTemperature)),
      gasCoefficient: is('heat-transfer coefficient', si(i.gasCoefficient)),
      coolantTemperature: is('temperature', si(i.coolantTemperature)),
      coolantCoefficient: is('heat-transfer coefficient', si(i.coolantCoefficient)),
      wallThickness: is('length', si(i.wallThickness)),
      wallConductivity: is('thermal conductivity', si(i.wallConductivity)),
      gasEmissivity: si(i.gasEmissivity),
    });
    return {
      radiationFlux: heat.radiationFlux.si,
      totalFlux: heat.totalFlux.si,
      convectionFlux: heat.convectionFlux.si,
      gasSideWall: heat.gasSideWall.si,
      coolantSideWall: heat.coolantSideWall.si,
    };
  },
  'bartz-sigma': (i) => ({
    sigma: thermo.bartzSigma({
      wallOverStagnation: si(i.wallOverStagnationTemperature),
      mach: si(i.mach),
      gamma: si(i.gamma),
    }),
  }),
  'bartz-small-throat': (i) => ({
    coefficient: thermo.bartzCoefficient({
      throatDiameter: is('length', si(i.throatDiameter)),
      throatCurvatureRadius: is('length', si(i.throatCurvatureRadius)),
      viscosity: is('dynamic viscosity', si(i.viscosity)),
      specificHeat: is('specific heat', si(i.cp)),
      prandtl: si(i.prandtl),
      chamberPressure: is('absolute pressure', si(i.chamberPressure)),
      characteristicVelocity: is('speed', si(i.characteristicVelocity)),
      sigma: thermo.bartzSigma({
        wallOverStagnation: si(i.wallTemperature) / si(i.stagnationTemperature),
        mach: si(i.mach),
        gamma: si(i.gamma),
      }),
    }).si,
  }),
  'two-phase-far-11-13': (i) => {
    const heat = (fraction: number): number =>
      thermo.twoPhaseMixture({
        condensedMassFraction: fraction,
        gasSpecificHeat: is('specific heat', si(i.gasCp)),
        condensedSpecificHeat: is('specific heat', si(i.solidC)),
        gasMolarMass: '20 g/mol', // not used by the ratio: no gas constant enters c_p
      }).specificHeat.si;
    // At one pressure ratio the impulse goes as √(c_p·T); the source's temperature ratio is mixture 1 over mixture 2.
    const ratio = (si(i.temperatureRatio) * heat(si(i.massFraction1))) / heat(si(i.massFraction2));
    return { impulseRatio: Math.sqrt(ratio) };
  },
  'two-phase-mixture': (i) => {
    const mixture = thermo.twoPhaseMixture({
      condensedMassFraction: si(i.condensedMassFraction),
      gasSpecificHeat: is('specific heat', si(i.gasCp)),
      condensedSpecificHeat: is('specific heat', si(i.condensedC)),
      gasMolarMass: is('molar mass', si(i.gasMolarMass)),
      temperature: is('temperature', si(i.chamberTemperature)),
    });
    return {
      gamma: mixture.gamma,
      gasConstant: mixture.gasConstant.si,
      effectiveMolarMass: mixture.effectiveMolarMass.si,
      characteristicVelocity: mixture.characteristicVelocity?.si ?? Number.NaN,
    };
  },
};
