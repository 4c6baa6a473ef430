import { type Dimension, dimension } from './dimension';
import { MeopError } from './errors';
import { exactProduct } from './exact-factor';
import { parseUnitText } from './unit-grammar';

// Exponents of length, mass, time, temperature and amount, for the compiler. At run time they follow from the unit
// of a kind; a test checks that the two agree.
interface ExponentsOf {
  dimensionless: '0,0,0,0,0';
  angle: '0,0,0,0,0';
  length: '1,0,0,0,0';
  area: '2,0,0,0,0';
  volume: '3,0,0,0,0';
  'second moment of area': '4,0,0,0,0';
  mass: '0,1,0,0,0';
  time: '0,0,1,0,0';
  frequency: '0,0,-1,0,0';
  'angular speed': '0,0,-1,0,0';
  speed: '1,0,-1,0,0';
  'specific impulse': '1,0,-1,0,0';
  acceleration: '1,0,-2,0,0';
  force: '1,1,-2,0,0';
  energy: '2,1,-2,0,0';
  torque: '2,1,-2,0,0';
  pressure: '-1,1,-2,0,0';
  'absolute pressure': '-1,1,-2,0,0';
  'gauge pressure': '-1,1,-2,0,0';
  'pressure difference': '-1,1,-2,0,0';
  stress: '-1,1,-2,0,0';
  density: '-3,1,0,0,0';
  'mass flow': '0,1,-1,0,0';
  'mass flux': '-2,1,-1,0,0';
  'volume flow': '3,0,-1,0,0';
  impulse: '1,1,-1,0,0';
  power: '2,1,-3,0,0';
  'heat flux': '0,1,-3,0,0';
  'heat-transfer coefficient': '0,1,-3,-1,0';
  'thermal insulance': '0,-1,3,1,0';
  'thermal conductivity': '1,1,-3,-1,0';
  'thermal resistance': '-2,-1,3,1,0';
  'specific heat': '2,0,-2,-1,0';
  'specific gas constant': '2,0,-2,-1,0';
  'specific energy': '2,0,-2,0,0';
  temperature: '0,0,0,1,0';
  'temperature difference': '0,0,0,1,0';
  'temperature rate': '0,0,-1,1,0';
  'reciprocal temperature': '0,0,0,-1,0';
  'thermal expansion': '0,0,0,-1,0';
  'temperature sensitivity': '0,0,0,-1,0';
  amount: '0,0,0,0,1';
  'molar mass': '0,1,0,0,-1';
  'molar energy': '2,1,-2,0,-1';
  'molar heat capacity': '2,1,-2,-1,-1';
  'pressure integral': '-1,1,-1,0,0';
  'dynamic viscosity': '-1,1,-1,0,0';
  'kinematic viscosity': '2,0,-1,0,0';
  'thermal diffusivity': '2,0,-1,0,0';
  stiffness: '0,1,-2,0,0';
  'moment of inertia': '2,1,0,0,0';
  'pressure rate': '-1,1,-3,0,0';
  'force rate': '1,1,-3,0,0';
  'fracture toughness': '-0.5,1,-2,0,0';
}

// The unit in which a kind is shown, metric and, where it differs, US; and, for one meaning of a more general kind of the same
// dimension, that kind: a torque is not an energy.
const rows = {
  dimensionless: '1',
  angle: 'deg',
  length: 'mm|in',
  area: 'mm^2|in^2',
  volume: 'cm^3|in^3',
  'second moment of area': 'mm^4|in^4',
  mass: 'kg|lb',
  time: 's',
  frequency: 'Hz',
  'angular speed': 'rad/s|rpm',
  speed: 'm/s|ft/s',
  'specific impulse': 's|s|speed',
  acceleration: 'm/s^2|ft/s^2',
  force: 'N|lbf',
  energy: 'J|ft*lbf',
  torque: 'N*m|in*lbf|energy',
  pressure: 'MPa|psi',
  'absolute pressure': 'MPa|psi|pressure',
  'gauge pressure': 'MPa|psi|pressure',
  'pressure difference': 'MPa|psi|pressure',
  stress: 'MPa|psi|pressure',
  density: 'kg/m^3|lb/in^3',
  'mass flow': 'kg/s|lb/s',
  'mass flux': 'kg/(m^2*s)|lb/(in^2*s)',
  'volume flow': 'm^3/s|ft^3/s',
  impulse: 'N*s|lbf*s',
  power: 'W|hp',
  'heat flux': 'W/m^2|Btu/(s*in^2)',
  'heat-transfer coefficient': 'W/(m^2*K)|Btu/(s*in^2*degF)',
  'thermal insulance': 'm^2*K/W|ft^2*h*degF/Btu',
  'thermal conductivity': 'W/(m*K)|Btu/(h*ft*degF)',
  'thermal resistance': 'K/W',
  'specific heat': 'J/(kg*K)|Btu/(lb*degF)',
  'specific gas constant': 'J/(kg*K)|ft*lbf/(lb*degR)|specific heat',
  'specific energy': 'J/kg|Btu/lb',
  temperature: 'K|degF',
  'temperature difference': 'delta_K|delta_degF|temperature',
  'temperature rate': 'K/s',
  'reciprocal temperature': '1/K|1/degF',
  'thermal expansion': '1/K|1/degF|reciprocal temperature',
  'temperature sensitivity': '1/K|1/degF|reciprocal temperature',
  amount: 'mol',
  'molar mass': 'g/mol',
  'molar energy': 'J/mol',
  'molar heat capacity': 'J/(mol*K)',
  'pressure integral': 'MPa*s|psi*s',
  'dynamic viscosity': 'Pa*s|lbf*s/in^2|pressure integral',
  'kinematic viscosity': 'm^2/s|ft^2/s',
  'thermal diffusivity': 'm^2/s|ft^2/s|kinematic viscosity',
  stiffness: 'N/m|lbf/in',
  'moment of inertia': 'kg*m^2|lb*in^2',
  'pressure rate': 'MPa/s|psi/s',
  'force rate': 'N/s|lbf/s',
  'fracture toughness': 'MPa*m^0.5|ksi*in^0.5',
} as const satisfies Record<keyof ExponentsOf, string>;

