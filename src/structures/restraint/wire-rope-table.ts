/** How a rope's strength is known. */
export interface RopeTable {
  readonly construction: string;
  readonly grade: string;
  /** Diameter in 64ths of an inch and minimum breaking force in lbf; those after a `?` are from memory. */
  readonly sizes: string;
  readonly source: string;
}

const aircraft = 'FAA AC 43.13-1B (1998), table 7-3, cable to MIL-W-83420';
const plow = 'engineering reference table, 6x19 fibre core, improved plow steel';
const strand = 'commercial stainless strand, supplier page';
const api = 'API Spec 9A, table C.1, 6x7 fibre core';

/** Ropes by table. */
export const ropeTables: readonly RopeTable[] = [
  { construction: '3x7', grade: 'aircraft carbon', sizes: '2:110', source: aircraft },
  { construction: '3x7', grade: 'aircraft stainless', sizes: '2:110', source: aircraft },
  { construction: '7x7', grade: 'aircraft carbon', sizes: '3:270 4:480 6:920', source: aircraft },
  { construction: '7x7', grade: 'aircraft stainless', sizes: '3:270 4:480 6:920', source: aircraft },
  {
    construction: '7x19',
    grade: 'aircraft carbon',
    sizes: '4:480 6:1000 8:2000 10:2800 12:4200 14:5600 16:7000 18:8000 20:9800 22:12500 24:14400',
    source: aircraft,
  },
  {
    construction: '7x19',
    grade: 'aircraft stainless',
    sizes: '4:480 6:920 8:1760 10:2400 12:3700 14:5000 16:6400 18:7800 20:9000 24:12000',
    source: aircraft,
  },
  { construction: '6x19 IWRC', grade: 'aircraft carbon', sizes: '28:17600 32:22800', source: aircraft },
  { construction: '6x19 IWRC', grade: 'aircraft stainless', sizes: '28:16300 32:22800', source: aircraft },
  {
    construction: '7x7',
    grade: 'commercial galvanised',
    sizes: '8?1700 10?2600 12:3700',
    source: 'commercial aircraft-type cable',
  },
  { construction: '1x19', grade: 'stainless 304', sizes: '4:500', source: strand },
  { construction: '1x19', grade: 'stainless 316', sizes: '4:480', source: strand },
  {
    construction: '6x19 FC',
    grade: 'improved plow',
    sizes: '16:5480 20:8520 24:12200 28:16540 32:21400',
    source: plow,
  },
  {
    construction: '6x7 FC',
    grade: 'improved plow',
    sizes: '16:5283 20:8206 24:11713 28:15849 32:20592',
    source: api,
  },
  {
    construction: '6x7 FC',
    grade: 'extra improved plow',
    sizes: '16:5800 20:9015 24:12904 28:17445 32:22706',
    source: api,
  },
];

/** Minimum breaking force factors K: F = K·d²·R, with the rope grade R; any diameter. Source: EN 12385-4. */
export const breakingFactors: Readonly<Record<string, number>> = {
  '6x7 FC': 0.332,
  '6x7 IWRC': 0.359,
  '7x7': 0.388,
  '6x19 FC': 0.33,
  '6x19 IWRC': 0.356,
  '6x19M FC': 0.307,
  '6x19M IWRC': 0.332,
  '7x19': 0.362,
  '6x36 FC': 0.33,
  '6x36 IWRC': 0.356,
  '6x37M FC': 0.295,
  '6x37M IWRC': 0.319,
  '6x37M WSC': 0.346,
};

/** Rope grades in N/mm². */
export const ropeGrades: readonly number[] = [1570, 1770, 1960];
