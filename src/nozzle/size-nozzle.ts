import { vandenkerckhoveSi } from '../thermo/isentropic-kernels';
import {
  fromSiValue,
  type NamedKind,
  type Quantity,
  type QuantityInput,
  readInput,
  table,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readNotNegative, refusal } from '../units/refusal';
import { coneLength } from './cone-geometry';
import { optimumExpansionRatio } from './expansion';
import { idealNozzle } from './ideal-nozzle';
import { conicalDivergenceFactor } from './losses';
import { deliveredThrustCoefficient } from './nozzle-efficiency';
import { thrustCoefficientPartsSi } from './thrust-coefficient';

const procedure = 'sizeNozzle';

/** Target of a nozzle: a thrust, or the mass flow of a burning surface. */
export type SizingTarget =
  | { readonly thrust: QuantityInput<'force'> }
  | {
      readonly burningArea: QuantityInput<'area'>;
      /** Burn rate at the chamber pressure. */
      readonly burnRate: QuantityInput<'speed'>;
      readonly propellantDensity: QuantityInput<'density'>;
    }
  | {
      readonly burningArea: QuantityInput<'area'>;
      /** Burn rate by Saint-Robert's law: its rate at a reference pressure, and the exponent. */
      readonly burnLaw: {
        readonly referenceRate: QuantityInput<'speed'>;
        readonly referencePressure: QuantityInput<'absolute pressure'>;
        readonly exponent: number;
      };
      readonly propellantDensity: QuantityInput<'density'>;
    };

/** Options of {@link sizeNozzle}. */
export interface SizeNozzleOptions {
  readonly target: SizingTarget;
  /** Chamber stagnation pressure. */
  readonly chamberPressure: QuantityInput<'absolute pressure'>;
  readonly ambientPressure: QuantityInput<'absolute pressure'>;
  /** Of the mixture, if the exhaust contains droplets. */
  readonly gamma: number;
  /** Delivered characteristic velocity: ideal times its efficiency. */
  readonly characteristicVelocity: QuantityInput<'speed'>;
  /** Exit/throat area ratio; default the optimum for the ambient pressure. */
  readonly expansionRatio?: number;
  /** Half angle of the divergent cone; default 12°. */
  readonly halfAngle?: QuantityInput<'angle'>;
  /** Half angle of the convergent cone; default 45°. */
  readonly convergentHalfAngle?: QuantityInput<'angle'>;
  /** Diameter at the start of the convergent section; without it no convergent length is given. */
  readonly inletDiameter?: QuantityInput<'length'>;
  /** Product of the losses except divergence; default 1. See {@link nozzleEfficiency}. */
  readonly efficiency?: number;
  /** Actual/ideal mass flow of the throat; default 1. */
  readonly dischargeCoefficient?: number;
}

/** A sized nozzle. */
export interface SizedNozzle {
  readonly throatDiameter: Quantity<'length'>;
  readonly exitDiameter: Quantity<'length'>;
  readonly throatArea: Quantity<'area'>;
  readonly expansionRatio: number;
  readonly idealThrustCoefficient: number;
  readonly thrustCoefficient: number;
  readonly thrust: Quantity<'force'>;
  readonly massFlow: Quantity<'mass flow'>;
  readonly specificImpulse: Quantity<'specific impulse'>;
  readonly exitPressure: Quantity<'absolute pressure'>;
  readonly halfAngle: Quantity<'angle'>;
  readonly convergentHalfAngle: Quantity<'angle'>;
  /** Length along the axis of straight cones; see {@link nozzleContour} for rounded transitions. */
  readonly divergentLength: Quantity<'length'>;
  readonly convergentLength?: Quantity<'length'>;
  readonly cautions: readonly string[];
  toString(): string;
}

const sizeNozzleFields: FieldsOf<SizeNozzleOptions> = {
  target: 'required',
  chamberPressure: 'required',
  ambientPressure: 'required',
  gamma: 'required',
  characteristicVelocity: 'required',
  expansionRatio: 'optional',
  halfAngle: 'optional',
  convergentHalfAngle: 'optional',
  inletDiameter: 'optional',
  efficiency: 'optional',
  dischargeCoefficient: 'optional',
};

