import { linearInterpolant } from '../numerics';
import { MeopError } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import type { BurnLaw } from './burn-law';
import { temperatureFactorSi } from './burn-law';
import { effectiveBands } from './effective-bands';
import { openStations } from './port-diagnosis';
import { type Burned, burnedGrain, type Landing, landingsOf } from './read-grain';
import { readNozzle } from './read-nozzle';
import { atLeastZero, checkFields, context, missing, positive, refused } from './read-value';
import type { Ignition, SimulatedChamber, SimulateInput } from './simulate-input';
import { burnTable } from './simulation/burn-table';
import type { ErosiveKernel, LawKernel, MotorModel } from './simulation/motor-model';

/** A motor read from the options of a simulation. */
export interface ReadMotor {
  readonly model: MotorModel;
  readonly regression: Burned;
  /** What is burned, in words. */
  readonly grainText: string;
  /** What happens at depths that the run lands on. */
  readonly landings: readonly Landing[];
  /** The limit pressure is the chamber's burst pressure. */
  readonly hasBurst: boolean;
  /** The time limit is one that was asked for. */
  readonly hasTimeLimit: boolean;
}

const traceOfGas = 1; // Pa
// Where the gas is a fifth as dense as the solid neither the gas law nor the model holds.
const densestGas = 0.2;

const inputFields: FieldsOf<SimulateInput> = {
  propellant: 'required',
  grain: 'required',
  nozzle: 'required',
  chamber: 'required',
  ambient: 'required',
  ignition: 'optional',
  grainTemperature: 'optional',
  erosiveBurning: 'optional',
  stopPressure: 'optional',
  timeLimit: 'optional',
  tolerance: 'optional',
  title: 'optional',
};
const chamberFields = ['volume', 'innerDiameter', 'length', 'burstPressure'];
const ignitionFields = [
  'initialPressure',
  'igniterMass',
  'duration',
  'flameSpreadTime',
  'nozzleClosureBurstPressure',
] as const satisfies readonly (keyof Ignition)[];
const erosiveFields = {
  'lenoir-robillard': ['law', 'coefficient', 'decay', 'length', 'flux'],
  'threshold-velocity': ['law', 'threshold', 'gain', 'flux'],
} as const;