type Rows = typeof rows;

/** A named kind of quantity, such as `'length'` or `'gauge pressure'`. */
export type NamedKind = keyof Rows;

/** A named kind, or the dimension itself where it has no name. */
export type Kind = NamedKind | `dimension ${string}`;

/** The kind of which a kind is one meaning: `'pressure'` for `'gauge pressure'`; itself where there is none. */
export type GeneralOf<K extends Kind> = K extends NamedKind
  ? Rows[K] extends `${string}|${string}|${infer G extends NamedKind}`
    ? G
    : K
  : K;

/** Exponents as a string, the key for the kind of a product. */
export type DimensionText<K extends Kind> = K extends NamedKind
  ? ExponentsOf[K]
  : K extends `dimension ${infer D}`
    ? D
    : never;

/** The general kind for each dimension that has one. */
export type KindOfDimension = {
  [K in NamedKind as GeneralOf<K> extends K
    ? K extends 'angle' | 'angular speed'
      ? never
      : DimensionText<K>
    : never]: K;
};

/** Data of a kind at run time. */
export interface KindFacts {
  readonly dimension: Dimension;
  /** The more general kind of the same dimension; the kind itself where there is none. */
  readonly general: Kind;
  /** Default metric unit. */
  readonly metric: string;
  /** US unit, used where the inputs were in US units. */
  readonly us: string;
}

interface KindIndex {
  readonly facts: ReadonlyMap<string, KindFacts>;
  readonly general: ReadonlyMap<number, NamedKind>;
}
let index: KindIndex | undefined; // built on first use, so that importing costs nothing

function kindIndex(): KindIndex {
  if (index) return index;
  const facts = new Map<string, KindFacts>();
  const general = new Map<number, NamedKind>();
  for (const kind of namedKinds()) {
    const [metric, us = metric, of = kind] = rows[kind].split('|');
    // A second of specific impulse is not a second: a separate kind has the dimension of its general kind.
    const dim = facts.get(of)?.dimension ?? exactProduct(parseUnitText(metric, 0)).dimension;
    facts.set(kind, { dimension: dim, general: isNamedKind(of) ? of : kind, metric, us });
    if (!general.has(dim.key)) general.set(dim.key, kind); // the first of a dimension: angles come later
  }
  index = { facts, general };
  return index;
}

/** Every named kind. */
export function namedKinds(): readonly NamedKind[] {
  return Object.keys(rows).filter(isNamedKind);
}

/** True if a string is the name of a kind. */
export function isNamedKind(text: string): text is NamedKind {
  return Object.hasOwn(rows, text);
}

/** The data of a kind; `undefined` for a dimension without a name. */
export function kindFacts(kind: Kind): KindFacts | undefined {
  return kindIndex().facts.get(kind);
}

/** The general kind of a dimension: `'energy'` for N·m, `'dimension 1,0,1,0,0'` for m·s. */
export function kindOfDimension(dim: Dimension): Kind {
  dim.kind ??= kindIndex().general.get(dim.key) ?? `dimension ${dim.exponents.join(',')}`;
  return dim.kind;
}

/** The kind of which a kind is one meaning. */
export function generalKind(kind: Kind): Kind {
  return kindFacts(kind)?.general ?? kind;
}

/** The dimension of a kind. */
export function dimensionOfKind(kind: Kind): Dimension {
  const facts = kindFacts(kind);
  if (facts) return facts.dimension;
  if (!kind.startsWith('dimension '))
    throw new MeopError({ code: 'unknown-kind', given: kind, expected: 'see namedKinds()' });
  const [l, m, t, k, n] = kind.slice('dimension '.length).split(',').map(Number);
  return dimension([l, m, t, k, n]);
}
