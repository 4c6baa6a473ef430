import type { QuantityInput } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { ball } from './ball';
import { partialCore, throughCore } from './bore';
import { readAngle, readChoice, readCount, readLength, refused, requireFit } from './measure';
import { arc, line, type Outline, outline } from './outline';
import { clippedOutline } from './outline-clip';
import { circleOutline, finOutline } from './outline-shapes';
import { prism } from './prism';
import { revolve } from './revolve';
import type { Envelope, Source } from './source';

/** A cavity that a mandrel leaves, for {@link composedGrain}. */
export interface Core {
  readonly name: string;
  readonly place: (envelope: Envelope) => Source;
}

/** Axial extent of a core. */
export interface CoreExtent {
  /** [length from the head end]. Default the head end. */
  readonly from?: QuantityInput<'length'>;
  /** [length from the head end]. Default the aft end. */
  readonly to?: QuantityInput<'length'>;
}

const extentFields: FieldsOf<CoreExtent> = { from: 'optional', to: 'optional' };

function extentOf(name: string, options: CoreExtent, length: number): readonly [number, number] {
  const from = options.from === undefined ? 0 : readLength(name, 'from', options.from, 'zero');
  const to = options.to === undefined ? length : readLength(name, 'to', options.to);
  requireFit(from < length, name, 'from', options.from, 'less than the length of the grain');
  requireFit(to > from, name, 'to', options.to, 'more than from');
  return [from, Math.min(to, length)];
}

const clipped = (name: string, field: string, o: Outline, radius: number): Outline => {
  const inside = clippedOutline(o, radius);
  requireFit(inside !== undefined, name, field, 'outside', 'a core inside the wall');
  return inside ?? o;
};

const cylinderFields: FieldsOf<Parameters<typeof cylinderCore>[0]> = {
  ...extentFields,
  diameter: 'required',
  offset: 'optional',
  angle: 'optional',
  inhibited: 'optional',
  burningSide: 'optional',
};

/**
 * A round core, on the axis or off it, with flat ends. Any of its faces can be inhibited; its side over one stretch only.
 *
 * @throws MeopError `grain-measure`
 * @example cylinderCore({ diameter: '16 mm', from: '20 mm' }).name // => 'cylinder core'
 */
export function cylinderCore(
  options: CoreExtent & {
    /** Diameter [length, above zero]. */
    readonly diameter: QuantityInput<'length'>;
    /** Distance of its axis from the grain's, and direction. Default 0. */
    readonly offset?: QuantityInput<'length'>;
    readonly angle?: QuantityInput<'angle'>;
    /** Faces that do not burn. */
    readonly inhibited?: readonly ('side' | 'head' | 'aft')[];
    /** The stretch of the side that burns, when the rest is inhibited [length from the head end]. */
    readonly burningSide?: { readonly from: QuantityInput<'length'>; readonly to: QuantityInput<'length'> };
  },
): Core {
  const name = 'cylinder core';
  const context = 'cylinderCore';
  requireFields(context, options, cylinderFields);
  const radius = readLength(context, 'diameter', options.diameter) / 2;
  const offset = options.offset === undefined ? 0 : readLength(context, 'offset', options.offset, 'zero');
  const angle = options.angle === undefined ? 0 : readAngle(context, 'angle', options.angle);
  const inhibited = options.inhibited ?? [];
  inhibited.forEach((face, i) => {
    readChoice(context, `inhibited[${i}]`, face, ['side', 'head', 'aft']);
  });
  if (options.burningSide !== undefined)
    requireFields('cylinderCore: burningSide', options.burningSide, { from: 'required', to: 'required' });
  return {
    name,
    place: (envelope) => {
      const [from, to] = extentOf(context, options, envelope.length);
      const o = clipped(
        context,
        'offset',
        circleOutline(radius, offset * Math.cos(angle), offset * Math.sin(angle)),
        envelope.radius,
      );
      const slack = 1e-9 * envelope.length;
      const whole = options.burningSide;
      const side: readonly [number, number] | undefined = inhibited.includes('side')
        ? undefined
        : whole === undefined
          ? [from, to]
          : [
              Math.max(from, readLength(context, 'burningSide.from', whole.from, 'zero')),
              Math.min(to, readLength(context, 'burningSide.to', whole.to)),
            ];
      requireFit(
        side === undefined || side[1] > side[0],
        context,
        'burningSide',
        options.burningSide,
        'a stretch of the core',
      );
      return prism({
        name,
        outline: o,
        from,
        to,
        faces: {
          side,
          start: from <= slack ? 'through' : inhibited.includes('head') ? 'inhibited' : 'burning',
          end:
            to >= envelope.length - slack ? 'through' : inhibited.includes('aft') ? 'inhibited' : 'burning',
        },
        mirror: angle,
      });
    },
  };
}

const coneFields: FieldsOf<Parameters<typeof coneCore>[0]> = {
  ...extentFields,
  headDiameter: 'required',
  aftDiameter: 'required',
  dome: 'optional',
};

