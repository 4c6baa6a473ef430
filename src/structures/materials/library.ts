import { MeopError } from '../../units';
import {
  bar6061,
  drawnTube6061,
  extruded6061,
  extruded6061En,
  plate6061,
  thickExtrusion6061,
  welded6061,
} from './aluminium-6061';
import {
  extruded6063,
  extruded7075,
  plate2024,
  plate7075,
  sheet2024,
  sheet7075,
  tube7075,
} from './aluminium-alloys';
import { isomouldedGraphite } from './graphite';
import { leastOfForms } from './least-of-forms';
import type { Material } from './material';
import { printedMaterial } from './material-text';
import { fabricPhenolic, fkm, nbr, paperPhenolic, paperTube, silicone } from './non-metals';
import {
  annealed304,
  annealed316,
  bar304,
  bar316,
  hardened4130,
  mild1025,
  normalised4130,
  thickNormalised4130,
} from './steel';
import { bar174H900, bar174H1025, coldDrawn1018, drawnOverMandrel, steel4140 } from './steel-bar';

const unnamed = (alloy: string, forms: string): string =>
  `The product form of ${alloy} is not specified; assumed the minimum strengths of ${forms}.`;

/** 6061-T6 in any form except thick extrusions, which are weaker and have a separate name. */
const any6061 = (): Material =>
  leastOfForms(
    '6061-T6',
    'drawn tube, extrusion to 1 in, bar, sheet and plate',
    [drawnTube6061(), extruded6061(), bar6061(), plate6061()],
    unnamed(
      '6061-T6',
      'drawn tube, extrusion to 1 in, bar, sheet and plate; extruded bar over 1 in and welds are weaker',
    ),
  );

const any7075 = (): Material =>
  leastOfForms(
    '7075-T6',
    'extrusion to 1.499 in, sheet, plate to 1 in',
    [extruded7075(), sheet7075(), plate7075()],
    unnamed('7075-T6', 'extrusion to 1.499 in, sheet, and plate to 1 in'),
  );

const any2024 = (): Material =>
  leastOfForms(
    '2024-T3',
    'sheet, plate to 1 in',
    [sheet2024(), plate2024()],
    unnamed('2024-T3', 'sheet, and T351 plate to 1 in'),
  );

const shelf = {
  '6061-T6': any6061,
  '6061-T6 drawn tube': drawnTube6061,
  '6061-T6 extruded tube': extruded6061,
  '6061-T6 extruded bar over 1 in': thickExtrusion6061,
  '6061-T6 extrusion EN 755-2': extruded6061En,
  '6061-T6 bar': bar6061,
  '6061-T6 sheet and plate': plate6061,
  '6061-T6 welded': welded6061,
  '6063-T6': extruded6063,
  '6063-T6 extrusion': extruded6063,
  '7075-T6': any7075,
  '7075-T6 extrusion': extruded7075,
  '7075-T6 drawn tube': () => tube7075('drawn'),
  '7075-T6 extruded tube': () => tube7075('extruded'),
  '7075-T6 sheet': sheet7075,
  '7075-T651 plate': plate7075,
  '2024-T3': any2024,
  '2024-T3 sheet': sheet2024,
  '2024-T351 plate': plate2024,
  '304': annealed304,
  '304 annealed': annealed304,
  '316': annealed316,
  '316 annealed': annealed316,
  '304 bar and tube': bar304,
  '316 bar and tube': bar316,
  '17-4PH H900 bar': bar174H900,
  '17-4PH H1025 bar': bar174H1025,
  '4130 normalised': normalised4130,
  '4130 normalised over 0.188 in': thickNormalised4130,
  '4130 HT 125': () => hardened4130(125),
  '4130 HT 150': () => hardened4130(150),
  '4130 HT 180': () => hardened4130(180),
  '4140 annealed': () => steel4140('annealed'),
  '4140 normalised': () => steel4140('normalised'),
  '4140 tempered 425 C': () => steel4140('tempered 425 C'),
  '4140 tempered 540 C': () => steel4140('tempered 540 C'),
  '4140 tempered 650 C': () => steel4140('tempered 650 C'),
  '1018 cold drawn': coldDrawn1018,
  '1020 DOM tube': () => drawnOverMandrel('1020'),
  '1026 DOM tube': () => drawnOverMandrel('1026'),
  '1025 mild steel': mild1025,
  'isomoulded graphite': isomouldedGraphite,
  FKM: fkm,
  NBR: nbr,
  silicone,
  'paper phenolic': paperPhenolic,
  'fabric phenolic': fabricPhenolic,
  'paper tube': paperTube,
} as const satisfies Readonly<Record<string, () => Material>>;

/** The names of the materials of the library. */
export type MaterialName = keyof typeof shelf;

/**
 * A material by name, with the source and basis of every value. The product form is part of the name, since the standards
 * state different minimums for 6061-T6 as drawn tube, extrusion and bar; the alloy alone has the minimum of its forms, with a
 * caution. 4130 and 4140 have no such name, since their strength depends on the heat treatment.
 *
 * @throws MeopError `unknown-name` naming the nearest
 * @example material('6061-T6').ultimateStrength?.value.in('ksi') // => 38
 * @example material('6061-T6 drawn tube').yieldStrength?.value.in('ksi') // => 35
 */
export function material(name: MaterialName | (string & Record<never, never>)): Material {
  if (isMaterialName(name)) return printedMaterial(shelf[name]());
  // In any case and spelling.
  const plain = (text: string): string =>
    text
      .trim()
      .toLowerCase()
      .replace(/normalized/g, 'normalised');
  const wanted = plain(String(name));
  const same = materialNames().find((known) => plain(known) === wanted);
  if (same !== undefined) return printedMaterial(shelf[same]());
  const start = wanted.split(/[\s-]/)[0];
  const near = materialNames().filter((known) => known.toLowerCase().startsWith(start));
  const offered = (near.length > 0 ? near : materialNames()).map((known) => `'${known}'`).join(', ');
  throw new MeopError({
    code: 'unknown-name',
    procedure: 'material',
    given: name,
    note: 'material',
    expected: `${offered}; or an object with name, form, class and strengths, each with its source`,
  });
}

/**
 * The names of the materials of the library.
 *
 * @example materialNames().includes('FKM') // => true
 */
export function materialNames(): readonly MaterialName[] {
  return Object.keys(shelf).filter(isMaterialName);
}

function isMaterialName(name: string): name is MaterialName {
  return Object.hasOwn(shelf, name);
}
