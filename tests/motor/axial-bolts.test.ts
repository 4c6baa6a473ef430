// A closure that bolts along the axis retain: what is refused, what is evaluated, and one motor by hand.
import { describe, expect, test } from 'vitest';
import { motorProblems, parseMotor, review, reviewProblems } from '../../src/index';
import { type Json, plover, withChange } from './plover';

const bolts = {
  thread: 'M5',
  boltClass: '12.9',
  count: 8,
  boltCircle: '60 mm',
  clampedThickness: '10 mm',
  engagement: '10 mm',
  holeDiameter: '5.5 mm',
  headDiameter: '10 mm',
  preload: '5 kN',
  tightening: 'torque wrench',
  flange: { outsideDiameter: '76 mm', thickness: '14 mm' },
};

/** The motor with bolts along the axis at its head, changed in one field of them. */
const bolted = (field?: string, value?: unknown): Json => {
  const json = withChange('closures.head.retainingRing', undefined);
  const own: Json = JSON.parse(JSON.stringify(bolts));
  const keys = field?.split('.') ?? [];
  const last = keys.pop();
  if (last !== undefined) {
    const owner = keys.reduce<Json>((node, key) => node[key], own);
    if (value === undefined) delete owner[last];
    else owner[last] = value as Json;
  }
  json.closures.head.axialBolts = own;
  return json;
};

describe('documents', () => {
  test('bolts along the axis are one of the retentions', () => {
    expect(motorProblems(bolted())).toEqual([]);
    expect(reviewProblems(parseMotor(bolted()))).toEqual([]);
    const both = withChange('closures.head.axialBolts', bolts);
    expect(motorProblems(both).map(({ path, code }) => [path, code])).toEqual([
      ['closures.head.axialBolts', 'contradiction'],
    ]);
  });

  test.each([
    ['boltCircle', '42 mm', 'boltCircle', 'more than the bore'],
    ['boltCircle', '72 mm', 'boltCircle', 'less than the outside diameter'],
    ['flange', undefined, 'boltCircle', 'less than the outside diameter'],
    ['flange.outsideDiameter', '49 mm', 'flange.outsideDiameter', 'outside diameter of the case'],
    ['engagement', '15 mm', 'engagement', 'thickness of the flange'],
    ['holeDiameter', '4.8 mm', 'holeDiameter', 'diameter of the bolt'],
    ['headDiameter', '5.4 mm', 'headDiameter', 'wider than their holes'],
    ['count', 40, 'count', 'no material'],
    ['preload', undefined, 'preload', 'tightening torque'],
    ['torque', '5 N*m', 'torque', 'mutually exclusive'],
    ['tightening', 'by hand', 'tightening', 'method of tightening'],
    ['finish', 'shiny', 'finish', 'finish'],
  ])('%s %s is refused', (field, value, place, says) => {
    const problems = motorProblems(bolted(field, value));
    const found = problems.find(({ path }) => path === `closures.head.axialBolts.${place}`);
    expect(found?.message, JSON.stringify(problems)).toContain(says);
  });
});

/**
 * Head closure by hand, all in N, mm and MPa at room temperature. E of aluminium 68.9 GPa (its material record), of the bolts 200 GPa.
 * Strengths: ISO 898-1 12.9 (970, 1100, 1220 MPa); MIL-HDBK-5 6061-T6 bar 34 ksi compressive yield, drawn tube 42/35 ksi.
 */