/**
 * A conical core about the axis, between two diameters; a round tip or a dome closes an end that lies in the grain.
 *
 * @throws MeopError `grain-measure`, also for an end in the grain that is neither pointed nor domed
 * @example coneCore({ headDiameter: '12 mm', aftDiameter: '20 mm' }).name // => 'cone core'
 */
export function coneCore(
  options: CoreExtent & {
    /** Diameter at the head end and at the aft end of the core [length, zero or more]. */
    readonly headDiameter: QuantityInput<'length'>;
    readonly aftDiameter: QuantityInput<'length'>;
    /** A half ball of the core's own diameter before an end that lies in the grain. */
    readonly dome?: 'head' | 'aft';
  },
): Core {
  const name = 'cone core';
  const context = 'coneCore';
  requireFields(context, options, coneFields);
  if (options.dome !== undefined) readChoice(context, 'dome', options.dome, ['head', 'aft']);
  const head = readLength(context, 'headDiameter', options.headDiameter, 'zero') / 2;
  const aft = readLength(context, 'aftDiameter', options.aftDiameter, 'zero') / 2;
  return {
    name,
    place: ({ radius, length }) => {
      requireFit(
        Math.max(head, aft) < radius,
        context,
        'aftDiameter',
        options.aftDiameter,
        'less than the outer diameter',
      );
      const [from, to] = extentOf(context, options, length);
      const closedHead = from <= 0 || head === 0 || options.dome === 'head';
      const closedAft = to >= length || aft === 0 || options.dome === 'aft';
      requireFit(
        closedHead && closedAft,
        context,
        'dome',
        options.dome,
        'a point or a dome where the core ends in the grain',
      );
      const body = line(head, from, aft, to);
      const profile = outline([
        ...(options.dome === 'head' && head > 0 ? [arc(0, from, head, -Math.PI / 2, Math.PI / 2)] : []),
        body,
        ...(options.dome === 'aft' && aft > 0 ? [arc(0, to, aft, 0, Math.PI / 2)] : []),
      ]);
      return revolve({ name, profile, low: 0, high: length });
    },
  };
}

const finFields: FieldsOf<Parameters<typeof finCore>[0]> = {
  ...extentFields,
  count: 'required',
  thickness: 'required',
  tipDiameter: 'required',
  tip: 'optional',
  angle: 'optional',
};

/**
 * Fins or slots that stand on the axis: any number, square or round tips, any axial extent.
 *
 * @throws MeopError `grain-measure`
 * @example finCore({ count: 6, thickness: '4 mm', tipDiameter: '44 mm', from: '100 mm' }).name // => 'fin core'
 */
export function finCore(
  options: CoreExtent & {
    /** Number of fins [whole, at least 1]. */
    readonly count: number;
    readonly thickness: QuantityInput<'length'>;
    /** Twice the distance of the tips from the axis [length]; beyond the wall the fins are cut off. */
    readonly tipDiameter: QuantityInput<'length'>;
    readonly tip?: 'square' | 'round';
    /** Direction of the first fin [angle]. Default 0. */
    readonly angle?: QuantityInput<'angle'>;
  },
): Core {
  const name = 'fin core';
  const context = 'finCore';
  requireFields(context, options, finFields);
  const form = readChoice(context, 'tip', options.tip ?? 'square', ['square', 'round']);
  const count = readCount(context, 'count', options.count, 1);
  const half = readLength(context, 'thickness', options.thickness) / 2;
  const tip = readLength(context, 'tipDiameter', options.tipDiameter) / 2;
  const angle = options.angle === undefined ? 0 : readAngle(context, 'angle', options.angle);
  requireFit(half < tip, context, 'thickness', options.thickness, 'less than the tip diameter');
  return {
    name,
    place: ({ radius, length }) => {
      const [from, to] = extentOf(context, options, length);
      const fins = finOutline(count, half, tip, form, angle);
      if (fins === undefined)
        throw refused(context, 'thickness', options.thickness, 'fins that leave propellant between them');
      const o = clipped(context, 'tipDiameter', fins, radius);
      return from <= 0 && to >= length
        ? throughCore(name, o, length, angle)
        : partialCore(name, o, from, to, length, angle);
    },
  };
}

const sphereFields: FieldsOf<Parameters<typeof sphereCore>[0]> = {
  diameter: 'required',
  position: 'required',
};

/**
 * A ball on the axis, such as the widened end of a bore.
 *
 * @throws MeopError `grain-measure`
 * @example sphereCore({ diameter: '30 mm', position: '20 mm' }).name // => 'sphere core'
 */
export function sphereCore(options: {
  /** Diameter [length, above zero]. */
  readonly diameter: QuantityInput<'length'>;
  /** Its centre [length from the head end]. */
  readonly position: QuantityInput<'length'>;
}): Core {
  requireFields('sphereCore', options, sphereFields);
  const radius = readLength('sphereCore', 'diameter', options.diameter) / 2;
  const z = readLength('sphereCore', 'position', options.position, 'zero');
  return {
    name: 'sphere core',
    place: (envelope) => {
      requireFit(
        z <= envelope.length && radius < envelope.radius,
        'sphereCore',
        'position',
        options.position,
        'a ball inside the grain',
      );
      return ball({ name: 'sphere core', x: 0, y: 0, z, radius });
    },
  };
}
