import { fromSiValue, MeopError, type QuantityInput, readInput, unitOf } from '../../units';
import type { LineCalibration, MeasuredKind, ReadingRange } from './calibration';

/** The quantity at the low end and at the high end of the signal of a transducer. */
export type Span =
  | {
      readonly measures: 'gauge pressure';
      readonly low?: QuantityInput<'gauge pressure'>;
      readonly high: QuantityInput<'gauge pressure'>;
    }
  | {
      readonly measures: 'absolute pressure';
      readonly low?: QuantityInput<'absolute pressure'>;
      readonly high: QuantityInput<'absolute pressure'>;
    }
  | {
      readonly measures: 'force';
      readonly low?: QuantityInput<'force'>;
      readonly high: QuantityInput<'force'>;
    };

/** Form of the signal in the log: the signal itself, or the counts of a converter. */
export interface Converter {
  readonly bits: number;
  /** Full-scale voltage, V: one step above the highest reading. */
  readonly fullScale: number;
  /** Voltage of reading zero, V. Default 0. */
  readonly zero?: number;
}

/**
 * Returns the calibration of a bridge transducer with a stated sensitivity in mV/V, excited by a voltage and amplified.
 *
 * Readings are in V after the amplifier, or in counts of a converter. Source: definition of sensitivity, full-scale
 * output/excitation.
 *
 * @example bridgeCalibration({ span: { measures: 'force', high: '2000 N' }, sensitivity: 2, excitation: 5, gain: 100 }).slope // => 2000
 */
export function bridgeCalibration(options: {
  readonly span: Span;
  /** Sensitivity in mV/V: output at the high end/excitation. */
  readonly sensitivity: number;
  /** Excitation voltage, V. */
  readonly excitation: number;
  /** Gain of the amplifier. Default 1. */
  readonly gain?: number;
  readonly converter?: Converter;
}): LineCalibration {
  const { span, sensitivity, excitation, gain = 1, converter } = options;
  requireAboveZero('bridgeCalibration', { sensitivity, excitation, gain });
  const full = sensitivity * 1e-3 * excitation * gain;
  const basis = `bridge of ${sensitivity} mV/V, ${excitation} V excitation, gain ${gain}`;
  return fromSignal('bridgeCalibration', span, 0, full, basis, converter);
}

/**
 * Returns the calibration of a ratiometric transducer, whose signal is proportional to the supply voltage. Default: 0.5
 * to 4.5 V at a 5 V supply.
 *
 * @example ratiometricCalibration({ span: { measures: 'gauge pressure', high: '1600 psi' } }).slope / 6894.757293168361 // => 400
 */
export function ratiometricCalibration(options: {
  readonly span: Span;
  /** Measured supply voltage, V. Default 5. */
  readonly supply?: number;
  /** Signal/supply at the low and the high end. Default 0.1 and 0.9. */
  readonly lowShare?: number;
  readonly highShare?: number;
  readonly converter?: Converter;
}): LineCalibration {
  const { span, supply = 5, lowShare = 0.1, highShare = 0.9, converter } = options;
  requireAboveZero('ratiometricCalibration', {
    supply,
    highShare,
    'highShare - lowShare': highShare - lowShare,
  });
  const basis = `ratiometric transducer, ${lowShare * supply} to ${highShare * supply} V at ${supply} V`;
  return fromSignal('ratiometricCalibration', span, lowShare * supply, highShare * supply, basis, converter);
}

/**
 * Returns the calibration of a 4 to 20 mA transmitter read across a resistor. A measured live zero replaces the 4 mA.
 *
 * Without a resistor the reading is in mA; with one it is the voltage across it, or counts of a converter.
 *
 * @example currentLoopCalibration({ span: { measures: 'gauge pressure', high: '100 bar' } }).slope // => 625000
 */
