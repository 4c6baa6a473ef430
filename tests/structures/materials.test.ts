import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  allowable,
  boltClass,
  boltClassNames,
  boltRetention,
  datum,
  factorSet,
  type Material,
  material,
  materialNames,
  strengthRetention,
  withEstimatedStrengths,
} from '../../src/structures';
import { quantity } from '../../src/units';
import { codeOf } from '../error-code';

const all = materialNames().map((name) => material(name));

describe('every material that ships', () => {
  test.each(all.map((record) => [record.name, record] as const))(
    '%s: each datum has a source, a basis and a provenance',
    (_, record) => {
      const data: unknown[] = [];
      const walk = (value: unknown): void => {
        if (typeof value !== 'object' || value === null || 'kind' in value) return;
        if ('basis' in value) data.push(value);
        Object.values(value).forEach(walk);
      };
      walk(record);
      expect(data.length).toBeGreaterThan(1);
      for (const one of data) {
        expect(one).toMatchObject({
          source: expect.any(String),
          basis: expect.any(String),
          provenance: expect.any(String),
        });
        expect(one).toHaveProperty('source', expect.stringMatching(/.{8,}/));
      }
    },
  );
  test('no design strength is typical, and none of the cells that the digitised tables mark as suspect is shipped', () => {
    for (const {
      ultimateStrength,
      yieldStrength,
      transverse,
      shearUltimate,
      bearingUltimate,
      bearingYield,
    } of all)
      for (const one of [
        ultimateStrength,
        yieldStrength,
        transverse?.ultimateStrength,
        transverse?.yieldStrength,
        shearUltimate,
        bearingUltimate?.at1_5,
        bearingUltimate?.at2_0,
        bearingYield?.at1_5,
        bearingYield?.at2_0,
      ])
        if (one) expect(['A', 'B', 'S', 'specified minimum']).toContain(one.basis);
    // MIL-HDBK-5J table 3.7.6.0(b1): Fbry at e/D 2.0 of 7075-T651 plate is 117 ksi at 0.500 to 1.000 in; 100 and 101 are the suspects.
    expect(material('7075-T651 plate').bearingYield?.at2_0?.value.in('ksi')).toBe(117);
  });
  test('yield is below ultimate, bearing rises with e/D, shear is 0.45 to 0.72 of ultimate (the bounds that the handbook data keep)', () => {
    for (const {
      ultimateStrength: u,
      yieldStrength: y,
      shearUltimate: s,
      bearingUltimate: b,
      bearingYield: by,
    } of all) {
      if (u && y) expect(y.value.si).toBeLessThan(u.value.si);
      if (u && s) {
        expect(s.value.si / u.value.si).toBeGreaterThan(0.45);
        expect(s.value.si / u.value.si).toBeLessThan(0.72);
      }
      for (const data of [b, by])
        if (data?.at1_5 && data.at2_0) expect(data.at1_5.value.si).toBeLessThan(data.at2_0.value.si);
    }
  });
});

// Cells of MIL-HDBK-5J (2003) as read in a transcription of its tables; a second reading beside the shipped table.
test.each([
  ['6061-T6 drawn tube', 'ultimate', 42], // 3.6.2.0(c1)
  ['6061-T6 drawn tube', 'yield', 35],
  ['6061-T6 extruded tube', 'yield', 33], // 3.6.2.0(g), LT governs
  ['6061-T6 bar', 'shear ultimate', 27], // 3.6.2.0(d)
  ['7075-T6 sheet', 'ultimate', 78], // 3.7.6.0(b1)
  ['2024-T3 sheet', 'yield', 42], // 3.2.3.0(b1), LT governs
  ['4130 normalised', 'yield', 75], // 2.3.1.0(c1)
  ['4130 HT 180', 'ultimate', 180], // 2.3.1.0(c2)
  ['304 annealed', 'yield', 26], // 2.7.1.0(b)
  ['6063-T6 extrusion', 'ultimate', 30], // extruder's table of limits
] as const)('%s: %s is %d ksi', (name, property, ksi) => {
  expect(allowable({ material: name, property }).value.in('ksi')).toBeCloseTo(ksi, 9);
});

