import {
  axialBolts,
  boreGland,
  closurePlate,
  closureThread,
  endFlange,
  faceGland,
  radialBolts,
  retainingRing,
} from '../../structures/inputs';
import { inputs, length, list, optional, variants, words } from '../../units';
import type { Measured, ReadAs } from './document-types';
import { closureLayout } from './layout-inputs';

/** Retention methods of a closure: fields of which exactly one is given, with their descriptions. */
export const retentionMethods = {
  joint: 'radial bolts',
  retainingRing: 'a retaining ring in a groove of the case',
  thread: 'a thread on the closure',
  axialBolts: 'bolts along the axis',
} as const;

const ofFace = (field: string): string =>
  `'${field}' belongs to a face seal. Add "seal": "face", or give the groove of a radial seal: grooveDiameter, grooveWidth and closureDiameter`;
const ofBore = (field: string): string =>
  `'${field}' belongs to a radial seal. Omit "seal": "face", or give the groove of a face seal: grooveOutsideDiameter, grooveInsideDiameter and grooveDepth`;
const instead = (fields: readonly string[], fix: (field: string) => string) =>
  Object.fromEntries(fields.map((field) => [field, fix(field)]));

const position = (meaning: string) =>
  optional(length('x_g', meaning, { min: 0, example: '20 mm', worse: 'both' }));

/** An O-ring and its groove: radial, unless it is in a face. */
export const sealInputs = /* @__PURE__ */ variants(
  'seal',
  'O-ring and its groove',
  {
    radial: inputs(
      {
        ...boreGland.fields,
        position: position('distance from the end face of the case to the nearest edge of the groove'),
      },
      {
        meaning: boreGland.meaning,
        instead: instead(['grooveOutsideDiameter', 'grooveInsideDiameter', 'grooveDepth', 'faceGap'], ofFace),
      },
    ),
    face: inputs(
      {
        ...faceGland.fields,
        position: position(
          'distance from the end face of the case to the face with the groove; the face of the shoulder, or the inner face of a closure without one, where omitted',
        ),
      },
      {
        meaning: faceGland.meaning,
        instead: instead(
          ['grooveDiameter', 'grooveWidth', 'closureDiameter', 'backupRings', 'backupThickness'],
          ofBore,
        ),
      },
    ),
  },
  { standard: 'radial' },
);

/** A seal as parsed. */
export type SealPart = ReadAs<typeof sealInputs>;

/** A seal in a face. */
export type FaceSealPart = Extract<SealPart, { readonly seal: 'face' }>;

export const isFaceSeal = (seal: SealPart): seal is FaceSealPart => seal.seal === 'face';

/** Bolts along the axis, and the flange that they are tapped into. */
const boltsInEnd = /* @__PURE__ */ inputs(
  { ...axialBolts.fields, flange: optional(endFlange) },
  { meaning: 'bolts along the axis, tapped into the end of the case or its flange, which retain a closure' },
);

const closure = (end: 'head' | 'aft') =>
  optional(
    inputs(
      {
        ...closurePlate.fields,
        joint: optional(radialBolts),
        retainingRing: optional(retainingRing),
        thread: optional(closureThread),
        axialBolts: optional(boltsInEnd),
        layout: optional(closureLayout),
        seals: list('O-rings, the one nearest the gas first', sealInputs),
        notes: optional(words('remarks')),
      },
      { meaning: `${end} closure` },
    ),
  );

/** A closure as parsed. */
export type ClosureParts = NonNullable<NonNullable<ReadAs<typeof closuresInputs>>['head']>;

type RingParts = NonNullable<ClosureParts['retainingRing']>;

/** A retaining ring of a motor, with the sizes of its standard where the document names it. */
export interface MotorRing extends RingParts {
  readonly grooveDepth: Measured<'length'>;
  readonly edgeMargin: Measured<'length'>;
  readonly thickness: Measured<'length'>;
}

/** A closure of a motor. */
export type Closure = Omit<ClosureParts, 'retainingRing'> & {
  readonly retainingRing?: MotorRing | undefined;
};

/** The closures of a motor. */
export interface MotorClosures {
  readonly head?: Closure | undefined;
  readonly aft?: Closure | undefined;
}

/** The closures, how they are retained, and their seals. */
export const closuresInputs = /* @__PURE__ */ optional(
  inputs({ head: closure('head'), aft: closure('aft') }, { meaning: 'closures' }),
);
