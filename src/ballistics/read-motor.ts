import { linearInterpolant } from '../numerics';
import { MeopError, type NamedKind, readInput } from '../units';
import type { BurnLaw } from './burn-law';
import { temperatureFactorSi } from './burn-law';
import type { PortAtStation } from './grain';
import { type Burned, burnedGrain, type Landing, landingsOf } from './read-grain';
import type { Ignition, SimulatedChamber, SimulatedNozzle, SimulateInput } from './simulate-input';
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
}

const context = 'simulate';
// Where the gas is a fifth as dense as the solid neither the gas law nor the model holds.
const densestGas = 0.2;

/** Reads the options of a simulation into the kernel's plain numbers. */
export function readMotor(input: SimulateInput): ReadMotor {
  const { propellant, grain, nozzle, chamber, ignition = {}, tolerance = 1e-6 } = input;
  for (const field of ['propellant', 'grain', 'nozzle', 'chamber'] as const)
    if (typeof input[field] !== 'object' || input[field] === null) throw missing(field);
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
  const stop =
    input.stopPressure === undefined
      ? Math.max(1.002 * ambient, 1000)
      : positive('absolute pressure', 'stopPressure', input.stopPressure);
  const model: MotorModel = {
    table,
    law,
    density: propellant.density.si,
    gasEnergy,
    characteristicVelocity: propellant.characteristicVelocity.si,
    gamma: propellant.gamma,
    chamberVolume: readVolume(chamber, cast),
    ...readNozzle(nozzle),
    ambientPressure: ambient,
    ...lit,
    erosive: readErosive(input, regression, table.depth),
    stopPressure: stop,
    stopsBurning: input.stopPressure !== undefined,
    pressureLimit: burst === undefined ? densest : Math.min(densest, ambient + burst),
    timeLimit:
      input.timeLimit === undefined
        ? slowestBurn(law, table.burnout, Math.max(ambient, Math.min(stop, lit.initialPressure)), lit)
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
  };
}

