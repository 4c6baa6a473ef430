import { expect } from 'vitest';
import {
  holeElongationLimit,
  lowCycleLife,
  netSectionCollapseLoad,
  netStripStress,
  neuberNominalStress,
  rambergOsgoodStrain,
  strainLifeAmplitude,
} from '../../src/structures';
import { fromSiValue, unitOf } from '../../src/units';
import { errorOf } from '../error-code';
import { caseTest } from './case-check';

const mpa = (si: number) => fromSiValue<'stress'>(si, 'stress', unitOf('MPa'));

caseTest('neuber-hole', (_, of) => {
  const curve = {
    elasticModulus: mpa(of('E')),
    strengthCoefficient: mpa(of('K')),
    hardeningExponent: of('n'),
  };
  const [nominal, concentration] = [mpa(of('nominal')), of('Kt')];
  const stress = neuberNominalStress.solveFor('localStress', { result: nominal, concentration, ...curve });
  const strain = rambergOsgoodStrain({ stress, ...curve });
  return {
    localStress_MPa: stress.in('MPa'),
    localStrain: strain,
    strainConcentration: (strain * of('E')) / of('nominal'),
  };
});

caseTest('strain-life-cycles', (_, of) => ({
  cycles: strainLifeAmplitude.solveFor('cycles', {
    result: of('strainAmplitude'),
    elasticModulus: mpa(of('E')),
    fatigueStrength: mpa(of('fatigueStrength')),
    fatigueExponent: of('b'),
    fatigueDuctility: of('fatigueDuctility'),
    ductilityExponent: of('c'),
  }),
}));

caseTest('net-section-first', (_, of) => {
  const strip = { width: of('width'), holeDiameter: of('hole') };
  const netStress = netStripStress.si({ grossStress: of('grossStress'), ...strip });
  const yieldStrength = mpa(of('yield'));
  const error = errorOf(() =>
    lowCycleLife({
      stress: mpa(netStress),
      concentration: 2.3,
      yieldStrength,
      ultimateStrength: '290 MPa',
      elasticModulus: '69 GPa',
      elongation: 0.1,
    }),
  );
  // The behaviour that the case expects: no life, and the load at which the section collapses.
  expect(error?.code).toBe('section-yields');
  expect(error?.expected).toContain((1 / 1.18257).toPrecision(3));
  return {
    netStress_MPa: netStress / 1e6,
    netOverYield: Number((netStress / yieldStrength.si).toPrecision(6)), // the case prints six digits
    collapseForce_N: netSectionCollapseLoad.si({
      yieldStrength: yieldStrength.si,
      thickness: of('thickness'),
      ...strip,
    }),
  };
});

caseTest('hole-elongation-limit', (_, of) => ({
  limit_mm: holeElongationLimit.si({ holeDiameter: of('hole') }) * 1e3,
}));