describe('allowables', () => {
  const tube = '6061-T6 drawn tube';
  test('bearing: between 1.5 and 2.0 linear, above no more, below nothing, and said so', () => {
    const at = (edgeRatio: number) => allowable({ material: tube, property: 'bearing ultimate', edgeRatio });
    // MIL-HDBK-5J table 3.6.2.0(c1): 67 and 88 ksi.
    expect(at(1.5).value.in('ksi')).toBeCloseTo(67, 9);
    expect(at(1.75).value.in('ksi')).toBeCloseTo(77.5, 9);
    expect(at(2).value.in('ksi')).toBeCloseTo(88, 9);
    expect(at(3).value.in('ksi')).toBeCloseTo(88, 9);
    expect(at(1.49).value.si).toBe(0);
    expect(at(1.49).cautions.join()).toContain('below 1.5');
    expect(codeOf(() => allowable({ material: tube, property: 'bearing yield' }))).toBe('missing-field');
    expect(codeOf(() => at(-1))).toBe('out-of-domain');
  });
  test('bearing given at 2.0 only is taken in proportion, with a caution', () => {
    const { cautions, value } = allowable({
      material: '4130 normalised',
      property: 'bearing ultimate',
      edgeRatio: 1.6,
    });
    expect(value.in('ksi')).toBeCloseTo(160, 9); // 200 ksi × 0.8
    expect(cautions.join()).toContain('engineering practice');
  });
  test('typical is never a default, and says what it is where asked for', () => {
    expect(codeOf(() => allowable({ material: '6063-T6 extrusion', property: 'shear ultimate' }))).toBe(
      'no-allowable',
    );
    const { cautions, value } = allowable({
      material: '6063-T6 extrusion',
      property: 'shear ultimate',
      basis: 'typical',
    });
    expect(value.in('MPa')).toBe(152);
    expect(cautions.join()).toContain('typical');
    expect(codeOf(() => allowable({ material: 'isomoulded graphite', property: 'yield' }))).toBe(
      'no-allowable',
    );
  });
  test('a value from memory carries that caution', () => {
    const hot = allowable({ material: '7075-T6 sheet', property: 'ultimate', temperature: '150 degC' });
    expect(hot.cautions.join()).toContain('from memory');
    expect(allowable({ material: tube, property: 'ultimate', temperature: '150 degC' }).cautions).toEqual([]);
    expect(boltClass('A574').yieldStrength.provenance).toBe('from memory');
    expect(factorSet('NASA SP-8025, upper').provenance).toBe('from memory');
  });
  test('shear yield is yield over √3', () => {
    const ratio =
      allowable({ material: tube, property: 'shear yield' }).value.si /
      allowable({ material: tube, property: 'yield' }).value.si;
    expect(ratio).toBeCloseTo(1 / Math.sqrt(3), 12);
  });
  test("a user's material works like the library's, and lacks what it lacks", () => {
    const mine: Material = {
      name: 'tube of heat 4711',
      form: 'drawn tube',
      class: 'metal',
      yieldStrength: datum('stress', '270 MPa', { basis: 'S', source: 'mill certificate' }),
    };
    expect(allowable({ material: mine, property: 'yield' }).value.in('MPa')).toBe(270);
    expect(codeOf(() => allowable({ material: mine, property: 'ultimate' }))).toBe('no-allowable');
    expect(codeOf(() => allowable({ material: mine, property: 'yield', temperature: '100 degC' }))).toBe(
      'missing-data',
    );
  });
  test('an alloy without its form has the least of its forms, says so, and names the form each value is from', () => {
    // Least of 42/35 (drawn tube, bar), 38/35 with 37/33 across (extrusion) and 42/36 ksi (sheet and plate): MIL-HDBK-5J (2003)
    // tables 3.6.2.0(b1) to (g), read in a transcription.
    const of = (property: Parameters<typeof allowable>[0]['property'], direction?: 'longitudinal'): number =>
      allowable({ material: '6061-T6', property, edgeRatio: 2, ...(direction && { direction }) }).value.in(
        'ksi',
      );
    expect([of('ultimate', 'longitudinal'), of('yield', 'longitudinal')]).toEqual([38, 35]);
    expect(of('ultimate')).toBeCloseTo(37, 9);
    expect(of('yield')).toBeCloseTo(33, 9);
    expect(of('shear ultimate')).toBeCloseTo(26, 9);
    expect(of('bearing ultimate')).toBeCloseTo(82, 9);
    expect(of('bearing yield')).toBeCloseTo(56, 9);
    const yielding = allowable({ material: '6061-T6', property: 'yield' });
    expect(yielding.cautions.join()).toMatch(/product form of 6061-T6 is not specified/);
    expect(yielding.source).toContain('3.6.2.0(g)');
    expect(allowable({ material: '6061-T6', property: 'bearing yield', edgeRatio: 2 }).source).toContain(
      '3.6.2.0(c1)',
    );
  });
  test.each([
    ['6061-T6', ['6061-T6 drawn tube', '6061-T6 extruded tube', '6061-T6 bar', '6061-T6 sheet and plate']],
    ['7075-T6', ['7075-T6 extrusion', '7075-T6 sheet', '7075-T651 plate']],
    ['2024-T3', ['2024-T3 sheet', '2024-T351 plate']],
  ] as const)('%s is nowhere stronger than a form of it', (alloy, forms) => {
    const properties = [
      'yield',
      'ultimate',
      'shear yield',
      'shear ultimate',
      'bearing yield',
      'bearing ultimate',
      'compressive yield',
    ] as const;
    for (const form of forms)
      for (const property of properties)
        for (const direction of ['longitudinal', 'transverse', 'least'] as const)
          for (const edgeRatio of [1.5, 1.7, 2]) {
            const of = (name: typeof alloy | typeof form): number =>
              allowable({ material: name, property, direction, edgeRatio }).value.si;
            expect(of(alloy), `${form}: ${property}`).toBeLessThanOrEqual(of(form));
          }
  });
  test('an alloy of one form goes by its name alone; 4130 does not, for its heat treatment decides', () => {
    expect(material('304')).toEqual(material('304 annealed'));
    expect(material('6063-T6')).toEqual(material('6063-T6 extrusion'));
    expect(() => material('4130')).toThrow(/4130 normalised.*4130 HT 125/);
  });
  test('names are read in any case and spelling, and what is no name is refused as one', () => {
    expect(material('4130 Normalized' as '4130 normalised')).toEqual(material('4130 normalised'));
    expect(material('6061-t6 Bar' as '6061-T6 bar').name).toBe('6061-T6 bar');
    expect(codeOf(() => material(undefined as unknown as 'FKM'))).toBe('unknown-name');
    expect(boltClass('Grade 8').name).toBe('grade 8');
    expect(boltClass('class 10.9').name).toBe('10.9');
    expect(boltClass(8.8 as unknown as '8.8').name).toBe('8.8');
    expect(codeOf(() => boltClass('8,8'))).toBe('unknown-name');
  });
  test('unknown names offer the near ones', () => {
    expect(codeOf(() => material('6061-T4'))).toBe('unknown-name');
    expect(() => material('6061-T4')).toThrow(/6061-T6 drawn tube/);
    expect(codeOf(() => boltClass('13.9'))).toBe('unknown-name');
    expect(codeOf(() => boltClass('9.8', { diameter: '20 mm' }))).toBe('out-of-domain');
  });
});

