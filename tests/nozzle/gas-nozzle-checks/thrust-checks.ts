// Thrust coefficient, expansion, thrust and specific impulse: how each case is computed here.
import * as nozzle from '../../../src/nozzle';
import * as thermo from '../../../src/thermo';
import { si } from '../../cases/read-case';
import { byGamma, type Check, is } from './check';

export const thrustChecks: Readonly<Record<string, Check>> = {
  'cf-nie-70atm': (i) => {
    const gamma = si(i.gamma);
    const chamberPressure = is('absolute pressure', si(i.chamberPressure));
    const ambientPressure = is('absolute pressure', si(i.ambientPressure));
    const areaRatio = nozzle.optimumExpansionRatio({ gamma, chamberPressure, ambientPressure });
    const cf = nozzle.thrustCoefficient({
      gamma,
      expansionRatio: areaRatio,
      chamberPressure,
      ambientPressure,
    });
    return { areaRatio, thrustCoefficient: cf, thrustPerExitArea: (cf * chamberPressure.si) / areaRatio };
  },
  'cf-far-11-3': (i) => {
    const gamma = si(i.gamma);
    const chamberPressure = is('absolute pressure', si(i.chamberPressure));
    const ambientPressure = is('absolute pressure', si(i.ambientPressure));
    const cf = nozzle.optimumThrustCoefficient({ gamma, chamberPressure, ambientPressure });
    return {
      areaRatio: nozzle.optimumExpansionRatio({ gamma, chamberPressure, ambientPressure }),
      thrust: nozzle.thrust({
        thrustCoefficient: cf,
        chamberPressure,
        throatArea: is('area', si(i.throatArea)),
      }).si,
      thrustCoefficient: cf,
    };
  },
  'cf-sut-3-3': (i) => {
    const at = (ambient: unknown): number =>
      nozzle.thrustCoefficient({
        gamma: si(i.gamma),
        expansionRatio: si(i.areaRatio),
        chamberPressure: is('absolute pressure', si(i.chamberPressure)),
        ambientPressure: is('absolute pressure', si(String(ambient))),
      });
    const low = at(i.ambientPressureLow);
    const high = at(i.ambientPressureHigh);
    return {
      thrustCoefficientSeaLevel: low,
      thrustCoefficient25km: high,
      gainPercent: 100 * (high / low - 1),
    };
  },
  'cf-max-vacuum': byGamma((gamma) => nozzle.maximumThrustCoefficient({ gamma })),
  'cf-sonic-vacuum': byGamma((gamma) => nozzle.vacuumThrustCoefficient({ gamma, expansionRatio: 1 })),
  'cf-vac-eps10-g12': (i) => ({
    exitPressureRatio: nozzle.exitPressureRatio({ gamma: si(i.gamma), expansionRatio: si(i.areaRatio) }),
    thrustCoefficient: nozzle.vacuumThrustCoefficient({
      gamma: si(i.gamma),
      expansionRatio: si(i.areaRatio),
    }),
  }),
  'cf-small-motor': (i) => {
    const point = { gamma: si(i.gamma), expansionRatio: si(i.areaRatio) };
    const chamberPressure = is('absolute pressure', si(i.chamberPressure));
    const ambientPressure = is('absolute pressure', si(i.ambientPressure));
    return {
      exitMach: thermo.machFromAreaRatio({
        areaRatio: point.expansionRatio,
        gamma: point.gamma,
        branch: 'supersonic',
      }),
      exitPressure: nozzle.exitPressureRatio(point) * chamberPressure.si,
      seaLevel: nozzle.thrustCoefficient({ ...point, chamberPressure, ambientPressure }),
      vacuum: nozzle.vacuumThrustCoefficient(point),
    };
  },
  'opt-eps-300psi': (i) => ({
    areaRatio: nozzle.optimumExpansionRatio({
      gamma: si(i.gamma),
      chamberPressure: is('absolute pressure', si(i.chamberPressure)),
      ambientPressure: is('absolute pressure', si(i.exitPressure)),
    }),
    exitMach: thermo.machFromPressureRatio({
      pressureRatio: si(i.exitPressure) / si(i.chamberPressure),
      gamma: si(i.gamma),
    }),
  }),
  'sut-3-1': (i) => ({
    exitVelocity: nozzle.exhaustVelocity({
      gamma: si(i.gamma),
      gasConstant: is('specific gas constant', si(i.specificGasConstant)),
      temperature: is('temperature', si(i.chamberTemperature)),
      chamberPressure: is('absolute pressure', si(i.chamberPressure)),
      exitPressure: is('absolute pressure', si(i.exitPressure)),
    }).si,
  }),
  'thrust-mur-7-1': (i) => {
    const at = (ambient: unknown): number =>
      nozzle.momentumThrust({
        massFlow: is('mass flow', si(i.massFlow)),
        exhaustVelocity: is('speed', si(i.exitVelocity)),
        exitPressure: is('absolute pressure', si(i.exitPressure)),
        ambientPressure: is('absolute pressure', si(String(ambient))),
        exitArea: is('area', si(i.exitArea)),
      }).si;
    return { thrustLow: at(i.ambientPressureLow), thrustHigh: at(i.ambientPressureHigh) };
  },
  'thrust-mur-7-2': (i) => {
    const state = {
      gamma: si(i.gamma),
      gasConstant: is('specific gas constant', si(i.specificGasConstant)),
      temperature: is('temperature', si(i.chamberTemperature)),
    };
    const chamberPressure = is('absolute pressure', si(i.chamberPressure));
    const massFlow = is('mass flow', si(i.massFlow));
    const exitVelocity = nozzle.exhaustVelocity({
      ...state,
      chamberPressure,
      exitPressure: is('absolute pressure', si(i.exitPressure)),
    });
    const characteristicVelocity = thermo.idealCharacteristicVelocity(state);
    return {
      throatArea: nozzle.nozzleMassFlow.solveFor('throatArea', {
        result: massFlow,
        chamberPressure,
        characteristicVelocity,
      }).si,
      thrust: nozzle.specificImpulse.solveFor('thrust', {
        result: is('specific impulse', exitVelocity.si),
        massFlow,
      }).si,
      characteristicVelocity: characteristicVelocity.si,
      exitVelocity: exitVelocity.si,
    };
  },
  'mur-7-8': (i) => {
    const propellant = si(i.initialMass) - si(i.finalMass);
    const massFlow = is('mass flow', propellant / si(i.burnTime));
    const force = nozzle.specificImpulse.solveFor('thrust', {
      result: is('specific impulse', 240 * si(i.g)), // the source's g, not the standard one
      massFlow,
    });
    return {
      massRatio: si(i.finalMass) / si(i.initialMass),
      propellantMassFraction: propellant / (si(i.initialMass) - si(i.payload)),
      massFlow: massFlow.si,
      thrust: force.si,
      totalImpulse: force.si * si(i.burnTime),
    };
  },
  'far-11-1-exit-area': (i) => {
    const area = nozzle.ambientThrust.solveFor('exitArea', {
      result: is('force', si(i.seaLevelThrust)),
      vacuumThrust: is('force', si(i.vacuumThrust)),
      ambientPressure: is('absolute pressure', si(i.ambientPressure)),
    });
    return { exitDiameter: Math.sqrt((4 * area.si) / Math.PI) };
  },
  'far-11-2-isp': (i) => {
    const velocity = 340 * si(i.g); // the source's g, not the standard one
    return {
      thrust: nozzle.specificImpulse.solveFor('thrust', {
        result: is('specific impulse', velocity),
        massFlow: is('mass flow', si(i.massFlow)),
      }).si,
      effectiveVelocity: velocity,
    };
  },
  'thrust-and-10-4': (i) => {
    const gamma = si(i.gamma);
    const chamberPressure = is('absolute pressure', si(i.chamberPressure));
    const expansionRatio = nozzle.exitPressureRatio.solveFor('expansionRatio', {
      result: si(i.exitPressure) / chamberPressure.si,
      gamma,
    });
    const thrustCoefficient = nozzle.thrustCoefficient({
      gamma,
      expansionRatio,
      chamberPressure,
      ambientPressure: is('absolute pressure', si(i.ambientPressure)),
    });
    const throatArea = is('area', si(i.throatArea));
    return {
      thrust: nozzle.thrust({ thrustCoefficient, chamberPressure, throatArea }).si,
      exitArea: expansionRatio * throatArea.si,
    };
  },
};
