// Isentropic flow, shocks, choked flow and the atmosphere: how each case is computed here.
import { expect } from 'vitest';
import * as thermo from '../../../src/thermo';
import { si, siList } from '../../cases/read-case';
import { type Check, diameterArea, gasFrom, is } from './check';

const isentropic: Check = (i) => {
  const point = { mach: si(i.mach), gamma: si(i.gamma) };
  return {
    temperatureRatio: thermo.isentropicTemperatureRatio(point),
    pressureRatio: thermo.isentropicPressureRatio(point),
    densityRatio: thermo.isentropicDensityRatio(point),
    areaRatio: thermo.areaRatio(point),
  };
};

const inverseArea: Check = (i) => {
  const gamma = si(i.gamma);
  const mach = thermo.machFromAreaRatio({
    areaRatio: si(i.areaRatio),
    gamma,
    branch: i.branch === 'subsonic' ? 'subsonic' : 'supersonic',
  });
  const ratios = isentropic({ mach, gamma });
  return {
    ...ratios,
    mach,
    ...(i.stagnationTemperature !== undefined && {
      exitTemperature: si(i.stagnationTemperature) * ratios.temperatureRatio,
    }),
  };
};

const shock: Check = (i) => {
  const s = thermo.normalShock({ mach: si(i.mach1), gamma: si(i.gamma) });
  return { ...s, mach2: s.machBehind, pitotPressureOverStatic1: s.pitotPressureRatio };
};

const atmosphere: Check = (i) => {
  const air = thermo.standardAtmosphere({ altitude: is('length', si(i.geometricAltitude)) });
  return { temperature: air.temperature.si, pressure: air.pressure.si, density: air.density.si };
};