describe('strengths that a certificate leaves out', () => {
  const certificate: Material = {
    name: 'tube of heat 4711',
    form: 'extruded tube',
    class: 'metal',
    ultimateStrength: datum('stress', '300 MPa', { basis: 'S', source: 'mill certificate' }),
    yieldStrength: datum('stress', '250 MPa', { basis: 'S', source: 'mill certificate' }),
  };
  test('are no more than the same ratio of any metal that has them', () => {
    const estimated = withEstimatedStrengths(certificate);
    const estimate = (property: 'shear ultimate' | 'bearing ultimate' | 'bearing yield', edgeRatio: number) =>
      allowable({ material: estimated, property, edgeRatio }).value.si /
      allowable({ material: certificate, property: property === 'bearing yield' ? 'yield' : 'ultimate' })
        .value.si;
    let compared = 0;
    for (const one of all)
      for (const [property, datumOf, edgeRatio] of [
        ['shear ultimate', one.shearUltimate, 2],
        ['bearing ultimate', one.bearingUltimate?.at1_5, 1.5],
        ['bearing ultimate', one.bearingUltimate?.at2_0, 2],
        ['bearing yield', one.bearingYield?.at1_5, 1.5],
        ['bearing yield', one.bearingYield?.at2_0, 2],
      ] as const) {
        const tensile = property === 'bearing yield' ? one.yieldStrength : one.ultimateStrength;
        if (datumOf === undefined || tensile === undefined) continue;
        compared++;
        expect(estimate(property, edgeRatio), `${one.name}: ${property}`).toBeLessThanOrEqual(
          datumOf.value.si / tensile.value.si,
        );
      }
    expect(compared).toBeGreaterThan(50);
  });
  test('carry their caution, and leave what is known as it is', () => {
    const { cautions } = allowable({
      material: withEstimatedStrengths(certificate),
      property: 'bearing yield',
      edgeRatio: 2,
    });
    expect(cautions.join()).toContain('engineering practice');
    expect(withEstimatedStrengths('6061-T6 bar')).toEqual(material('6061-T6 bar'));
    expect(codeOf(() => withEstimatedStrengths('FKM'))).toBe('out-of-domain');
    expect(codeOf(() => withEstimatedStrengths('6061-T6 welded'))).toBe('no-allowable');
    expect(() => allowable({ material: '6063-T6', property: 'shear ultimate' })).toThrow(
      /withEstimatedStrengths/,
    );
  });
});

