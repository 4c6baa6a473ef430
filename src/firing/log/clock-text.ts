/**
 * Seconds of a clock time or a date as loggers write them: `12:34:56.789`, `2025-04-16 12:34:56.789`,
 * `2025-04-16T12:34:56Z`; NaN where the text is neither. A date counts from 1970, as UTC where no zone is said.
 */
export function clockSeconds(text: string): number {
  const match = /^(?:(\d{4})-(\d\d?)-(\d\d?)[T ])?(\d{1,3}):(\d\d)(?::(\d\d(?:[.,]\d+)?))?(Z?)$/.exec(
    text.trim(),
  );
  if (!match) return Number.NaN;
  const [, year, month, day, hours, minutes, seconds = '0'] = match;
  const ofDay = Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds.replace(',', '.'));
  if (year === undefined) return ofDay;
  return Date.UTC(Number(year), Number(month) - 1, Number(day)) / 1000 + ofDay;
}
