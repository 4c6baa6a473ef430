import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  boltAxialStiffness,
  boltEllipticFactor,
  boltGerberFactor,
  boltGoodmanFactor,
  boltProofLineFactor,
  clampForce,
  cylinderStiffness,
  faceOpening,
  flangeRollingStress,
  flangeRotation,
  frustumStiffness,
  jointConstant,
  ligamentBetweenHoles,
  ligamentToBore,
  ligamentToOutside,
  maximumPreload,
  memberStiffness,
  minimumPreload,
  rolledWallStress,
  scatterOfTighteningFactor,
  separatingCapacity,
  separationLoad,
  springsInSeries,
  tappedEndTension,
  tappedWallHoopStress,
  tensionBoltForce,
  thermalPreloadChange,
  tightenedBoltStress,
  yieldTensionWithTorsion,
} from '../../src/structures';

const near = (found: number, wanted: number, tolerance = 1e-9): void =>
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(tolerance * Math.max(Math.abs(wanted), 1e-300));

const share = fc.double({ min: 0.05, max: 0.95, noNaN: true });
const kilonewtons = fc.double({ min: 100, max: 1e5, noNaN: true });
const millimetres = (min: number, max: number) => fc.double({ min: min / 1e3, max: max / 1e3, noNaN: true });

describe('stiffness of bolt and members', () => {
  test('a bolt of one area is E·A/l', () =>
    fc.assert(
      fc.property(millimetres(1, 50), millimetres(0, 50), (thread, shank) => {
        near(
          boltAxialStiffness.si({
            shankArea: 2e-5,
            threadArea: 2e-5,
            shankLength: shank,
            threadLength: thread,
            elasticModulus: 2e11,
          }),
          (2e11 * 2e-5) / (thread + shank),
        );
      }),
    ));

  test('clamped parts of one material are two equal cones in series', () =>
    fc.assert(
      fc.property(millimetres(3, 20), millimetres(2, 80), (diameter, grip) => {
        const part = { elasticModulus: 7e10, faceDiameter: 1.5 * diameter, diameter };
        const cone = frustumStiffness.si({ ...part, thickness: grip / 2 });
        near(memberStiffness.si({ ...part, grip }), springsInSeries.si({ first: cone, second: cone }));
      }),
    ));

  test('layers of a cone, each from the face that the last one spread to, are the cone', () =>
    fc.assert(
      fc.property(millimetres(3, 20), millimetres(1, 20), millimetres(1, 20), (diameter, first, second) => {
        const face = 1.5 * diameter;
        const layer = (thickness: number, faceDiameter: number) =>
          frustumStiffness.si({ elasticModulus: 7e10, thickness, faceDiameter, diameter });
        near(
          springsInSeries.si({
            first: layer(first, face),
            second: layer(second, face + 2 * first * Math.tan(Math.PI / 6)),
          }),
          layer(first + second, face),
        );
      }),
    ));

  test('a cone that hardly opens is a cylinder', () =>
    fc.assert(
      fc.property(millimetres(3, 20), millimetres(1, 20), (diameter, thickness) => {
        const part = { elasticModulus: 7e10, thickness, diameter };
        near(
          frustumStiffness.si({ ...part, faceDiameter: 1.6 * diameter, halfAngle: 1e-5 }),
          cylinderStiffness.si({ ...part, outsideDiameter: 1.6 * diameter }),
          2e-3,
        );
      }),
    ));
});

describe('a preloaded bolt under load', () => {
  test('bolt force less clamp force is the load, before and after separation', () =>
    fc.assert(
      fc.property(kilonewtons, share, kilonewtons, (preload, c, load) => {
        const given = { preload, jointConstant: c, load };
        near(tensionBoltForce.si(given) - clampForce.si(given), load, 1e-9 * (1 + preload / load));
      }),
    ));

  test('the clamp force is zero at the separation load, and the bolt carries all of it', () =>
    fc.assert(
      fc.property(kilonewtons, share, (preload, c) => {
        const load = separationLoad.si({ preload, jointConstant: c });
        expect(clampForce.si({ preload, jointConstant: c, load })).toBeLessThan(1e-9 * preload);
        near(tensionBoltForce.si({ preload, jointConstant: c, load }), load);
        near(tensionBoltForce.si({ preload, jointConstant: c, load: 2 * load }), 2 * load);
      }),
    ));

  test('at the separating capacity the force in the bolt is what is allowed, however it got there', () =>
    fc.assert(
      fc.property(kilonewtons, share, kilonewtons, (preload, c, more) => {
        const sectionLoad = preload + more;
        const load = separatingCapacity.si({ sectionLoad, preload, jointConstant: c });
        near(tensionBoltForce.si({ preload, jointConstant: c, load }), sectionLoad);
        expect(load).toBeLessThanOrEqual(sectionLoad);
      }),
    ));

  test('a preload above what is allowed leaves nothing for a load', () =>
    expect(separatingCapacity.si({ sectionLoad: 1000, preload: 1001, jointConstant: 0.3 })).toBe(0));

  test('stiff members take the load, soft ones leave it to the bolt', () => {
    expect(jointConstant.si({ boltStiffness: 1, memberStiffness: 1e9 })).toBeLessThan(1e-8);
    expect(jointConstant.si({ boltStiffness: 1e9, memberStiffness: 1 })).toBeGreaterThan(1 - 1e-8);
  });
});

