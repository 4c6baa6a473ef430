/**
 * Returns the seconds of a clock time or date in the formats of loggers: `12:34:56.789`, `12:34:56:789`, `34:56.789`
 * (minutes and seconds), `1:34:56 PM`, `2025-04-16 12:34:56.789`, `2025-04-16T12:34:56Z`; NaN for any other text. A
 * date counts from 1970, ignoring its time zone. Of `4/16/2025 12:34:56` or `16.04.2025 12:34:56`, whose order depends
 * on the country, only the time of day counts.
 */
export function clockSeconds(text: string): number {
  const match =
    /^(?:(\d{4})[-/](\d\d?)[-/](\d\d?)[T ]|\d\d?[/.-]\d\d?[/.-]\d{2,4},? )? *(\d{1,3}):(\d\d)(?::(\d\d(?:[.,:]\d+)?))?(?: ?([AP])M)?(?:Z|[+-]\d\d:?\d\d)?$/i.exec(
      text.trim(),
    );
  if (!match) return minuteSeconds(text.trim());
  const [, year, month, day, hours, minutes, seconds = '0', half] = match;
  const hour =
    half === undefined ? Number(hours) : (Number(hours) % 12) + (half.toUpperCase() === 'P' ? 12 : 0);
  const ofDay = hour * 3600 + Number(minutes) * 60 + secondsOf(seconds);
  if (year === undefined) return ofDay;
  return Date.UTC(Number(year), Number(month) - 1, Number(day)) / 1000 + ofDay;
}

/** After a colon follows a count of milliseconds, often without leading zeros, or of microseconds. */
function secondsOf(text: string): number {
  const [whole, count] = text.split(':');
  return Number(whole.replace(',', '.')) + (count ? Number(count) / (count.length > 3 ? 1e6 : 1e3) : 0);
}

/** Hours and minutes have no decimals; a field with decimals is seconds, after minutes. */
function minuteSeconds(text: string): number {
  const [, minutes, seconds] = /^(\d{1,3}):(\d\d[.,]\d+)$/.exec(text) ?? [];
  return minutes === undefined ? Number.NaN : Number(minutes) * 60 + Number(seconds.replace(',', '.'));
}
