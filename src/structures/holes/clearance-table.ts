import type { Provenance } from '../materials/datum';

/** The series of clearance holes. */
export type ClearanceStandard = 'ISO 273' | 'ASME B18.2.8' | 'machine-screw practice';

/** The fits of clearance holes. ISO 273: fine, medium, coarse; ASME B18.2.8: close, normal, loose. */
export type ClearanceFit = 'close' | 'medium' | 'free';

/** A hole of the table: its diameter in millimetres, or the inch drill that makes it. */
type HoleSize = number | string;

/** Clearance holes by nominal diameter of the screw: millimetres, or the name of an inch size. */
export interface ClearanceSeries {
  readonly rows: readonly (readonly [
    size: HoleSize,
    close: HoleSize,
    medium: HoleSize | undefined,
    free: HoleSize,
  ])[];
  readonly tolerance: Readonly<Partial<Record<ClearanceFit, string>>>;
  readonly source: string;
  readonly provenance: Readonly<Record<ClearanceFit, Provenance>>;
}

/** Every series, with its source. */
export const clearanceSeries: Readonly<Record<ClearanceStandard, ClearanceSeries>> = {
  'ISO 273': {
    rows: [
      [1.6, 1.7, 1.8, 2],
      [2, 2.2, 2.4, 2.6],
      [2.5, 2.7, 2.9, 3.1],
      [3, 3.2, 3.4, 3.6],
      [3.5, 3.7, 3.9, 4.2],
      [4, 4.3, 4.5, 4.8],
      [5, 5.3, 5.5, 5.8],
      [6, 6.4, 6.6, 7],
      [7, 7.4, 7.6, 8],
      [8, 8.4, 9, 10],
      [10, 10.5, 11, 12],
      [12, 13, 13.5, 14.5],
      [14, 15, 15.5, 16.5],
      [16, 17, 17.5, 18.5],
      [18, 19, 20, 21],
      [20, 21, 22, 24],
    ],
    tolerance: { close: 'H12', medium: 'H13', free: 'H14' },
    source:
      'ISO 273, clearance holes for bolts and screws, read in three transcriptions that agree except that one, of BS 4186:1967, has other holes from M12 to M16',
    provenance: { close: 'published', medium: 'published', free: 'published' },
  },
  'ASME B18.2.8': {
    rows: [
      ['#0', '#51', '#48', '3/32'],
      ['#1', '#46', '#43', '#37'],
      ['#2', '3/32', '#38', '#32'],
      ['#3', '#36', '#32', '#30'],
      ['#4', '#31', '#30', '#27'],
      ['#5', '9/64', '5/32', '11/64'],
      ['#6', '#23', '#18', '#13'],
      ['#8', '#15', '#9', '#3'],
      ['#10', '#5', '#2', 'B'],
      ['1/4', '17/64', '9/32', '19/64'],
      ['5/16', '21/64', '11/32', '23/64'],
      ['3/8', '25/64', '13/32', '27/64'],
      ['7/16', '29/64', '15/32', '31/64'],
      ['1/2', '17/32', '9/16', '39/64'],
    ],
    tolerance: {},
    source:
      "ASME B18.2.8-1999 in Machinery's Handbook, 31st ed., pages 1741 and 1743 (normal drills, limits of loose holes), and a list in millimetres within 0.06 mm of every drill",
    // The names of the drills; the holes of the list in millimetres are published.
    provenance: { close: 'from memory', medium: 'published', free: 'from memory' },
  },
  'machine-screw practice': {
    rows: [
      ['#0', '#52', undefined, '#50'],
      ['#1', '#48', undefined, '#46'],
      ['#2', '#43', undefined, '#41'],
      ['#3', '#37', undefined, '#35'],
      ['#4', '#32', undefined, '#30'],
      ['#5', '#30', undefined, '#29'],
      ['#6', '#27', undefined, '#25'],
      ['#8', '#18', undefined, '#16'],
      ['#10', '#9', undefined, '#7'],
      ['#12', '#2', undefined, '#1'],
      ['1/4', 'F', undefined, 'H'],
      ['5/16', 'P', undefined, 'Q'],
      ['3/8', 'W', undefined, 'X'],
      ['7/16', '29/64', undefined, '15/32'],
      ['1/2', '33/64', undefined, '17/32'],
    ],
    tolerance: {},
    source:
      'Close and free drills for machine screws, a public chart of a teaching workshop; a second chart has #36 for the free drill of #3 and #29 and #28 for #5',
    provenance: { close: 'published', medium: 'published', free: 'published' },
  },
};