describe('preload', () => {
  test('the tightening factor is maximum over minimum', () =>
    fc.assert(
      fc.property(kilonewtons, fc.double({ min: 1, max: 4, noNaN: true }), (preload, tighteningFactor) => {
        const scatter = scatterOfTighteningFactor.si({ tighteningFactor });
        near(
          maximumPreload.si({ preload, scatter }) / minimumPreload.si({ preload, scatter, relaxation: 0 }),
          tighteningFactor,
        );
      }),
    ));

  test('relaxation and heat take from the minimum only; heat adds to the maximum only', () => {
    const tightened = { preload: 10_000, scatter: 0.25 };
    // 10 kN·0.75·0.95 − 0.5 kN; 10 kN·1.25 + 0.5 kN: by hand.
    near(minimumPreload.si({ ...tightened, thermalChange: -500 }), 6625);
    near(maximumPreload.si({ ...tightened, thermalChange: 500 }), 13_000);
    expect(minimumPreload.si({ ...tightened, thermalChange: -9000 })).toBe(0);
  });

  test('parts that expand alike keep the preload; a cold bolt in a hot flange gains more than a hot one', () => {
    const joint = { boltStiffness: 1e8, memberStiffness: 3e8, grip: 0.012 };
    const alike = { memberExpansion: 12e-6, boltExpansion: 12e-6 };
    expect(thermalPreloadChange.si({ ...joint, ...alike, memberRise: 60, boltRise: 60 })).toBe(0);
    const unlike = { memberExpansion: 23.6e-6, boltExpansion: 12e-6, memberRise: 60 };
    expect(thermalPreloadChange.si({ ...joint, ...unlike, boltRise: 0 })).toBeGreaterThan(
      thermalPreloadChange.si({ ...joint, ...unlike, boltRise: 60 }),
    );
  });
});

describe('fatigue of a preloaded bolt', () => {
  const stresses = fc.tuple(
    fc.double({ min: 1e6, max: 1e8, noNaN: true }),
    fc.double({ min: 0, max: 5e8, noNaN: true }),
    fc.double({ min: 5e7, max: 2e8, noNaN: true }),
  );

  test('without preload each criterion has the closed form of its curve through the origin', () => {
    const [a, e, u, p] = [20e6, 150e6, 800e6, 600e6];
    const free = { amplitude: a, preloadStress: 0, endurance: e };
    // Goodman: n·a/e + n·a/u = 1. Gerber: n·a/e + (n·a/u)² = 1. Elliptic: (n·a/e)² + (n·a/p)² = 1.
    const goodman = boltGoodmanFactor.si({ ...free, ultimate: u });
    near((goodman * a) / e + (goodman * a) / u, 1);
    const gerber = boltGerberFactor.si({ ...free, ultimate: u });
    near((gerber * a) / e + ((gerber * a) / u) ** 2, 1);
    const elliptic = boltEllipticFactor.si({ ...free, proofStress: p });
    near(((elliptic * a) / e) ** 2 + ((elliptic * a) / p) ** 2, 1);
  });

  test('with preload the point n·σ_a, σ_i + n·σ_a is on the curve', () =>
    fc.assert(
      fc.property(stresses, ([a, i, e]) => {
        const [u, p] = [8e8, 6e8];
        const bolt = { amplitude: a, preloadStress: i, endurance: e };
        const goodman = boltGoodmanFactor.si({ ...bolt, ultimate: u });
        near((goodman * a) / e + (i + goodman * a) / u, 1, 1e-9);
        const gerber = boltGerberFactor.si({ ...bolt, ultimate: u });
        near((gerber * a) / e + ((i + gerber * a) / u) ** 2, 1, 1e-9);
        const elliptic = boltEllipticFactor.si({ ...bolt, proofStress: p });
        near(((elliptic * a) / e) ** 2 + ((i + elliptic * a) / p) ** 2, 1, 1e-9);
        const line = boltProofLineFactor.si({ amplitude: a, preloadStress: i, proofStress: p });
        near(i + 2 * line * a, p, 1e-9);
      }),
    ));
});

