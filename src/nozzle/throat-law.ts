import { fromSiArray, MeopError, type QuantityInput, readInput, type Series } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readNotNegative, readPositive } from '../units/refusal';

const procedure = 'throatLaw';

/** Recession law of the throat wall: each law gives a radial rate; a negative rate is slag build-up. */
export type ThroatLaw =
  | { readonly law: 'constant'; readonly rate: QuantityInput<'speed'> }
  | {
      readonly law: 'pressure power';
      /** Radial rate at the reference pressure. */
      readonly referenceRate: QuantityInput<'speed'>;
      readonly referencePressure: QuantityInput<'absolute pressure'>;
      readonly exponent: number;
      /** Heating time of the wall before recession starts; default 0. */
      readonly heatingTime?: QuantityInput<'time'>;
    }
  | {
      readonly law: 'after heating';
      readonly rate: QuantityInput<'speed'>;
      /** Heating time of the wall before recession starts. */
      readonly heatingTime: QuantityInput<'time'>;
    };

/** The same law on plain SI numbers, for kernels: rate = `rate`·(p/`pressure`)^`exponent` after `heatingTime`. */
export interface ThroatLawSi {
  readonly rate: number;
  readonly pressure: number;
  readonly exponent: number;
  readonly heatingTime: number;
}

/**
 * Reads a throat law into plain numbers, for simulations.
 *
 * @throws MeopError `unknown-name` for an unknown law, `out-of-domain` for a reference pressure not above 0 or a
 * negative heating time
 * @example throatLawSi({ law: 'constant', rate: '0.1 mm/s' }).rate // => 1e-4
 */
export function throatLawSi(law: ThroatLaw): ThroatLawSi {
  const given: unknown = Reflect.get(Object(law), 'law');
  switch (law?.law) {
    case 'constant':
      requireFields(procedure, law, { law: 'required', rate: 'required' });
      return {
        rate: readInput('speed', 'rate', law.rate, procedure).si,
        pressure: 1,
        exponent: 0,
        heatingTime: 0,
      };
    case 'pressure power': {
      requireFields(procedure, law, {
        law: 'required',
        referenceRate: 'required',
        referencePressure: 'required',
        exponent: 'required',
        heatingTime: 'optional',
      });
      const pressure = readPositive(
        'absolute pressure',
        'referencePressure',
        law.referencePressure,
        procedure,
      ).si;
      return {
        rate: readInput('speed', 'referenceRate', law.referenceRate, procedure).si,
        pressure,
        exponent: readInput('dimensionless', 'exponent', law.exponent, procedure).si,
        heatingTime: law.heatingTime === undefined ? 0 : heatingTimeOf(law.heatingTime),
      };
    }
    case 'after heating':
      requireFields(procedure, law, { law: 'required', rate: 'required', heatingTime: 'required' });
      return {
        rate: readInput('speed', 'rate', law.rate, procedure).si,
        pressure: 1,
        exponent: 0,
        heatingTime: heatingTimeOf(law.heatingTime),
      };
    default:
      throw new MeopError(
        'unknown-name',
        `throatLaw: law must be 'constant', 'pressure power' or 'after heating', got ${String(given)}`,
        'law',
        { value: given },
      );
  }
}

const heatingTimeOf = (given: QuantityInput<'time'>): number =>
  readNotNegative('time', 'heatingTime', given, procedure).si;

/**
 * Radial recession rate in m/s at a chamber pressure and a time after the start of flow; plain SI numbers,
 * unchecked.
 *
 * @example throatRecessionRateSi(throatLawSi({ law: 'constant', rate: '0.1 mm/s' }), 5e6, 1) // => 1e-4
 */
export function throatRecessionRateSi(law: ThroatLawSi, pressure: number, heatedTime: number): number {
  if (heatedTime < law.heatingTime) return 0;
  return law.exponent === 0 ? law.rate : law.rate * (pressure / law.pressure) ** law.exponent;
}