export function currentLoopCalibration(options: {
  readonly span: Span;
  /** Resistance across which the voltage is measured, ohm. */
  readonly resistance?: number;
  /** Measured current with no load, mA. Default 4. The slope remains that of the 16 mA span. */
  readonly zeroCurrent?: number;
  readonly converter?: Converter;
}): LineCalibration {
  const { span, resistance, zeroCurrent = 4, converter } = options;
  requireAboveZero('currentLoopCalibration', {
    zeroCurrent,
    ...(resistance !== undefined && { resistance }),
  });
  const basis = `4 to 20 mA transmitter, zero at ${zeroCurrent} mA`;
  // Above 20 mA the transmitter is out of its range, although the line continues.
  if (resistance === undefined) {
    const line = fromSignal(
      'currentLoopCalibration',
      span,
      zeroCurrent,
      zeroCurrent + 16,
      basis,
      undefined,
      'mA',
    );
    return { ...line, range: { low: 3.6, high: 20 } };
  }
  const volts = resistance * 1e-3;
  const line = fromSignal(
    'currentLoopCalibration',
    span,
    zeroCurrent * volts,
    (zeroCurrent + 16) * volts,
    `${basis}, over ${resistance} ohm`,
    converter,
  );
  const reading = (v: number): number => (converter ? readingOf(v, converter) : v);
  const top = Math.min(reading(20 * volts), line.range?.high ?? Number.POSITIVE_INFINITY);
  return { ...line, range: { low: reading(3.6 * volts), high: top } };
}

/** Line through two signals in V (or in `unit`), and its valid range. */
function fromSignal(
  caller: string,
  span: Span,
  lowSignal: number,
  highSignal: number,
  basis: string,
  converter: Converter | undefined,
  unit = 'V',
): LineCalibration {
  const high = readInput(span.measures, 'span.high', span.high, caller).si;
  const low = span.low === undefined ? 0 : readInput(span.measures, 'span.low', span.low, caller).si;
  if (high === low)
    throw new MeopError(
      'out-of-domain',
      `${caller}: span must have different ends, got ${String(span.high)} for both`,
      'span',
    );
  const { readingUnit, perUnit, atZero, range } = converterLine(caller, converter, unit);
  const perSignal = (high - low) / (highSignal - lowSignal);
  const ends = converter ? range : { low: Math.min(0, lowSignal), high: highSignal };
  return {
    form: 'line',
    measures: span.measures,
    readingUnit,
    slope: perSignal * perUnit,
    intercept: low + perSignal * (atZero - lowSignal),
    ...(ends && { range: ends }),
    basis: `${basis}, ${shown(span.measures, low)} to ${shown(span.measures, high)}`,
    cautions: [],
  };
}

/** Voltage in V per unit of reading, and at reading zero. */
function converterLine(
  caller: string,
  converter: Converter | undefined,
  unit: string,
): { readingUnit: string; perUnit: number; atZero: number; range: ReadingRange | undefined } {
  if (converter === undefined) return { readingUnit: unit, perUnit: 1, atZero: 0, range: undefined };
  const { bits, fullScale, zero = 0 } = converter;
  requireAboveZero(caller, { 'converter.bits': bits, 'converter.fullScale - zero': fullScale - zero });
  const steps = 2 ** bits;
  return {
    readingUnit: 'counts',
    perUnit: (fullScale - zero) / steps,
    atZero: zero,
    // The highest reading includes everything above it.
    range: { low: -1, high: steps - 1 },
  };
}

const readingOf = (volts: number, { bits, fullScale, zero = 0 }: Converter): number =>
  ((volts - zero) / (fullScale - zero)) * 2 ** bits;

const shown = (kind: MeasuredKind, si: number): string =>
  fromSiValue(si, kind, unitOf(kind === 'force' ? 'N' : 'MPa')).toString();

function requireAboveZero(caller: string, values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values))
    if (!(value > 0 && value < Number.POSITIVE_INFINITY))
      throw new MeopError('out-of-domain', `${caller}: ${name} must be greater than 0, got ${value}`, name, {
        value,
        expected: 'above 0',
      });
}
