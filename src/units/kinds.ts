import { type Dimension, dimension } from './dimension';

// One row a kind: exponents of length, mass, time, temperature, amount; the unit it is shown in, metric and US; and
// for one meaning of a more general kind of the same dimension, that kind: a torque is not an energy.
const rows = {
  dimensionless: '0,0,0,0,0|1|1',
  angle: '0,0,0,0,0|deg|deg',
  length: '1,0,0,0,0|mm|in',
  area: '2,0,0,0,0|mm^2|in^2',
  volume: '3,0,0,0,0|cm^3|in^3',
  'second moment of area': '4,0,0,0,0|mm^4|in^4',
  mass: '0,1,0,0,0|kg|lb',
  time: '0,0,1,0,0|s|s',
  frequency: '0,0,-1,0,0|Hz|Hz',
  'angular speed': '0,0,-1,0,0|rad/s|rpm|frequency',
  speed: '1,0,-1,0,0|m/s|ft/s',
  'specific impulse': '1,0,-1,0,0|s|s|speed',
  acceleration: '1,0,-2,0,0|m/s^2|ft/s^2',
  force: '1,1,-2,0,0|N|lbf',
  energy: '2,1,-2,0,0|J|ft*lbf',
  torque: '2,1,-2,0,0|N*m|in*lbf|energy',
  pressure: '-1,1,-2,0,0|MPa|psi',
  'absolute pressure': '-1,1,-2,0,0|MPa|psi|pressure',
  'gauge pressure': '-1,1,-2,0,0|MPa|psi|pressure',
  'pressure difference': '-1,1,-2,0,0|MPa|psi|pressure',
  stress: '-1,1,-2,0,0|MPa|psi|pressure',
  density: '-3,1,0,0,0|kg/m^3|lb/in^3',
  'mass flow': '0,1,-1,0,0|kg/s|lb/s',
  'mass flux': '-2,1,-1,0,0|kg/(m^2*s)|lb/(in^2*s)',
  'volume flow': '3,0,-1,0,0|m^3/s|ft^3/s',
  impulse: '1,1,-1,0,0|N*s|lbf*s',
  power: '2,1,-3,0,0|W|hp',
  'heat flux': '0,1,-3,0,0|W/m^2|Btu/(s*in^2)',
  'heat-transfer coefficient': '0,1,-3,-1,0|W/(m^2*K)|Btu/(s*in^2*degF)',
  'thermal insulance': '0,-1,3,1,0|m^2*K/W|ft^2*h*degF/Btu',
  'thermal conductivity': '1,1,-3,-1,0|W/(m*K)|Btu/(h*ft*degF)',
  'thermal resistance': '-2,-1,3,1,0|K/W|K/W',
  'specific heat': '2,0,-2,-1,0|J/(kg*K)|Btu/(lb*degF)',
  'specific gas constant': '2,0,-2,-1,0|J/(kg*K)|ft*lbf/(lb*degR)|specific heat',
  'specific energy': '2,0,-2,0,0|J/kg|Btu/lb',
  temperature: '0,0,0,1,0|K|degF',
  'temperature difference': '0,0,0,1,0|delta_K|delta_degF|temperature',
  'temperature rate': '0,0,-1,1,0|K/s|K/s',
  'reciprocal temperature': '0,0,0,-1,0|1/K|1/degF',
  'thermal expansion': '0,0,0,-1,0|1/K|1/degF|reciprocal temperature',
  'temperature sensitivity': '0,0,0,-1,0|1/K|1/degF|reciprocal temperature',
  amount: '0,0,0,0,1|mol|mol',
  'molar mass': '0,1,0,0,-1|g/mol|g/mol',
  'molar energy': '2,1,-2,0,-1|J/mol|J/mol',
  'molar heat capacity': '2,1,-2,-1,-1|J/(mol*K)|J/(mol*K)',
  'pressure integral': '-1,1,-1,0,0|MPa*s|psi*s',
  'dynamic viscosity': '-1,1,-1,0,0|Pa*s|lbf*s/in^2|pressure integral',
  'kinematic viscosity': '2,0,-1,0,0|m^2/s|ft^2/s',
  'thermal diffusivity': '2,0,-1,0,0|m^2/s|ft^2/s|kinematic viscosity',
  stiffness: '0,1,-2,0,0|N/m|lbf/in',
  'moment of inertia': '2,1,0,0,0|kg*m^2|lb*in^2',
  'pressure rate': '-1,1,-3,0,0|MPa/s|psi/s',
  'force rate': '1,1,-3,0,0|N/s|lbf/s',
  'fracture toughness': '-0.5,1,-2,0,0|MPa*m^0.5|ksi*in^0.5',
} as const;

