import { density, fromSiArray, MeopError, procedure, q, readInput, type Values } from '../../../units';
import { type Grain, grainClosedForm, grainValue } from '../shapes';
import { outsideBy } from '../surface';
import { depthField } from './field';
import { massProperties } from './mass-properties';
import { once } from './once';
import { portsOf } from './ports';
import { regressInputs } from './regress-inputs';
import { regressShape, type ShapeRegression } from './regress-shape';
import type { Regression } from './regression';
import { regressionKernel } from './regression-kernel';
import { regressionText } from './regression-text';
import { segmentLayout } from './segment-layout';
import { firstWallContact, wallExposure } from './wall-exposure';

/**
 * Exact distance functions are used; flaws are included. The table is refined until two resolutions agree within the
 * required accuracy; the accuracy achieved is reported. Differences in rate due to port flow or temperature are not
 * included. The abort reason of `signal` is thrown as it is.
 *
 * @example regress(internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' })).burnout.in('mm') // => 17
 */
export const regress = /* @__PURE__ */ procedure({
  name: 'regress',
  title: 'Grain burnback',
  source: 'law of Piobert (1839): propellant burns normal to its surface, at the same rate everywhere',
  subject: grainValue,
  inputs: regressInputs,
  gives: 'burning area, propellant volume, port area, wall exposure and mass properties against depth burned',
  example: "regress(internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' }))",
  run: (grain, values) => regressGrain(grain, values),
});

const densityAsCast = density('ρ', 'density as cast');

/** The regression of a grain; the options are read and complete. */
export function regressGrain(
  grain: Grain,
  { accuracy, steps, stations, signal, onProgress }: Values<typeof regressInputs>,
): Regression {
  const progress = onProgress === undefined ? undefined : (f: number): void => onProgress(0.85 * f);
  const found = regressShape(grain.shape, { accuracy, steps, signal, onProgress: progress });
  const { area, volume, method, achieved, form } = exact(grain, found);
  const { envelope } = grain.shape;
  const full = depthField(found.lit);
  const jumps = found.breaks.map((b) => b.depth);
  const contact = webOf(grain, found);
  const si = regressionKernel(found.depth, area, volume, [...jumps, contact], found.burnout, form);
  const cast = volume[0];
  const mean = cast / found.burnout;
  signal?.throwIfAborted();
  onProgress?.(1);
  // Computed at the first use: not every caller needs them.
  const ports = once(() => portsOf(grain, found, full, stations));
  const exposure = once(() => {
    const wall = wallExposure(full, envelope, found.wedge.axisymmetric ? 1 : 72, 41);
    return {
      angle: fromSiArray('angle', wall.angle),
      position: fromSiArray('length', wall.position),
      depth: fromSiArray('length', wall.depth),
    };
  });
  const flawCount = grain.flaws.length;
  const lengthAt = (depth: unknown): number => readInput('length', 'depth', depth, 'regress').si;
  const largest = Math.max(...area);
  const missed = achieved > accuracy;
  const layout = once(() => [segmentLayout(grain, found, si)]);
  const result: Regression = {
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
    neutrality: largest / mean,
    meanBurningArea: q(mean, 'm^2').to('mm^2'),
    get portArea() {
      return ports();
    },
    get wallExposure() {
      return exposure();
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
        ? [
            `Burnback table: the estimated relative error of ${achieved.toExponential(1)} exceeds the required ${accuracy}. Allow for this error in results that use the table.`,
          ]
        : []),
    ],
    si,
    layout,
    burningAreaAt: (depth) => q(si.areaAt(lengthAt(depth)), 'm^2').to('mm^2'),
    propellantVolumeAt: (depth) => q(si.volumeAt(lengthAt(depth)), 'm^3').to('cm^3'),
    massProperties: (given) => {
      const rho = densityAsCast.read(given, { procedure: 'massProperties', path: 'density' });
      return massProperties(grain, found, volume, rho.si);
    },
    toString: () =>
      `${String(grain)}: ${q(cast, 'm^3').to('cm^3')}, burnout depth ${q(found.burnout, 'm').to('mm')}, burning area ${q(area[0], 'm^2').to('mm^2')} initially, maximum ${q(largest, 'm^2').to('mm^2')}`,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: (): string => regressionText(result) },
  };
  return result;
}

/** Cautions on flaws that lie where there is no propellant. A typing error in their position would make them look harmless. */
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
      `${label}: the flaw lies in the port, where there is no propellant, and has no effect. Check its position.`,
    ];
  });
}

/** Replaces the sampled table by the closed form where there is one. */
function exact(
  grain: Grain,
  found: ShapeRegression,
): {
  readonly area: Float64Array;
  readonly volume: Float64Array;
  readonly method: Regression['method'];
  readonly achieved: number;
  readonly form?: ReturnType<typeof grainClosedForm>;
} {
  const form = grain.closedForm;
  if (form === undefined) return found;
  const faces = grain.burningEnds === 'both' ? 2 : grain.burningEnds === 'none' ? 0 : 1;
  const closed = grainClosedForm(form, grain.shape.envelope.length, faces);
  const { area, volume } = closed;
  const last = found.depth.length - 1;
  return {
    area: found.depth.map((w, k) => (k === last ? 0 : area(w))),
    volume: found.depth.map((w, k) => (k === last ? 0 : volume(w))),
    method: 'closed form',
    achieved: 0,
    form: closed,
  };
}

/** Depth at which a front, other than that of an end or a debond, first reaches the wall. */
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
  if (!(volume > 0))
    throw new MeopError({
      code: 'grain-no-propellant',
      procedure: 'regress',
      problem: 'the grain has no volume',
      remedy: 'Use an outer diameter and a length above zero',
    });
  return volume;
}
