import { fromSiValue, MeopError, type Quantity, type QuantityInput, unitOf } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readPositive } from '../../units/refusal';

/** An American taper pipe thread, basic dimensions. */
export interface PipeThread {
  readonly name: string;
  /** Outside diameter of the pipe. */
  readonly outsideDiameter: Quantity<'length'>;
  readonly pitch: Quantity<'length'>;
  /** Pitch diameter at the end of the external thread. */
  readonly pitchDiameterAtEnd: Quantity<'length'>;
  /** Pitch diameter at the mouth of the internal thread. */
  readonly pitchDiameterAtMouth: Quantity<'length'>;
  /** Hand-tight engagement L1. */
  readonly handTightLength: Quantity<'length'>;
  /** Effective external thread L2. */
  readonly effectiveLength: Quantity<'length'>;
  /** Hand-tight engagement plus three turns of the wrench: what the wall must give. */
  readonly makeUpLength: Quantity<'length'>;
  readonly source: string;
}

// Nominal size, pipe outside diameter in, threads per inch, L1 in; the rest by the formulas of the standard.
const rows = [
  ['1/16', 0.3125, 27, 0.16],
  ['1/8', 0.405, 27, 0.1615],
  ['1/4', 0.54, 18, 0.2278],
  ['3/8', 0.675, 18, 0.24],
  ['1/2', 0.84, 14, 0.32],
  ['3/4', 1.05, 14, 0.339],
] as const;

/** Nominal size of a taper pipe thread. */
export type PipeSize = (typeof rows)[number][0];

/**
 * A taper pipe thread (NPT) by nominal size.
 *
 * @throws MeopError `unknown-name`
 * @example pipeThread('1/8').effectiveLength.in('in').toFixed(4) // => '0.2639'
 */
export function pipeThread(size: PipeSize): PipeThread {
  const row = rows.find(([name]) => name === size);
  if (row === undefined)
    throw new MeopError(
      'unknown-name',
      `pipeThread: no size '${size}'; known are ${rows.map(([name]) => name).join(', ')}`,
      'size',
      { value: size, expected: 'the nominal size of an NPT thread' },
    );
  const [name, d, perInch, l1] = row;
  const p = 1 / perInch;
  const e0 = d - (0.05 * d + 1.1) * p;
  const inch = (value: number): Quantity<'length'> => fromSiValue(value * 0.0254, 'length', unitOf('in'));
  return {
    name: `${name}-${perInch} NPT`,
    outsideDiameter: inch(d),
    pitch: inch(p),
    pitchDiameterAtEnd: inch(e0),
    pitchDiameterAtMouth: inch(e0 + l1 / 16),
    handTightLength: inch(l1),
    effectiveLength: inch((0.8 * d + 6.8) * p),
    makeUpLength: inch(l1 + 3 * p),
    source: 'ASME B1.20.1, basic dimensions and formulas, read in reproductions; three turns of make-up',
  };
}

/** Whether a wall is thick enough for a port. */
export interface PortWallCheck {
  /** Full engaged thread that the wall gives. */
  readonly engagement: Quantity<'length'>;
  /** What a full make-up needs. */
  readonly needed: Quantity<'length'>;
  readonly fits: boolean;
  readonly cautions: readonly string[];
}

const taperPortFields: FieldsOf<Parameters<typeof taperPort>[0]> = { size: 'required', wall: 'required' };

/**
 * Whether a taper port for an instrument fits in a wall: taper threads seal and hold only when made up in full.
 *
 * @throws MeopError `unknown-name`, `out-of-domain`
 * @example taperPort({ size: '1/8', wall: '1/4 in' }).fits // => false
 */
export function taperPort(options: {
  readonly size: PipeSize;
  readonly wall: QuantityInput<'length'>;
}): PortWallCheck {
  requireFields('taperPort', options, taperPortFields);
  const { size, wall } = options;
  const thread = pipeThread(size);
  const thickness = positive('taperPort', 'wall', wall);
  return portFit(thickness, thread.makeUpLength.si, [
    'a taper thread wedges its hole open: prefer a straight thread with a seal in a thin or brittle wall',
  ]);
}

const straightPortFields: FieldsOf<Parameters<typeof straightPort>[0]> = {
  wall: 'required',
  sealDepth: 'required',
  engagement: 'required',
};

/**
 * Whether a straight port with a face seal fits in a wall: the spot face or seal seat takes depth from the thread.
 *
 * @throws MeopError `out-of-domain`
 * @example straightPort({ wall: '0.5 in', sealDepth: '0.1 in', engagement: '0.35 in' }).fits // => true
 */
export function straightPort(options: {
  readonly wall: QuantityInput<'length'>;
  /** Depth of the spot face or seal seat. */
  readonly sealDepth: QuantityInput<'length'>;
  /** Full thread that the load asks for, as from {@link threadStripping}. */
  readonly engagement: QuantityInput<'length'>;
}): PortWallCheck {
  requireFields('straightPort', options, straightPortFields);
  const { wall, sealDepth, engagement } = options;
  const thickness = positive('straightPort', 'wall', wall);
  const seat = positive('straightPort', 'sealDepth', sealDepth);
  return portFit(thickness - seat, positive('straightPort', 'engagement', engagement), []);
}

function portFit(given: number, needed: number, cautions: readonly string[]): PortWallCheck {
  const fits = given >= needed;
  const mm = (si: number): Quantity<'length'> => fromSiValue(si, 'length', unitOf('mm'));
  return {
    engagement: mm(Math.max(0, Math.min(given, needed))),
    needed: mm(needed),
    fits,
    cautions: fits
      ? cautions
      : [
          `the wall gives ${mm(Math.max(0, given))} of thread, ${mm(needed)} is needed: use a boss`,
          ...cautions,
        ],
  };
}

const positive = (context: string, field: string, value: unknown): number =>
  readPositive('length', field, value, context).si;