describe('one motor by hand', () => {
  const json = bolted();
  delete json.case.wallTemperature;
  delete json.temperatureRange;
  const found = review(parseMotor(json));
  const p = found.meop.pressure.in('MPa');
  const { PI, log, sqrt, tan, max, min } = Math;
  const d = 5;
  const stressArea = (PI / 4) * (d - ((13 * sqrt(3)) / 24) * 0.8) ** 2; // ISO 898-1
  // The bore at its widest, 55.02 − 2·8.48 mm: a radial seal lies in it.
  const bore = 38.06;
  const force = (p * PI * bore ** 2) / 4; // pressure on the seal, not on the bolt circle
  const load = force / 8;
  const grip = 10 + d / 2; // Shigley table 8-7
  const stiffness = (stressArea * 200e3) / grip; // Shigley 8-17, all thread
  const spread = grip * tan(PI / 6);
  const members =
    (PI * 68.9e3 * d * tan(PI / 6)) /
    (2 * log(((spread + 10 - d) * (10 + d)) / ((spread + 10 + d) * (10 - d)))); // Shigley 8-21
  const constant = stiffness / (stiffness + members);
  // The cones, 10 + 7.2 mm wide, run out of the 76 − 60 = 16 mm round a bolt: band 0.1 to 0.5.
  const [low, high] = [0.1, 0.5];
  const [most, least] = [5000 * 1.25, 5000 * 0.75 * 0.95]; // Machinery's Handbook 25 %; 5 % from memory
  const capacity = (section: number) => max(0, min((section - most) / high, section)); // Shigley 8-29
  const margin = (allowed: number, factor: number) => allowed / (factor * load) - 1;
  const marginOf = (id: string) =>
    found.margins.find((one) => one.part === 'head-joint' && one.id === id)?.marginOfSafety ?? Number.NaN;
  const close = (value: number, wanted: number) =>
    expect(Math.abs(value / wanted - 1), `${value}, by hand ${wanted}`).toBeLessThan(1e-6);

  test('forces and limits', () => {
    const { head } = found.axialBolts;
    close(head?.endForce.in('N') ?? 0, force);
    close(head?.boltLoad.in('N') ?? 0, load);
    close(head?.preload.max.in('N') ?? 0, most);
    close(head?.preload.min.in('N') ?? 0, least);
    expect(head?.jointConstant).toMatchObject({ low, high });
    // Narrow, the cylinder of 16 mm is stiffer than the cones: they count.
    close(head?.jointConstant.computed ?? 0, constant);
  });

  test('the bolts', () => {
    close(marginOf('tension-bolt-proof'), margin(capacity(970 * stressArea), 1.5));
    close(marginOf('tension-bolt-break'), margin(capacity(1220 * stressArea), 2));
    // Shigley 8-26 with f = 0.15, half of the torque kept; d_2 = d − 0.649519·P, d_3 = d − 1.226869·P (ISO 68-1).
    const [d2, d3] = [d - ((3 * sqrt(3)) / 8) * 0.8, d - ((17 * sqrt(3)) / 24) * 0.8];
    const [lead, flank] = [0.8 / (PI * d2), 0.15 / Math.cos(PI / 6)];
    const torque = (((most * d2) / 2) * (lead + flank)) / (1 - lead * flank);
    const torsion = (16 * 0.5 * torque) / (PI * d3 ** 3);
    close(
      marginOf('tension-bolt-yield'),
      margin(capacity(sqrt(1100 ** 2 - 3 * torsion ** 2) * stressArea), 1.5),
    );
    close(marginOf('joint-separation'), margin(least / (1 - low), 1.5)); // Shigley 8-30
  });

  test('under the heads', () => {
    const area = (PI / 4) * (10 ** 2 - 5.5 ** 2);
    close(marginOf('bolt-head-bearing-yield'), margin(capacity(34 * 6.894757293168 * area), 1.5));
  });

  test('the flange, as a ring that rolls, and the wall that it turns', () => {
    // Wall 8.48 mm on 55.02 mm: mean diameter 46.54 mm. m·R = F·(D_c − D_m)/(4·π); σ = 6·m·R/(h²·r_i·ln(r_o/r_i)).
    const mean = 46.54;
    const wallThickness = 8.48;
    const moment = (force * (60 - mean)) / (4 * PI);
    const ring = log(76 / bore);
    const stress = (6 * moment) / (14 ** 2 * (bore / 2) * ring);
    const yields = 35 * 6.894757293168;
    close(marginOf('flange-bending-yield'), yields / (1.5 * stress) - 1);
    const angle = (12 * moment) / (68.9e3 * 14 ** 3 * ring);
    // Edge of a long cylinder turned by θ and pushed out by θ·h/2: M = D·β·θ·(2 + β·h), as −2·β²·D·(θ/β + θ·h/2) in size.
    const beta = (3 * (1 - 0.33 ** 2)) ** 0.25 / sqrt((mean / 2) * wallThickness);
    const plate = (68.9e3 * wallThickness ** 3) / (12 * (1 - 0.33 ** 2));
    const edge = 2 * beta ** 2 * plate * (angle / beta + (angle * 14) / 2);
    const wall = force / (PI * mean * wallThickness) + (6 * edge) / wallThickness ** 2;
    close(marginOf('flange-wall-bending-yield'), yields / (1.5 * wall) - 1);
    // Cut through two holes: p·D_b/(D_f − D_b − 2·d).
    close(marginOf('tapped-end-hoop-yield'), yields / (1.5 * ((p * bore) / (76 - bore - 10))) - 1);
  });
});

