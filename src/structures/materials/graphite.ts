import { type NamedKind, type Quantity, quantity } from '../../units';
import type { Datum } from './datum';
import type { Material, StressRange } from './material';
import { column, number, origin, value } from './shelf-entry';

/** Isostatically moulded fine-grain graphite: ranges only, since grades differ by a factor of two. */
export function isomouldedGraphite(): Material {
  const supplier = origin(
    'typical',
    "suppliers' typical range, isostatically moulded fine grain",
    'from memory',
  );
  const mpa = column('MPa', supplier);
  const range = (min: number, max: number): StressRange => ({ min: mpa(min), max: mpa(max) });
  return {
    name: 'isomoulded graphite',
    form: 'block, isostatically moulded, fine grain',
    class: 'brittle',
    typical: {
      tensileStrength: range(25, 40),
      flexuralStrength: range(38, 60),
      compressiveStrength: range(78, 140),
    },
    elasticModulus: column('GPa', { ...supplier, note: '9.8 to 12 GPa' })(10.5),
    poissonRatio: number(0.2, supplier),
    density: value('density', '1780 kg/m^3', { ...supplier, note: '1750 to 1880 kg/m³' }),
    thermalExpansion: value('thermal expansion', '5e-6 1/K', {
      ...supplier,
      note: '4 to 6, fine grades to 8; rises with temperature',
    }),
    thermalConductivity: value('thermal conductivity', '105 W/(m*K)', {
      ...supplier,
      note: '80 to 130 at 20 °C; 30 to 40 at 1500 to 2000 K',
    }),
    specificHeat: value('specific heat', '710 J/(kg*K)', {
      ...supplier,
      note: 'at 20 °C; about 2000 at 1500 °C',
    }),
    notes: [
      'use the certificate of the block: grades differ by a factor of two',
      'brittle: compare the maximum principal stress with the tensile strength; there is no yield margin',
    ],
  };
}

/** The minimum and the maximum over every synthetic grade. */
export interface GraphiteRanges {
  readonly density: readonly [min: Quantity<'density'>, max: Quantity<'density'>];
  readonly elasticModulus: readonly [min: Quantity<'stress'>, max: Quantity<'stress'>];
  readonly compressiveStrength: readonly [min: Quantity<'stress'>, max: Quantity<'stress'>];
  readonly flexuralStrength: readonly [min: Quantity<'stress'>, max: Quantity<'stress'>];
  readonly thermalExpansion: readonly [
    min: Quantity<'thermal expansion'>,
    max: Quantity<'thermal expansion'>,
  ];
  readonly thermalConductivity: readonly [
    min: Quantity<'thermal conductivity'>,
    max: Quantity<'thermal conductivity'>,
  ];
  readonly specificHeat: readonly [min: Quantity<'specific heat'>, max: Quantity<'specific heat'>];
}

/**
 * What graphite of any grade can be: wide enough that no default is safe.
 *
 * @example graphiteRanges().value.flexuralStrength[0].in('MPa') // => 6.9
 */
export function graphiteRanges(): Datum<GraphiteRanges> {
  const range = <const K extends NamedKind>(kind: K, unit: string, min: number, max: number) =>
    [quantity(kind, `${min} ${unit}`), quantity(kind, `${max} ${unit}`)] as const;
  return {
    value: {
      density: range('density', 'kg/m^3', 1300, 1950),
      elasticModulus: range('stress', 'GPa', 8, 15),
      compressiveStrength: range('stress', 'MPa', 20, 200),
      flexuralStrength: range('stress', 'MPa', 6.9, 100),
      thermalExpansion: range('thermal expansion', 'µm/(m*K)', 1.2, 8.2),
      thermalConductivity: range('thermal conductivity', 'W/(m*K)', 25, 470),
      specificHeat: range('specific heat', 'J/(kg*K)', 710, 830),
    },
    ...origin('typical', 'Engineering review of graphite, ranges over all synthetic grades (reference page)'),
  };
}
