import { describe } from 'vitest';
import { nozzleBlowOut } from '../../src/nozzle';
import {
  closureForce,
  flangeBendingStress,
  flangeMoment,
  insertShearStress,
  lipShearStress,
  seatBearingStress,
} from '../../src/structures';
import { caseTest } from './case-check';

// Expected values, sources and provenance: tests/cases/hardware.json.

const circle = (diameter: number): number => (Math.PI / 4) * diameter ** 2;

describe('retention of a nozzle', () => {
  caseTest('insert-blow-out-control-volume', (_, of) => {
    const found = nozzleBlowOut({
      chamberPressure: '6 MPa',
      gamma: of('gamma'),
      sealDiameter: '40 mm',
      throatDiameter: '12 mm',
      exitDiameter: '30 mm',
      ambientPressure: '0.101325 MPa',
    });
    // The case states the bounds for absolute pressure: without the ambient pressure on the outside.
    const outside = (area: number): number => of('ambient') * area;
    const sealed = circle(of('boreDiameter'));
    return {
      inletMach: found.inletMach,
      convergentForce_N: found.convergent.in('N'),
      boundAnnulus_N: found.annulus.in('N') + outside(sealed - circle(of('throatDiameter'))),
      boundFullArea_N: found.blocked.in('N') + outside(sealed),
      thrust_N: found.thrust.in('N'),
      wholeNozzleRetention_N: found.flowing.in('N'),
    };
  });
  caseTest('carrier-seat-and-shear', (_, of) => {
    // The case takes the pressure on the sealed area without the throat.
    const push = (diameter: number): number =>
      closureForce.si({ pressure: of('pressure'), sealDiameter: diameter });
    const load = push(of('sealDiameter')) - push(of('throatDiameter'));
    const insertDiameter = of('insertOutside');
    const opening = of('seatInside');
    return {
      force_N: load,
      seatBearing_MPa: seatBearingStress.si({ load, insertDiameter, opening, contactShare: 1 }) / 1e6,
      lipShear_MPa: lipShearStress.si({ load, insertDiameter, lipThickness: of('lipThickness') }) / 1e6,
      insertShear_MPa: insertShearStress.si({ load, opening, insertThickness: of('insertThickness') }) / 1e6,
    };
  });
  caseTest('carrier-flange-bending', (_, of) => {
    const [load, outerRadius] = [of('totalLoad'), of('outerRadius')];
    const moment = flangeMoment.si({
      load,
      outerRadius,
      innerRadius: of('innerRadius'),
      poissonRatio: of('nu'),
    });
    return {
      moment_N: moment,
      stress_MPa: flangeBendingStress.si({ moment, thickness: of('thickness') }) / 1e6,
      // K of M = K·w·a with the line load w at the inner edge.
      coefficientKMtb: moment / ((load / (2 * Math.PI * of('innerRadius'))) * outerRadius),
    };
  });
});
