import type { Datum } from './datum';
import { handbook, strengths } from './handbook-column';
import type { Material } from './material';
import { hot304, hot316, hot4130 } from './retention-tables';
import { bearing, column, number, origin, value } from './shelf-entry';

function stainless(
  grade: '304' | '316',
  table: string,
  extra: Pick<Material, 'typical' | 'thermalExpansion' | 'thermalConductivity' | 'atTemperature'>,
): Material {
  const average = origin('typical', `ASM typical values, ${grade} annealed`);
  const ksi = column('ksi', handbook(table, 'S'));
  return {
    name: `${grade} annealed`,
    form: 'sheet, strip and plate, annealed',
    class: 'metal',
    ...extra,
    // The handbook prints L 73/26 and LT 75/30 ksi.
    ultimateStrength: ksi(73),
    yieldStrength: ksi(26),
    transverse: { ultimateStrength: ksi(75), yieldStrength: ksi(30) },
    compressiveYield: ksi(23),
    shearUltimate: ksi(50),
    bearingUltimate: bearing(ksi, undefined, 162),
    bearingYield: bearing(ksi, undefined, 55),
    elongation: number(0.4, handbook(table, 'S')),
    elasticModulus: column('GPa', average)(193),
    poissonRatio: number(0.29, average),
    density: value('density', '8000 kg/m^3', average),
    specificHeat: value('specific heat', '500 J/(kg*K)', average),
    notes: ['ASTM A240 minimums are remembered as 515 and 205 MPa'],
  };
}

/** 304, annealed. */
export function annealed304(): Material {
  const average = origin('typical', 'ASM typical values, 304 annealed');
  const mpa = column('MPa', average);
  return stainless('304', '2.7.1.0(b), values of 301 declared applicable to 304 AMS 5513', {
    typical: { ultimateStrength: mpa(505), yieldStrength: mpa(215) },
    thermalExpansion: value(
      'thermal expansion',
      '17.2e-6 1/K',
      origin('typical', 'handbook value, 0 to 100 °C', 'from memory'),
    ),
    thermalConductivity: value('thermal conductivity', '16 W/(m*K)', { ...average, note: 'at 100 °C' }),
    atTemperature: hot304(),
  });
}

/** 316, annealed. */
export function annealed316(): Material {
  const average = origin('typical', 'ASM typical values, 316 annealed');
  const mpa = column('MPa', average);
  return stainless('316', '2.7.1.0(b), values of 301 declared applicable to 316 AMS 5524', {
    typical: { ultimateStrength: mpa(550), yieldStrength: mpa(240) },
    thermalExpansion: value('thermal expansion', '16.0e-6 1/K', { ...average, note: '0 to 100 °C' }),
    thermalConductivity: value('thermal conductivity', '14.6 W/(m*K)', {
      ...average,
      source: 'physical properties of 316, tube supplier',
    }),
    atTemperature: hot316(),
  });
}

const barOf = (sheet: Material, grade: '304' | '316'): Material => {
  const ksi = column(
    'ksi',
    origin('specified minimum', `ASTM A276 bar and A269 tube, ${grade} annealed`, 'from memory'),
  );
  const { elasticModulus, poissonRatio, density, specificHeat, typical, atTemperature } = sheet;
  const { thermalExpansion, thermalConductivity } = sheet;
  return {
    name: `${grade} bar and tube`,
    form: 'bar and tube, annealed, ASTM A276 and A269',
    class: 'metal',
    ultimateStrength: ksi(75),
    yieldStrength: ksi(30),
    ...(typical && { typical }),
    ...(elasticModulus && { elasticModulus }),
    ...(poissonRatio && { poissonRatio }),
    ...(density && { density }),
    ...(specificHeat && { specificHeat }),
    ...(thermalExpansion && { thermalExpansion }),
    ...(thermalConductivity && { thermalConductivity }),
    ...(atTemperature && { atTemperature }),
  };
};

/** 304 bar and tube, annealed. */
export const bar304 = (): Material => barOf(annealed304(), '304');

/** 316 bar and tube, annealed. */
export const bar316 = (): Material => barOf(annealed316(), '316');