/** Reads the options of a simulation into the kernel's plain numbers. */
export function readMotor(input: SimulateInput): ReadMotor {
  requireFields(context, input, inputFields);
  const { propellant, grain, nozzle, chamber, ignition = {}, tolerance = 1e-6 } = input;
  for (const field of ['propellant', 'grain', 'nozzle', 'chamber'] as const)
    if (typeof input[field] !== 'object' || input[field] === null) throw missing(field);
  checkFields(chamber, chamberFields, 'chamber.');
  checkFields(ignition, ignitionFields, 'ignition.');
  if (!('law' in propellant && 'effectiveTemperature' in propellant))
    throw refused('propellant', propellant, 'a propellant made by propellant() or publishedPropellant()');
  if (!['shape', 'segments', 'burningArea'].some((part) => part in grain))
    throw refused('grain', grain, 'a grain, a column of grains or a regression');
  if (!(tolerance >= 1e-12 && tolerance <= 1e-3))
    throw refused('tolerance', tolerance, 'a number from 1e-12 to 1e-3');
  const regression = burnedGrain(grain);
  const landings = landingsOf(regression);
  const table = burnTable(
    regression.si,
    landings.map(({ depth }) => depth),
  );
  const cast = table.volume[0];
  if (!(cast > 0) || !(table.burnout > 0))
    throw new MeopError(
      'no-propellant',
      `${context}: the grain holds no propellant: nothing can burn`,
      'grain',
    );
  const ambient = atLeastZero('absolute pressure', 'ambient', input.ambient);
  const gasEnergy = propellant.gasConstant.si * propellant.effectiveTemperature.si;
  const temperature =
    input.grainTemperature === undefined
      ? propellant.law.referenceTemperature.si
      : positive('temperature', 'grainTemperature', input.grainTemperature);
  const law = lawKernel(propellant.law, temperatureFactorSi(propellant.law, temperature));
  const burst =
    chamber.burstPressure === undefined
      ? undefined
      : positive('gauge pressure', 'chamber.burstPressure', chamber.burstPressure);
  const densest = densestGas * propellant.density.si * gasEnergy;
  const lit = readIgnition(ignition, ambient);
  const pressureLimit = burst === undefined ? densest : Math.min(densest, ambient + burst);
  if (lit.initialPressure >= pressureLimit)
    throw refused(
      'ignition.initialPressure',
      ignition.initialPressure ?? `ambient, ${ambient} Pa,`,
      `less than the ${(pressureLimit / 1e6).toPrecision(4)} MPa at which the ${burst === undefined ? 'model ends' : 'chamber bursts'}`,
    );
  const stop = readStop(input, ambient);
  const nozzleValues = readNozzle(nozzle);
  const chamberVolume = readVolume(chamber, cast);
  const model: MotorModel = {
    table,
    law,
    density: propellant.density.si,
    gasEnergy,
    characteristicVelocity: propellant.characteristicVelocity.si,
    gamma: propellant.gamma,
    chamberVolume,
    ...nozzleValues,
    ambientPressure: ambient,
    ...lit,
    erosive: readErosive(input, regression, table.depth),
    stopPressure: stop,
    stopsBurning: input.stopPressure !== undefined,
    pressureLimit,
    timeLimit:
      input.timeLimit === undefined
        ? Math.min(
            1e6,
            slowestBurn(law, table.burnout, Math.max(ambient, Math.min(stop, lit.initialPressure)), lit) +
              // Time constants of the chamber, for the tail-off.
              (50 * chamberVolume * propellant.characteristicVelocity.si) /
                (gasEnergy * Math.PI * nozzleValues.throatRadius ** 2),
          )
        : positive('time', 'timeLimit', input.timeLimit),
    tolerance,
  };
  if (model.initialPressure <= 0 && model.igniterMass === 0)
    throw new MeopError(
      'no-ignition',
      `${context}: ignition: neither an initial pressure nor igniter gas in a vacuum: nothing lights`,
      'ignition',
    );
  const grainText =
    'segments' in regression ? `column of ${regression.segments.length} grains` : regression.grain;
  return {
    model,
    regression,
    grainText,
    landings,
    hasBurst: burst !== undefined && ambient + burst <= densest,
    hasTimeLimit: input.timeLimit !== undefined,
  };
}

/** The law with the grain temperature in its coefficients; clamping is a band of exponent zero at each end. */
export function lawKernel(law: BurnLaw, temperatureFactor: number): LawKernel {
  const powers = effectiveBands(law).map(({ to, referenceRate, referencePressure, exponent }) => ({
    to,
    exponent,
    ln: Math.log(referenceRate * temperatureFactor) - exponent * Math.log(referencePressure),
  }));
  return {
    lnBoundaries: Float64Array.from(powers.slice(0, -1), (band) => Math.log(band.to)),
    lnCoefficients: Float64Array.from(powers, (band) => band.ln),
    exponents: Float64Array.from(powers, (band) => band.exponent),
  };
}

function readVolume(chamber: SimulatedChamber, cast: number): number {
  const volume =
    'volume' in chamber
      ? positive('volume', 'chamber.volume', chamber.volume)
      : (Math.PI / 4) *
        positive('length', 'chamber.innerDiameter', chamber.innerDiameter) ** 2 *
        positive('length', 'chamber.length', chamber.length);
  if (volume > cast) return volume;
  throw new MeopError(
    'out-of-domain',
    `${context}: chamber: ${(volume * 1e6).toPrecision(6)} cm³ hold no more than the ${(cast * 1e6).toPrecision(6)} cm³ of propellant; the free volume must be above zero`,
    'chamber',
    { value: volume, expected: `above ${cast} m³` },
  );
}

function readStop({ stopPressure }: SimulateInput, ambient: number): number {
  if (stopPressure === undefined) return Math.max(1.002 * ambient, 1000);
  const stop = positive('absolute pressure', 'stopPressure', stopPressure);
  if (stop >= ambient) return stop;
  throw refused('stopPressure', stopPressure, 'no less than ambient, below which no chamber falls,');
}