describe('strength against temperature', () => {
  const hot = all.filter(({ atTemperature }) => atTemperature !== undefined);
  const kelvin = (t: number) => quantity('temperature', `${t} K`);
  test.each(hot.map((record) => [record.name, record] as const))(
    '%s: never rises with temperature',
    (_, record) => {
      fc.assert(
        fc.property(
          fc.constantFrom('ultimate' as const, 'yield' as const),
          fc.double({ min: 250, max: 540, noNaN: true }),
          fc.double({ min: 0, max: 40, noNaN: true }),
          (property, t, more) => {
            const at = (temperature: number) =>
              strengthRetention({ material: record, property, temperature: kelvin(temperature) }).fraction;
            expect(at(t + more)).toBeLessThanOrEqual(at(t) + 1e-12);
            expect(at(t)).toBeLessThanOrEqual(1);
          },
        ),
        { numRuns: 30 },
      );
    },
  );
  test('never rises with the time of exposure', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('hot' as const, 'after exposure' as const),
        fc.constantFrom('ultimate' as const, 'yield' as const),
        fc.double({ min: 310, max: 545, noNaN: true }),
        fc.double({ min: 0, max: 7, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (state, property, t, logTime, more) => {
          const at = (log: number) =>
            strengthRetention({
              material: '6061-T6 bar',
              property,
              state,
              temperature: kelvin(t),
              exposure: quantity('time', `${Math.min(10 ** log, 3.6e7)} s`),
            }).fraction;
          expect(at(logTime + more)).toBeLessThanOrEqual(at(logTime) + 1e-12);
        },
      ),
      { numRuns: 200 },
    );
  });
  test('the 6061 curves agree with the remembered association table within 5 points of room-temperature strength', () => {
    // Aluminum Association, typical tensile properties at temperature, lowest during 10 000 h (from memory): 212, 300, 400, 500 °F.
    const rows = material('6061-T6 bar').typical?.atTemperature?.value ?? [];
    for (const { temperature, ultimateStrength, yieldStrength } of rows.slice(1, 5)) {
      const left = (property: 'ultimate' | 'yield') =>
        strengthRetention({ material: '6061-T6 bar', property, temperature, exposure: '10000 h' }).fraction;
      expect(Math.abs(left('ultimate') - ultimateStrength.in('ksi') / 45)).toBeLessThan(0.05);
      expect(Math.abs(left('yield') - yieldStrength.in('ksi') / 40)).toBeLessThan(0.05);
    }
  });
  test('beyond the curve nothing is allowed', () => {
    expect(
      codeOf(() => allowable({ material: '6061-T6 bar', property: 'yield', temperature: '400 degC' })),
    ).toBe('out-of-domain');
    expect(
      codeOf(() =>
        strengthRetention({
          material: '6061-T6 bar',
          property: 'yield',
          temperature: '150 degC',
          exposure: '20000 h',
        }),
      ),
    ).toBe('out-of-domain');
    expect(
      codeOf(() =>
        strengthRetention({
          material: '6061-T6 bar',
          property: 'yield',
          temperature: '150 degC',
          exposure: '-1 h',
        }),
      ),
    ).toBe('out-of-domain');
  });
});

