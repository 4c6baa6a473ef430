import { handbook, strengths } from './handbook-column';
import type { Material } from './material';
import { column, number, origin, value } from './shelf-entry';

const of174 = () => {
  const average = handbook('2.6.9.0(e)', 'typical');
  const recalled = origin('typical', 'data sheets of 17-4PH H900, 20 to 100 °C', 'from memory');
  return {
    class: 'metal' as const,
    elasticModulus: column('ksi', average)(28500),
    poissonRatio: number(0.27, average),
    density: value('density', '0.282 lb/in^3', average),
    thermalExpansion: value('thermal expansion', '10.8e-6 1/K', recalled),
    thermalConductivity: value('thermal conductivity', '17.9 W/(m*K)', recalled),
    specificHeat: value('specific heat', '460 J/(kg*K)', recalled),
  };
};

/** 17-4PH bar, H900. */
export const bar174H900 = (): Material => ({
  name: '17-4PH H900 bar',
  form: 'bar under 8 in, AMS 5643, aged at 900 °F',
  ...of174(),
  ...strengths({
    table: '2.6.9.0(e)',
    basis: 'A',
    tension: [190, 170],
    compressiveYield: 170,
    shear: 123,
    bearingUltimate: [313, 380],
    bearingYield: [255, 280],
    elongation: [0.1, '2.6.9.0(e)'],
  }),
  notes: [
    'H900 is brittle in the cold and prone to stress corrosion: prefer H1025 or softer for retaining parts',
  ],
});

/** 17-4PH bar, H1025. */
export const bar174H1025 = (): Material => ({
  name: '17-4PH H1025 bar',
  form: 'bar under 8 in, AMS 5643, aged at 1025 °F',
  ...of174(),
  ...strengths({
    table: '2.6.9.0(e)',
    basis: 'S',
    tension: [155, 145],
    compressiveYield: 139,
    shear: 95,
    bearingUltimate: [263, 332],
    bearingYield: [211, 250],
    elongation: [0.12, '2.6.9.0(e)'],
  }),
});

// biome-ignore format: columns of a table; 425 °C and hotter is the tempering after the quench in oil
const conditions4140 = {
  annealed: { ultimate: 655, yieldStrength: 417.1, elongation: 0.257, form: 'round of 25 mm, annealed at 815 °C' },
  normalised: { ultimate: 1020.4, yieldStrength: 655, elongation: 0.177, form: 'round of 25 mm, normalised at 870 °C' },
  'tempered 425 C': { ultimate: 1248, yieldStrength: 1138, elongation: 0.13, form: 'round of 25 mm, oil quenched, tempered at 425 °C' },
  'tempered 540 C': { ultimate: 951, yieldStrength: 834, elongation: 0.18, form: 'round of 25 mm, oil quenched, tempered at 540 °C' },
  'tempered 650 C': { ultimate: 758, yieldStrength: 655, elongation: 0.22, form: 'round of 25 mm, oil quenched, tempered at 650 °C' },
} as const;

/** 4140 in one condition: typical values only. */
export function steel4140(condition: keyof typeof conditions4140): Material {
  const row = conditions4140[condition];
  const treated = origin('typical', 'tensile properties of AISI 4140 by treatment, eFunda');
  const reference = origin('typical', 'AISI 4140 normalised, MatWeb');
  const rounded = origin('typical', 'AISI 4140, makeitfrom.com');
  const mpa = column('MPa', treated);
  return {
    name: `4140 ${condition}`,
    form: row.form,
    class: 'metal',
    typical: { ultimateStrength: mpa(row.ultimate), yieldStrength: mpa(row.yieldStrength) },
    elongation: number(row.elongation, treated),
    elasticModulus: column('GPa', reference)(205),
    poissonRatio: number(0.29, reference),
    density: value('density', '7850 kg/m^3', reference),
    thermalExpansion: value('thermal expansion', '13e-6 1/K', rounded),
    thermalConductivity: value('thermal conductivity', '43 W/(m*K)', rounded),
    specificHeat: value('specific heat', '470 J/(kg*K)', rounded),
    notes: [
      'typical of a round of 25 mm; the strength falls with the section, and no minimum is published here: take it from the certificate',
    ],
  };
}

/** 1018 bar, cold drawn: typical values only. */
export function coldDrawn1018(): Material {
  const supplier = origin('typical', 'AISI 1018 cold drawn, supplier’s page');
  const sheet = origin('typical', 'SAE 1018 data sheet, tube supplier');
  const mpa = column('MPa', supplier);
  return {
    name: '1018 cold drawn',
    form: 'bar, cold drawn',
    class: 'metal',
    typical: { ultimateStrength: mpa(440), yieldStrength: mpa(370) },
    elasticModulus: column('GPa', supplier)(205),
    poissonRatio: number(0.29, supplier),
    density: value('density', '7870 kg/m^3', supplier),
    thermalExpansion: value('thermal expansion', '11.5e-6 1/K', sheet),
    thermalConductivity: value(
      'thermal conductivity',
      '51.9 W/(m*K)',
      origin('typical', 'thermal conductivity of 1018 steel, reference page'),
    ),
    specificHeat: value('specific heat', '486 J/(kg*K)', sheet),
    notes: [
      'a seller of bars states estimated minimums of 64 and 54 ksi for 20 to 30 mm, which no specification guarantees',
    ],
  };
}

// biome-ignore format: columns of a table
const grades = {
  '1020': { ultimate: 65, yieldStrength: 55, asDrawn: '70 and 60' },
  '1026': { ultimate: 75, yieldStrength: 65, asDrawn: '85 and 75' },
} as const;

/** Tube drawn over mandrel, stress relieved: the minimums of ASTM A513 type 5. */
export function drawnOverMandrel(grade: keyof typeof grades): Material {
  const { ultimate, yieldStrength, asDrawn } = grades[grade];
  const ksi = column(
    'ksi',
    origin('specified minimum', 'ASTM A513 type 5, stress relieved, steel distributor’s table'),
  );
  const average =
    grade === '1020'
      ? origin('typical', 'cold drawn 1020, makeitfrom.com')
      : origin('typical', 'data sheets of 1026 tube', 'from memory');
  return {
    name: `${grade} DOM tube`,
    form: 'tube drawn over mandrel, ASTM A513 type 5, stress relieved',
    class: 'metal',
    ultimateStrength: ksi(ultimate),
    yieldStrength: ksi(yieldStrength),
    elasticModulus: column('GPa', average)(grade === '1020' ? 190 : 205),
    poissonRatio: number(0.29, average),
    density: value('density', grade === '1020' ? '7900 kg/m^3' : '7858 kg/m^3', average),
    thermalExpansion: value('thermal expansion', grade === '1020' ? '12e-6 1/K' : '11.7e-6 1/K', average),
    thermalConductivity: value(
      'thermal conductivity',
      grade === '1020' ? '52 W/(m*K)' : '51.9 W/(m*K)',
      average,
    ),
    specificHeat: value('specific heat', grade === '1020' ? '470 J/(kg*K)' : '486 J/(kg*K)', average),
    notes: [`as-drawn tube is sold with ${asDrawn} ksi, of which the basis is not stated`],
  };
}
