import {
  absolutePressure,
  area,
  fromSiArray,
  fromSiValue,
  length,
  optional,
  procedure,
  type Quantity,
  type QuantityInput,
  readInput,
  type Series,
  time,
  unitOf,
  volume,
} from '../units';
import { temperatureFactorSi } from './burn-law';
import { equilibriumPressures } from './equilibrium-roots';
import { quietChamber, runFrozenChamber } from './frozen-chamber';
import { igniterChecks, ignition } from './motor-inputs';
import { propellantValue } from './propellant';
import { lawKernel } from './read-motor';
import { igniterKernel } from './read-transient';

/** Pressure of a chamber during ignition, while burning area and free volume are those of the start. */
export interface IgnitionTransient {
  readonly time: Series<'time'>;
  readonly pressure: Series<'absolute pressure'>;
  readonly maxPressure: Quantity<'absolute pressure'>;
  readonly maxRiseRate: Quantity<'pressure rate'>;
  /** Lowest stable equilibrium without gas storage, which the two rise times refer to; `undefined` where there is none. */
  readonly equilibrium: Quantity<'absolute pressure'> | undefined;
  /** Time at which the pressure first reaches 10 % and 90 % of the equilibrium; `undefined` where it does not. */
  readonly timeTo10: Quantity<'time'> | undefined;
  readonly timeTo90: Quantity<'time'> | undefined;
  pressureAt(time: QuantityInput<'time'>): Quantity<'absolute pressure'>;
}

const { igniterMass, igniterDuration, igniterFallTime, igniterGasTemperature, igniterMolarMass } =
  ignition.fields;

const transientInputs = {
  propellant: propellantValue,
  burningArea: area('A_b', 'burning area at the start', { example: '165 cm^2' }),
  freeVolume: volume('V', 'free volume at the start', { example: '80 cm^3' }),
  throatDiameter: length('d_t', 'throat diameter', { example: '8.5 mm' }),
  startPressure: absolutePressure('p_i', 'pressure at the start', { example: '101325 Pa' }),
  duration: optional(time('t_m', 'time to the end of the calculation'), 0.1),
  igniterMass,
  igniterDuration,
  igniterFallTime,
  igniterGasTemperature,
  igniterMolarMass,
  ignitionDelay: ignition.fields.ignitionDelay,
  flameSpreadTime: ignition.fields.flameSpreadTime,
};

/**
 * Pressure rise at ignition for a constant burning area and free volume: for estimates before a grain is drawn. The throat is
 * choked from the start; below about 1.8 times ambient pressure that is an approximation. `simulate` makes neither assumption.
 *
 * @example ignitionTransient({ propellant: publishedPropellant('potassium nitrate/sucrose'), burningArea: '165 cm^2', freeVolume: '80 cm^3', throatDiameter: '8.5 mm', startPressure: '101325 Pa', igniterMass: '0.25 g', igniterDuration: '20 ms', igniterFallTime: '10 ms', ignitionDelay: '5 ms', flameSpreadTime: '25 ms' }).timeTo10.in('ms') > 5 // => true
 */
export const ignitionTransient = /* @__PURE__ */ procedure({
  name: 'ignitionTransient',
  title: 'Pressure rise at ignition',
  source:
    'mass balance of the chamber with igniter flow and a flame that spreads evenly in time (derived); as in textbooks on solid rockets, ignition',
  inputs: transientInputs,
  gives:
    'the pressure in time, its maximum, its maximum rate of rise and the times to 10 % and 90 % of equilibrium',
  example:
    "ignitionTransient({ propellant: publishedPropellant('potassium nitrate/sucrose'), burningArea: '165 cm^2', freeVolume: '80 cm^3', throatDiameter: '8.5 mm', startPressure: '101325 Pa' })",
  checks: igniterChecks,
  run: (given): IgnitionTransient => {
    const { propellant, burningArea, freeVolume, throatDiameter, startPressure, duration } = given;
    const throatArea = (Math.PI / 4) * throatDiameter.si ** 2;
    const { law } = propellant;
    const run = runFrozenChamber(
      {
        ...quietChamber,
        ...igniterKernel(given),
        law: lawKernel(law, temperatureFactorSi(law, law.referenceTemperature.si)),
        density: propellant.density.si,
        gasEnergy: propellant.gasConstant.si * propellant.effectiveTemperature.si,
        characteristicVelocity: propellant.characteristicVelocity.si,
        burningArea: burningArea.si,
        freeVolume: freeVolume.si,
        throatArea,
        ignitionDelay: given.ignitionDelay.si,
        flameSpreadTime: given.flameSpreadTime.si,
      },
      startPressure.si,
      duration.si,
    );
    const at = (t: number): number => run.at(t)[0];
    const times = Float64Array.from({ length: 2001 }, (_, i) => (i / 2000) * duration.si);
    const pressures = times.map(at);
    const equilibrium = equilibriumPressures({
      propellant,
      burningAreaRatio: burningArea.si / throatArea,
      gasStorage: false,
    }).find(({ stable }) => stable)?.pressure;
    const first = (share: number): Quantity<'time'> | undefined => {
      if (equilibrium === undefined) return undefined;
      const level = share * equilibrium.si;
      const k = pressures.findIndex((p) => p >= level);
      if (k < 0) return undefined;
      let [low, high] = [times[Math.max(0, k - 1)], times[k]];
      for (let i = 0; i < 50; i++) {
        const middle = 0.5 * (low + high);
        if (at(middle) >= level) high = middle;
        else low = middle;
      }
      return fromSiValue(high, 'time', unitOf('ms'));
    };
    const rise = pressures.reduce(
      (most, p, i) => (i === 0 ? most : Math.max(most, (p - pressures[i - 1]) / (times[i] - times[i - 1]))),
      0,
    );
    return {
      time: fromSiArray('time', times),
      pressure: fromSiArray('absolute pressure', pressures),
      maxPressure: fromSiValue(Math.max(...pressures), 'absolute pressure', unitOf('MPa')),
      maxRiseRate: fromSiValue(rise, 'pressure rate', unitOf('MPa/s')),
      equilibrium,
      timeTo10: first(0.1),
      timeTo90: first(0.9),
      pressureAt: (t) =>
        fromSiValue(
          at(readInput('time', 'time', t, 'ignitionTransient').si),
          'absolute pressure',
          unitOf('MPa'),
        ),
    };
  },
});
