import { quantity } from '../../units';
import type { Datum } from './datum';
import { strengths } from './handbook-column';
import type { HotStrength, Material } from './material';
import { exposed6061, hot6061, modulus6061 } from './retention-tables';
import { bearing, column, number, origin, typicalHardness, value } from './shelf-entry';

const association = origin(
  'typical',
  'Aluminum Association typical values, as printed on several supplier sheets',
);

const typical = (mpa: number) => column('MPa', association)(mpa);

/** What every 6061-T6 product shares. */
const of6061 = () => ({
  class: 'metal' as const,
  typical: {
    ultimateStrength: typical(310),
    yieldStrength: typical(276),
    shearUltimate: typical(207),
    bearingUltimate: bearing(typical, undefined, 607),
    bearingYield: bearing(typical, undefined, 386),
    atTemperature: hotTypical6061(),
    hardness: typicalHardness('6061-T6', 95),
  },
  elasticModulus: column('GPa', association)(68.9),
  poissonRatio: number(0.33, association),
  density: value('density', '2700 kg/m^3', association),
  thermalExpansion: value('thermal expansion', '23.6e-6 1/K', { ...association, note: '20 to 100 °C' }),
  thermalConductivity: value('thermal conductivity', '167 W/(m*K)', association),
  specificHeat: value('specific heat', '896 J/(kg*K)', association),
  atTemperature: hot6061(),
  afterExposure: exposed6061(),
  reheatingTests: {
    value: [
      { temperature: quantity('temperature', '390 degF'), time: quantity('time', '16 h') },
      { temperature: quantity('temperature', '425 degF'), time: quantity('time', '4 h') },
    ],
    ...origin(
      'typical',
      'Donovan, Fortune and Trout, senior project, California Polytechnic State University, June 2015: 6061-T6 extrusions',
      'published',
      'at 350 °F the yield strength stayed above the minimum for 64 h, the longest test',
    ),
  },
  modulusAtTemperature: {
    value: modulus6061(),
    ...origin('typical', 'MIL-HDBK-5J figure 3.6.2.2.4, digitised'),
  },
});

function hotTypical6061(): Datum<readonly HotStrength[]> {
  const rows = [
    [75, 45, 40],
    [212, 42, 38],
    [300, 34, 31],
    [400, 19, 15],
    [500, 7.5, 5],
    [600, 4.6, 2.7],
    [700, 3, 1.8],
  ];
  return {
    value: rows.map(([f, ultimate, yields]) => ({
      temperature: quantity('temperature', `${f} degF`),
      ultimateStrength: quantity('stress', `${ultimate} ksi`),
      yieldStrength: quantity('stress', `${yields} ksi`),
    })),
    ...origin(
      'typical',
      'Aluminum Association, typical tensile properties at temperature, lowest strength during 10 000 h',
      'from memory',
    ),
  };
}

/** Drawn tube, wall 0.025 to 0.500 in. */
export const drawnTube6061 = (): Material => ({
  name: '6061-T6 drawn tube',
  form: 'drawn tube, wall 0.025 to 0.500 in',
  ...of6061(),
  ...strengths({
    table: '3.6.2.0(c1)',
    basis: 'S',
    tension: [42, 35],
    compressiveYield: 34,
    shear: 27,
    bearingUltimate: [67, 88],
    bearingYield: [49, 56],
    elongation: [0.1, '3.6.2.0(c2)'],
  }),
});

/** Extruded tube, bar and shapes to 1 in. */
export const extruded6061 = (): Material => ({
  name: '6061-T6 extruded tube',
  form: 'extruded tube, rod, bar and shapes to 1.000 in',
  ...of6061(),
  ...strengths({
    table: '3.6.2.0(g)',
    basis: 'A',
    tension: [38, 35],
    transverse: [37, 33],
    compressiveYield: 34,
    shear: 26,
    bearingUltimate: [64, 82],
    bearingYield: [54, 60],
    elongation: [0.08, '3.6.2.0(g)'],
  }),
});

/** Extruded bar and shapes from 1 to 6.5 in. */
export const thickExtrusion6061 = (): Material => ({
  name: '6061-T6 extruded bar over 1 in',
  form: 'extruded rod, bar and shapes, 1.001 to 6.500 in',
  ...of6061(),
  ...strengths({
    table: '3.6.2.0(g)',
    basis: 'A',
    tension: [38, 35],
    transverse: [33, 28],
    compressiveYield: 30,
    shear: 19,
    bearingUltimate: [52, 69],
    bearingYield: [42, 50],
    elongation: [0.1, '3.6.2.0(g)'],
  }),
});

/** Rolled, drawn or cold-finished rod and bar to 8 in. */
export const bar6061 = (): Material => ({
  name: '6061-T6 bar',
  form: 'rolled, drawn or cold-finished rod and bar to 8.000 in',
  ...of6061(),
  ...strengths({
    table: '3.6.2.0(d)',
    basis: 'S',
    tension: [42, 35],
    compressiveYield: 34,
    shear: 27,
    bearingUltimate: [67, 88],
    bearingYield: [49, 56],
    elongation: [0.1, '3.6.2.0(d)'],
  }),
});

/** Sheet 0.010 to 0.249 in and plate to 2 in, which share their allowables. */
export const plate6061 = (): Material => ({
  name: '6061-T6 sheet and plate',
  form: 'T6 sheet 0.010 to 0.249 in, T651 plate 0.250 to 2.000 in',
  ...of6061(),
  ...strengths({
    table: '3.6.2.0(b1) and (b2)',
    basis: 'A',
    tension: [42, 36],
    transverse: [42, 35],
    compressiveYield: 35,
    shear: 27,
    bearingUltimate: [67, 88],
    bearingYield: [50, 58],
    elongation: [0.08, '3.6.2.0(b3)'],
  }),
});

/** Extrusion to the European standard, to 200 mm and 5 mm wall for tube. */
export function extruded6061En(): Material {
  const mpa = column('MPa', origin('specified minimum', 'EN 755-2, read in a supplier data sheet'));
  return {
    name: '6061-T6 extrusion EN 755-2',
    form: 'extruded bar to 200 mm, tube to 5 mm wall',
    ...of6061(),
    ultimateStrength: mpa(260),
    yieldStrength: mpa(240),
    notes: ['EN 755-2 gives no shear or bearing strength'],
  };
}

/** Within 1 in of a weld. */
export function welded6061(): Material {
  const weld = column(
    'ksi',
    origin(
      'typical',
      'note on an MMPDS-01 property page for welded 6061; the page calls the values typical',
      'published',
      'within 1 in of the weld; welding a T6 case halves it',
    ),
  );
  const { typical: _parent, afterExposure: _after, ...shared } = of6061();
  return {
    name: '6061-T6 welded',
    form: 'zone within 1 in of a weld, any filler',
    ...shared,
    typical: {
      ultimateStrength: weld(24),
      yieldStrength: weld(20),
      shearUltimate: weld(15),
      bearingUltimate: bearing(weld, undefined, 50),
      bearingYield: bearing(weld, undefined, 30),
    },
    notes: ['no minimum was found: test welded cases, or ask for typical values expressly'],
  };
}
