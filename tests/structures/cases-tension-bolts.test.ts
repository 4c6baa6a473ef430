import { describe } from 'vitest';
import {
  bearingStress,
  boltAxialStiffness,
  boltEndurance,
  boltGerberFactor,
  boltGoodmanFactor,
  boltLoadFactor,
  boltShearStress,
  boltStressAmplitude,
  boltTension,
  boltYieldFactor,
  circularInteraction,
  clampForce,
  jointConstant,
  ligamentBetweenHoles,
  ligamentToBore,
  ligamentToOutside,
  maximumPreload,
  memberStiffness,
  memberStiffnessFit,
  minimumPreload,
  netSectionStress,
  preloadFromTorque,
  recommendedPreload,
  scatterOfTighteningFactor,
  separationFactor,
  shankArea,
  shankInteraction,
  tensionBoltForce,
  thermalPreloadChange,
  threadGeometry,
  threadInteraction,
  threadTorsionStress,
  tightenedBoltStress,
  tighteningMethod,
} from '../../src/structures';
import { caseTest, inch, psi } from './case-check';

// Expected values, sources and provenance: tests/cases/hardware.json.

const lbf = psi * inch ** 2;
const millionLbfPerIn = (1e6 * lbf) / inch;

/** The load at which a fatigue factor is reached; the factor is inversely proportional to it. */
const loadAt = (factorAtUnitAmplitude: number, factor: number, c: number, stressArea: number): number =>
  factorAtUnitAmplitude / factor / boltStressAmplitude.si({ jointConstant: c, load: 1, stressArea });

/** The six figures that the case prints. */
const sixFigures = (value: number): number => Number(value.toPrecision(6));

describe('bolts in tension', () => {
  caseTest('shigley-8-4', (_, input) => {
    const diameter = threadGeometry('5/8-11').majorDiameter.si;
    const stressArea = input('stressArea');
    const ofBolt = boltAxialStiffness.si({
      shankArea: shankArea.si({ diameter }),
      threadArea: stressArea,
      shankLength: input('unthreadedInGrip'),
      threadLength: input('threadedInGrip'),
      elasticModulus: input('boltModulus'),
    });
    const members = { elasticModulus: input('memberModulus'), grip: input('grip'), diameter };
    const ofMembers = memberStiffness.si({ ...members, faceDiameter: 1.5 * diameter });
    const c = jointConstant.si({ boltStiffness: ofBolt, memberStiffness: ofMembers });
    const proofStress = input('proofStrength');
    const preload = recommendedPreload.si({ fraction: input('preloadFraction'), stressArea, proofStress });
    const total = input('totalSeparatingForce');
    const each = (bolts: number) => ({
      proofStress,
      stressArea,
      jointConstant: c,
      preload,
      load: total / bolts,
    });
    const boltsBeforeRounding = input('loadFactorWanted') / boltLoadFactor.si(each(1));
    const bolts = Math.ceil(boltsBeforeRounding);
    return {
      boltStiffness_Mlbf_per_in: ofBolt / millionLbfPerIn,
      memberStiffness_Mlbf_per_in: ofMembers / millionLbfPerIn,
      memberStiffnessExponentialFit_Mlbf_per_in:
        memberStiffnessFit.si({ ...members, a: 0.77871, b: 0.61616 }) / millionLbfPerIn,
      jointConstant: c,
      boltsBeforeRounding,
      bolts,
      loadFactor: boltLoadFactor.si(each(bolts)),
      yieldFactor: boltYieldFactor.si(each(bolts)),
      separationFactor: separationFactor.si(each(bolts)),
    };
  });

  caseTest('clamp-loss-two-springs', (_, input) => {
    const preload = input('preload');
    const c = jointConstant.si({ boltStiffness: input('boltOverMemberStiffness'), memberStiffness: 1 });
    // The clamp force falls by 1 − C of the load.
    const perLoad = preload - clampForce.si({ preload, jointConstant: c, load: 1 });
    const load = (preload - input('clampLeft')) / perLoad;
    return {
      externalLoad_lbf: load / lbf,
      boltForce_lbf: tensionBoltForce.si({ preload, jointConstant: c, load }) / lbf,
      jointConstant: c,
    };
  });

  caseTest('bolt-fatigue-half-inch', (_, input) => {
    const stressArea = input('stressArea');
    const preload = recommendedPreload.si({
      fraction: input('preloadFraction'),
      stressArea,
      proofStress: input('proofStrength'),
    });
    const bolt = {
      amplitude: 1,
      preloadStress: boltTension.si({ load: preload, area: stressArea }),
      endurance: input('enduranceStrength'),
      ultimate: input('tensileStrength'),
    };
    const kip = (factor: number) =>
      loadAt(factor, input('fatigueFactor'), input('jointConstant'), stressArea) / (1000 * lbf);
    return {
      preload_kip: preload / (1000 * lbf),
      goodmanLoad_kip: kip(boltGoodmanFactor.si(bolt)),
      gerberLoad_kip: kip(boltGerberFactor.si(bolt)),
    };
  });

  caseTest('bolt-endurance-rolled-threads', () => ({
    'SAE 5_ksi': boltEndurance('grade 5').value.in('ksi'),
    'SAE 7_ksi': boltEndurance('grade 7').value.in('ksi'),
    'SAE 8_ksi': boltEndurance('grade 8').value.in('ksi'),
    ...Object.fromEntries(
      ['8.8', '9.8', '10.9', '12.9'].map((name) => [`ISO ${name}_MPa`, boltEndurance(name).value.in('MPa')]),
    ),
  }));

  caseTest('thermal-preload-gain', (_, input) => ({
    preloadChange_N: sixFigures(
      thermalPreloadChange.si({
        boltStiffness: input('boltStiffness'),
        memberStiffness: input('memberStiffness'),
        grip: input('grip'),
        memberExpansion: input('memberExpansion'),
        boltExpansion: input('boltExpansion'),
        // A difference of temperature: the case writes it as 80 K.
        memberRise: input('temperatureRise'),
        boltRise: input('temperatureRise'),
      }),
    ),
  }));
});