/**
 * Sizes a conical nozzle for a thrust or for a burning surface: throat and exit diameter, lengths and performance.
 *
 * Source: Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), chapter 3; F = C_F·p_c·A_t and ṁ =
 * C_d·p_c·A_t/c*.
 *
 * @throws MeopError `out-of-domain` for values outside the ranges of the fields, an ambient pressure at which the
 * throat is not choked, or an expansion so far beyond the optimum that the thrust is not positive
 * @example sizeNozzle({ target: { thrust: '750 N' }, chamberPressure: '5 MPa', ambientPressure: '101325 Pa', gamma: 1.13, characteristicVelocity: '900 m/s' }).throatDiameter.in('mm') // => 11.01778
 */
export function sizeNozzle(options: SizeNozzleOptions): SizedNozzle {
  requireFields(procedure, options, sizeNozzleFields);
  const { target } = options;
  if (typeof target !== 'object' || target === null)
    throw refusal(procedure, 'target', target, 'a thrust, or a burning area with its burn rate or law,');
  const chamber = read('absolute pressure', 'chamberPressure', options.chamberPressure, 0);
  const ambient = readNotNegative(
    'absolute pressure',
    'ambientPressure',
    options.ambientPressure,
    procedure,
  ).si;
  const gamma = read('dimensionless', 'gamma', options.gamma, 1);
  const velocity = read('speed', 'characteristicVelocity', options.characteristicVelocity, 0);
  const efficiency = read('dimensionless', 'efficiency', options.efficiency ?? 1, 0);
  const discharge = read('dimensionless', 'dischargeCoefficient', options.dischargeCoefficient ?? 1, 0);
  const half = read('angle', 'halfAngle', options.halfAngle ?? '12 deg', 0);
  const convergent = read('angle', 'convergentHalfAngle', options.convergentHalfAngle ?? '45 deg', 0);
  if (!(half < Math.PI / 2)) throw refusal(procedure, 'halfAngle', options.halfAngle, 'below 90 deg');
  if (!(convergent < Math.PI / 2))
    throw refusal(procedure, 'convergentHalfAngle', options.convergentHalfAngle, 'below 90 deg');
  if (options.expansionRatio === undefined && ambient === 0)
    throw refusal(procedure, 'expansionRatio', undefined, 'a number', 'the optimum in a vacuum is infinite');
  const expansion =
    options.expansionRatio === undefined
      ? optimumExpansionRatio({
          gamma,
          chamberPressure: options.chamberPressure,
          ambientPressure: options.ambientPressure,
        })
      : readInput('dimensionless', 'expansionRatio', options.expansionRatio, procedure).si;
  if (!(expansion >= 1))
    throw refusal(
      procedure,
      'expansionRatio',
      options.expansionRatio,
      'at least 1: an exit is no smaller than the throat:',
    );

  const ideal = idealNozzle(gamma, expansion);
  if (ambient / chamber >= ideal.maxChokedBackPressureRatio)
    throw refusal(
      procedure,
      'chamberPressure',
      options.chamberPressure,
      `above ${(ambient / ideal.maxChokedBackPressureRatio).toPrecision(6)} Pa, where the throat chokes,`,
    );
  const parts = thrustCoefficientPartsSi(gamma, expansion, ambient / chamber);
  const delivered = deliveredThrustCoefficient.si({
    momentum: parts.momentum,
    pressure: parts.pressure,
    divergenceFactor: conicalDivergenceFactor.si({ halfAngle: half }),
    efficiency: efficiency * discharge,
  });
  if (!(delivered > 0))
    throw refusal(
      procedure,
      'expansionRatio',
      expansion,
      `less, for this ambient pressure: the full-flowing thrust coefficient would be ${delivered.toPrecision(3)}, a nozzle that pulls backwards; nozzleRegime treats the separated stream. A smaller one, near the optimum,`,
    );
  const area = throatArea(target, { chamber, velocity, delivered, discharge });
  const flow = (discharge * chamber * area) / velocity;
  const throat = Math.sqrt((4 * area) / Math.PI);
  const exit = throat * Math.sqrt(expansion);
  const inlet =
    options.inletDiameter === undefined
      ? undefined
      : read('length', 'inletDiameter', options.inletDiameter, throat);
  const mm = (si: number): Quantity<'length'> => fromSiValue(si, 'length', unitOf('mm'));
  const deg = (si: number): Quantity<'angle'> => fromSiValue(si, 'angle', unitOf('deg'));
  const exitPressure = ideal.exitPressureRatio * chamber;
  const facts = {
    throatDiameter: mm(throat),
    exitDiameter: mm(exit),
    throatArea: fromSiValue(area, 'area', unitOf('mm^2')),
    expansionRatio: expansion,
    idealThrustCoefficient: parts.total,
    thrustCoefficient: delivered,
    thrust: fromSiValue(delivered * chamber * area, 'force', unitOf('N')),
    massFlow: fromSiValue(flow, 'mass flow', unitOf('kg/s')),
    specificImpulse: fromSiValue((delivered * chamber * area) / flow, 'specific impulse', unitOf('m/s')),
    exitPressure: fromSiValue(exitPressure, 'absolute pressure', unitOf('kPa')),
    halfAngle: deg(half),
    convergentHalfAngle: deg(convergent),
    divergentLength: mm(coneLength.si({ smallDiameter: throat, largeDiameter: exit, halfAngle: half })),
    ...(inlet !== undefined && {
      convergentLength: mm(
        coneLength.si({ smallDiameter: throat, largeDiameter: inlet, halfAngle: convergent }),
      ),
    }),
  } satisfies Omit<SizedNozzle, 'cautions' | 'toString'>;
  const cautions = [
    ...(exitPressure < 0.4 * ambient
      ? [
          'Exit pressure is below 0.4 of ambient. The flow separates and the thrust differs; see nozzleRegime.',
        ]
      : ideal.shockAtExit * chamber < ambient
        ? ['At this ambient pressure a shock occurs in the divergent section; see nozzleRegime.']
        : []),
    ...(half > Math.PI / 12
      ? ['A half angle above 15° increases the divergence loss, and the flow can separate.']
      : []),
    ...(efficiency === 1
      ? ['Only the divergence loss is included. The delivered performance is a few per cent lower.']
      : []),
    ...(velocity * vandenkerckhoveSi(gamma) > 3500
      ? ['The characteristic velocity is unusually high. Check its unit.']
      : []),
  ];
  const text = (): string =>
    table(
      Object.entries({ ...facts, cautions: cautions.join('; ') || 'none' }).map(([property, value]) => ({
        property,
        value: typeof value === 'number' ? value.toPrecision(5) : String(value),
      })),
    );
  return { ...facts, cautions, toString: text, ...{ [Symbol.for('nodejs.util.inspect.custom')]: text } };
}

