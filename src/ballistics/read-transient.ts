// Ignition, heat loss, tail-off and blockage of a simulation in plain numbers of the kernel.
import { constants, type ErrorFacts } from '../units';
import type { Burned } from './read-grain';
import type { GivenMotor } from './read-motor';
import { rateOfLaw } from './simulation/chamber-rate';
import type { LawKernel } from './simulation/motor-model';
import type { IgniterKernel } from './transient/igniter-flow';
import { stirredRootSi } from './transient/stirred-chamber';
import type { TailOffKernel } from './transient/tail-off-slopes';

/** Makes the error of an input. */
type Problem = (facts: ErrorFacts & { readonly path: string }) => Error;

const traceOfGas = 1; // Pa

// A picosecond is no time for a chamber: a step of it has no digits left.
const lasting = (seconds: number = 0): number => (seconds < 1e-12 ? 0 : seconds);

type Ignition = NonNullable<GivenMotor['ignition']>;

/** The gas of the igniter. */
export function igniterKernel(
  ignition:
    | Pick<
        Ignition,
        'igniterMass' | 'igniterDuration' | 'igniterFallTime' | 'igniterGasTemperature' | 'igniterMolarMass'
      >
    | undefined,
): IgniterKernel {
  const igniterMass = ignition?.igniterMass.si ?? 0;
  const hasIgniter = igniterMass > 0;
  const temperature = ignition?.igniterGasTemperature?.si;
  const molarMass = ignition?.igniterMolarMass?.si;
  return {
    igniterMass,
    igniterDuration: hasIgniter ? (ignition?.igniterDuration.si ?? 0) : 0,
    igniterFallTime: hasIgniter ? lasting(ignition?.igniterFallTime.si) : 0,
    igniterGasEnergy:
      !hasIgniter || temperature === undefined || molarMass === undefined
        ? undefined
        : (constants.molarGasConstant.value / molarMass) * temperature,
  };
}

/** Igniter, spread of the flame, closure. */
export function readIgnition(ignition: Ignition | undefined, ambient: number, regression: Burned) {
  const igniter = igniterKernel(ignition);
  const speed = ignition?.flameSpreadSpeed?.si;
  // An empty chamber has no pressure to burn at: a vacuum with an igniter begins with a trace of gas.
  const atRest = ambient === 0 && igniter.igniterMass > 0 ? traceOfGas : ambient;
  return {
    ...igniter,
    initialPressure: ignition?.initialPressure?.si ?? atRest,
    ignitionDelay: lasting(ignition?.ignitionDelay.si),
    flameSpreadTime: lasting(
      speed === undefined ? ignition?.flameSpreadTime.si : lengthOf(regression) / speed,
    ),
    partialFraction: ignition?.partialFraction ?? 1,
    fullIgnitionPressure: ignition?.fullIgnitionPressure?.si ?? 0,
    nozzleClosureBurstPressure: ignition?.nozzleClosureBurstPressure?.si ?? 0,
  };
}

const lengthOf = ({ wallExposure: { position } }: Burned): number => position.max().si;

/** Blocked fraction of the throat and its times. */
export function readBlockage({ throatBlockage: given }: GivenMotor) {
  const blocked = given !== undefined && given.fraction > 0 && given.duration.si > 0 ? given : undefined;
  return {
    blockedFraction: blocked?.fraction ?? 0,
    blockedFrom: blocked?.from.si ?? 0,
    blockedUntil: blocked === undefined ? 0 : blocked.from.si + blocked.duration.si,
  };
}