function readIgnition(ignition: Ignition, ambient: number) {
  const igniterMass =
    ignition.igniterMass === undefined
      ? 0
      : atLeastZero('mass', 'ignition.igniterMass', ignition.igniterMass);
  const igniterDuration =
    ignition.duration === undefined ? 0 : atLeastZero('time', 'ignition.duration', ignition.duration);
  if (igniterMass > 0 && igniterDuration === 0) throw missing('ignition.duration');
  // An empty chamber has no pressure to burn at: a vacuum with an igniter begins with a trace.
  const atRest = ambient === 0 && igniterMass > 0 ? traceOfGas : ambient;
  return {
    initialPressure:
      ignition.initialPressure === undefined
        ? atRest
        : positive('absolute pressure', 'ignition.initialPressure', ignition.initialPressure),
    igniterMass,
    igniterDuration: igniterMass > 0 ? igniterDuration : 0,
    flameSpreadTime:
      ignition.flameSpreadTime === undefined
        ? 0
        : atLeastZero('time', 'ignition.flameSpreadTime', ignition.flameSpreadTime),
    nozzleClosureBurstPressure:
      ignition.nozzleClosureBurstPressure === undefined
        ? 0
        : positive(
            'gauge pressure',
            'ignition.nozzleClosureBurstPressure',
            ignition.nozzleClosureBurstPressure,
          ),
  };
}

/** Three times the burn at the lowest pressure there can be, so that a motor that hardly lights still ends. */
function slowestBurn(
  law: LawKernel,
  burnout: number,
  pressure: number,
  {
    igniterDuration,
    flameSpreadTime,
  }: { readonly igniterDuration: number; readonly flameSpreadTime: number },
): number {
  // A falling law is slowest at high pressure.
  const rates = [Math.log(pressure), Math.log(2e7)].flatMap((lnP) =>
    Array.from(law.lnCoefficients, (ln, band) => Math.exp(ln + law.exponents[band] * lnP)),
  );
  return (3 * burnout) / Math.min(...rates) + igniterDuration + 2 * flameSpreadTime + 1;
}

function readErosive(
  input: SimulateInput,
  regression: Burned,
  depth: Float64Array,
): ErosiveKernel | undefined {
  const { erosiveBurning: erosive } = input;
  if (erosive === undefined) return undefined;
  const port = openStations(regression.portArea).at(-1);
  if (port === undefined)
    throw new MeopError(
      'no-port',
      `${context}: erosiveBurning: this grain has no port for gas to flow through`,
      'erosiveBurning',
    );
  if (!(erosive.law in erosiveFields))
    throw refused('erosiveBurning.law', erosive.law, "'lenoir-robillard' or 'threshold-velocity'");
  checkFields(erosive, erosiveFields[erosive.law], 'erosiveBurning.');
  const { flux = 'mean' } = erosive;
  if (flux !== 'mean' && flux !== 'aft') throw refused('erosiveBurning.flux', flux, "'mean' or 'aft'");
  const fluxShare = flux === 'aft' ? 1 : 0.5;
  const areaAt = linearInterpolant(regression.si.depth, port.area.si);
  const portArea = depth.map((y) => areaAt.at(y));
  if (erosive.law === 'threshold-velocity') {
    const limit = positive('speed', 'erosiveBurning.threshold', erosive.threshold);
    const gain = atLeastZero('dimensionless', 'erosiveBurning.gain', erosive.gain);
    return { law: erosive.law, strength: gain / limit, limit, fluxShare, portArea };
  }
  const length = positive('length', 'erosiveBurning.length', erosive.length);
  const coefficient = atLeastZero('dimensionless', 'erosiveBurning.coefficient', erosive.coefficient);
  const limit = positive('dimensionless', 'erosiveBurning.decay', erosive.decay ?? 53);
  return { law: erosive.law, strength: coefficient * length ** -0.2, limit, fluxShare, portArea };
}