const of4130 = () => {
  const average = origin('typical', 'typical values of AISI 4130, reference pages');
  return {
    class: 'metal' as const,
    elasticModulus: column('ksi', handbook('2.3.1.0(c1)', 'typical'))(29000),
    poissonRatio: number(0.32, handbook('2.3.1.0(c1)', 'typical')),
    density: value('density', '7850 kg/m^3', average),
    thermalExpansion: value(
      'thermal expansion',
      '12.3e-6 1/K',
      origin('typical', 'handbook value, 20 to 100 °C; one page prints 13', 'from memory'),
    ),
    thermalConductivity: value('thermal conductivity', '42.7 W/(m*K)', average),
    specificHeat: value('specific heat', '477 J/(kg*K)', average),
    atTemperature: hot4130(),
  };
};

const normalisedTypical = () => {
  const mpa = column('MPa', origin('typical', 'ASM typical values, AISI 4130 normalised'));
  return { ultimateStrength: mpa(670), yieldStrength: mpa(435) };
};

/** Normalised, wall to 0.188 in. */
export const normalised4130 = (): Material => ({
  name: '4130 normalised',
  form: 'sheet, strip, plate and tubing to 0.188 in, normalised and tempered',
  ...of4130(),
  typical: normalisedTypical(),
  ...strengths({
    table: '2.3.1.0(c1)',
    basis: 'S',
    tension: [95, 75],
    compressiveYield: 75,
    shear: 57,
    bearingUltimate: [undefined, 200],
    bearingYield: [undefined, 129],
    elongation: [0.07, '2.3.1.0(d)'],
  }),
});

/** Normalised, above 0.188 in. */
export const thickNormalised4130 = (): Material => ({
  name: '4130 normalised over 0.188 in',
  form: 'sheet, strip, plate and tubing above 0.188 in, normalised and tempered',
  ...of4130(),
  typical: normalisedTypical(),
  ...strengths({
    table: '2.3.1.0(c1)',
    basis: 'S',
    tension: [90, 70],
    compressiveYield: 70,
    shear: 54,
    bearingUltimate: [undefined, 190],
    bearingYield: [undefined, 120],
    elongation: [0.1, '2.3.1.0(d)'],
  }),
});

/** Quenched and tempered to 125, 150 or 180 ksi. */
export function hardened4130(level: 125 | 150 | 180): Material {
  const row = hardened[level];
  return {
    name: `4130 HT ${level}`,
    form: level === 180 ? 'tubing, all walls' : 'tubing, wall to 0.188 in',
    ...of4130(),
    ...strengths({ table: '2.3.1.0(c2)', basis: 'S', ...row }),
    notes: ['heat treatment decides: have the hardness of the part itself measured'],
  };
}

// biome-ignore format: columns of a table
const hardened = {
  125: { tension: [125, 100], compressiveYield: 109, shear: 75, bearingUltimate: [194, 251], bearingYield: [146, 175], elongation: [0.07, '2.3.1.0(e)'] },
  150: { tension: [150, 135], compressiveYield: 141, shear: 90, bearingUltimate: [231, 285], bearingYield: [210, 232], elongation: [0.06, '2.3.1.0(e)'] },
  180: { tension: [180, 165], compressiveYield: 173, shear: 108, bearingUltimate: [277, 342], bearingYield: [257, 284], elongation: [0.05, '2.3.1.0(e)'] },
} as const;

/** AISI 1025, annealed or normalised. */
export function mild1025(): Material {
  const mil = handbook('2.2.1.0(b)', 'S');
  const ksi = column('ksi', mil);
  const average = handbook('2.2.1.0(b)', 'typical');
  const nu: Datum<number> = number(0.32, average);
  return {
    name: '1025 mild steel',
    form: 'sheet, plate, tubing and bar, annealed or normalised',
    class: 'metal',
    ultimateStrength: ksi(55),
    yieldStrength: ksi(36),
    compressiveYield: ksi(36),
    shearUltimate: ksi(35),
    bearingUltimate: bearing(ksi, undefined, 90),
    elasticModulus: column('ksi', average)(29000),
    poissonRatio: nu,
    density: value('density', '0.284 lb/in^3', average),
    thermalConductivity: value('thermal conductivity', '51.92 W/(m*K)', average),
    specificHeat: value('specific heat', '485.7 J/(kg*K)', average),
  };
}
