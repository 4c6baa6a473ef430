import type { Origin } from './datum';
import type { Material } from './material';
import { bearing, column, number, origin } from './shelf-entry';

/** The origin of a MIL-HDBK-5J design table. */
export const handbook = (table: string, basis: 'A' | 'S' | 'typical'): Origin =>
  origin(basis, `MIL-HDBK-5J (2003) table ${table}, read in a transcription`);

/** One column of a MIL-HDBK-5J design table, in the ksi it prints. */
export interface HandbookColumn {
  readonly table: string;
  readonly basis: 'A' | 'S';
  /** Ultimate and yield along the grain (L). */
  readonly tension: readonly [ultimate: number, yieldStrength: number];
  /** Ultimate and yield across the grain (LT). */
  readonly transverse?: readonly [ultimate: number, yieldStrength: number];
  readonly compressiveYield: number;
  readonly shear: number;
  /** At e/D = 1.5 (where the table has it) and 2.0. */
  readonly bearingUltimate: readonly [at1_5: number | undefined, at2_0: number];
  readonly bearingYield: readonly [at1_5: number | undefined, at2_0: number];
  readonly elongation: readonly [fraction: number, table: string];
}

/** The strengths of a material record from one column of the handbook. */
export function strengths(row: HandbookColumn): Omit<Material, 'name' | 'form' | 'class'> {
  const ksi = column('ksi', handbook(row.table, row.basis));
  // Chapter 3 is aluminium, whose bearing values are for dry pins.
  const pin = column('ksi', {
    ...handbook(row.table, row.basis),
    ...(row.table.startsWith('3.') && { note: 'dry-pin value: lubricated holes carry less' }),
  });
  const [ultimate, yieldStrength] = row.tension;
  return {
    ultimateStrength: ksi(ultimate),
    yieldStrength: ksi(yieldStrength),
    ...(row.transverse && {
      transverse: { ultimateStrength: ksi(row.transverse[0]), yieldStrength: ksi(row.transverse[1]) },
    }),
    compressiveYield: ksi(row.compressiveYield),
    shearUltimate: ksi(row.shear),
    bearingUltimate: bearing(pin, ...row.bearingUltimate),
    bearingYield: bearing(pin, ...row.bearingYield),
    elongation: number(row.elongation[0], handbook(row.elongation[1], 'S')),
  };
}
