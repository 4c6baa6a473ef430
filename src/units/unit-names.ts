import type { GeneralOf, Kind, NamedKind } from './kinds';

// The unit strings that the compiler checks and an editor completes, by kind. Any other product of atoms
// also parses at run time (`quantity('density', '3 oz/in^3')`). Kinds that add nothing to their general kind are empty.
const names = {
  dimensionless: ['%'],
  angle: ['deg', 'rad', 'mrad', 'arcmin', 'rev', '°'],
  length: ['m', 'mm', 'cm', 'km', 'µm', 'um', 'in', 'ft', 'yd', 'mi', 'mil', 'thou', 'uin', 'nmi'],
  area: ['m^2', 'cm^2', 'mm^2', 'in^2', 'ft^2', 'm²', 'cm²', 'mm²', 'in²'],
  volume: ['m^3', 'cm^3', 'mm^3', 'L', 'mL', 'in^3', 'ft^3', 'm³', 'cm³', 'mm³', 'in³', 'US_gal', 'UK_gal'],
  'second moment of area': ['m^4', 'cm^4', 'mm^4', 'in^4'],
  mass: ['kg', 'g', 'mg', 't', 'lb', 'oz', 'gr', 'slug', 'short_ton', 'long_ton'],
  time: ['s', 'ms', 'µs', 'us', 'min', 'h'],
  frequency: ['Hz', 'kHz', 'MHz', '1/s'],
  'angular speed': ['rad/s', 'rpm', 'deg/s'],
  speed: ['m/s', 'mm/s', 'cm/s', 'km/s', 'km/h', 'in/s', 'ft/s', 'mph', 'kn', 'N*s/kg', 'lbf*s/lb'],
  'specific impulse': [],
  acceleration: ['m/s^2', 'ft/s^2', 'gn', 'm/s²'],
  force: ['N', 'kN', 'MN', 'mN', 'lbf', 'kip', 'ozf', 'kgf', 'gf', 'dyn', 'pdl'],
  energy: [
    'J',
    'kJ',
    'MJ',
    'N*m',
    'N·m',
    'N*mm',
    'kN*m',
    'ft*lbf',
    'in*lbf',
    'lbf*ft',
    'lbf*in',
    'Btu',
    'cal_th',
    'kWh',
  ],
  torque: [],
  pressure: [
    ...[
      'Pa',
      'hPa',
      'kPa',
      'MPa',
      'GPa',
      'bar',
      'mbar',
      'psi',
      'ksi',
      'Msi',
      'psf',
      'atm',
      'at',
      'Torr',
      'mmHg',
      'inHg',
    ],
    ...['inH2O', 'mH2O', 'N/mm^2', 'N/m^2', 'lbf/in^2', 'kgf/cm^2'],
  ] as const,
  'absolute pressure': ['psia', 'bara', 'kPaa', 'MPaa'],
  'gauge pressure': ['psig', 'barg', 'kPag', 'MPag'],
  'pressure difference': ['psid'],
  stress: [],
  density: ['kg/m^3', 'g/cm^3', 'g/mL', 'kg/L', 'lb/in^3', 'lb/ft^3', 'slug/ft^3', 'kg/m³', 'g/cm³'],
  'mass flow': ['kg/s', 'g/s', 'lb/s', 'lb/min'],
  'mass flux': ['kg/(m^2*s)', 'g/(cm^2*s)', 'lb/(in^2*s)', 'lb/(ft^2*s)'],
  'volume flow': ['m^3/s', 'L/s', 'L/min', 'ft^3/s', 'cfm', 'gpm'],
  impulse: ['N*s', 'kN*s', 'lbf*s', 'N·s'],
  power: ['W', 'kW', 'MW', 'hp', 'metric_hp', 'Btu/h', 'Btu/s'],
  'heat flux': ['W/m^2', 'kW/m^2', 'MW/m^2', 'W/cm^2', 'Btu/(h*ft^2)', 'Btu/(s*in^2)', 'Btu/(s*ft^2)'],
  'heat-transfer coefficient': ['W/(m^2*K)', 'kW/(m^2*K)', 'Btu/(h*ft^2*degF)', 'Btu/(s*in^2*degF)'],
  'thermal insulance': ['m^2*K/W', 'ft^2*h*degF/Btu'],
  'thermal conductivity': ['W/(m*K)', 'Btu/(h*ft*degF)', 'Btu*in/(h*ft^2*degF)', 'cal_th/(s*cm*K)'],
  'thermal resistance': ['K/W'],
  'specific heat': ['J/(kg*K)', 'kJ/(kg*K)', 'J/(g*K)', 'Btu/(lb*degF)', 'cal_th/(g*K)', 'ft*lbf/(lb*degR)'],
  'specific gas constant': [],
  'specific energy': ['J/kg', 'kJ/kg', 'MJ/kg', 'J/g', 'Btu/lb'],
  temperature: ['K', 'degC', 'degF', 'degR', '°C', '°F'],
  'temperature difference': ['delta_K', 'delta_degC', 'delta_degF'],
  'temperature rate': ['K/s', 'K/min', 'degC/s', 'degF/s'],
  'reciprocal temperature': ['1/K', '1/degC', '1/degF', '%/K'],
  'thermal expansion': ['µm/(m*K)'],
  'temperature sensitivity': [],
  amount: ['mol', 'kmol', 'mmol'],
  'molar mass': ['g/mol', 'kg/mol', 'kg/kmol'],
  'molar energy': ['J/mol', 'kJ/mol'],
  'molar heat capacity': ['J/(mol*K)', 'J/(kmol*K)'],
  'pressure integral': ['Pa*s', 'MPa*s', 'psi*s', 'bar*s'],
  'dynamic viscosity': ['P', 'cP', 'lb/(ft*s)', 'lbf*s/in^2'],
  'kinematic viscosity': ['m^2/s', 'mm^2/s', 'ft^2/s', 'St', 'cSt'],
  'thermal diffusivity': [],
  stiffness: ['N/m', 'N/mm', 'kN/mm', 'lbf/in', 'lbf/ft'],
  'moment of inertia': ['kg*m^2', 'g*cm^2', 'lb*in^2', 'lb*ft^2'],
  'pressure rate': ['Pa/s', 'MPa/s', 'bar/s', 'psi/s'],
  'force rate': ['N/s', 'kN/s', 'lbf/s'],
  'fracture toughness': ['MPa*m^0.5', 'ksi*in^0.5'],
} as const satisfies Record<NamedKind, readonly string[]>;

type Names = typeof names;
type Own<K> = K extends NamedKind ? Names[K][number] : never;

/** In specific impulse a second is standard gravity times a second; everywhere else it is a second. */
type InContext<K> = K extends 'specific impulse' ? 's' : K extends 'temperature difference' ? 'K' : never;

/** The unit strings of a kind that the compiler knows: its own and those of its general kind. */
export type UnitOf<K extends Kind> = K extends NamedKind
  ? K extends 'temperature difference'
    ? Own<K> | InContext<K>
    : Own<K> | Own<GeneralOf<K>> | InContext<K>
  : string;

/** The kind of a unit string by itself. */
export type KindOfUnit<U extends string> = U extends keyof KindByUnit ? KindByUnit[U] : Kind;
type KindByUnit = { [K in NamedKind as Names[K][number]]: K };

/** The unit strings listed for a kind, its own first. */
export function unitNames(kind: NamedKind): readonly string[] {
  return names[kind];
}
