import { gamma } from '../thermo/gas-inputs';
import { isentropicPressureRatioSi } from '../thermo/isentropic-kernels';
import { machFromAreaRatioSi } from '../thermo/mach-from-area-ratio';
import {
  area,
  type Conflict,
  force,
  formula,
  fromSiValue,
  length,
  procedure,
  type Quantity,
  ratio,
  unitOf,
} from '../units';
import { thrustCoefficientSi } from './ideal-nozzle-kernels';
import { ambientPressure, chamberPressure, exitDiameter, throatDiameter } from './nozzle-inputs';

const controlVolume =
  'Momentum equation of a control volume in isentropic one-dimensional flow, absolute pressures (NACA Report 1135 for the flow)';

/**
 * Impulse function of a stream: pressure force plus momentum flux through a section.
 *
 * @example streamImpulse({ chamberPressure: '6 MPa', area: '100 mm^2', mach: 1, gamma: 1.2 }).in('N').toFixed(2) // => '745.11'
 */
export const streamImpulse = /* @__PURE__ */ formula({
  name: 'streamImpulse',
  title: 'Impulse function of a stream',
  equation: 'I = p_c·A·(1 + γ·M²)·(1 + (γ − 1)·M² / 2)^(−γ / (γ − 1))',
  source: controlVolume,
  inputs: {
    chamberPressure,
    area: area('A', 'area of the section'),
    mach: ratio('M', 'Mach number in the section', { min: 0 }),
    gamma,
  },
  output: force('I', 'pressure force plus momentum flux'),
  example: { chamberPressure: '6 MPa', area: '1257 mm^2', mach: 0.0534, gamma: 1.2 },
  si: ({ chamberPressure: p, area: a, mach, gamma: g }) =>
    p * a * (1 + g * mach * mach) * isentropicPressureRatioSi(mach, g),
});

/**
 * Force that pushes a nozzle out of a motor while it flows: what enters at the sealed diameter, less the ambient pressure on
 * the outside and less the thrust. The thrust is not added to it.
 *
 * @example nozzleBlowOutForce({ inletImpulse: '7552.66 N', ambientPressure: '101325 Pa', sealedArea: '1256.637 mm^2', thrust: '1067.39 N' }).in('N').toFixed(1) // => '6357.9'
 */
export const nozzleBlowOutForce = /* @__PURE__ */ formula({
  name: 'nozzleBlowOutForce',
  title: 'Retention force of a flowing nozzle',
  equation: 'F_r = I_1 − p_a·A_s − F',
  source: controlVolume,
  inputs: {
    inletImpulse: force('I_1', 'impulse function of the stream at the sealed diameter'),
    ambientPressure,
    sealedArea: area('A_s', 'area within the sealed diameter'),
    thrust: force('F', 'thrust'),
  },
  output: force('F_r', 'force on the retention'),
  example: {
    inletImpulse: '7.55 kN',
    ambientPressure: '101325 Pa',
    sealedArea: '1257 mm^2',
    thrust: '1.07 kN',
  },
  si: ({ inletImpulse, ambientPressure: pa, sealedArea, thrust }) => inletImpulse - pa * sealedArea - thrust,
});

/** Forces that push a nozzle out of a motor, from cautious to plain. */
export interface NozzleBlowOut {
  /** Throat blocked, as at ignition: chamber pressure above ambient on the whole sealed area. Retention is designed for it. */
  readonly blocked: Quantity<'force'>;
  /** Chamber pressure above ambient on the sealed area without the throat. */
  readonly annulus: Quantity<'force'>;
  /** Flowing, by control volume: ideal flow that fills the nozzle. */
  readonly flowing: Quantity<'force'>;
  /** The part of the wall force upstream of the throat, inside pressure only. */
  readonly convergent: Quantity<'force'>;
  /** Ideal thrust. */
  readonly thrust: Quantity<'force'>;
  /** Mach number at the sealed diameter. */
  readonly inletMach: number;
  readonly cautions: readonly string[];
}

const widerThanThroat =
  (field: 'sealDiameter' | 'exitDiameter') =>
  (values: {
    readonly throatDiameter: Quantity<'length'>;
    readonly sealDiameter: Quantity<'length'>;
    readonly exitDiameter: Quantity<'length'>;
  }): Conflict | undefined =>
    values[field].si > values.throatDiameter.si
      ? undefined
      : {
          path: field,
          given: values[field],
          expected: `above the throat diameter, ${values.throatDiameter}`,
        };

/**
 * The force on the retention of a nozzle or throat insert, with its bounds. The flowing value saves only a few per cent, and the
 * saving is lost where the throat is blocked at ignition or gas passes the insert: design for the blocked value.
 *
 * @example nozzleBlowOut({ chamberPressure: '6 MPa', gamma: 1.2, sealDiameter: '40 mm', throatDiameter: '12 mm', exitDiameter: '30 mm', ambientPressure: '101325 Pa' }).flowing.in('N').toFixed(0) // => '6358'
 */
export const nozzleBlowOut = /* @__PURE__ */ procedure({
  name: 'nozzleBlowOut',
  title: 'Force on the retention of a nozzle',
  source: controlVolume,
  inputs: {
    chamberPressure,
    gamma,
    sealDiameter: length('D_s', 'diameter at which the nozzle or insert is sealed', { example: '40 mm' }),
    throatDiameter,
    exitDiameter,
    ambientPressure,
  },
  gives: 'the force with the throat blocked, on the annulus, and by control volume, and the thrust',
  example: {
    chamberPressure: '6 MPa',
    gamma: 1.2,
    sealDiameter: '40 mm',
    throatDiameter: '12 mm',
    exitDiameter: '30 mm',
    ambientPressure: '101325 Pa',
  },
  checks: [
    widerThanThroat('sealDiameter'),
    widerThanThroat('exitDiameter'),
    ({ chamberPressure: p, ambientPressure: pa }) =>
      pa.si < p.si
        ? undefined
        : { path: 'ambientPressure', given: pa, expected: `below the chamber pressure, ${p}` },
  ],
  run: (given): NozzleBlowOut => {
    const { chamberPressure: p, ambientPressure: pa, gamma: g } = given;
    const [sealed, throat, exit] = [given.sealDiameter, given.throatDiameter, given.exitDiameter].map(
      ({ si }) => (Math.PI / 4) * si * si,
    );
    const inletMach = machFromAreaRatioSi(sealed / throat, g, false);
    const impulse = (area: number, mach: number): number =>
      streamImpulse.si({ chamberPressure: p.si, area, mach, gamma: g });
    const inletImpulse = impulse(sealed, inletMach);
    const thrust = thrustCoefficientSi(g, exit / throat, pa.si / p.si) * p.si * throat;
    const force = (si: number): Quantity<'force'> => fromSiValue<'force'>(si, 'force', unitOf('N'));
    return {
      blocked: force((p.si - pa.si) * sealed),
      annulus: force((p.si - pa.si) * (sealed - throat)),
      flowing: force(
        nozzleBlowOutForce.si({ inletImpulse, ambientPressure: pa.si, sealedArea: sealed, thrust }),
      ),
      convergent: force(inletImpulse - impulse(throat, 1)),
      thrust: force(thrust),
      inletMach,
      cautions: [
        'The flowing force assumes ideal flow that fills the nozzle. A blocked throat, or gas that passes the insert, restores the force on the whole sealed area.',
      ],
    };
  },
});
