import { fromSiValue, MeopError, type QuantityInput, readInput, unitOf } from '../../units';
import type { LineCalibration, MeasuredKind, ReadingRange } from './calibration';

/** What a transducer measures from the low end of its signal to the high end. */
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

/** How the signal reaches the log: as itself, or as steps of a converter. */
export interface Converter {
  readonly bits: number;
  /** Voltage of one step more than the highest reading, V. */
  readonly fullScale: number;
  /** Voltage of reading zero, V. Default 0. */
  readonly zero?: number;
}

/**
 * A bridge transducer with a stated sensitivity in mV/V, excited by a voltage and amplified.
 *
 * Reading in V after the amplifier, or in counts of a converter. Source: definition of sensitivity, full-scale output
 * over excitation.
 *
 * @example bridgeCalibration({ span: { measures: 'force', high: '2000 N' }, sensitivity: 2, excitation: 5, gain: 100 }).slope // => 2000
 */
export function bridgeCalibration(options: {
  readonly span: Span;
  /** mV/V at the high end. */
  readonly sensitivity: number;
  /** V. */
  readonly excitation: number;
  /** Default 1. */
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
 * A ratiometric transducer, 0.5 to 4.5 V at a 5 V supply unless said otherwise: its signal goes with the supply.
 *
 * @example ratiometricCalibration({ span: { measures: 'gauge pressure', high: '1600 psi' } }).slope / 6894.757293168361 // => 400
 */
export function ratiometricCalibration(options: {
  readonly span: Span;
  /** Supply as measured, V. Default 5. */
  readonly supply?: number;
  /** Signal at the ends as shares of the supply. Default 0.1 and 0.9. */
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
 * A transmitter of 4 to 20 mA read over a resistor. A live zero that was measured replaces the 4 mA.
 *
 * Without a resistor the reading is in mA; with one it is the voltage over it, or counts of a converter.
 *
 * @example currentLoopCalibration({ span: { measures: 'gauge pressure', high: '100 bar' } }).slope // => 625000
 */
export function currentLoopCalibration(options: {
  readonly span: Span;
  /** Resistance over which the voltage is taken, ohm. */
  readonly resistance?: number;
  /** Current with no load, as measured, mA. Default 4. The slope stays that of the 16 mA span. */
  readonly zeroCurrent?: number;
  readonly converter?: Converter;
}): LineCalibration {
  const { span, resistance, zeroCurrent = 4, converter } = options;
  requireAboveZero('currentLoopCalibration', {
    zeroCurrent,
    ...(resistance !== undefined && { resistance }),
  });
  const basis = `4 to 20 mA transmitter, zero at ${zeroCurrent} mA`;
  // Above 20 mA the transmitter is out of its range, whatever the line through it would say.
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

/** Line through two signals in V (or in `unit`), and the range in which it means something. */
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
    throw new MeopError('out-of-domain', `${caller}: span: both ends are ${String(span.high)}`, 'span');
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

/** V per unit of reading and V at reading zero. */
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
    // The highest reading stands for everything above it.
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
      throw new MeopError(
        'out-of-domain',
        `${caller}: ${name}: ${value} given; a number above 0 is expected`,
        name,
        {
          value,
          expected: 'above 0',
        },
      );
}