/** The law with the grain temperature in its coefficients; clamping is a band of exponent zero at each end. */
export function lawKernel(law: BurnLaw, temperatureFactor: number): LawKernel {
  const powers = law.bands.map(({ to, referenceRate, referencePressure, exponent }) => ({
    to,
    exponent,
    ln: Math.log(referenceRate * temperatureFactor) - exponent * Math.log(referencePressure),
  }));
  const { from, to } = law.characterised;
  if (law.outside === 'clamp') {
    const [first] = powers;
    const last = powers[powers.length - 1];
    if (from > 0) powers.unshift({ to: from, exponent: 0, ln: first.ln + first.exponent * Math.log(from) });
    if (Number.isFinite(to)) {
      powers[powers.length - 1] = { ...last, to };
      powers.push({ to: Number.POSITIVE_INFINITY, exponent: 0, ln: last.ln + last.exponent * Math.log(to) });
    }
  }
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

function readNozzle(nozzle: SimulatedNozzle) {
  const throatRadius = positive('length', 'nozzle.throatDiameter', nozzle.throatDiameter) / 2;
  const throatArea = Math.PI * throatRadius ** 2;
  const { throatErosion: erosion, separation = 'summerfield' } = nozzle;
  const exponent = erosion?.exponent ?? 0;
  if (!Number.isFinite(exponent)) throw refused('nozzle.throatErosion.exponent', exponent, 'a finite number');
  if (erosion !== undefined && exponent !== 0 && erosion.atPressure === undefined)
    throw missing('nozzle.throatErosion.atPressure');
  return {
    throatRadius,
    exitArea: throatArea * readExpansion(nozzle, throatRadius),
    dischargeCoefficient: share('nozzle.dischargeCoefficient', nozzle.dischargeCoefficient ?? 1),
    thrustEfficiency: share('nozzle.efficiency', nozzle.efficiency ?? 1),
    separation,
    erosionRate:
      erosion === undefined ? 0 : readInput('speed', 'nozzle.throatErosion.rate', erosion.rate, context).si,
    erosionPressure:
      erosion?.atPressure === undefined
        ? 1e6
        : positive('absolute pressure', 'nozzle.throatErosion.atPressure', erosion.atPressure),
    erosionExponent: exponent,
    erosionDelay:
      erosion?.delay === undefined ? 0 : atLeastZero('time', 'nozzle.throatErosion.delay', erosion.delay),
  };
}

function readExpansion(nozzle: SimulatedNozzle, throatRadius: number): number {
  if ((nozzle.expansionRatio === undefined) === (nozzle.exitDiameter === undefined))
    throw new MeopError(
      'missing-field',
      `${context}: nozzle: give expansionRatio or exitDiameter, one of them`,
      'nozzle.expansionRatio',
    );
  const ratio =
    nozzle.exitDiameter === undefined
      ? readInput('dimensionless', 'nozzle.expansionRatio', nozzle.expansionRatio, context).si
      : (positive('length', 'nozzle.exitDiameter', nozzle.exitDiameter) / (2 * throatRadius)) ** 2;
  if (ratio >= 1) return ratio;
  throw refused(
    'nozzle.expansionRatio',
    ratio,
    'a ratio of 1 or more: the exit is not narrower than the throat',
  );
}

function readIgnition(ignition: Ignition, ambient: number) {
  const igniterMass =
    ignition.gasMass === undefined ? 0 : atLeastZero('mass', 'ignition.gasMass', ignition.gasMass);
  const igniterDuration =
    ignition.duration === undefined ? 0 : atLeastZero('time', 'ignition.duration', ignition.duration);
  if (igniterMass > 0 && igniterDuration === 0) throw missing('ignition.duration');
  return {
    initialPressure:
      ignition.initialPressure === undefined
        ? ambient
        : positive('absolute pressure', 'ignition.initialPressure', ignition.initialPressure),
    igniterMass,
    igniterDuration: igniterMass > 0 ? igniterDuration : 0,
    flameSpread:
      ignition.flameSpread === undefined
        ? 0
        : atLeastZero('time', 'ignition.flameSpread', ignition.flameSpread),
    closureBurst:
      ignition.closureBurst === undefined
        ? 0
        : positive('gauge pressure', 'ignition.closureBurst', ignition.closureBurst),
  };
}

/** Three times the burn at the lowest pressure there can be, so that a motor that hardly lights still ends. */
function slowestBurn(
  law: LawKernel,
  burnout: number,
  pressure: number,
  { igniterDuration, flameSpread }: { readonly igniterDuration: number; readonly flameSpread: number },
): number {
  // A falling law is slowest at high pressure.
  const rates = [Math.log(pressure), Math.log(2e7)].flatMap((lnP) =>
    Array.from(law.lnCoefficients, (ln, band) => Math.exp(ln + law.exponents[band] * lnP)),
  );
  return Math.min(1e6, (3 * burnout) / Math.min(...rates) + igniterDuration + 2 * flameSpread + 1);
}

function readErosive(
  input: SimulateInput,
  regression: Burned,
  depth: Float64Array,
): ErosiveKernel | undefined {
  const { erosiveBurning: erosive } = input;
  if (erosive === undefined) return undefined;
  const port = aftPort(regression.portArea);
  if (port === undefined)
    throw new MeopError(
      'no-port',
      `${context}: erosiveBurning: this grain has no port for gas to flow through`,
      'erosiveBurning',
    );
  const fluxShare = erosive.flux === 'aft' ? 1 : 0.5;
  const areaAt = linearInterpolant(regression.si.depth, port.area.si);
  const portArea = depth.map((y) => areaAt.at(y));
  if (erosive.law === 'threshold-velocity') {
    const limit = positive('speed', 'erosiveBurning.threshold', erosive.threshold);
    const gain = atLeastZero('dimensionless', 'erosiveBurning.gain', erosive.gain);
    return { law: erosive.law, strength: gain / limit, limit, fluxShare, portArea };
  }
  if (erosive.law !== 'lenoir-robillard')
    throw refused('erosiveBurning.law', erosive, "'lenoir-robillard' or 'threshold-velocity'");
  const length = positive('length', 'erosiveBurning.length', erosive.length);
  const coefficient = atLeastZero('dimensionless', 'erosiveBurning.coefficient', erosive.coefficient);
  const limit = positive('dimensionless', 'erosiveBurning.decay', erosive.decay ?? 53);
  return { law: erosive.law, strength: coefficient * length ** -0.2, limit, fluxShare, portArea };
}

/** The rearmost station whose port is open at the start. */
export function aftPort(stations: readonly PortAtStation[]): PortAtStation | undefined {
  return [...stations].reverse().find(({ area }) => area.si[0] > 0);
}

function share(field: string, value: number): number {
  const { si } = readInput('dimensionless', field, value, context);
  if (si > 0 && si <= 1.05) return si;
  throw refused(field, value, 'above 0 and at most 1.05');
}

function positive(kind: NamedKind, field: string, value: unknown): number {
  if (value === undefined) throw missing(field);
  const { si } = readInput(kind, field, value, context);
  if (si > 0) return si;
  throw refused(field, value, 'a value above zero');
}

function atLeastZero(kind: NamedKind, field: string, value: unknown): number {
  if (value === undefined) throw missing(field);
  const { si } = readInput(kind, field, value, context);
  if (si >= 0) return si;
  throw refused(field, value, 'zero or more');
}

const missing = (field: string): MeopError =>
  new MeopError('missing-field', `${context}: ${field} is missing`, field, { value: undefined });

const refused = (field: string, value: unknown, expected: string): MeopError =>
  new MeopError(
    'out-of-domain',
    `${context}: ${field}: ${String(value)} given; ${expected} is expected`,
    field,
    {
      value,
      expected,
    },
  );