describe('combined stress', () => {
  test('a bolt yields at the tension that torsion leaves', () =>
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.57, noNaN: true }), (part) => {
        const [yieldStrength, torsion] = [6e8, part * 6e8];
        const tension = yieldTensionWithTorsion.si({ yieldStrength, torsion });
        near(tightenedBoltStress.si({ tension, torsion, shear: 0 }), yieldStrength);
      }),
    ));

  test('torsion above the shear yield leaves no tension', () =>
    expect(yieldTensionWithTorsion.si({ yieldStrength: 6e8, torsion: 3.5e8 })).toBe(0));
});

describe('ligaments', () => {
  test('bore, hole and outside fill the radius', () =>
    fc.assert(
      fc.property(millimetres(50, 60), millimetres(2, 6), (boltCircle, holeDiameter) => {
        const holes = { boltCircle, holeDiameter };
        const [bore, outsideDiameter] = [0.04, 0.07];
        near(
          bore +
            2 * ligamentToBore.si({ ...holes, bore }) +
            2 * holeDiameter +
            2 * ligamentToOutside.si({ ...holes, outsideDiameter }),
          outsideDiameter,
        );
        // Two holes on a circle are a diameter apart.
        near(ligamentBetweenHoles.si({ ...holes, count: 2 }), boltCircle - holeDiameter);
      }),
    ));
});

describe('the end that bolts are tapped into', () => {
  const ring = { load: 1e4, meanDiameter: 0.053, outsideDiameter: 0.078, bore: 0.05, thickness: 0.008 };

  test('bolts over the wall do not roll the flange; twice the offset rolls it twice as far', () =>
    fc.assert(
      fc.property(millimetres(0.1, 20), (offset) => {
        const at = (boltCircle: number) => ({ ...ring, boltCircle });
        expect(flangeRollingStress.si(at(0.053))).toBe(0);
        near(
          flangeRollingStress.si(at(0.053 + 2 * offset)),
          2 * flangeRollingStress.si(at(0.053 + offset)),
          1e-6,
        );
        const turned = flangeRotation.si({ ...at(0.053 + offset), elasticModulus: 7e10 });
        // Hoop strain at the inner corner: half of the thickness times the rotation over the radius.
        near(flangeRollingStress.si(at(0.053 + offset)), (7e10 * turned * 0.004) / 0.025, 1e-6);
      }),
    ));

  test('a flange that does not turn leaves the wall its membrane stress', () =>
    near(
      rolledWallStress.si({
        load: 1e4,
        meanDiameter: 0.053,
        wall: 0.003,
        rotation: 0,
        thickness: 0.008,
        edgeLength: 0.007,
        elasticModulus: 7e10,
        poissonRatio: 0.33,
      }),
      1e4 / (Math.PI * 0.053 * 0.003),
    ));

  test('holes in the middle of the wall add no bending; without holes it is the plain ring and the thin tube', () => {
    const end = { outsideDiameter: 0.07, bore: 0.05, count: 8, holeDiameter: 1e-9 };
    near(
      tappedEndTension.si({ ...end, load: 1e4, boltCircle: 0.06 }),
      1e4 / ((Math.PI / 4) * (0.07 ** 2 - 0.05 ** 2)),
      1e-6,
    );
    // At the edge of the wall, a strip of thickness t with its load at t/2: 1 + 6·(1/2) = 4 times (elementary bending).
    near(
      tappedEndTension.si({ ...end, load: 1e4, boltCircle: 0.07 }),
      4 * tappedEndTension.si({ ...end, load: 1e4, boltCircle: 0.06 }),
      1e-6,
    );
    near(tappedWallHoopStress.si({ ...end, pressure: 5e6 }), (5e6 * 0.025) / 0.01, 1e-6);
  });

  test('faces open only beyond separation, as the bolts stretch', () => {
    const opening = (load: number) => faceOpening.si({ load, separationLoad: 5000, boltStiffness: 2e8 });
    expect(opening(5000)).toBe(0);
    near(opening(7000), 1e-5);
  });
});
