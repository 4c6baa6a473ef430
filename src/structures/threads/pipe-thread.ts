import {
  fromSiValue,
  length,
  type NamedTable,
  named,
  procedure,
  type Quantity,
  unitOf,
  unknownName,
} from '../../units';

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
  /** Hand-tight engagement plus three turns of the wrench; the minimum thickness of the wall. */
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
export function pipeThread(size: PipeSize | (string & Readonly<Record<never, never>>)): PipeThread {
  const row = rows.find(([name]) => name === size);
  if (row === undefined) throw unknownName(size, sizes(), 'NPT size', { procedure: 'pipeThread', path: '' });
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

const sizes = (): readonly PipeSize[] => rows.map(([name]) => name);

/** Taper pipe threads by nominal size. */
export const pipeThreads: NamedTable<PipeThread, PipeSize> = {
  what: 'NPT size',
  names: sizes,
  get usual() {
    return sizes();
  },
  find: pipeThread,
  is: (value): value is PipeThread => typeof value === 'object' && value !== null && 'makeUpLength' in value,
};

/** Whether a wall is thick enough for a port. */
export interface PortWallCheck {
  /** Length of full engaged thread in the wall. */
  readonly engagement: Quantity<'length'>;
  /** Engagement required. */
  readonly needed: Quantity<'length'>;
  readonly fits: boolean;
  readonly cautions: readonly string[];
}

const wall = length('t', 'thickness of the wall at the port', { example: '1/4 in' });

/**
 * Checks that the wall is thick enough for a fully made-up taper thread, which seals and holds only then.
 *
 * @example taperPort({ size: '1/8', wall: '1/4 in' }).fits // => false
 */
export const taperPort = /* @__PURE__ */ procedure({
  name: 'taperPort',
  title: 'Wall thickness for a taper pipe port',
  source: 'ASME B1.20.1, basic dimensions; three turns of make-up',
  inputs: { size: named('size of the pipe thread', pipeThreads, { example: '1/8' }), wall },
  gives: 'the engagement in the wall and whether it is enough for a full make-up',
  example: { size: '1/8', wall: '1/4 in' },
  run: ({ size, wall: { si } }): PortWallCheck =>
    portFit(si, size.makeUpLength.si, [
      'A taper thread wedges its hole open. Use a straight thread with a seal in a thin or brittle wall.',
    ]),
});

/**
 * Checks that the wall is thick enough for a straight port with a face seal, whose spot face reduces the length of thread.
 *
 * @example straightPort({ wall: '0.5 in', sealDepth: '0.1 in', engagement: '0.35 in' }).fits // => true
 */
export const straightPort = /* @__PURE__ */ procedure({
  name: 'straightPort',
  title: 'Wall thickness for a straight port with a face seal',
  source: 'Geometry',
  inputs: {
    wall,
    sealDepth: length('h', 'depth of the spot face or seal seat', { example: '0.1 in' }),
    engagement: length('L_e', 'full thread required for the load, as from threadStripping', {
      example: '0.35 in',
    }),
  },
  gives: 'the engagement in the wall and whether it is enough for the load',
  example: { wall: '0.5 in', sealDepth: '0.1 in', engagement: '0.35 in' },
  run: ({ wall: { si }, sealDepth, engagement }): PortWallCheck =>
    portFit(si - sealDepth.si, engagement.si, []),
});

function portFit(available: number, needed: number, cautions: readonly string[]): PortWallCheck {
  const fits = available >= needed;
  const mm = (si: number): Quantity<'length'> => fromSiValue(si, 'length', unitOf('mm'));
  const thin = `The wall has ${mm(Math.max(0, available))} of thread; ${mm(needed)} is required. Use a boss.`;
  return {
    engagement: mm(Math.max(0, Math.min(available, needed))),
    needed: mm(needed),
    fits,
    cautions: fits ? cautions : [thin, ...cautions],
  };
}