export const flowChecks: Readonly<Record<string, Check>> = {
  'iso-g140-m2': isentropic,
  'iso-g140-m09': isentropic,
  'iso-g130-m05': isentropic,
  'iso-g120-m25': isentropic,
  'iso-and-8-5': (i) => {
    const point = { mach: si(i.mach), gamma: si(i.gamma) };
    const stagnation = si(i.temperature) / thermo.isentropicTemperatureRatio(point);
    const sonic = stagnation * thermo.criticalTemperatureRatio({ gamma: point.gamma });
    return {
      stagnationTemperature: stagnation,
      stagnationPressure: si(i.pressure) / thermo.isentropicPressureRatio(point),
      sonicTemperature: sonic,
      sonicSpeed: thermo.soundSpeed({
        gamma: point.gamma,
        gasConstant: is('specific gas constant', si(i.specificGasConstant)),
        temperature: is('temperature', sonic),
      }).si,
      characteristicMach: thermo.characteristicMach(point),
    };
  },
  'area-inv-and-10-1': inverseArea,
  'area-inv-2-sup': inverseArea,
  'area-inv-2-sub': inverseArea,
  'area-inv-1255-sub': inverseArea,
  'area-chain-ngd': (i) => {
    const gamma = si(i.gamma);
    const areaRatio2 = thermo.areaRatio({ mach: si(i.mach1), gamma }) * si(i.area2OverArea1);
    return {
      areaRatio2,
      mach2: thermo.machFromAreaRatio({ areaRatio: areaRatio2, gamma, branch: 'subsonic' }),
    };
  },
  'ns-g140-m2': shock,
  'ns-g140-m15': shock,
  'ns-inverse-p': (i) => ({
    mach1: thermo.machFromNormalShockPressureRatio({
      pressureRatio: si(i.pressure2) / si(i.pressure1),
      gamma: si(i.gamma),
    }),
  }),
  'pm-g140-m15': (i) => ({ angle: thermo.prandtlMeyerAngle({ mach: si(i.mach), gamma: si(i.gamma) }).si }),
  'pm-g140-m24': (i) => ({ angle: thermo.prandtlMeyerAngle({ mach: si(i.mach), gamma: si(i.gamma) }).si }),
  'pm-inverse-28-40': (i) => {
    const at = (value: unknown): number =>
      thermo.machFromPrandtlMeyerAngle({ angle: is('angle', si(String(value))), gamma: si(i.gamma) });
    return { mach1: at(i.angle1), mach2: at(i.angle2) };
  },
  'crit-g140': (i) => {
    const gamma = si(i.gamma);
    return {
      pressureRatio: thermo.criticalPressureRatio({ gamma }),
      temperatureRatio: thermo.criticalTemperatureRatio({ gamma }),
      densityRatio: thermo.criticalDensityRatio({ gamma }),
    };
  },
  'crit-co2': (i) => ({
    throatTemperature: si(i.stagnationTemperature) * thermo.criticalTemperatureRatio({ gamma: si(i.gamma) }),
    throatPressure: si(i.stagnationPressure) * thermo.criticalPressureRatio({ gamma: si(i.gamma) }),
  }),
  'crit-g120-small-engine': (i) => ({
    pressureRatio: thermo.criticalPressureRatio({ gamma: si(i.gamma) }),
    temperatureRatio: thermo.criticalTemperatureRatio({ gamma: si(i.gamma) }),
  }),
  'mdot-cengel-12-6': (i) => {
    const gamma = si(i.gamma);
    const exit = { mach: si(i.exitMach), gamma };
    return {
      massFlow: thermo.chokedMassFlow({
        stagnationPressure: is('absolute pressure', si(i.stagnationPressure)),
        stagnationTemperature: is('temperature', si(i.stagnationTemperature)),
        area: is('area', si(i.throatArea)),
        gamma,
        gasConstant: is('specific gas constant', si(i.specificGasConstant)),
      }).si,
      throatPressure: si(i.stagnationPressure) * thermo.criticalPressureRatio({ gamma }),
      throatTemperature: si(i.stagnationTemperature) * thermo.criticalTemperatureRatio({ gamma }),
      exitArea: si(i.throatArea) * thermo.areaRatio(exit),
      exitTemperature: si(i.stagnationTemperature) * thermo.isentropicTemperatureRatio(exit),
    };
  },
  'mdot-tyre-gauge': (i) => {
    const flow = thermo.orificeFlow({
      stagnationPressure: is('absolute pressure', si(i.gaugePressure) + si(i.ambientPressure)),
      stagnationTemperature: is('temperature', si(i.stagnationTemperature)),
      backPressure: is('absolute pressure', si(i.ambientPressure)),
      area: is('area', diameterArea(si(i.holeDiameter))),
      gamma: si(i.gamma),
      gasConstant: is('specific gas constant', si(i.specificGasConstant)),
    });
    expect(flow.choked).toBe(true);
    return { massFlow: flow.massFlow.si };
  },
  'pc-from-mdot-and-10-13': (i) => ({
    chamberPressure: thermo.chokedMassFlow.solveFor('stagnationPressure', {
      result: is('mass flow', si(i.massFlow)),
      stagnationTemperature: is('temperature', si(i.chamberTemperature)),
      area: is('area', si(i.throatArea)),
      gamma: si(i.gamma),
      gasConstant: is('specific gas constant', gasFrom(i)),
    }).si,
  }),
  'mdot-fox-12-2-unchoked': (i) => {
    const flow = thermo.orificeFlow({
      stagnationPressure: is('absolute pressure', si(i.stagnationPressure)),
      stagnationTemperature: is('temperature', si(i.stagnationTemperature)),
      backPressure: is('absolute pressure', si(i.backPressure)),
      area: is('area', si(i.exitArea)),
      gamma: si(i.gamma),
      gasConstant: is('specific gas constant', si(i.specificGasConstant)),
    });
    expect(flow.choked).toBe(false);
    return { exitMach: flow.mach, massFlow: flow.massFlow.si };
  },
  'atm-1000': atmosphere,
  'atm-11000': atmosphere,
  'atm-geopotential': (i) =>
    Object.fromEntries(
      siList(i.geopotentialAltitudes).map((h) => [
        `h${Math.round(h / 1000)}`,
        thermo.standardAtmosphere({ altitude: is('length', h), measure: 'geopotential' }).pressure.si,
      ]),
    ),
  'atm-us-units': (i) => {
    const [five, ten] = siList(i.geometricAltitudes).map((z) =>
      thermo.standardAtmosphere({ altitude: is('length', z) }),
    );
    return { p5: five.pressure.si, p10: ten.pressure.si, t5: five.temperature.si, t10: ten.temperature.si };
  },
};