/** The law of the tail-off. The wall is then that of the whole empty chamber, unless its area is given. */
export function readTailOff(given: GivenMotor, problem: Problem): TailOffKernel {
  const { tailOff, propellant } = given;
  if (tailOff === undefined || tailOff.law !== 'heat-loss')
    return { law: tailOff?.law ?? 'isothermal', wallConductance: 0, wallEnergy: 0 };
  const area = tailOff.wallArea?.si ?? chamberWall(given, 'tailOff.wallArea', problem).whole;
  const gasConstant = propellant.gasConstant.si;
  return {
    law: 'heat-loss',
    wallConductance: (tailOff.heatTransferCoefficient.si * area) / gasConstant,
    wallEnergy: gasConstant * tailOff.wallTemperature.si,
  };
}

interface Balanced {
  readonly law: LawKernel;
  readonly throatArea: number;
  readonly regression: Burned;
}

/** Heat loss of a motor at the pressure that balances its mean burning area. */
interface HeatLossState {
  /** Characteristic velocity with heat loss/without. */
  readonly efficiency: number;
  /** [m²] */
  readonly wallArea: number;
  /** [Pa] */
  readonly pressure: number;
}

/** Heat loss of a motor; `undefined` without an input of it. */
export function readHeatLoss(
  given: GivenMotor,
  { law, throatArea, regression }: Balanced,
  problem: Problem,
): HeatLossState | undefined {
  const { heatLoss, propellant } = given;
  if (heatLoss === undefined) return undefined;
  const area = heatLoss.wallArea?.si ?? meanWall(given, regression, problem);
  const heatCapacity = (propellant.gamma * propellant.gasConstant.si) / (propellant.gamma - 1);
  const conductance = (heatLoss.heatTransferCoefficient.si * area) / heatCapacity;
  const wallRatio = heatLoss.wallTemperature.si / propellant.effectiveTemperature.si;
  const speed = propellant.characteristicVelocity.si;
  const rootAt = (p: number): number => stirredRootSi((conductance * speed) / (p * throatArea), wallRatio);
  // The lowest pressure at which the mean surface generates no more than leaves, on a grid in ln p, then by bisection.
  const rate = new Float64Array(2);
  const excess = (lnP: number): number => {
    rateOfLaw(law, lnP, rate);
    const p = Math.exp(lnP);
    return (
      propellant.density.si * rate[0] * regression.meanBurningArea.si - (p * throatArea) / (speed * rootAt(p))
    );
  };
  let high = Math.log(1e4);
  while (excess(high) > 0 && high < Math.log(1e9)) high += 0.1;
  let low = high - 0.1;
  for (let i = 0; i < 50; i++) {
    const middle = 0.5 * (low + high);
    if (excess(middle) > 0) low = middle;
    else high = middle;
  }
  const pressure = Math.exp(high);
  return { efficiency: rootAt(pressure), wallArea: area, pressure };
}

/** Wall in contact with the gas, as a mean over the burned depth. */
function meanWall(given: GivenMotor, regression: Burned, problem: Problem): number {
  const { ends, side, sideLength, diameter } = chamberWall(given, 'heatLoss.wallArea', problem);
  const envelope = regression.castVolume.si / regression.volumetricLoading;
  const covered = Math.min(sideLength, envelope / ((Math.PI / 4) * diameter ** 2));
  const { depth } = regression.wallExposure;
  const burnout = regression.burnout.si;
  const exposed =
    depth.si.reduce((sum, d) => sum + Math.max(0, 1 - d / burnout), 0) / Math.max(1, depth.si.length);
  return ends + side * (1 - (covered / sideLength) * (1 - exposed));
}

function chamberWall({ chamber }: GivenMotor, path: string, problem: Problem) {
  const diameter = chamber.innerDiameter?.si;
  const sideLength = chamber.length?.si;
  if (diameter === undefined || sideLength === undefined)
    throw problem({
      code: 'missing-field',
      path,
      expected: 'wall area in contact with the gas',
      remedy: 'Give it, or the chamber by innerDiameter and length',
    });
  const ends = (Math.PI / 2) * diameter ** 2;
  const side = Math.PI * diameter * sideLength;
  return { ends, side, sideLength, diameter, whole: ends + side };
}
