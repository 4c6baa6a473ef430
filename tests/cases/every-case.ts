import atmosphere from './atmosphere.json';
import ballistics from './ballistics.json';
import firing from './firing.json';
import flow from './flow.json';
import gasNozzle from './gas-nozzle.json';
import hardware from './hardware.json';
import oRings from './o-rings-millimetres.json';
import type { Case, CaseValue } from './read-case';
import structures from './structures.json';
import thermo from './thermo.json';

/** The cases of one file, as the validation report lays them out. */
export interface CaseFile {
  readonly file: string;
  readonly title: string;
  /** One row per case, where all share what they say and their source. */
  readonly oneTable: boolean;
  readonly cases: readonly Case[];
}

// 'The source; provenance: where it was seen' → both parts.
const origin = (text: string): { readonly source: string; readonly provenance: string } => {
  const [source, provenance = 'published, seen'] = text.split('; provenance: ');
  return { source, provenance };
};

const heights: readonly Case[] = atmosphere.checkPoints.map(({ zM, T, P, rho, a, mu }) => ({
  id: `atmosphere at ${zM} m`,
  topic: 'atmosphere',
  what: 'U.S. Standard Atmosphere 1976 by geometric altitude; T is the molecular-scale temperature',
  inputs: { altitude: `${zM} m` },
  expected: {
    T: `${T} K`,
    P: `${P} Pa`,
    rho: `${rho} kg/m^3`,
    a: `${a} m/s`,
    mu: `${mu} Pa s`,
  },
  relTol: 6e-5,
  ...origin(atmosphere.source),
}));

const rings: readonly Case[] = oRings.rows.map(([dash, ...values]) => ({
  id: `O-ring ${dash}`,
  topic: 'o-ring',
  what: 'sizes and tolerances, rounded by the list to hundredths of a millimetre',
  inputs: {},
  expected: Object.fromEntries(oRings.columns.slice(1).map((name, i) => [name, `${values[i]} mm`])),
  relTol: 1e-3,
  ...origin(oRings.source),
}));

const list = (cases: readonly Case[]): readonly Case[] => cases;

/** Every check value under tests/cases. */
export const caseFiles: readonly CaseFile[] = [
  { file: 'gas-nozzle.json', title: 'Gas dynamics and nozzles', oneTable: false, cases: list(gasNozzle) },
  { file: 'thermo.json', title: 'Species and equilibrium', oneTable: false, cases: list(thermo) },
  { file: 'structures.json', title: 'Structures', oneTable: false, cases: list(structures) },
  { file: 'hardware.json', title: 'Hardware', oneTable: false, cases: list(hardware) },
  { file: 'ballistics.json', title: 'Ballistics', oneTable: false, cases: list(ballistics) },
  { file: 'flow.json', title: 'Flow, ignition and heat loss', oneTable: false, cases: list(flow) },
  { file: 'firing.json', title: 'Reduction of firings', oneTable: false, cases: list(firing) },
  { file: 'atmosphere.json', title: 'Standard atmosphere', oneTable: true, cases: heights },
  { file: 'o-rings-millimetres.json', title: 'O-ring sizes', oneTable: true, cases: rings },
];

/** The case of an id, whichever file holds it. */
export function caseById(id: string): Case {
  const found = caseFiles.flatMap(({ cases }) => cases).find((one) => one.id === id);
  if (found === undefined) throw new Error(`no case ${id}`);
  return found;
}

/** The numbers that a case expects, each under its name: `pressure`, or `pressure[2]` where it is of a list. */
export function expectedNumbers(one: Case): readonly (readonly [string, number | string])[] {
  const of = (
    name: string,
    value: CaseValue | undefined,
  ): readonly (readonly [string, number | string])[] => {
    if (
      typeof value === 'number' ||
      (typeof value === 'string' && /^-?[\d.]+(e[-+]?\d+)?( \S|$)/.test(value))
    )
      return [[name, value]];
    return Array.isArray(value) ? value.flatMap((part, i) => of(`${name}[${i}]`, part)) : [];
  };
  return Object.entries(one.expected).flatMap(([name, value]) => of(name, value));
}
