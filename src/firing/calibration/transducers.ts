import {
  absolutePressure,
  type Conflict,
  force,
  fromSiValue,
  gaugePressure,
  inputs,
  MeopError,
  optional,
  procedure,
  ratio,
  unitOf,
  type Values,
  variants,
} from '../../units';
import type { LineCalibration, MeasuredKind, ReadingRange } from './calibration';

const ends = [
  'quantity at the low end of the signal; zero unless specified',
  'quantity at the high end of the signal',
] as const;

/** The quantity at the low end and at the high end of the signal of a transducer. */
const span = /* @__PURE__ */ variants('measures', 'measured quantity', {
  'gauge pressure': {
    low: optional(gaugePressure('p_1', ends[0])),
    high: gaugePressure('p_2', ends[1], { example: '100 bar' }),
  },
  'absolute pressure': {
    low: optional(absolutePressure('p_1', ends[0], { min: 0 })),
    high: absolutePressure('p_2', ends[1], { min: 0 }),
  },
  force: { low: optional(force('F_1', ends[0])), high: force('F_2', ends[1]) },
});
type Span = ReturnType<typeof span.read>;

/** Form of the signal in the log: the signal itself, or the counts of a converter. */
const converterInput = /* @__PURE__ */ inputs(
  {
    bits: ratio('b', 'number of bits', { above: 0, example: 12 }),
    fullScale: ratio('U_1', 'full-scale voltage in V: one step above the highest reading', { example: 5 }),
    zero: optional(ratio('U_0', 'voltage of reading zero in V'), 0),
  },
  {
    meaning: 'converter whose counts the log contains; if omitted, the log contains the signal itself',
    checks: [
      ({ fullScale, zero }) =>
        fullScale > zero
          ? undefined
          : { path: 'fullScale', given: fullScale, expected: `above the voltage of reading zero, ${zero} V` },
    ],
  },
);
const converter = /* @__PURE__ */ optional(converterInput);
type Converter = Values<typeof converterInput.fields>;

const source = 'definition of the signal';
const gives = 'the calibration line from reading to quantity, and its valid range';

/**
 * Returns the calibration of a bridge transducer with a stated sensitivity in mV/V, excited by a voltage and amplified.
 * Readings are in V after the amplifier, or in counts of a converter.
 *
 * @example bridgeCalibration({ span: { measures: 'force', high: '2000 N' }, sensitivity: 2, excitation: 5, gain: 100 }).slope // => 2000
 */
export const bridgeCalibration = /* @__PURE__ */ procedure({
  name: 'bridgeCalibration',
  title: 'Calibration of a bridge transducer',
  source: 'definition of sensitivity: full-scale output/excitation',
  inputs: {
    span,
    sensitivity: ratio('S', 'sensitivity in mV/V: output at the high end/excitation', {
      above: 0,
      example: 2,
    }),
    excitation: ratio('U_e', 'excitation voltage in V', { above: 0, example: 5 }),
    gain: optional(ratio('G', 'gain of the amplifier', { above: 0, example: 100 }), 1),
    converter,
  },
  gives,
  example: { span: { measures: 'force', high: '2000 N' }, sensitivity: 2, excitation: 5, gain: 100 },
  run: ({ sensitivity, excitation, gain, ...given }): LineCalibration => {
    const full = sensitivity * 1e-3 * excitation * gain;
    const basis = `bridge of ${sensitivity} mV/V, ${excitation} V excitation, gain ${gain}`;
    return fromSignal('bridgeCalibration', given.span, 0, full, basis, given.converter);
  },
});

/**
 * Returns the calibration of a ratiometric transducer, whose signal is proportional to the supply voltage: 0.5 to 4.5 V
 * at a 5 V supply unless specified otherwise.
 *
 * @example ratiometricCalibration({ span: { measures: 'gauge pressure', high: '1600 psi' } }).slope / 6894.757293168361 // => 400
 */
export const ratiometricCalibration = /* @__PURE__ */ procedure({
  name: 'ratiometricCalibration',
  title: 'Calibration of a ratiometric transducer',
  source,
  inputs: {
    span,
    supply: optional(ratio('U_s', 'measured supply voltage in V', { above: 0, example: 5 }), 5),
    lowShare: optional(ratio('x_1', 'signal/supply at the low end', { example: 0.1 }), 0.1),
    highShare: optional(ratio('x_2', 'signal/supply at the high end', { above: 0, example: 0.9 }), 0.9),
    converter,
  },
  checks: [
    ({ lowShare, highShare }): Conflict | undefined =>
      highShare > lowShare
        ? undefined
        : { path: 'highShare', given: highShare, expected: `above lowShare, ${lowShare}` },
  ],
  gives,
  example: { span: { measures: 'gauge pressure', high: '1600 psi' } },
  run: ({ supply, lowShare, highShare, ...given }): LineCalibration => {
    const basis = `ratiometric transducer, ${lowShare * supply} to ${highShare * supply} V at ${supply} V`;
    const [low, high] = [lowShare * supply, highShare * supply];
    return fromSignal('ratiometricCalibration', given.span, low, high, basis, given.converter);
  },
});

