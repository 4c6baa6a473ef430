import { fromSiValue, type Quantity, type QuantityInput, unitOf } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readNotNegative, refusal } from '../../units/refusal';

const procedure = 'extrusionGapLimit';

/** What decides how wide a gap a seal bridges. */
export interface ExtrusionGapInput {
  /** Across the seal. */
  readonly pressure: QuantityInput<'gauge pressure'>;
  /** Shore A, 70 to 90. */
  readonly hardness: number;
  /** Silicone tears easily: half the gap. Not so unless told. */
  readonly silicone?: boolean;
}

// Diametral clearance in thousandths of an inch up to a pressure in psi; room temperature, no backup ring.
const bands: readonly (readonly [psi: number, at70: number, at90: number])[] = [
  [500, 16, 28],
  [1000, 10, 24],
  [1500, 6, 20],
  [2000, 4, 16],
  [3000, 2, 10],
];

/** The widest gap a seal may bridge. */
export interface ExtrusionGapLimit {
  /** Diametral clearance; zero above the table, where a backup ring is needed. */
  readonly clearance: Quantity<'length'>;
  readonly source: string;
  readonly cautions: readonly string[];
}

const extrusionGapLimitFields: FieldsOf<ExtrusionGapInput> = {
  pressure: 'required',
  hardness: 'required',
  silicone: 'optional',
};

/**
 * The greatest diametral clearance that an O-ring bridges without a backup ring: the whole clearance, since the
 * closure may lie to one side. Steps with pressure as the table does; hardness between 70 and 90 is interpolated.
 *
 * @throws MeopError `out-of-domain` for a hardness outside 70 to 90 Shore A, or a pressure below zero
 * @example extrusionGapLimit({ pressure: '900 psi', hardness: 70 }).clearance.in('in') // => 0.01
 */
export function extrusionGapLimit(options: ExtrusionGapInput): ExtrusionGapLimit {
  requireFields(procedure, options, extrusionGapLimitFields);
  const { pressure, hardness, silicone = false } = options;
  const psi = readNotNegative('gauge pressure', 'pressure', pressure, procedure).si / unitOf('psi').factor;
  if (!(hardness >= 70 && hardness <= 90)) throw refusal(procedure, 'hardness', hardness, '70 to 90 Shore A');
  const row = bands.find(([upTo]) => psi <= upTo * (1 + 1e-12));
  const cautions: string[] = [];
  if (psi > 1500) cautions.push('above 1500 psi consider a backup ring (Parker O-Ring Handbook)');
  if (!row) cautions.push('above 3000 psi the table gives no clearance: a backup ring is needed');
  if (hardness !== 70 && hardness !== 90)
    cautions.push('the table has 70 and 90 Shore A; the value between them is interpolated');
  if (silicone) cautions.push('halved for silicone (Parker O-Ring Handbook)');
  const [, at70, at90] = row ?? [0, 0, 0];
  const mil = at70 + ((at90 - at70) * (hardness - 70)) / 20;
  return {
    clearance: fromSiValue((silicone ? mil / 2 : mil) * 25.4e-6, 'length', unitOf('mm')),
    source: 'Seal & Design Inc., limits of diametral clearance against fluid pressure (room temperature)',
    cautions,
  };
}
