import { fromSiArray, MeopError, q, readInput } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { grainClosedForm } from './closed-form';
import { depthField } from './field';
import { type Grain, requireGrain } from './grain';
import { massProperties } from './mass-properties';
import { refused } from './measure';
import { portsOf } from './ports';
import { regressShape, type ShapeRegression } from './regress-shape';
import type { Regression, RegressOptions } from './regression';
import { regressionKernel } from './regression-kernel';
import { regressionText } from './regression-text';
import { outsideBy } from './source';
import { firstWallContact, wallExposure } from './wall-exposure';

const regressFields: FieldsOf<RegressOptions> = {
  accuracy: 'optional',
  steps: 'optional',
  stations: 'optional',
  signal: 'optional',
  onProgress: 'optional',
};

/**
 * Burn a grain back: burning area, propellant volume, ports, wall exposure and mass properties against burned depth, from
 * exact distances to everything that burns, flaws included. The table is refined until two resolutions agree within
 * the accuracy asked for; what was achieved is reported.
 *
 * Propellant burns normal to its surface at one and the same rate everywhere (Piobert's law): rate differences by port flow
 * or temperature are not in it.
 *
 * @throws MeopError `grain-nothing-burns`, `grain-no-propellant`, `grain-path-blocked` (an inhibited cavity in the front's
 * straight way), `grain-surface-outside`, `grain-measure`; and the abort reason of `signal`
 * @example regress(internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' })).burnout.in('mm') // => 17
 */
export function regress(grain: Grain, options: RegressOptions = {}): Regression {
  requireGrain('regress', 'grain', grain);
  requireFields('regress', options, regressFields);
  const { accuracy = 1e-3, steps = 300, stations = 9, signal, onProgress } = options;
  if (!(accuracy >= 1e-6 && accuracy <= 0.1))
    throw refused('regress', 'accuracy', accuracy, 'a number from 1e-6 to 0.1');
  if (!(Number.isInteger(steps) && steps >= 20 && steps <= 5000))
    throw refused('regress', 'steps', steps, 'a whole number from 20 to 5000');
  if (!(Number.isInteger(stations) && stations >= 1 && stations <= 200))
    throw refused('regress', 'stations', stations, 'a whole number from 1 to 200');
  const progress = onProgress === undefined ? undefined : (f: number): void => onProgress(0.85 * f);
  const found = regressShape(grain.shape, { accuracy, steps, signal, onProgress: progress });
  const { area, volume, method, achieved } = exact(grain, found);
  const { envelope } = grain.shape;
  const full = depthField(found.lit);
  const jumps = found.breaks.map((b) => b.depth);
  const contact = webOf(grain, found);
  const si = regressionKernel(found.depth, area, volume, [...jumps, contact], found.burnout);
  const cast = volume[0];
  const mean = cast / found.burnout;
  signal?.throwIfAborted();
  const portArea = portsOf(grain, found, full, stations);
  onProgress?.(0.95);
  const wall = wallExposure(full, envelope, found.wedge.axisymmetric ? 1 : 72, 41);
  onProgress?.(1);
  const flawCount = grain.flaws.length;
  const lengthAt = (depth: unknown): number => readInput('length', 'depth', depth, 'regress').si;
  const worst = Math.max(...area);
  const missed = achieved > accuracy;
  const result: Omit<Regression, 'toString'> = {
    grain: String(grain),
    method,
    depth: fromSiArray('length', found.depth),
    burningArea: fromSiArray('area', area),
    propellantVolume: fromSiArray('volume', volume),
    castVolume: q(cast, 'm^3').to('cm^3'),
    volumetricLoading: cast / envelopeVolume(grain),
    breaks: found.breaks.map((b) => ({
      depth: q(b.depth, 'm').to('mm'),
      change: q(b.jump, 'm^2').to('mm^2'),
    })),
    burnout: q(found.burnout, 'm').to('mm'),
    web: q(contact, 'm').to('mm'),
    sliverFraction: contact < found.burnout ? si.volumeAt(contact) / cast : 0,
    neutrality: worst / mean,
    meanBurningArea: q(mean, 'm^2').to('mm^2'),
    portArea,
    wallExposure: {
      angle: fromSiArray('angle', wall.angle),
      position: fromSiArray('length', wall.position),
      depth: fromSiArray('length', wall.depth),
    },
    flawLighting: grain.flaws.map((flaw, i) => ({
      label: flaw.label,
      depth: q(found.lit[found.lit.length - flawCount + i].litAt, 'm').to('mm'),
    })),
    accuracy: {
      requested: accuracy,
      achieved,
      cells: found.cells,
      symmetry: found.wedge.axisymmetric ? Number.POSITIVE_INFINITY : found.wedge.copies,
    },
    cautions: [
      ...grain.cautions,
      ...idleFlaws(grain),
      ...(missed
        ? [`the accuracy asked for was not reached: ${achieved.toExponential(1)} instead of ${accuracy}`]
        : []),
    ],
    si,
    burningAreaAt: (depth) => q(si.areaAt(lengthAt(depth)), 'm^2').to('mm^2'),
    propellantVolumeAt: (depth) => q(si.volumeAt(lengthAt(depth)), 'm^3').to('cm^3'),
    massProperties: (density) => {
      const rho = readInput('density', 'density', density, 'massProperties').si;
      if (!(rho > 0)) throw refused('massProperties', 'density', density, 'a density above zero');
      return massProperties(grain, found, volume, rho);
    },
  };
  return {
    ...result,
    toString: () =>
      `${String(grain)}: ${q(cast, 'm^3').to('cm^3')}, burns ${q(found.burnout, 'm').to('mm')} deep, area ${q(area[0], 'm^2').to('mm^2')} at first, ${q(worst, 'm^2').to('mm^2')} at most`,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => regressionText(result) },
  };
}