describe('the review', () => {
  const at = (field?: string, value?: unknown) => review(parseMotor(bolted(field, value)));
  const found = at();

  test('evaluates bolts, threads, separation, end and ligaments', () => {
    const ids = found.margins.filter(({ part }) => part === 'head-joint').map(({ id }) => id);
    expect(ids).toEqual(
      expect.arrayContaining(['tension-bolt-proof', 'tapped-thread-shear', 'joint-separation']),
    );
    expect(found.checks.filter(({ part }) => part === 'head-joint').map(({ check }) => check)).toEqual([
      'ligament between tapped holes and bore',
      'ligament between tapped holes and outside',
      'ligament between tapped holes',
      'proportion of the bolts (fatigue)',
    ]);
    expect(found.verdict).toBe('holds');
    expect(String(found)).toContain('separation of the clamped parts');
  });

  test.each([
    ['preload', '500 N', 'joint-separation'],
    ['preload', '14 kN', 'tension-bolt-proof'],
    ['boltClass', '4.6', 'tension-bolt-proof'],
    ['count', 1, 'joint-separation'],
    ['engagement', '0.8 mm', 'tapped-thread-shear'],
  ])('%s %s does not hold', (field, value, id) => {
    const weak = at(field, value);
    expect(weak.verdict).toBe('does not hold');
    expect(
      weak.margins.find((one) => one.id === id && one.part === 'head-joint')?.marginOfSafety,
    ).toBeLessThan(0);
  });

  test('holes too near to an edge fail a check', () => {
    const near = at('flange.outsideDiameter', '71 mm');
    const check = near.checks.find((one) => one.check === 'ligament between tapped holes and outside');
    // (71 − 60 − 5)/2 = 3 mm, above 2.5 mm; less than one diameter: a caution.
    expect(check?.passes).toBe(true);
    expect(near.cautions.join('\n')).toContain('less than one bolt diameter');
    const nearer = at('flange.outsideDiameter', '69.9 mm');
    expect(nearer.checks.some(({ passes }) => !passes)).toBe(true);
    expect(nearer.verdict).toBe('does not hold');
  });

  test('the shoulder of the closure is what the bolts clamp', () => {
    const shouldered = (diameter: string, thickness: string): Json => {
      const json = bolted();
      const layout = {
        innerFace: '24 mm',
        length: '34 mm',
        diameter: '37.9 mm',
        shoulder: { diameter, thickness },
      };
      json.closures.head.layout = layout as unknown as Json;
      return json;
    };
    const problems = (json: Json) => motorProblems(json).map(({ path }) => path);
    expect(problems(shouldered('76 mm', '11 mm'))).toContain('closures.head.axialBolts.clampedThickness');
    expect(problems(shouldered('76 mm', '10 mm'))).not.toContain('closures.head.axialBolts.clampedThickness');
    const checkOf = (json: Json) =>
      review(parseMotor(json)).checks.find(({ check }) => check.endsWith('edge of the closure'));
    // (76 − 60 − 5.5)/2 = 5.25 mm; (68 − 60 − 5.5)/2 = 1.25 mm of a required 2.5 mm.
    expect(checkOf(shouldered('76 mm', '10 mm'))?.passes).toBe(true);
    expect(checkOf(shouldered('68 mm', '10 mm'))?.passes).toBe(false);
  });

  test('the plate spans the bolt circle', () => {
    const stress = (review_: typeof found) =>
      review_.margins.find(({ id, part }) => id === 'plate-bending' && part === 'head-closure')?.applied.si ??
      0;
    const ring = review(parseMotor(JSON.parse(plover)));
    expect(stress(found)).toBeGreaterThan(stress(ring));
  });

  test('a face seal needs no gap: the faces stay closed until the bolts let them separate', () => {
    const withFace = (preload: string) => {
      const json = bolted('preload', preload);
      const seals: Json = JSON.parse(plover).closures.aft.seals;
      delete seals[0 as unknown as string].faceGap;
      json.closures.head.seals = seals;
      delete json.closures.head.layout; // that of a radial seal
      return json;
    };
    expect(motorProblems(withFace('5 kN'))).toEqual([]);
    const tight = review(parseMotor(withFace('5 kN')));
    const loose = review(parseMotor(withFace('100 N')));
    expect(tight.axialBolts.head?.faceOpening.si).toBe(0);
    expect(loose.axialBolts.head?.faceOpening.si).toBeGreaterThan(0);
    const squeezeOf = (one: typeof found) =>
      one.faceSeals.find(({ closure }) => closure === 'head')?.face.squeezeUnderPressure.min ?? Number.NaN;
    // The same as with that gap in the document.
    const told = withFace('100 N');
    const gap = loose.axialBolts.head?.faceOpening.in('mm');
    (told.closures.head.seals[0 as unknown as string] as Json).faceGap = `${gap} mm` as unknown as Json;
    expect(squeezeOf(loose)).toBeCloseTo(squeezeOf(review(parseMotor(told))), 9);
    expect(squeezeOf(loose)).toBeLessThan(squeezeOf(tight));
    expect(tight.assumptions.join('\n')).toContain('computed from the bolts');
  });

  test('without a flange the end of the tube is evaluated', () => {
    const json = bolted('flange', undefined);
    json.case.outsideDiameter = '70 mm' as unknown as Json;
    json.case.wall = '16 mm' as unknown as Json;
    json.closures.head.axialBolts.boltCircle = '54 mm' as unknown as Json;
    const plain = review(parseMotor(json));
    expect(plain.margins.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['tapped-end-tension', 'tapped-end-hoop']),
    );
  });
});