describe('curves of one exposure', () => {
  const fraction = (exposure: '0.5 h' | '100 h') =>
    strengthRetention({ material: '4130 normalised', property: 'yield', temperature: '400 degC', exposure });
  test('say so where the part is hot for longer', () => {
    expect(fraction('100 h').cautions.join()).toContain('Longer heating reduces');
    expect(fraction('0.5 h').cautions.join()).not.toContain('Longer heating');
    // A curve for 10 000 h, or one without a time, serves any exposure.
    for (const name of ['6063-T6 extrusion', '304 annealed'] as const)
      expect(
        strengthRetention({
          material: name,
          property: 'yield',
          temperature: '150 degC',
          exposure: '9 h',
        }).cautions.join(),
      ).not.toContain('Longer heating');
  });
  test('100 K is asked about: 100 °C is likelier meant', () => {
    const cold = strengthRetention({ material: '4130 normalised', property: 'yield', temperature: '100 K' });
    expect(cold.fraction).toBe(1);
    expect(cold.cautions.join()).toContain('°C');
  });
});

describe('bolts while hot', () => {
  // ISO 898-1:1999 annex A (from memory), MPa at 20, 100, 200, 250, 300 °C; no class keeps less than its curve says.
  test.each<[string, readonly number[]]>([
    ['5.6', [300, 270, 230, 215, 195]],
    ['8.8', [640, 590, 540, 510, 480]],
    ['10.9', [940, 875, 790, 745, 705]],
    ['12.9', [1100, 1020, 925, 875, 825]],
  ])('%s keeps no more than the table', (name, [cold, ...hot]) => {
    hot.forEach((strength, i) => {
      const { fraction } = boltRetention({ boltClass: name, temperature: `${[100, 200, 250, 300][i]} degC` });
      expect(fraction).toBeLessThanOrEqual(strength / cold + 1e-12);
      expect(fraction).toBeGreaterThan((strength / cold) * 0.98);
    });
  });
  test.each(boltClassNames())('%s falls with temperature, and ends', (name) => {
    const at = (t: number): number => boltRetention({ boltClass: name, temperature: `${t} degC` }).fraction;
    const temperatures = [-20, 20, 37, 40, 80, 150, 220, 300];
    temperatures.slice(1).forEach((t, i) => {
      expect(at(t)).toBeLessThanOrEqual(at(temperatures[i]));
    });
    expect(at(20)).toBe(1);
    expect(codeOf(() => at(401))).toBe('out-of-domain');
    expect(boltRetention({ boltClass: name, temperature: '200 degC' }).cautions.join()).toContain(
      'from memory',
    );
  });
});

