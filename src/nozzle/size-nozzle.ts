import { gamma } from '../thermo/gas-inputs';
import { vandenkerckhoveSi } from '../thermo/isentropic-kernels';
import {
  fromSiValue,
  MeopError,
  optional,
  printable,
  procedure,
  type Quantity,
  ratio,
  table,
  unitOf,
} from '../units';
import { coneLength } from './cone-geometry';
import { optimumExpansionRatio } from './expansion';
import { requireChoked, separatesCaution, shockCaution } from './full-flow';
import { idealNozzleSi, thrustCoefficientPartsSi } from './ideal-nozzle-kernels';
import { conicalDivergenceFactor } from './losses';
import { deliveredThrustCoefficient } from './nozzle-efficiency';
import {
  ambientPressure,
  chamberPressure,
  characteristicVelocity,
  convergentHalfAngle,
  expansionRatio,
  halfAngle,
  inletDiameter,
} from './nozzle-inputs';
import { sizingTarget, throatAreaFor } from './sizing-target';

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
  /** Along the axis, straight cones, without the rounding of throat and entrance: see {@link nozzleContour} for those. */
  readonly divergentLength: Quantity<'length'>;
  /** Along the axis; absent where no inlet diameter is specified. */
  readonly convergentLength?: Quantity<'length'>;
  readonly cautions: readonly string[];
  toString(): string;
}

/**
 * Sizes a conical nozzle: throat and exit diameter, lengths and performance, for a thrust or for a burning area.
 *
 * @example sizeNozzle({ target: { thrust: '750 N' }, chamberPressure: '5 MPa', ambientPressure: '101325 Pa', gamma: 1.13, characteristicVelocity: '900 m/s' }).throatDiameter.in('mm') // => 11.01778
 */
export const sizeNozzle = /* @__PURE__ */ procedure({
  name: 'sizeNozzle',
  title: 'Sizing of a conical nozzle',
  source:
    'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), chapter 3; F = C_F·p_c·A_t and ṁ = C_d·p_c·A_t/c*',
  inputs: {
    target: sizingTarget,
    chamberPressure,
    ambientPressure,
    gamma,
    characteristicVelocity,
    expansionRatio: optional(expansionRatio),
    halfAngle: optional(halfAngle, 12 * (Math.PI / 180)),
    convergentHalfAngle,
    inletDiameter: optional(inletDiameter),
    efficiency: optional(ratio('η', 'product of the losses other than divergence', { above: 0 }), 1),
    dischargeCoefficient: optional(ratio('C_d', 'actual/ideal mass flow of the throat', { above: 0 }), 1),
  },
  gives: 'diameters, areas, lengths, thrust, mass flow and specific impulse',
  example: {
    target: { thrust: '750 N' },
    chamberPressure: '5 MPa',
    ambientPressure: '101325 Pa',
    gamma: 1.13,
    characteristicVelocity: '900 m/s',
  },
  checks: [
    ({ expansionRatio, ambientPressure }) =>
      expansionRatio !== undefined || ambientPressure.si > 0
        ? undefined
        : { path: 'expansionRatio', expected: 'specified, since the optimum in a vacuum is infinite' },
  ],
  run: (values): SizedNozzle => {
    const { chamberPressure, ambientPressure, gamma, efficiency } = values;
    const chamber = chamberPressure.si;
    const ambient = ambientPressure.si;
    const velocity = values.characteristicVelocity.si;
    const discharge = values.dischargeCoefficient;
    const half = values.halfAngle.si;
    const convergent = values.convergentHalfAngle.si;
    const expansionRatio =
      values.expansionRatio ?? optimumExpansionRatio({ gamma, chamberPressure, ambientPressure });

    const ideal = idealNozzleSi(gamma, expansionRatio);
    requireChoked('sizeNozzle', ideal, chamberPressure, ambientPressure);
    const parts = thrustCoefficientPartsSi(gamma, expansionRatio, ambient / chamber);
    const delivered = deliveredThrustCoefficient.si({
      momentum: parts.momentum,
      pressure: parts.pressure,
      divergenceFactor: conicalDivergenceFactor.si({ halfAngle: half }),
      efficiency: efficiency * discharge,
    });
    if (!(delivered > 0))
      throw new MeopError({
        code: 'out-of-domain',
        procedure: 'sizeNozzle',
        path: 'expansionRatio',
        given: expansionRatio,
        expected: 'less at this ambient pressure, near the optimum',
        remedy: `The full-flowing thrust coefficient would be ${delivered.toPrecision(3)}, which is not a thrust. Use nozzleRegime for separated flow`,
      });
    const area = throatAreaFor(values.target, { chamber, velocity, delivered, discharge });
    const flow = (discharge * chamber * area) / velocity;
    const throat = Math.sqrt((4 * area) / Math.PI);
    const exit = throat * Math.sqrt(expansionRatio);
    const inlet = values.inletDiameter?.si;
    const mm = (si: number): Quantity<'length'> => fromSiValue(si, 'length', unitOf('mm'));
    const deg = (si: number): Quantity<'angle'> => fromSiValue(si, 'angle', unitOf('deg'));
    if (inlet !== undefined && !(inlet > throat))
      throw new MeopError({
        code: 'out-of-domain',
        procedure: 'sizeNozzle',
        path: 'inletDiameter',
        given: values.inletDiameter,
        expected: `above the throat diameter, ${mm(throat)}`,
      });
    const exitPressure = ideal.exitPressureRatio * chamber;
    const facts = {
      throatDiameter: mm(throat),
      exitDiameter: mm(exit),
      throatArea: fromSiValue(area, 'area', unitOf('mm^2')),
      expansionRatio,
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
        ? [separatesCaution]
        : ideal.shockAtExit * chamber < ambient
          ? [shockCaution]
          : []),
      ...(half > Math.PI / 12
        ? ['A half angle above 15° costs thrust by divergence, and the flow may separate.']
        : []),
      ...(efficiency === 1
        ? ['Losses other than divergence are neglected. A firing will deliver a few per cent less.']
        : []),
      ...(velocity * vandenkerckhoveSi(gamma) > 3500
        ? ['The characteristic velocity is unusually high; check its unit.']
        : []),
    ];
    return printable({ ...facts, cautions }, () =>
      table(
        Object.entries({ ...facts, cautions: cautions.join(' ') || 'none' }).map(([property, value]) => ({
          property,
          value: typeof value === 'number' ? value.toPrecision(5) : String(value),
        })),
      ),
    );
  },
});
