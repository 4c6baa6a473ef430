import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { columnRegression, propellant, regress, simulate, tubularSegment } from '../../src/ballistics';
import { summarize } from '../../src/firing';
import { demoMotor, type MotorDocument, parseMotor, predict } from '../../src/motor';
import { motorRegression } from '../../src/motor/motor-grain';

const cracked = parseMotor(readFileSync('examples/motors/tern-54-cracked.json', 'utf8'));

describe('predict', () => {
  test('gives what simulate gives of the same numbers, to eight figures', () => {
    // One segment, so that the input of simulate can be written out by hand beside the document.
    const document: MotorDocument = {
      ...demoMotor(),
      grain: {
        segments: [
          { shape: 'tubular segment', outerDiameter: '48 mm', boreDiameter: '22 mm', length: '76 mm' },
        ],
      },
      nozzle: { throatDiameter: '5.6 mm', exitDiameter: '14 mm', efficiency: 0.93 },
    };
    const byHand = simulate({
      propellant: propellant({
        density: '1750 kg/m^3',
        law: {
          referenceRate: '7.2 mm/s',
          referencePressure: '4 MPa',
          exponent: 0.32,
          characterisedFrom: '1 MPa',
          characterisedTo: '6 MPa',
          temperatureSensitivity: '0.0012 1/K',
          referenceTemperature: '20 degC',
        },
        gamma: 1.136,
        molarMass: '39.9 g/mol',
        flameTemperature: '1600 K',
        characteristicVelocityEfficiency: 0.95,
      }),
      grain: tubularSegment({ outerDiameter: '48 mm', boreDiameter: '22 mm', length: '76 mm' }),
      nozzle: { throatDiameter: '5.6 mm', exitDiameter: '14 mm', efficiency: 0.93 },
      // 54 mm less twice 1.5 mm of wall and twice 1.2 mm of liner.
      chamber: { innerDiameter: '48.6 mm', length: '322 mm' },
      ambient: '101.3 kPa',
      grainTemperature: '20 degC',
      ignition: { igniterMass: '0.6 g', igniterDuration: '0.08 s', flameSpreadTime: '0.03 s' },
    });
    const predicted = predict(document);
    expect(predicted.peakPressure.si / byHand.peakPressure.si).toBeCloseTo(1, 8);
    expect(predicted.totalImpulse.si / byHand.totalImpulse.si).toBeCloseTo(1, 8);
    expect(predicted.balance.burned.si / byHand.balance.burned.si).toBeCloseTo(1, 10);
  });

  test('burns the propellant that the document holds, and its impulse is the integral of its thrust', () => {
    const predicted = predict(demoMotor());
    // π/4·(48² − 22²)·76 mm³ of four segments, 1750 kg/m³: geometry.
    const mass = ((4 * Math.PI) / 4) * (0.048 ** 2 - 0.022 ** 2) * 0.076 * 1750;
    expect(predicted.balance.burned.si / mass).toBeCloseTo(1, 9);
    expect(Math.abs(predicted.balance.relativeError)).toBeLessThan(1e-3);
    const summary = summarize(predicted);
    expect((summary.totalImpulse?.si ?? 0) / predicted.totalImpulse.si).toBeCloseTo(1, 3);
    expect((summary.peakPressure?.si ?? 0) / predicted.peakPressure.si).toBeCloseTo(1, 3);
  });

  test('a cracked grain holds the same propellant, gives the same impulse within 1 %, and a far higher peak', () => {
    // Without erosive burning, which raises the peak beyond the effect of the area.
    const [sound, flawed] = [parseMotor(demoMotor()), cracked].map((motor) =>
      predict({ ...motor, propellant: { ...motor.propellant, erosiveBurning: { law: 'none' } } }),
    );
    expect(flawed.balance.burned.si / sound.balance.burned.si).toBeCloseTo(1, 4);
    expect(Math.abs(flawed.totalImpulse.si / sound.totalImpulse.si - 1)).toBeLessThan(0.01);
    // Area at ignition over area at the sound peak, both from closed forms, to the power 1/(1 − n) bounds the rise: a
    // crack of 13 mm by 76 mm has two faces, and there are twelve. (Formula: equilibriumPressureRatio.)
    const [D, d, L] = [0.048, 0.022, 0.076];
    const segment = (y: number): number =>
      Math.PI * (d + 2 * y) * (L - 2 * y) + (Math.PI / 2) * (D ** 2 - (d + 2 * y) ** 2);
    const peakArea = 4 * segment((L - 2 * d) / 6);
    const ratio = ((4 * segment(0) + 24 * 0.013 * L) / peakArea) ** (1 / (1 - 0.32));
    const found = flawed.peakPressure.si / sound.peakPressure.si;
    expect(found).toBeLessThan(ratio);
    expect(found).toBeGreaterThan(0.9 * ratio);
  });
});

