import type { Retention, RetentionCurve } from './material';
import { origin } from './shelf-entry';

const kelvin = (celsius: number): number => celsius + 273.15;
const fahrenheit = (degrees: number): number => (degrees + 459.67) / 1.8;
const hours = 3600;

/** A curve from room temperature (24 °C, all of the strength) through per cents at rising temperatures in °C. */
const percents = (
  exposureHours: number,
  celsius: readonly number[],
  values: readonly number[],
): RetentionCurve => ({
  exposure: exposureHours * hours,
  points: [[kelvin(24), 1], ...values.map((percent, i) => [kelvin(celsius[i]), percent / 100] as const)],
});

/** A curve from typical strengths at temperatures in °F; the first is the room-temperature strength. */
const ratios = (
  exposureHours: number,
  degreesF: readonly number[],
  strengths: readonly number[],
): RetentionCurve => ({
  exposure: exposureHours * hours,
  points: strengths.map((strength, i) => [fahrenheit(degreesF[i]), strength / strengths[0]] as const),
});

const t = [100, 125, 150, 175, 200, 225, 250, 275, 300, 325, 350];
const figures = 'MIL-HDBK-5J figures 3.6.2.2.1(a) and (b), digitised (read to about 1 %)';

/** 6061-T6 at temperature. */
export const hot6061 = (): Retention => ({
  ultimate: [
    percents(0.5, t, [89.4, 85, 79.3, 73, 65.1, 55.9, 45.5, 34.5, 25.7, 18.6, 13.7]),
    percents(10, t, [89.8, 85, 79.2, 71, 62.5, 52.4, 40.8, 30.3, 22.9, 16.5, 12.1]),
    percents(100, t, [89.9, 85.1, 78.6, 69.8, 58.4, 44.8, 31.1, 20.3, 13.8, 10.5]),
    percents(1000, t, [89.7, 85, 79.2, 66.9, 48.4, 34.5, 23.8, 16.1]),
    percents(10000, t, [89.8, 84.2, 72.8, 58, 42.7, 28.7, 18.9, 12.7, 9.4, 7.2]),
  ],
  yield: [
    percents(0.5, t, [90.1, 86.6, 82.1, 76.3, 69.3, 60.3, 48, 33.1, 23.1, 15.6, 10.9]),
    percents(10, t, [90.1, 86.4, 81, 73.8, 65.2, 54.8, 42.3, 28.8, 20.3, 13.9, 9.2]),
    percents(100, t, [90.1, 86.5, 81.2, 73.4, 60.9, 46.4, 33.3, 21.5, 12.7, 8.7]),
    percents(1000, t, [90.1, 86.5, 81.2, 71.4, 50.7, 32.5, 20.8, 13.3, 8.6, 6.1, 4.6]),
    percents(10000, t, [90.1, 84.8, 74, 59.2, 41, 25.4, 16.5, 11.5, 8.1, 6, 4.7]),
  ],
  origin: origin('typical', figures),
});

/** 6061-T6 back at room temperature after having been hot. */
export const exposed6061 = (): Retention => ({
  ultimate: [
    percents(0.5, t, [100, 100, 100, 100, 96.7, 87.2, 78.7, 70.8, 63.8, 57.9, 52.8]),
    percents(10, t, [100, 100, 100, 100, 89.7, 77.5, 66.6, 58.8, 53.3, 49.1, 45.7]),
    percents(100, t, [100, 100, 100, 95.1, 81.8, 68.7, 56.8, 49.4, 44.9, 42.1, 40.5]),
    percents(1000, t, [100, 100, 95.2, 83, 71.4, 59.6, 49.6, 43.4, 40.8, 39.7, 39.4]),
    percents(10000, t, [100, 91.4, 81.2, 71.3, 61, 51, 42.8, 40.1, 39.6, 39.5, 39.3]),
  ],
  yield: [
    percents(0.5, t, [100, 100, 100, 100, 96.3, 86.6, 76.3, 64.9, 51, 39.6, 32.6]),
    percents(10, t, [100, 100, 100, 100, 89.2, 76.1, 56.7, 41.5, 32.8, 27.4, 24.1]),
    percents(100, t, [100, 100, 100, 99, 82.2, 64.1, 44.2, 30.8, 23.8, 21.3, 19.8]),
    percents(1000, t, [100, 100, 97.1, 83.7, 67.5, 47.5, 30.8, 22.8, 19.9, 19.5, 19.2]),
    percents(10000, t, [100, 99.8, 87, 72.3, 52.6, 32.5, 23.4, 20, 19.5, 19.3, 19.2]),
  ],
  origin: origin(
    'typical',
    'MIL-HDBK-5J figures 3.6.2.2.1(c) and (d), digitised (read to about 1 %); agrees with reheating tests of 6061-T6 extrusions, California Polytechnic State University, 2015',
  ),
});