/**
 * Returns the calibration of a 4 to 20 mA transmitter read across a resistor. A measured live zero replaces the 4 mA.
 * Without a resistor the reading is in mA; with one it is the voltage across it, or counts of a converter.
 *
 * @example currentLoopCalibration({ span: { measures: 'gauge pressure', high: '100 bar' } }).slope // => 625000
 */
export const currentLoopCalibration = /* @__PURE__ */ procedure({
  name: 'currentLoopCalibration',
  title: 'Calibration of a 4 to 20 mA transmitter',
  source,
  inputs: {
    span,
    resistance: optional(
      ratio('R', 'resistance in ohm across which the voltage is measured', { above: 0, example: 220 }),
    ),
    zeroCurrent: optional(
      ratio('I_0', 'measured current with no load in mA; the slope remains that of the 16 mA span', {
        above: 0,
        example: 4,
      }),
      4,
    ),
    converter,
  },
  gives,
  example: { span: { measures: 'gauge pressure', high: '100 bar' } },
  run: ({ resistance, zeroCurrent, ...given }): LineCalibration => {
    const name = 'currentLoopCalibration';
    const basis = `4 to 20 mA transmitter, zero at ${zeroCurrent} mA`;
    // Above 20 mA the transmitter is out of its range, although the line continues.
    if (resistance === undefined) {
      const line = fromSignal(name, given.span, zeroCurrent, zeroCurrent + 16, basis, undefined, 'mA');
      return { ...line, range: { low: 3.6, high: 20 } };
    }
    const volts = resistance * 1e-3;
    const [low, high] = [zeroCurrent * volts, (zeroCurrent + 16) * volts];
    const over = `${basis}, over ${resistance} ohm`;
    const line = fromSignal(name, given.span, low, high, over, given.converter);
    const reading = (v: number): number => (given.converter ? readingOf(v, given.converter) : v);
    const top = Math.min(reading(20 * volts), line.range?.high ?? Number.POSITIVE_INFINITY);
    return { ...line, range: { low: reading(3.6 * volts), high: top } };
  },
});

/** Line through two signals in V (or in `unit`), and its valid range. */
function fromSignal(
  caller: string,
  of: Span,
  lowSignal: number,
  highSignal: number,
  basis: string,
  by: Converter | undefined,
  unit = 'V',
): LineCalibration {
  const high = of.high.si;
  const low = of.low?.si ?? 0;
  if (high === low)
    throw new MeopError({
      code: 'out-of-domain',
      procedure: caller,
      path: 'span.high',
      given: of.high,
      expected: 'different from the low end',
    });
  const { readingUnit, perUnit, atZero, range } = converterLine(by, unit);
  const perSignal = (high - low) / (highSignal - lowSignal);
  const limits = by ? range : { low: Math.min(0, lowSignal), high: highSignal };
  return {
    form: 'line',
    measures: of.measures,
    readingUnit,
    slope: perSignal * perUnit,
    intercept: low + perSignal * (atZero - lowSignal),
    ...(limits && { range: limits }),
    basis: `${basis}, ${shown(of.measures, low)} to ${shown(of.measures, high)}`,
    cautions: [],
  };
}

/** Voltage in V per unit of reading, and at reading zero. */
function converterLine(
  by: Converter | undefined,
  unit: string,
): { readingUnit: string; perUnit: number; atZero: number; range: ReadingRange | undefined } {
  if (by === undefined) return { readingUnit: unit, perUnit: 1, atZero: 0, range: undefined };
  const { bits, fullScale, zero } = by;
  const steps = 2 ** bits;
  return {
    readingUnit: 'counts',
    perUnit: (fullScale - zero) / steps,
    atZero: zero,
    // The highest reading includes everything above it.
    range: { low: -1, high: steps - 1 },
  };
}

const readingOf = (volts: number, { bits, fullScale, zero }: Converter): number =>
  ((volts - zero) / (fullScale - zero)) * 2 ** bits;

const shown = (kind: MeasuredKind, si: number): string =>
  fromSiValue(si, kind, unitOf(kind === 'force' ? 'N' : 'MPa')).toString();
