import { type ErrorFacts, MeopError, type Place, type Values } from '../units';
import { pathTo } from '../units/declare/place';
import type { BurnLaw } from './burn-law';
import { temperatureFactorSi } from './burn-law';
import { effectiveBands } from './effective-bands';
import { type Burned, burnedGrain, type Landing, landingsOf } from './read-grain';
import { readNozzle } from './read-nozzle';
import { readBlockage, readHeatLoss, readIgnition, readTailOff } from './read-transient';
import type { simulateInputs } from './simulate-inputs';
import { burnTable } from './simulation/burn-table';
import type { LawKernel, MotorModel } from './simulation/motor-model';

/** What a simulation was given. */
export type GivenMotor = Values<typeof simulateInputs>;

/** A motor read from the inputs of a simulation. */
export interface ReadMotor {
  readonly model: MotorModel;
  readonly regression: Burned;
  /** What is burned, in words. */
  readonly grainText: string;
  /** Events at depths that are ends of steps. */
  readonly landings: readonly Landing[];
  /** Whether the limit pressure is the burst pressure of the chamber. */
  readonly hasBurst: boolean;
  readonly heatLoss: ReturnType<typeof readHeatLoss>;
  /** Whether the time limit is user-supplied. */
  readonly hasTimeLimit: boolean;
}

// Where the gas is a fifth as dense as the solid, neither the gas law nor the model is valid.
const densestGas = 0.2;

const problem = (at: Place, facts: ErrorFacts & { readonly path: string }): MeopError =>
  new MeopError({ ...facts, procedure: at.procedure, path: pathTo(at, facts.path) });

/** Brings the inputs of a simulation into the plain numbers of the kernel. */
export function readMotor(given: GivenMotor, at: Place): ReadMotor {
  const { propellant, chamber, ignition, tolerance } = given;
  const regression = burnedGrain(given.grain);
  const landings = landingsOf(regression);
  const table = burnTable(
    regression.si,
    landings.map(({ depth }) => depth),
  );
  const cast = table.volume[0];
  if (!(cast > 0) || !(table.burnout > 0))
    throw problem(at, { code: 'no-propellant', path: 'grain', problem: 'the grain contains no propellant' });
  const ambient = given.ambient.si;
  const temperature = given.grainTemperature?.si ?? propellant.law.referenceTemperature.si;
  const law = lawKernel(propellant.law, temperatureFactorSi(propellant.law, temperature));
  const misfit = (facts: ErrorFacts & { readonly path: string }): MeopError => problem(at, facts);
  const nozzleValues = readNozzle(given.nozzle);
  const throatArea = nozzleValues.dischargeCoefficient * Math.PI * nozzleValues.throatRadius ** 2;
  const heatLoss = readHeatLoss(given, { law, throatArea, regression }, misfit);
  const loss = heatLoss?.efficiency ?? 1;
  // c* goes with the root of the temperature: both carry the loss.
  const gasEnergy = propellant.gasConstant.si * propellant.effectiveTemperature.si * (loss * loss);
  const burst = chamber.burstPressure?.si;
  const densest = densestGas * propellant.density.si * gasEnergy;
  const lit = readIgnition(ignition, ambient, regression);
  const pressureLimit = burst === undefined ? densest : Math.min(densest, ambient + burst);
  if (lit.initialPressure >= pressureLimit)
    throw problem(at, {
      code: 'out-of-domain',
      path: 'ignition.initialPressure',
      given: ignition?.initialPressure ?? given.ambient,
      expected: `less than the ${(pressureLimit / 1e6).toPrecision(4)} MPa at which the ${burst === undefined ? 'model ends' : 'chamber bursts'}`,
    });
  const stop = given.stopPressure?.si ?? Math.max(1.002 * ambient, 1000);
  if (given.stopPressure !== undefined && stop < ambient)
    throw problem(at, {
      code: 'out-of-domain',
      path: 'stopPressure',
      given: given.stopPressure,
      expected: `at least the ambient pressure, ${given.ambient}`,
    });
  const chamberVolume = readVolume(given, cast, at);
  const model: MotorModel = {
    table,
    law,
    density: propellant.density.si,
    gasEnergy,
    characteristicVelocity: propellant.characteristicVelocity.si * loss,
    gamma: propellant.gamma,
    chamberVolume,
    ...nozzleValues,
    ambientPressure: ambient,
    ...lit,
    ...readBlockage(given),
    tailOff: readTailOff(given, misfit),
    stopPressure: stop,
    stopsBurning: given.stopPressure !== undefined,
    pressureLimit,
    timeLimit:
      given.timeLimit?.si ??
      Math.min(
        1e6,
        slowestBurn(law, table.burnout, Math.max(ambient, Math.min(stop, lit.initialPressure)), lit) +
          // Time constants of the chamber, for the tail-off.
          (50 * chamberVolume * propellant.characteristicVelocity.si) /
            (gasEnergy * Math.PI * nozzleValues.throatRadius ** 2),
      ),
    tolerance,
  };
  if (model.initialPressure <= 0 && model.igniterMass === 0)
    throw problem(at, {
      code: 'no-ignition',
      path: 'ignition',
      problem: 'in a vacuum, an initial pressure or igniter gas is required',
    });
  const grainText =
    'segments' in regression ? `column of ${regression.segments.length} grains` : regression.grain;
  return {
    model,
    regression,
    grainText,
    landings,
    heatLoss,
    hasBurst: burst !== undefined && ambient + burst <= densest,
    hasTimeLimit: given.timeLimit !== undefined,
  };
}

/** The law with the grain temperature in its coefficients; a clamped law has a band of exponent zero at each end. */
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

function readVolume({ chamber }: GivenMotor, cast: number, at: Place): number {
  const volume =
    chamber.volume?.si ??
    (Math.PI / 4) * (chamber.innerDiameter?.si ?? Number.NaN) ** 2 * (chamber.length?.si ?? Number.NaN);
  if (volume > cast) return volume;
  throw problem(at, {
    code: 'out-of-domain',
    path: 'chamber',
    problem: `the volume of the chamber must be larger than that of the propellant, ${(cast * 1e6).toPrecision(6)} cm³, got ${(volume * 1e6).toPrecision(6)} cm³`,
  });
}

/** Three times the burn at the lowest pressure there can be, so that the run of a motor that barely ignites ends, too. */
function slowestBurn(
  law: LawKernel,
  burnout: number,
  pressure: number,
  lit: ReturnType<typeof readIgnition>,
): number {
  // A falling law is slowest at high pressure.
  const rates = [Math.log(pressure), Math.log(2e7)].flatMap((lnP) =>
    Array.from(law.lnCoefficients, (ln, band) => Math.exp(ln + law.exponents[band] * lnP)),
  );
  const { igniterDuration, igniterFallTime, ignitionDelay, flameSpreadTime, partialFraction } = lit;
  const first =
    (3 * burnout) / Math.min(...rates) / partialFraction + igniterDuration + 2 * flameSpreadTime + 1;
  return first + igniterFallTime + ignitionDelay;
}