/** Fraction of the elastic modulus of 6061-T6 at temperature: K, fraction. */
export const modulus6061 = (): readonly (readonly [number, number])[] =>
  (
    [
      [-193.7, 112.7],
      [-99.9, 106.1],
      [-22.8, 101.9],
      [24, 100],
      [51.9, 99.7],
      [85.2, 99],
      [109.6, 98.2],
      [134.1, 97.1],
      [156.9, 95.4],
      [182.1, 93.2],
      [204.9, 90.2],
      [229.3, 86.8],
      [254.5, 82.4],
      [278.8, 77.8],
      [297.7, 74.1],
      [317.5, 70.1],
    ] as const
  ).map(([celsius, percent]) => [kelvin(celsius), percent / 100] as const);

const association =
  'Aluminum Association, typical tensile properties at temperature, lowest strength during 10 000 h';
const warm = [75, 212, 300, 400, 500, 600];
/** Long soak: shorter heating leaves more strength, so one curve serves every exposure. */
const soaked = (ultimate: readonly number[], yields: readonly number[]): Retention => ({
  ultimate: [ratios(10000, warm, ultimate)],
  yield: [ratios(10000, warm, yields)],
  origin: origin('typical', association, 'from memory'),
});

/** 6063-T6 at temperature. */
export const hot6063 = (): Retention => soaked([35, 31, 21, 9, 4.5, 3.2], [31, 28, 20, 6.5, 3.5, 2.5]);
/** 7075-T6 at temperature; it loses strength at lower temperatures than any other material here. */
export const hot7075 = (): Retention => soaked([83, 70, 31, 16, 11, 8], [73, 65, 27, 13, 9, 6.5]);
/** 2024-T3 at temperature. */
export const hot2024 = (): Retention => soaked([70, 66, 55, 27, 11, 7.5], [50, 48, 45, 20, 9, 6]);

const codeTable = 'ASME BPVC II-D tables U and Y-1';
const codeF = [100, 200, 300, 400, 500, 600];

/** 304 annealed at temperature. */
export const hot304 = (): Retention => ({
  ultimate: [ratios(0, codeF, [75, 71, 66.2, 64, 63.4, 63.4])],
  yield: [ratios(0, codeF, [30, 25, 22.4, 20.7, 19.4, 18.4])],
  origin: origin('specified minimum', codeTable, 'from memory'),
});
/** 316 annealed at temperature. */
export const hot316 = (): Retention => ({
  ultimate: [ratios(0, codeF, [75, 75, 72.9, 71.9, 71.8, 71.8])],
  yield: [ratios(0, codeF, [30, 25.9, 23.4, 21.4, 20, 18.9])],
  origin: origin('specified minimum', codeTable, 'from memory'),
});
/** Low-alloy steel, normalised or quenched and tempered, at temperature. */
export const hot4130 = (): Retention => ({
  ultimate: [ratios(0.5, [75, 200, 400, 600, 800, 1000], [100, 98, 94, 90, 77, 55])],
  yield: [ratios(0.5, [75, 200, 400, 600, 800, 1000], [100, 96, 90, 83, 73, 53])],
  origin: origin('typical', 'MIL-HDBK-5J figure 2.3.1.1.1, to a few per cent', 'from memory'),
});