/** Flaws that lie where there is no propellant: a slip of the pen in their place would make them look harmless. */
function idleFlaws(grain: Grain): string[] {
  const { ports, envelope } = grain.shape;
  if (ports.length === 0) return [];
  const open = depthField(ports.map((source) => ({ source, litAt: 0 })));
  const slack = 1e-9 * envelope.radius;
  return grain.flaws.flatMap(({ label }, i) => {
    const points = grain.shape.flaws[i].source.samples();
    for (let k = 0; k + 2 < points.length; k += 3) {
      const [x, y, z] = [points[k], points[k + 1], points[k + 2]];
      if (outsideBy(envelope, x, y, z) <= slack && open.depth(x, y, z) > slack) return [];
    }
    return [
      `${label}: it lies in the port, where there is no propellant, and changes nothing: check its place`,
    ];
  });
}

/** Replace the sampled table by the closed form, where there is one. */
function exact(
  grain: Grain,
  found: ShapeRegression,
): {
  readonly area: Float64Array;
  readonly volume: Float64Array;
  readonly method: Regression['method'];
  readonly achieved: number;
} {
  const form = grain.closedForm;
  if (form === undefined) return found;
  const faces = grain.burningEnds === 'both' ? 2 : grain.burningEnds === 'none' ? 0 : 1;
  const { area, volume } = grainClosedForm(form, grain.shape.envelope.length, faces);
  const last = found.depth.length - 1;
  return {
    area: found.depth.map((w, k) => (k === last ? 0 : area(w))),
    volume: found.depth.map((w, k) => (k === last ? 0 : volume(w))),
    method: 'closed form',
    achieved: 0,
  };
}

/** Depth at which a front other than an end's or a debond's reaches the wall. */
function webOf(grain: Grain, found: ShapeRegression): number {
  const walls = new Set(
    grain.flaws.flatMap((f, i) => (f.kind === 'debond' ? [found.lit.length - grain.flaws.length + i] : [])),
  );
  const ends = Number(grain.shape.headBurns) + Number(grain.shape.aftBurns);
  const ports = grain.shape.ports.length;
  const inner = found.lit.filter(
    (l, i) => (i < ports || i >= ports + ends) && !walls.has(i) && l.source.name !== 'outside',
  );
  if (inner.length === 0) return found.burnout;
  return Math.min(found.burnout, firstWallContact(depthField(inner), grain.shape.envelope));
}

function envelopeVolume(grain: Grain): number {
  const { form, radius, length } = grain.shape.envelope;
  const volume = form === 'ball' ? (4 / 3) * Math.PI * radius ** 3 : Math.PI * radius ** 2 * length;
  if (!(volume > 0)) throw new MeopError('grain-no-propellant', 'the grain has no volume');
  return volume;
}
