import { fromSiValue, MeopError, type Quantity, unitOf } from '../../units';

// Ten-thousandths of an inch. Source: drill diameters of a public thread generator (two identical copies).
const numbered = // #1 to #80
  '2280 2210 2130 2090 2055 2040 2010 1990 1960 1935 1910 1890 1850 1820 1800 1770 1730 1695 1660 1610 1590 1570 1540 1520 1495 1470 1440 1405 1360 1285 1200 1160 1130 1110 1100 1065 1040 1015 995 980 960 935 890 860 820 810 785 760 730 700 670 635 595 550 520 465 430 420 410 400 390 380 370 360 350 330 320 310 292 280 260 250 240 225 210 200 180 160 145 135';
const lettered = // A to Z
  '2340 2380 2420 2460 2500 2570 2610 2660 2720 2770 2810 2900 2950 3020 3160 3230 3320 3390 3480 3580 3680 3770 3860 3970 4040 4130';

const inch = 0.0254;

/** Diameter of an inch drill by name [m]: `#80` to `#1`, `A` to `Z`, or a fraction of an inch in sixty-fourths. */
export function drillDiameter(name: string): number | undefined {
  const [, top, bottom] = /^(\d{1,2})\/(2|4|8|16|32|64)$/.exec(name) ?? [];
  if (top !== undefined && Number(top) > 0) return (Number(top) / Number(bottom)) * inch;
  const [, number] = /^#?([1-9]\d?)$/.exec(name) ?? [];
  const size =
    number !== undefined
      ? numbered.split(' ')[Number(number) - 1]
      : /^[A-Z]$/i.test(name)
        ? lettered.split(' ')[name.toUpperCase().charCodeAt(0) - 65]
        : undefined;
  return size === undefined ? undefined : Number(size) * 1e-4 * inch;
}

/**
 * The diameter of an inch twist drill by its name: a number `'#80'` to `'#1'`, a letter `'A'` to `'Z'`, or a fraction `'17/64'`.
 *
 * @throws MeopError `unknown-name`
 * @example drillSize('#7').in('in') // => 0.201
 */
export function drillSize(name: string): Quantity<'length'> {
  const si = drillDiameter(String(name).trim());
  if (si === undefined)
    throw new MeopError({
      code: 'unknown-name',
      procedure: 'drillSize',
      given: name,
      note: 'drill',
      expected: "'#80' to '#1', 'A' to 'Z' or a fraction of an inch such as '17/64'",
    });
  return fromSiValue<'length'>(si, 'length', unitOf('in'));
}