function throatArea(
  target: SizingTarget,
  state: {
    readonly chamber: number;
    readonly velocity: number;
    readonly delivered: number;
    readonly discharge: number;
  },
): number {
  if ('thrust' in target) {
    requireFields('sizeNozzle: target', target, { thrust: 'required' });
    return read('force', 'target.thrust', target.thrust, 0) / (state.delivered * state.chamber);
  }
  if (!('burningArea' in target))
    throw refusal(procedure, 'target', 'neither', 'a thrust, or a burning area with its burn rate or law,');
  if ('burnLaw' in target)
    requireFields('sizeNozzle: target', target, {
      burningArea: 'required',
      burnLaw: 'required',
      propellantDensity: 'required',
    });
  else
    requireFields('sizeNozzle: target', target, {
      burningArea: 'required',
      burnRate: 'required',
      propellantDensity: 'required',
    });
  const burning = read('area', 'target.burningArea', target.burningArea, 0);
  const rate =
    'burnLaw' in target
      ? rateByLaw(target.burnLaw, state.chamber)
      : read('speed', 'target.burnRate', target.burnRate, 0);
  const density = read('density', 'target.propellantDensity', target.propellantDensity, 0);
  return (burning * rate * density * state.velocity) / (state.discharge * state.chamber);
}

function rateByLaw(
  law: Extract<SizingTarget, { readonly burnLaw: unknown }>['burnLaw'],
  chamber: number,
): number {
  requireFields('sizeNozzle: target.burnLaw', law, {
    referenceRate: 'required',
    referencePressure: 'required',
    exponent: 'required',
  });
  const reference = read('absolute pressure', 'target.burnLaw.referencePressure', law.referencePressure, 0);
  const { si: exponent } = readInput('dimensionless', 'target.burnLaw.exponent', law.exponent, procedure);
  if (!(exponent < 1))
    throw refusal(
      procedure,
      'target.burnLaw.exponent',
      law.exponent,
      'below 1',
      'from 1 on no chamber pressure is stable',
    );
  const rate = read('speed', 'target.burnLaw.referenceRate', law.referenceRate, 0);
  return rate * (chamber / reference) ** exponent;
}

function read(kind: NamedKind, field: string, value: unknown, above: number): number {
  const { si } = readInput(kind, field, value, procedure);
  if (si > above) return si;
  throw refusal(
    procedure,
    field,
    value,
    field === 'inletDiameter' ? 'above the throat diameter' : `above ${above}`,
  );
}
