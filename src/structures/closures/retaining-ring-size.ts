import { fromSiValue, type Quantity, unitOf } from '../../units';
import { unknownName } from '../../units/declare';
import type { Provenance } from '../materials/datum';
import {
  din472GrooveWidths,
  type RingField,
  type RingSeries,
  ringFromMemory,
  ringNotes,
  ringSeries,
} from './retaining-ring-table';

/** An internal retaining ring of a standard, with its groove. */
export interface RetainingRingSize {
  /** `DIN 472 50`: the series, then the bore in its unit. */
  readonly name: string;
  readonly series: string;
  /** Bore that the ring is made for. */
  readonly bore: Quantity<'length'>;
  /** Axial thickness. */
  readonly thickness: Quantity<'length'>;
  /** Outside diameter of the free ring. */
  readonly freeDiameter?: Quantity<'length'>;
  /** Radial height of the lugs, maximum. */
  readonly lugHeight?: Quantity<'length'>;
  readonly grooveDiameter: Quantity<'length'>;
  readonly grooveDepth: Quantity<'length'>;
  /** Axial width of the groove, minimum. */
  readonly grooveWidth: Quantity<'length'>;
  /** Length of the land between groove and end of the bore, minimum. */
  readonly edgeMargin: Quantity<'length'>;
  readonly source: string;
  readonly provenance: Provenance;
  readonly cautions: readonly string[];
}

const spelling = /^(din ?472|(?:asme )?(?:b27\.7 )?(?:metric )?3bm1|(?:inch )?3000) ?([\d.]+) ?(mm|in)?$/i;

/**
 * A standard internal retaining ring by its series and bore: `'DIN 472 50'`, `'ASME 3BM1 65'`, `'inch 3000 1.5'`.
 *
 * @throws MeopError `unknown-name`
 * @example retainingRingSize('DIN 472 50').grooveDiameter.in('mm') // => 53
 */
export function retainingRingSize(name: string): RetainingRingSize {
  const [, series, bore, unit] =
    spelling.exec(
      String(name)
        .trim()
        .replace(/[\s-]+/g, ' '),
    ) ?? [];
  const found = ringSeries.find(
    (one) =>
      series !== undefined &&
      seriesKey(one.name) === seriesKey(series) &&
      (unit === undefined || unit.toLowerCase() === one.unit),
  );
  const row = found && rowsOf(found).get(Number(bore));
  if (found === undefined || row === undefined)
    throw unknownName(name, retainingRingNames(), 'retaining ring', {
      procedure: 'retainingRingSize',
      path: '',
    });
  return sizeOf(found, row);
}

const seriesKey = (text: string): string => /472|3bm1|3000/i.exec(text)?.[0].toLowerCase() ?? text;

/**
 * The names of the standard internal retaining rings.
 *
 * @example retainingRingNames().includes('DIN 472 40') // => true
 */
export function retainingRingNames(): readonly string[] {
  return ringSeries.flatMap((series) => [...rowsOf(series).keys()].map((bore) => `${series.name} ${bore}`));
}

type Row = Readonly<Partial<Record<RingField, number>>>;

const parsed = new Map<RingSeries, ReadonlyMap<number, Row>>();

function rowsOf(series: RingSeries): ReadonlyMap<number, Row> {
  const known = parsed.get(series);
  if (known) return known;
  const rows = new Map(
    series.rings.split(/\s+/).map((text) => {
      const values = text.split('/').map(Number);
      const row: Row = Object.fromEntries(series.fields.map((field, i) => [field, values[i]]));
      return [values[0], row] as const;
    }),
  );
  parsed.set(series, rows);
  return rows;
}

function sizeOf({ name: series, unit, source }: RingSeries, row: Row): RetainingRingSize {
  const scale = unit === 'in' ? 0.0254 : 1e-3;
  const sized = (value: number): Quantity<'length'> =>
    fromSiValue<'length'>(Number((value * scale).toPrecision(12)), 'length', unitOf(unit));
  const { bore = 0, thickness = 0, freeDiameter, lugHeight, grooveDiameter = 0 } = row;
  const grooveDepth = row.grooveDepth ?? (grooveDiameter - bore) / 2;
  const name = `${series} ${bore}`;
  const note = ringNotes[name];
  return {
    name,
    series,
    bore: sized(bore),
    thickness: sized(thickness),
    ...(freeDiameter !== undefined && { freeDiameter: sized(freeDiameter) }),
    ...(lugHeight !== undefined && { lugHeight: sized(lugHeight) }),
    grooveDiameter: sized(grooveDiameter),
    grooveDepth: sized(grooveDepth),
    grooveWidth: sized(row.grooveWidth ?? din472GrooveWidths[String(thickness)] ?? 0),
    edgeMargin: sized(row.edgeMargin ?? roundedUp(3 * grooveDepth)),
    source,
    provenance: name === ringFromMemory ? 'from memory' : 'published',
    cautions: note === undefined ? [] : [`${name}: ${note}`],
  };
}

/** Up to a tenth of a millimetre, as the tables print the edge margin. */
const roundedUp = (mm: number): number => Math.ceil(Number((10 * mm).toFixed(6))) / 10;
