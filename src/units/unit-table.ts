import type { NamedKind } from './kinds';

// Every atom is defined by an expression in other atoms down to m, kg (as 1000 g), s, K, mol; factors are
// computed exactly with decimal.js, so no rounded factor can be entered here.
// Columns: definition; the allowed prefixes (blank: none); the kind it implies (blank: by dimension).
// Sources: SI Brochure 9th ed. (2019) for SI and accepted units; international yard and pound agreement
// (1959): yd = 0.9144 m, lb = 0.45359237 kg; 3rd CGPM (1901): gn; 10th CGPM (1954): atm;
// NIST SP 811 (2008) appendix B: IT and thermochemical calorie and Btu, US gallon, conventional mercury and water.
type Row = readonly [definition: string, prefixes?: string, kind?: NamedKind];

/** The atoms of unit strings. */
export const atoms: Readonly<Record<string, Row>> = {
  m: ['', 'n u m c d k'],
  g: ['', 'n u m k'],
  s: ['', 'n u m'],
  K: ['', 'm k'],
  mol: ['', 'm k'],
  lbmol: ['lb/g*mol'],
  rad: ['1', 'm', 'angle'],
  '1': ['1'],
  '%': ['0.01'],
  ppm: ['0.000001'],
  // length
  in: ['0.0254*m'],
  ft: ['12*in'],
  yd: ['3*ft'],
  mi: ['5280*ft'],
  mil: ['0.001*in'],
  uin: ['0.000001*in'],
  nmi: ['1852*m'],
  US_survey_ft: ['1200/3937*m'],
  // volume
  L: ['0.001*m^3', 'u m c d'],
  cc: ['cm^3'],
  US_gal: ['231*in^3'],
  US_fl_oz: ['US_gal/128'],
  UK_gal: ['4.54609*L'],
  // mass
  t: ['1000*kg'],
  lb: ['0.45359237*kg'],
  oz: ['lb/16'],
  gr: ['lb/7000'],
  short_ton: ['2000*lb'],
  long_ton: ['2240*lb'],
  slug: ['lbf*s^2/ft'],
  // time, angle, frequency, speed
  min: ['60*s'],
  h: ['3600*s'],
  deg: ['pi/180', '', 'angle'],
  arcmin: ['pi/10800', '', 'angle'],
  rev: ['2*pi', '', 'angle'],
  Hz: ['1/s', 'm k M G'],
  rpm: ['2*pi/60/s', '', 'angular speed'],
  mph: ['mi/h'],
  kn: ['nmi/h'],
  gn: ['9.80665*m/s^2'],
  // force
  N: ['kg*m/s^2', 'u m k M'],
  dyn: ['0.00001*N'],
  kgf: ['kg*gn'],
  gf: ['g*gn'],
  lbf: ['lb*gn'],
  ozf: ['oz*gn'],
  kip: ['1000*lbf'],
  pdl: ['lb*ft/s^2'],
  // pressure
  Pa: ['N/m^2', 'h k M G'],
  bar: ['100000*Pa', 'm'],
  atm: ['101325*Pa'],
  at: ['kgf/cm^2'],
  psi: ['lbf/in^2'],
  ksi: ['1000*psi'],
  Msi: ['1000*ksi'],
  psf: ['lbf/ft^2'],
  Torr: ['atm/760'],
  mmHg: ['13595.1*kg/m^3*gn*mm'],
  inHg: ['13595.1*kg/m^3*gn*in'],
  inH2O: ['1000*kg/m^3*gn*in'],
  mH2O: ['1000*kg/m^3*gn*m'],
  psig: ['psi', '', 'gauge pressure'],
  barg: ['bar', '', 'gauge pressure'],
  Pag: ['Pa', 'k M', 'gauge pressure'],
  psia: ['psi', '', 'absolute pressure'],
  bara: ['bar', '', 'absolute pressure'],
  Paa: ['Pa', 'k M', 'absolute pressure'],
  psid: ['psi', '', 'pressure difference'],
  Pad: ['Pa', '', 'pressure difference'],
  // energy and power
  J: ['N*m', 'm k M'],
  W: ['J/s', 'm k M'],
  Wh: ['W*h', 'k'],
  erg: ['0.0000001*J'],
  eV: ['0.0000000000000000001602176634*J'],
  cal_th: ['4.184*J', 'k'],
  cal_IT: ['4.1868*J', 'k'],
  Btu: ['cal_IT*lb/g*5/9'],
  Btu_th: ['cal_th*lb/g*5/9'],
  kg_TNT: ['4184000*J'],
  hp: ['550*ft*lbf/s'],
  metric_hp: ['75*kgf*m/s'],
  // viscosity, flow
  P: ['0.1*Pa*s', 'c', 'dynamic viscosity'],
  St: ['0.0001*m^2/s', 'c', 'kinematic viscosity'],
  cfm: ['ft^3/min'],
  gpm: ['US_gal/min'],
  // temperature: points are handled where a number is combined with the unit; in a product they are differences
  degC: ['K'],
  degF: ['5/9*K'],
  degR: ['5/9*K'],
  delta_K: ['K', '', 'temperature difference'],
  delta_degC: ['K', '', 'temperature difference'],
  delta_degF: ['5/9*K', '', 'temperature difference'],
};

/**
 * The reading at the ice point and the size of a degree in kelvin, for scales with a separate zero: SI Brochure
 * 2.3.1; NIST SP 811 B.8.
 */
export const icePoints: Readonly<Record<string, number | undefined>> = { degC: 0, degF: 32 };
export const icePointKelvin = 273.15;

/** Other spellings of an atom, each with exactly one meaning; the grammar also accepts the plural of a word. */
export const spellings: Readonly<Record<string, string>> = {
  '℃': 'degC',
  '℉': 'degF',
  inch: 'in',
  '"': 'in',
  '″': 'in',
  feet: 'ft',
  foot: 'ft',
  thou: 'mil',
  micron: 'um',
  l: 'L',
  ml: 'mL',
  gram: 'g',
  grain: 'gr',
  tonne: 't',
  lbm: 'lb',
  sec: 's',
  second: 's',
  minute: 'min',
  hour: 'h',
  hr: 'h',
  degree: 'deg',
  torr: 'Torr',
  BTU: 'Btu',
  g0: 'gn',
};

const tons = 't, short_ton or long_ton';
const pound = 'lb (mass) or lbf (force)';
/** Ambiguous spellings, with the correct ones. */
export const refusals: Readonly<Record<string, string>> = {
  F: 'degF or °F',
  C: 'degC or °C',
  R: 'degR',
  degK: 'K',
  M: 'm or min',
  mPa: 'MPa (m is milli), or Pa',
  cal: 'cal_th or cal_IT',
  kcal: 'kcal_th or kcal_IT',
  ton: tons,
  tons,
  gal: 'US_gal or UK_gal',
  G: 'gn',
  lbs: pound,
  pound,
  '#': pound,
};

/** The multiples of the prefixes. */
export const prefixes: Readonly<Record<string, string>> = {
  n: '1e-9',
  u: '1e-6',
  m: '1e-3',
  c: '1e-2',
  d: '1e-1',
  h: '1e2',
  k: '1e3',
  M: '1e6',
  G: '1e9',
};

/** The superscript digits, each at its own index. */
export const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';
