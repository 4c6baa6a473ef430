import { handbook, strengths } from './handbook-column';
import type { Material } from './material';
import { hot2024, hot6063, hot7075 } from './retention-tables';
import { bearing, column, number, origin, typicalHardness, value } from './shelf-entry';

/** Extrusion to 1 in. */
export function extruded6063(): Material {
  const ksi = column('ksi', origin('specified minimum', 'extruder’s table of mechanical limits (ASTM B221)'));
  const average = origin('typical', 'ASM typical values, 6063-T6');
  const mpa = column('MPa', average);
  return {
    name: '6063-T6 extrusion',
    form: 'extruded tube and shapes to 1 in',
    class: 'metal',
    ultimateStrength: ksi(30),
    yieldStrength: ksi(25),
    elongation: number(
      0.08,
      origin('specified minimum', 'extruder’s table of mechanical limits (ASTM B221)'),
    ),
    typical: {
      ultimateStrength: mpa(241),
      yieldStrength: mpa(214),
      shearUltimate: mpa(152),
      bearingUltimate: bearing(mpa, undefined, 434),
      bearingYield: bearing(mpa, undefined, 276),
      hardness: typicalHardness('6063-T6', 73),
    },
    elasticModulus: column('GPa', average)(68.9),
    poissonRatio: number(0.33, average),
    density: value('density', '2700 kg/m^3', average),
    thermalExpansion: value('thermal expansion', '23.4e-6 1/K', { ...average, note: '20 to 100 °C' }),
    thermalConductivity: value('thermal conductivity', '200 W/(m*K)', average),
    specificHeat: value('specific heat', '900 J/(kg*K)', average),
    atTemperature: hot6063(),
    notes: ['MIL-HDBK-5J has no 6063: no shear or bearing allowable exists, only typical values'],
  };
}

const of7075 = () => {
  const average = origin('typical', 'typical values of 7075-T6, supplier and reference pages');
  const mpa = column('MPa', average);
  return {
    class: 'metal' as const,
    typical: {
      ultimateStrength: mpa(572),
      yieldStrength: mpa(503),
      shearUltimate: mpa(331),
      hardness: typicalHardness('7075-T6', 150),
    },
    elasticModulus: column('ksi', handbook('3.7.6.0(g1)', 'typical'))(10400),
    poissonRatio: number(0.33, handbook('3.7.6.0(g1)', 'typical')),
    density: value('density', '2810 kg/m^3', average),
    thermalExpansion: value('thermal expansion', '23.6e-6 1/K', average),
    thermalConductivity: value('thermal conductivity', '130 W/(m*K)', average),
    specificHeat: value('specific heat', '960 J/(kg*K)', average),
    atTemperature: hot7075(),
  };
};

/** Extrusion 0.5 to 1.499 in, the lesser of its two thickness columns. */
export const extruded7075 = (): Material => ({
  name: '7075-T6 extrusion',
  form: 'extruded rod, bar and shapes, 0.500 to 1.499 in',
  ...of7075(),
  ...strengths({
    table: '3.7.6.0(g1)',
    basis: 'A',
    tension: [81, 72],
    transverse: [75, 65],
    compressiveYield: 71,
    shear: 43,
    bearingUltimate: [113, 144],
    bearingYield: [93, 110],
    elongation: [0.07, '3.7.6.0(g1)'],
  }),
});

/** Tube, by the minimums of ASTM B210 (drawn) and B241 (extruded). */
export function tube7075(made: 'drawn' | 'extruded'): Material {
  const standard = made === 'drawn' ? 'ASTM B210' : 'ASTM B241';
  const ksi = column('ksi', origin('specified minimum', `${standard}, 7075-T6 ${made} tube`, 'from memory'));
  return {
    name: `7075-T6 ${made} tube`,
    form: made === 'drawn' ? 'drawn tube, wall 0.025 to 0.500 in' : 'extruded tube, wall to 0.249 in',
    ...of7075(),
    ultimateStrength: ksi(made === 'drawn' ? 77 : 78),
    yieldStrength: ksi(made === 'drawn' ? 66 : 70),
  };
}

/** Sheet 0.040 to 0.125 in. */
export const sheet7075 = (): Material => ({
  name: '7075-T6 sheet',
  form: 'sheet, 0.040 to 0.125 in',
  ...of7075(),
  ...strengths({
    table: '3.7.6.0(b1)',
    basis: 'A',
    tension: [78, 70],
    transverse: [78, 68],
    compressiveYield: 69,
    shear: 47,
    bearingUltimate: [121, 156],
    bearingYield: [102, 119],
    elongation: [0.08, '3.7.6.0(b1)'],
  }),
});

/** Plate 0.5 to 1 in. */
export const plate7075 = (): Material => ({
  name: '7075-T651 plate',
  form: 'plate, 0.500 to 1.000 in',
  ...of7075(),
  ...strengths({
    table: '3.7.6.0(b1)',
    basis: 'A',
    tension: [77, 70],
    transverse: [78, 68],
    compressiveYield: 68,
    shear: 44,
    bearingUltimate: [117, 145],
    bearingYield: [97, 117],
    elongation: [0.07, '3.7.6.0(b1)'],
  }),
});

const of2024 = () => {
  const average = origin('typical', 'typical values of 2024-T3', 'from memory');
  const reference = origin('typical', 'typical physical properties of aluminium alloys, supplier page');
  const mpa = column('MPa', average);
  return {
    class: 'metal' as const,
    typical: {
      ultimateStrength: mpa(483),
      yieldStrength: mpa(345),
      shearUltimate: mpa(283),
      hardness: typicalHardness('2024-T3', 120),
    },
    elasticModulus: column('ksi', handbook('3.2.3.0(b1)', 'typical'))(10500),
    poissonRatio: number(0.33, handbook('3.2.3.0(b1)', 'typical')),
    density: value('density', '0.100 lb/in^3', handbook('3.2.3.0(b1)', 'typical')),
    thermalExpansion: value('thermal expansion', '23.22e-6 1/K', { ...reference, note: '20 to 100 °C' }),
    thermalConductivity: value('thermal conductivity', '121 W/(m*K)', reference),
    specificHeat: value('specific heat', '875 J/(kg*K)', average),
    atTemperature: hot2024(),
  };
};

/** Sheet 0.010 to 0.128 in, the lesser of its two thickness columns. */
export const sheet2024 = (): Material => ({
  name: '2024-T3 sheet',
  form: 'sheet, 0.010 to 0.128 in',
  ...of2024(),
  ...strengths({
    table: '3.2.3.0(b1)',
    basis: 'A',
    tension: [64, 47],
    transverse: [63, 42],
    compressiveYield: 39,
    shear: 39,
    bearingUltimate: [104, 129],
    bearingYield: [73, 88],
    elongation: [0.12, '3.2.3.0(c)'],
  }),
});

/** T351 plate 0.5 to 1 in. */
export const plate2024 = (): Material => ({
  name: '2024-T351 plate',
  form: 'plate, 0.500 to 1.000 in',
  ...of2024(),
  ...strengths({
    table: '3.2.3.0(b1)',
    basis: 'A',
    tension: [63, 48],
    transverse: [63, 42],
    compressiveYield: 39,
    shear: 37,
    bearingUltimate: [95, 117],
    bearingYield: [72, 86],
    elongation: [0.08, '3.2.3.0(b1)'],
  }),
});
