import { MeopError, unitOf } from '../../units';

/** Units of a reading that is not yet a physical quantity; a calibration converts it. */
export const rawUnits = ['counts', 'V', 'mV', 'µV', 'mA', 'A', 'mV/V', 'ohm'] as const;
export type RawUnit = (typeof rawUnits)[number];

export const isRawUnit = (unit: string): unit is RawUnit => rawUnits.some((raw) => raw === unit);

/** Heading of a column: its name, and the unit it states. */
export interface HeaderCell {
  readonly name: string;
  readonly unit: string | undefined;
}

/**
 * Name and unit of a heading in common spellings: `Pressure [psi]`, `thrust (N)`, `time_ms`, `Force_lbf`.
 *
 * @example headerCell('Pressure [psi]').unit // => 'psi'
 */
export function headerCell(text: string): HeaderCell {
  const clean = text
    .trim()
    .replace(/^["']|["']$/g, '')
    .replace(
      pressureReference,
      (_, unit: string, ...found: string[]) => `${unit}${(found[0] ?? found[1])[0]}`,
    );
  const bracketed = /^(.*?)\s*[[(<{]\s*([^\])>}]*?)\s*[\])>}]\s*$/.exec(clean);
  if (bracketed) return { name: bracketed[1].trim() || clean, unit: unitInHeading(bracketed[2]) };
  const whole = unitInHeading(clean);
  if (whole !== undefined) return { name: clean, unit: whole };
  const tail = /^(.+?)[\s_,:/-]+([^\s_,:-]+)$/.exec(clean);
  const unit = tail ? unitInHeading(tail[2]) : undefined;
  if (tail && unit !== undefined) return { name: tail[1], unit };
  const run = runTogether.exec(clean);
  return run
    ? { name: run[1] ?? run[3], unit: unitRunOn(run[2] ?? run[4]) }
    : { name: clean, unit: undefined };
}

// 'TimeMs', 'ForceN', 'PressurekPa': few units, so that no ending of a word is mistaken for one.
const runTogether =
  /^(?:([A-Za-z_ ]*?[A-Za-z])(kPa|MPa|mV|mA|kN|KN)|([A-Za-z_ ]*?[a-z])(?<![km])(M[sS]|U[sS]|N|Lbf|Kgf|kgf|Kg|Pa|Psi[ag]?|PSI[AG]?|Bar[ag]?|V))$/;
const asWritten: ReadonlySet<string> = /* @__PURE__ */ new Set([
  'N',
  'kN',
  'Pa',
  'kPa',
  'MPa',
  'V',
  'mV',
  'mA',
]);
const unitRunOn = (unit: string): string | undefined =>
  asWritten.has(unit) ? unit : unit === 'KN' ? 'kN' : unitInHeading(unit.toLowerCase());

/** The unit that a word in a heading denotes, in the spelling of this library; undefined where it is not a unit. */
export function unitInHeading(word: string): string | undefined {
  const text = word
    .trim()
    .replaceAll('μ', 'µ')
    .replace(
      pressureReference,
      (_, unit: string, ...found: string[]) => `${unit}${(found[0] ?? found[1])[0]}`,
    );
  if (text === '' || text.length > 24) return undefined;
  const known = spellings[text.toLowerCase()];
  // 'mN' and 'MN', 'mPa' and 'MPa' differ: the given spelling has priority where it is a unit.
  if (known !== undefined && !(known.toLowerCase() === text.toLowerCase() && isUnit(text))) return known;
  if (isRawUnit(text)) return text;
  if (text.length === 1 && !'NsgKV'.includes(text)) return undefined;
  return isUnit(text) && /^[a-zµ°%]/i.test(text) ? text : undefined;
}

// 'psi abs', 'bar(g)', 'kPa gauge': the reference belongs to the unit.
const pressureReference =
  /\b(psi|bar|kPa|MPa)[\s_]*(?:\((absolute|abs|a|gauge|gage|g)\)|\b(absolute|abs|a|gauge|gage|g)\b)/i;

function isUnit(text: string): boolean {
  try {
    unitOf(text);
    return true;
  } catch (error) {
    if (error instanceof MeopError) return false;
    throw error;
  }
}

// Lower-case spellings of units by loggers, and ours.
const spellings: Readonly<Record<string, string>> = {
  sec: 's',
  secs: 's',
  second: 's',
  seconds: 's',
  msec: 'ms',
  millis: 'ms',
  millisecond: 'ms',
  milliseconds: 'ms',
  usec: 'µs',
  us: 'µs',
  micros: 'µs',
  microsecond: 'µs',
  microseconds: 'µs',
  newton: 'N',
  newtons: 'N',
  lbs: 'lb',
  pound: 'lbf',
  pounds: 'lbf',
  gram: 'g',
  grams: 'g',
  kgs: 'kg',
  bar: 'bar',
  psi: 'psi',
  psig: 'psig',
  psia: 'psia',
  barg: 'barg',
  bara: 'bara',
  kpa: 'kPa',
  mpa: 'MPa',
  kpag: 'kPag',
  kpaa: 'kPaa',
  mpag: 'MPag',
  mpaa: 'MPaa',
  v: 'V',
  volt: 'V',
  volts: 'V',
  mv: 'mV',
  millivolt: 'mV',
  millivolts: 'mV',
  uv: 'µV',
  ma: 'mA',
  'mv/v': 'mV/V',
  count: 'counts',
  counts: 'counts',
  adc: 'counts',
  raw: 'counts',
  lsb: 'counts',
  steps: 'counts',
  c: 'degC',
  degc: 'degC',
  '°c': 'degC',
  celsius: 'degC',
  f: 'degF',
  degf: 'degF',
  '°f': 'degF',
  ohms: 'ohm',
};
