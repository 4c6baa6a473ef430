import { throatDiameter } from '../../firing/motor-inputs';
import {
  fromSiArray,
  fromSiValue,
  length,
  list,
  MeopError,
  optional,
  printable,
  procedure,
  type Quantity,
  ratio,
  type Series,
  table,
  unitOf,
  type Values,
} from '../../units';
import { temperatureFactorSi } from '../burn-law';
import { type ErosiveBurning, erosionLawOf, erosiveBurning } from '../erosive-inputs';
import { grainTemperature } from '../motor-inputs';
import { propellantValue } from '../propellant';
import { lawKernel } from '../read-motor';
import { assumedCoefficient } from './assumed-coefficient';
import { momentumFactor } from './port-inputs';
import { marchPort, type PortGas, portMarch } from './port-march';
import { cellsOf, portShape, sectionsOf } from './port-shape';
import { stationColumns } from './port-stations';
import { solvePort, steady } from './solve-port';

/** The steady flow in a port by one law of erosive burning. */
export interface PortPressure {
  /** The law in words. */
  readonly erosion: string;
  readonly headPressure: Quantity<'absolute pressure'>;
  /** Stagnation pressure that feeds the nozzle. */
  readonly nozzleStagnation: Quantity<'absolute pressure'>;
  /** Static pressure at the aft end. */
  readonly aftPressure: Quantity<'absolute pressure'>;
  readonly massFlow: Quantity<'mass flow'>;
  readonly aftMach: number;
  /** Whether the port chokes before the throat does and sets the pressure. */
  readonly choked: boolean;
  readonly pressure: Series<'absolute pressure'>;
  readonly rate: Series<'speed'>;
  readonly massFlux: Series<'mass flux'>;
  readonly mach: Float64Array;
}

/** The steady flow in a port, by several laws of erosive burning. */
export interface PortPressures {
  readonly position: Series<'length'>;
  readonly laws: readonly PortPressure[];
  readonly cautions: readonly string[];
  toString(): string;
}

const name = 'portPressure';
const cellCount = 400;

const portInputs = {
  propellant: propellantValue,
  port: portShape,
  throatDiameter,
  dischargeCoefficient: optional(
    ratio('C_d', 'mass flow/mass flow of the ideal throat', { above: 0, max: 1.05, example: 0.98 }),
    1,
  ),
  momentumFactor,
  grainTemperature: optional(grainTemperature),
  laws: optional(
    list(
      'laws of erosive burning to compare; none, Mukunda-Paul and Lenoir-Robillard if omitted',
      erosiveBurning,
      {
        min: 1,
      },
    ),
  ),
  stations: optional(
    list('stations; five from end to end if omitted', length('z', 'distance from the head end', { min: 0 }), {
      min: 1,
    }),
  ),
};
type Given = Values<typeof portInputs>;

/**
 * Pressure, burning rate, mass flux and Mach number along a port at one instant of steady burning, with erosive burning: the local rate
 * by the local pressure and flux, integrated along the port, and the head pressure at which the nozzle passes the flow. Several laws stand
 * side by side, since their spread is as large as the effect. Where the port is not larger than the throat it chokes, and the
 * head pressure is that of the choked port. The ends of the grain do not burn; no gas fills the burned volume.
 *
 * @throws MeopError `no-solution` where no pressure balances the flow
 * @example portPressure({ propellant: propellant({ density: '1780 kg/m^3', law: { coefficient: 7, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.32 }, gamma: 1.14, molarMass: '40 g/mol', flameTemperature: '1600 K' }), port: { shape: 'tube', boreDiameter: '20 mm', length: '400 mm' }, throatDiameter: '15.8 mm' }).laws[1].headPressure.in('MPa').toFixed(4) // => '2.0707'
 */