describe('preload', () => {
  caseTest('preload-scatter-by-method', (_, input) => {
    const preload = preloadFromTorque.si({
      torque: input('torque'),
      nutFactor: input('nutFactor'),
      diameter: input('diameter'),
    });
    const pair = (method: string, name: string) => {
      const { scatter } = tighteningMethod(method);
      return {
        [`${name}Min_N`]: minimumPreload.si({ preload, scatter, relaxation: 0 }),
        [`${name}Max_N`]: maximumPreload.si({ preload, scatter }),
      };
    };
    return {
      nominal_N: preload,
      ...pair('torque, unlubricated', 'unlubricated'),
      ...pair('torque, lubricated', 'lubricated'),
      ...pair('elongation', 'elongation'),
    };
  });

  caseTest('tightening-factor-to-scatter', (_, input) => ({
    halfScatter: scatterOfTighteningFactor.si({ tighteningFactor: input('tighteningFactor') }),
  }));
});

describe('preload with shear', () => {
  caseTest('radial-screw-preload-and-shear', (_, input) => {
    const { tensileStressArea, rootDiameter } = threadGeometry('M5');
    const area = tensileStressArea.si;
    const tension = boltTension.si({ load: input('preload'), area });
    const torsion = threadTorsionStress.si({
      torque: input('threadTorque'),
      kept: input('torqueFractionKept'),
      rootDiameter: rootDiameter.si,
    });
    const shear = boltShearStress.si({ load: input('shearPerScrew'), area });
    const together = tightenedBoltStress.si({ tension, torsion, shear });
    return {
      stressArea_mm2: area * 1e6,
      tension_MPa: tension / 1e6,
      torsion_MPa: torsion / 1e6,
      directShear_MPa: shear / 1e6,
      vonMises_MPa: together / 1e6,
      yieldFactor: input('yield') / together,
    };
  });

  caseTest('interaction-three-curves', (_, input) => {
    const ratios = { tensionRatio: input('tensionRatio'), shearRatio: input('shearRatio') };
    return {
      circle: circularInteraction.si(ratios),
      threadsInShearPlane: threadInteraction.si(ratios),
      shankInShearPlane: shankInteraction.si(ratios),
      // Ratios of stresses to shear and tensile yield: the shear allowable is the tensile one over √3.
      vonMisesYield: tightenedBoltStress.si({
        tension: ratios.tensionRatio,
        shear: ratios.shearRatio / Math.sqrt(3),
      }),
    };
  });
});

describe('a lap joint', () => {
  caseTest('lap-joint-factors', (_, input) => {
    const [load, count, diameter, plate] = ['load', 'bolts', 'diameter', 'plate'].map(input);
    const shear = boltShearStress.si({ load, count, area: shankArea.si({ diameter }) });
    const bearing = bearingStress.si({ load, count, diameter, thickness: plate });
    // The strip rolled to a ring: π·(D − t) is its width.
    const net = netSectionStress.si({
      load,
      outsideDiameter: input('plateWidth') / Math.PI + plate,
      wall: plate,
      count: 1,
      holeDiameter: input('netWidthLoss'),
    });
    const [ofBolt, ofMember] = [input('boltYield'), input('memberYield')];
    return {
      shear_ksi: shear / (1000 * psi),
      shearFactor: (input('shearRatio') * ofBolt) / shear,
      boltBearingFactor: ofBolt / bearing,
      memberBearingFactor: ofMember / bearing,
      netSectionFactor: ofMember / net,
    };
  });
});

describe('holes along the axis', () => {
  caseTest('ligaments', (_, input) => {
    const holes = { boltCircle: input('boltCircle'), holeDiameter: input('holeDiameter') };
    return {
      toBore_mm: ligamentToBore.si({ ...holes, bore: input('bore') }) * 1e3,
      toOutside_mm: ligamentToOutside.si({ ...holes, outsideDiameter: input('outsideDiameter') }) * 1e3,
      between_mm: sixFigures(ligamentBetweenHoles.si({ ...holes, count: input('bolts') }) * 1e3),
    };
  });
});
