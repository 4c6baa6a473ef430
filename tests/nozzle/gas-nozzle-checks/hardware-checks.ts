// Regimes, divergence, separation and throat growth: how each case is computed here.
import * as nozzle from '../../../src/nozzle';
import * as thermo from '../../../src/thermo';
import { si, siList } from '../../cases/read-case';
import { byGamma, type Check, is } from './check';

export const hardwareChecks: Readonly<Record<string, Check>> = {
  'nozzle-regimes-eps1633': (i) => {
    const r = nozzle.nozzleRegime({
      gamma: si(i.gamma),
      expansionRatio: si(i.exitToThroatAreaRatio),
      chamberPressure: '1 MPa',
      ambientPressure: is('absolute pressure', si(i.ambientPressure)),
    });
    return {
      unchokedBelow: r.minChokedPressure.si,
      shockFreeAbove: r.minShockFreePressure.si,
      designPressure: r.idealExpansionPressure.si,
    };
  },
  vandenkerckhove: byGamma((gamma) => thermo.vandenkerckhove({ gamma })),
  'divergence-15': (i) => ({
    factor: nozzle.conicalDivergenceFactor({ halfAngle: is('angle', si(i.halfAngle)) }),
  }),
  'divergence-table': (i) =>
    Object.fromEntries(
      siList(i.halfAngles).map((a) => [
        `a${Math.round((a * 180) / Math.PI)}`,
        nozzle.conicalDivergenceFactor({ halfAngle: is('angle', a) }),
      ]),
    ),
  'cone-length': (i) => {
    const throat = si(i.throatDiameter);
    const exit = throat * Math.sqrt(si(i.areaRatio));
    return {
      exitDiameter: exit,
      length: nozzle.coneLength({
        smallDiameter: is('length', throat),
        largeDiameter: is('length', exit),
        halfAngle: is('angle', si(i.halfAngle)),
      }).si,
    };
  },
  'sep-schmucker-m25': (i) => ({
    separationOverAmbient: nozzle.schmuckerSeparationRatio({ mach: si(i.wallMach) }),
  }),
  'sep-summerfield-eps': (i) => {
    const [summerfield] = nozzle.separationPressure({
      gamma: si(i.gamma),
      chamberPressure: is('absolute pressure', si(i.chamberPressure)),
      ambientPressure: is('absolute pressure', si(i.ambientPressure)),
    }).predictions;
    return { separationPressure: summerfield.pressure.si, separationAreaRatio: summerfield.areaRatio };
  },
  'sep-kalt-badal-20': (i) => ({
    separationOverAmbient: nozzle.kaltBadalSeparationRatio({ chamberOverAmbient: si(i.chamberOverAmbient) }),
  }),
  'throat-growth-area': (i) => {
    const final = nozzle.erodedThroatDiameter({
      throatDiameter: is('length', si(i.throatDiameter)),
      recessionRate: is('speed', si(i.radialRecessionRate)),
      time: is('time', si(i.time)),
    });
    return {
      finalDiameter: final.si,
      areaGrowthPercent:
        100 *
        nozzle.throatAreaGrowth({
          throatDiameter: is('length', si(i.throatDiameter)),
          erodedDiameter: final,
        }),
    };
  },
};