describe('bolt classes', () => {
  test('a grade is its maker’s word below the sizes of its standard', () => {
    // SAE J429 starts at 1/4 in.
    expect(boltClass('grade 8', { diameter: '0.19 in' }).cautions.join()).toContain('SAE J429');
    expect(boltClass('grade 8', { diameter: '1/4 in' }).cautions).toEqual([]);
    expect(boltClass('A574', { diameter: '0.19 in' }).cautions).toEqual([]);
  });
  test.each(boltClassNames())('%s: proof below yield below ultimate, shear below tension', (name) => {
    const { proofStress, yieldStrength, ultimateStrength, shearUltimateThread, shearUltimateShank } =
      boltClass(name);
    if (proofStress) expect(proofStress.value.si).toBeLessThan(yieldStrength.value.si);
    expect(yieldStrength.value.si).toBeLessThan(ultimateStrength.value.si);
    expect(shearUltimateThread.value.si).toBeLessThanOrEqual(shearUltimateShank.value.si);
    expect(shearUltimateShank.value.si).toBeCloseTo(0.6 * ultimateStrength.value.si, 3); // EN 1993-1-8; handbook rule
  });
  // Proof (none in ISO 3506), yield, ultimate: ISO 898-1:2013 and ISO 3506-1, MPa, read in reproductions; SAE J429, ksi, as in
  // Shigley and Mischke, 5th ed., p. 341.
  test.each([
    ['4.6', '10 mm', 225, 240, 400],
    ['4.8', '10 mm', 310, 340, 420],
    ['5.6', '10 mm', 280, 300, 500],
    ['5.8', '10 mm', 380, 420, 520],
    ['6.8', '10 mm', 440, 480, 600],
    ['9.8', '10 mm', 650, 720, 900],
    ['10.9', '10 mm', 830, 940, 1040],
    ['12.9', '10 mm', 970, 1100, 1220],
    ['A2-50', '10 mm', undefined, 210, 500],
    ['A2-70', '10 mm', undefined, 450, 700],
    ['A4-80', '10 mm', undefined, 600, 800],
    ['grade 1', '1 in', 33, 36, 60],
    ['grade 2', '3/4 in', 55, 57, 74],
    ['grade 2', '7/8 in', 33, 36, 60],
    ['grade 5', '1 in', 85, 92, 120],
    ['grade 5', '1.125 in', 74, 81, 105],
    ['grade 8', '1.5 in', 120, 130, 150],
  ] as const)('class %s at %s', (name, diameter, proof, yields, ultimate) => {
    const unit = name.startsWith('grade') ? 'ksi' : 'MPa';
    const found = boltClass(name, { diameter });
    expect(found.proofStress?.value.in(unit)).toEqual(
      proof === undefined ? undefined : expect.closeTo(proof, 6),
    );
    expect(found.yieldStrength.value.in(unit)).toBeCloseTo(yields, 6);
    expect(found.ultimateStrength.value.in(unit)).toBeCloseTo(ultimate, 6);
  });
  test('without a size the classes are those of radial bolts, not of thick ones', () => {
    expect(boltClass('grade 2').ultimateStrength.value.in('ksi')).toBeCloseTo(74, 9); // SAE J429, 1/4 to 3/4 in
    expect(boltClass('grade 5').proofStress?.value.in('ksi')).toBeCloseTo(85, 9);
  });
  test('threads in the shear plane of cold-formed classes carry half of the tensile strength (EN 1993-1-8 table 3.4)', () => {
    for (const name of ['4.8', '5.8', '6.8', '10.9'] as const) {
      const { shearUltimateThread, ultimateStrength } = boltClass(name);
      expect(shearUltimateThread.value.si / ultimateStrength.value.si).toBeCloseTo(0.5, 9);
    }
  });
  test('8.8 is 580/640/800 up to 16 mm and 600/660/830 above; without a size the lesser', () => {
    // ISO 898-1:2013, read in two reproductions of its table.
    const proof = (diameter?: '16 mm' | '18 mm') =>
      boltClass('8.8', diameter === undefined ? {} : { diameter }).proofStress?.value.in('MPa');
    expect([proof('16 mm'), proof('18 mm'), proof()]).toEqual([580, 600, 580]);
  });
});