describe('the grain column', () => {
  const one = regress(tubularSegment({ outerDiameter: '48 mm', boreDiameter: '22 mm', length: '76 mm' }));
  const short = regress(tubularSegment({ outerDiameter: '48 mm', boreDiameter: '30 mm', length: '40 mm' }));
  const column = columnRegression({
    segments: [
      { regression: one, position: '0 m' },
      { regression: short, position: '0.078 m' },
    ],
  });

  test('areas and volumes are the sums of the segments at every depth', () => {
    for (const w of [0, 1e-3, 4e-3, 8.9e-3, 9.1e-3, 12e-3]) {
      expect(column.si.areaAt(w)).toBeCloseTo(one.si.areaAt(w) + short.si.areaAt(w), 12);
      expect(column.si.volumeAt(w)).toBeCloseTo(one.si.volumeAt(w) + short.si.volumeAt(w), 12);
    }
  });

  test('a segment that burns out first is a break with the area that it takes along', () => {
    const ends = column.breaks.map(({ depth }) => depth.in('mm').toFixed(3));
    expect(ends).toContain('9.000');
    const lost = column.breaks.find(({ depth }) => Math.abs(depth.in('mm') - 9) < 1e-3)?.change.si ?? 0;
    // Bore of 48 mm and length of 40 − 18 mm at burnout: geometry.
    expect(lost).toBeCloseTo(-Math.PI * 0.048 * 0.022, 6);
  });

  test('mass is the sum, and the centre lies between the segments as their masses say', () => {
    const { mass, centreAxial } = column.massProperties('1000 kg/m^3');
    const [a, b] = [one.castVolume.si * 1000, short.castVolume.si * 1000];
    expect(mass.si[0]).toBeCloseTo(a + b, 9);
    expect(centreAxial.si[0]).toBeCloseTo((a * 0.038 + b * (0.078 + 0.02)) / (a + b), 6);
  });

  test('has the ports of all segments at their places, and their walls', () => {
    const positions = column.portArea.map(({ position }) => position.si);
    expect(positions).toEqual([...positions].sort((x, y) => x - y));
    expect(positions.length).toBe(one.portArea.length + short.portArea.length);
    expect(column.wallExposure.depth.length).toBe(
      column.wallExposure.angle.length * column.wallExposure.position.length,
    );
  });

  test('flaws belong to the first of like segments', () => {
    const motor = parseMotor({
      ...demoMotor(),
      grain: {
        segments: [
          {
            shape: 'tubular segment',
            count: 2,
            outerDiameter: '48 mm',
            boreDiameter: '22 mm',
            length: '76 mm',
            flaws: [{ flaw: 'debond', from: '0 mm', to: '76 mm' }],
          },
        ],
      },
    });
    const flawed = motorRegression(motor);
    const sound = motorRegression(motor, 'none');
    // One wall of 48 mm by 76 mm: geometry.
    expect(flawed.si.areaAt(0) - sound.si.areaAt(0)).toBeCloseTo(Math.PI * 0.048 * 0.076, 5);
  });
});