export const portPressure = /* @__PURE__ */ procedure({
  name,
  title: 'Pressure and burning rate along a port with erosive burning',
  source:
    'one-dimensional flow with mass addition and area change, Shapiro (1953) ch. 8; E. W. Price, J. Appl. Phys. (1955); quoted from memory, not verified',
  inputs: portInputs,
  checks: [
    ({ stations, port }) => {
      const end = sectionsOf(port).length;
      const beyond = stations?.findIndex((z) => z.si > end * (1 + 1e-12)) ?? -1;
      return beyond < 0
        ? undefined
        : {
            path: `stations.${beyond}`,
            given: stations?.[beyond],
            expected: `at most the length of the port, ${Number((1000 * end).toPrecision(6))} mm`,
          };
    },
  ],
  gives:
    'the pressures at head, aft end and nozzle, and the flow at each station, by each law of erosive burning',
  example:
    "portPressure({ propellant: publishedPropellant('potassium nitrate/sucrose'), port: { shape: 'tube', boreDiameter: '20 mm', length: '400 mm' }, throatDiameter: '14 mm' })",
  run: (given): PortPressures => {
    const sections = sectionsOf(given.port);
    const stations = Float64Array.from(
      given.stations?.map((z) => Math.min(z.si, sections.length)) ??
        [0, 0.25, 0.5, 0.75, 1].map((part) => part * sections.length),
    );
    const laws = given.laws ?? standardLaws(given);
    const cautions =
      given.laws === undefined
        ? [
            'the constants of Mukunda-Paul are quoted from memory; the coefficient of Lenoir-Robillard is from assumed properties of gas and surface',
          ]
        : [];
    const found = laws.map((law) => solved(given, law, stations));
    const position = fromSiArray('length', stations, 'mm');
    return printable({ position, laws: found, cautions }, () =>
      [
        table(
          found.map((one) => ({
            erosion: one.erosion,
            'head end': one.headPressure,
            'aft end': one.aftPressure,
            'nozzle stagnation': one.nozzleStagnation,
            'mass flow': one.massFlow,
            'aft Mach': one.aftMach.toPrecision(3),
            'aft/head rate': (one.rate.at(-1).si / one.rate.at(0).si).toPrecision(3),
          })),
        ),
        ...cautions.map((caution) => `caution: ${caution}`),
      ].join('\n'),
    );
  },
});

const standardLaws = ({ propellant, grainTemperature: warmth }: Given): readonly ErosiveBurning[] => {
  const read = (law: unknown): ErosiveBurning => erosiveBurning.read(law, { procedure: name, path: 'laws' });
  const coefficient = assumedCoefficient(propellant, warmth?.si ?? propellant.law.referenceTemperature.si);
  return [
    read({ law: 'none' }),
    read({ law: 'mukunda-paul' }),
    read({ law: 'lenoir-robillard', coefficient, lengthOf: 'distance from the head' }),
    read({ law: 'lenoir-robillard', coefficient, lengthOf: 'hydraulic diameter' }),
  ];
};

function solved(given: Given, law: ErosiveBurning, stations: Float64Array): PortPressure {
  const { propellant, momentumFactor: beta } = given;
  const sections = sectionsOf(given.port);
  const cells = cellsOf(sections, cellCount);
  const warmth =
    given.grainTemperature === undefined ? 1 : temperatureFactorSi(propellant.law, given.grainTemperature.si);
  const gas: PortGas = {
    gamma: propellant.gamma,
    gasEnergy: propellant.gasConstant.si * propellant.effectiveTemperature.si,
    density: propellant.density.si,
    momentumFactor: beta,
    entranceLoss: 0,
    law: lawKernel(propellant.law, warmth),
    erosion: erosionLawOf(law),
    fillsBurnedVolume: false,
    settledWithin: 1e-10,
  };
  const passes =
    (given.dischargeCoefficient * (Math.PI / 4) * given.throatDiameter.si ** 2) /
    propellant.characteristicVelocity.si;
  const drive = {
    headPressure: 0,
    headPressureSlope: 0,
    headFlow: 0,
    headVolume: 0,
    ignited: 1,
    liftsChoked: false,
    steepness: 1,
  };
  const march = portMarch(cellCount);
  const solution = solvePort(cells, gas, (p) => passes * p, drive, march, 2e6, steady, 1e-13);
  if (!solution.converged || march.chokedCell >= 0)
    throw new MeopError({
      code: 'no-solution',
      procedure: name,
      path: 'port',
      problem: `no head pressure balances the flow of the port and of the nozzle (last ${(solution.headPressure / 1e6).toPrecision(4)} MPa)`,
      remedy: 'Check throat, port and burn law',
    });
  drive.headPressure = solution.headPressure;
  marchPort(cells, gas, drive, march);
  const columns = stationColumns(sections, gas, solution.headPressure, march, cellCount, stations);
  const pressure = (si: number) => fromSiValue<'absolute pressure'>(si, 'absolute pressure', unitOf('MPa'));
  return {
    erosion: inWords(law),
    headPressure: pressure(solution.headPressure),
    nozzleStagnation: pressure(march.exitStagnation),
    aftPressure: pressure(march.exitPressure),
    massFlow: fromSiValue<'mass flow'>(march.exitFlow, 'mass flow', unitOf('kg/s')),
    aftMach: march.exitMach,
    choked: solution.chokedPort,
    pressure: fromSiArray('absolute pressure', columns.pressure, 'MPa'),
    rate: fromSiArray('speed', columns.rate, 'mm/s'),
    massFlux: fromSiArray('mass flux', columns.massFlux, 'kg/(m^2*s)'),
    mach: columns.mach,
  };
}

const inWords = (law: ErosiveBurning): string =>
  law.law === 'lenoir-robillard'
    ? `Lenoir-Robillard, length ${law.length === undefined ? law.lengthOf : String(law.length)}`
    : { none: 'none', 'mukunda-paul': 'Mukunda-Paul', 'threshold-velocity': 'threshold velocity' }[law.law];