/** Options of {@link throatHistory}. */
export interface ThroatHistoryOptions {
  readonly throatDiameter: QuantityInput<'length'>;
  readonly law: ThroatLaw;
  readonly time: Series<'time'>;
  /** Absolute chamber pressure at those times. */
  readonly chamberPressure: Series<'absolute pressure'>;
}

/** History of the throat over a burn. */
export interface ThroatHistory {
  readonly time: Series<'time'>;
  readonly diameter: Series<'length'>;
  readonly area: Series<'area'>;
  /** Relative growth of the area at the end. */
  readonly areaGrowth: number;
}

const throatHistoryFields: FieldsOf<ThroatHistoryOptions> = {
  throatDiameter: 'required',
  law: 'required',
  time: 'required',
  chamberPressure: 'required',
};

/**
 * Throat diameter over a pressure trace by an erosion law: the trapezoidal rule on the rate, split at the end of
 * the heating time. In a motor, pressure and throat interact; there the simulation integrates the same law.
 *
 * @throws MeopError `out-of-domain` for series of different length, times that do not rise, a pressure that the
 * law cannot raise to its power, or a throat closed by slag
 * @example throatHistory({ throatDiameter: '12 mm', law: { law: 'constant', rate: '0.1 mm/s' }, time: series([0, 3], 's'), chamberPressure: seriesOf('absolute pressure', [5, 5], 'MPa') }).diameter.at(-1).in('mm') // => 12.6
 */
export function throatHistory(options: ThroatHistoryOptions): ThroatHistory {
  requireFields('throatHistory', options, throatHistoryFields);
  const { time, chamberPressure } = options;
  const count = time.length;
  if (count !== chamberPressure.length || count < 2)
    throw new MeopError(
      'out-of-domain',
      `throatHistory: time and chamberPressure must have the same length of at least 2, got ${count} and ${chamberPressure.length}`,
      'chamberPressure',
    );
  const start = readPositive('length', 'throatDiameter', options.throatDiameter, 'throatHistory').si;
  const law = throatLawSi(options.law);
  const t = time.si;
  const p = chamberPressure.si;
  const diameter = new Float64Array(count);
  const area = new Float64Array(count);
  diameter[0] = start;
  area[0] = (Math.PI / 4) * start * start;
  for (let i = 1; i < count; i++) {
    const step = t[i] - t[i - 1];
    if (!(step > 0))
      throw new MeopError(
        'out-of-domain',
        `throatHistory: time must be ascending; time[${i}] is not`,
        'time',
      );
    // Only the part of the step after the heating time is included; Infinity marks both ends as heated.
    const hot = Math.min(1, Math.max(0, (t[i] - t[0] - law.heatingTime) / step));
    const before = p[i] + hot * (p[i - 1] - p[i]);
    const mean =
      0.5 * (throatRecessionRateSi(law, before, Infinity) + throatRecessionRateSi(law, p[i], Infinity));
    if (!Number.isFinite(mean))
      throw new MeopError(
        'out-of-domain',
        `throatHistory: chamberPressure must be above 0 Pa, got ${before} Pa and ${p[i]} Pa at ${t[i]} s. The law raises it to the power ${law.exponent}.`,
        'chamberPressure',
        { value: p[i], expected: 'above 0 Pa' },
      );
    diameter[i] = diameter[i - 1] + 2 * mean * hot * step;
    if (!(diameter[i] > 0))
      throw new MeopError(
        'out-of-domain',
        `throatHistory: the deposit closes the throat at ${t[i]} s. Check the rate of the law.`,
        'law',
        { value: options.law },
      );
    area[i] = (Math.PI / 4) * diameter[i] ** 2;
  }
  return {
    time,
    diameter: fromSiArray('length', diameter, 'mm'),
    area: fromSiArray('area', area, 'mm^2'),
    areaGrowth: area[count - 1] / area[0] - 1,
  };
}