type Rows = typeof rows;

/** A named kind of quantity, such as `'length'` or `'gauge pressure'`. */
export type NamedKind = keyof Rows;

/** A named kind, or the dimension itself where the trade has no name for it. */
export type Kind = NamedKind | `dimension ${string}`;

/** The kind that a kind is one meaning of: `'pressure'` for `'gauge pressure'`; itself where there is none. */
export type GeneralOf<K extends Kind> = K extends NamedKind
  ? Rows[K] extends `${string}|${string}|${string}|${infer G extends NamedKind}`
    ? G
    : K
  : K;

/** Exponents as text, the key by which the compiler finds a product's kind. */
export type DimensionText<K extends Kind> = K extends NamedKind
  ? Rows[K] extends `${infer D}|${string}`
    ? D
    : never
  : K extends `dimension ${infer D}`
    ? D
    : never;

/** The general kind for each dimension that has one. */
export type KindOfDimension = {
  [K in NamedKind as GeneralOf<K> extends K ? (K extends 'angle' ? never : DimensionText<K>) : never]: K;
};

/** What the library knows of a kind at run time. */
export interface KindFacts {
  readonly kind: Kind;
  readonly dimension: Dimension;
  /** The more general kind of the same dimension; the kind itself where there is none. */
  readonly general: Kind;
  /** The metric unit it is shown in unless asked otherwise. */
  readonly metric: string;
  /** The US unit it is shown in where the givens were in US units. */
  readonly us: string;
}

interface KindIndex {
  readonly facts: ReadonlyMap<string, KindFacts>;
  readonly general: ReadonlyMap<number, NamedKind>;
}
let index: KindIndex | undefined; // built at first use, so that importing costs nothing

function kindIndex(): KindIndex {
  if (index) return index;
  const facts = new Map<string, KindFacts>();
  const general = new Map<number, NamedKind>();
  for (const kind of namedKinds()) {
    const [exponents, metric, us, of = kind] = rows[kind].split('|');
    const dim = dimensionOf(exponents);
    facts.set(kind, { kind, dimension: dim, general: isNamedKind(of) ? of : kind, metric, us });
    if (of === kind && kind !== 'angle') general.set(dim.key, kind);
  }
  index = { facts, general };
  return index;
}

/** Every named kind. */
export function namedKinds(): readonly NamedKind[] {
  return Object.keys(rows).filter(isNamedKind);
}

/** Whether a text is the name of a kind. */
export function isNamedKind(text: string): text is NamedKind {
  return Object.hasOwn(rows, text);
}

/** The facts of a kind; `undefined` for a dimension that has no name. */
export function kindFacts(kind: Kind): KindFacts | undefined {
  return kindIndex().facts.get(kind);
}

/** The general kind of a dimension: `'energy'` for N·m, `'dimension 1,0,1,0,0'` for m·s. */
export function kindOfDimension(dim: Dimension): Kind {
  dim.kind ??= kindIndex().general.get(dim.key) ?? `dimension ${dim.exponents.join(',')}`;
  return dim.kind;
}

/** The kind that a kind is one meaning of. */
export function generalKind(kind: Kind): Kind {
  return kindFacts(kind)?.general ?? kind;
}

/** The dimension of a kind. */
export function dimensionOfKind(kind: Kind): Dimension {
  const facts = kindFacts(kind);
  if (facts) return facts.dimension;
  return dimensionOf(kind.slice('dimension '.length));
}

function dimensionOf(text: string): Dimension {
  const [l, m, t, k, n] = text.split(',').map(Number);
  return dimension([l, m, t, k, n]);
}
