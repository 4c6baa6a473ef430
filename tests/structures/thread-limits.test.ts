import { describe, expect, test } from 'vitest';
import { threadGeometry, threadNames } from '../../src/structures';

// Maximum minor diameter of class 2B, in, as two printed tables of ASME B1.1 give it (published, seen): numbered sizes by
// microadvances.com, unified screw threads class 2A and 2B, with the minimum major diameter of class 2A; UNC by the sheet
// "Internal Thread Dimensions for Unified UNC Screw Threads" (2016), with the maximum pitch diameter of class 2B.
const numbered = [
  ['#0-80', 0.0514, 0.0563],
  ['#1-64', 0.0623, 0.0686],
  ['#1-72', 0.0635, 0.0689],
  ['#2-56', 0.0737, 0.0813],
  ['#2-64', 0.0753, 0.0816],
  ['#3-48', 0.0845, 0.0938],
  ['#3-56', 0.0865, 0.0942],
  ['#4-40', 0.0939, 0.1061],
  ['#4-48', 0.0968, 0.1068],
  ['#5-40', 0.1062, 0.1191],
  ['#5-44', 0.1079, 0.1195],
  ['#6-32', 0.114, 0.1312],
  ['#6-40', 0.119, 0.1321],
  ['#8-32', 0.139, 0.1571],
  ['#8-36', 0.142, 0.1577],
  ['#10-24', 0.156, 0.1818],
  ['#10-32', 0.164, 0.1831],
  ['#12-24', 0.181, 0.2078],
  ['#12-28', 0.186, 0.2085],
] as const;
const coarse = [
  ['#6-32', 0.114, 0.1214],
  ['#8-32', 0.139, 0.1475],
  ['#10-24', 0.156, 0.1672],
  ['#12-24', 0.181, 0.1933],
  ['1/4-20', 0.207, 0.2224],
  ['5/16-18', 0.265, 0.2817],
  ['3/8-16', 0.321, 0.3401],
  ['7/16-14', 0.376, 0.3972],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: a diameter, not the logarithm of e
  ['1/2-13', 0.434, 0.4565],
  ['5/8-11', 0.546, 0.5732],
  ['3/4-10', 0.663, 0.6927],
  ['7/8-9', 0.778, 0.811],
  ['1-8', 0.89, 0.9276],
] as const;

describe('unified threads, class 2A/2B', () => {
  test.each(numbered)(
    '%s: minor diameter of the hole and major diameter of the screw',
    (name, minor, major) => {
      const { limits } = threadGeometry(name);
      expect(limits.internalMinorMax.in('in')).toBeCloseTo(minor, 8);
      expect(limits.externalMajorMin.in('in')).toBeCloseTo(major, 8);
    },
  );
  test.each(coarse)('%s: minor and pitch diameter of the hole', (name, minor, pitch) => {
    const { limits } = threadGeometry(name);
    expect(limits.internalMinorMax.in('in')).toBeCloseTo(minor, 8);
    expect(Math.abs(limits.internalPitchMax.in('in') - pitch)).toBeLessThan(1.01e-4);
  });
  test('every size has its limits in the order of a thread that engages', () => {
    for (const name of threadNames().filter((one) => one.includes('UN'))) {
      const { limits, minorDiameter, pitchDiameter, majorDiameter } = threadGeometry(name);
      expect(limits.internalMinorMax.si, name).toBeGreaterThan(minorDiameter.si);
      expect(limits.internalMinorMax.si, name).toBeLessThan(pitchDiameter.si);
      expect(limits.externalPitchMin.si, name).toBeLessThan(pitchDiameter.si);
      expect(limits.internalPitchMax.si, name).toBeGreaterThan(pitchDiameter.si);
      expect(limits.externalMajorMin.si, name).toBeLessThan(majorDiameter.si);
      expect(limits.externalMajorMin.si, name).toBeGreaterThan(limits.internalPitchMax.si);
    }
  });
});
