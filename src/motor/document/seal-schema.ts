import * as z from 'zod/mini';
import { oRing } from '../../structures';
import { oneOf, part, positiveCount } from './fields';
import { materialField } from './material-field';
import { measure } from './measure';
import { tableName } from './table-name';

const ringField = () => tableName('AS568 size number of the O-ring', '029', oRing);
const hardnessField = () =>
  z.optional(measure('dimensionless', 'hardness, Shore A', '70', { min: 70, max: 90, words: '70 to 90' }));
const compoundField = () => z.optional(materialField('compound of the ring'));

const ofFace = (field: string): string =>
  `'${field}' is a field of a face seal and mutually exclusive with fields of a radial seal. Add "seal": "face", or give grooveDiameter, grooveWidth and closureDiameter.`;
const ofBore = (field: string): string =>
  `'${field}' is a field of a radial seal and mutually exclusive with "seal": "face". Omit "seal": "face", or give grooveOutsideDiameter, grooveInsideDiameter and grooveDepth.`;

const radialSeal = () =>
  part(
    {
      seal: z.optional(z.literal('radial')),
      ring: ringField(),
      grooveDiameter: measure('length', 'diameter of the groove bottom', '44 mm'),
      grooveWidth: measure('length', 'width of the groove', '2.7 mm'),
      closureDiameter: measure('length', 'diameter of the closure next to the groove', '47.9 mm'),
      hardness: hardnessField(),
      compound: compoundField(),
      backupRings: z.optional(positiveCount('number of backup rings', 0)),
      backupThickness: z.optional(measure('length', 'thickness of a backup ring', '1.3 mm')),
    },
    'O-ring in a groove of the closure, sealing on the bore of the case (radial)',
    Object.fromEntries(
      ['grooveOutsideDiameter', 'grooveInsideDiameter', 'grooveDepth', 'faceGap'].map((field) => [
        field,
        ofFace(field),
      ]),
    ),
  );

const faceSeal = () =>
  part(
    {
      seal: z.literal('face'),
      ring: ringField(),
      grooveOutsideDiameter: measure(
        'length',
        'outside diameter of the groove, on which pressure seats the ring',
        '44 mm',
      ),
      grooveInsideDiameter: measure('length', 'inside diameter of the groove', '36.5 mm'),
      grooveDepth: measure('length', 'depth of the groove, axial', '2 mm'),
      faceGap: z.optional(
        measure(
          'length',
          'gap between the faces under pressure: clearance of the retention, stretch and bending',
          '0.05 mm',
          { min: 0, words: '0 or more' },
        ),
      ),
      hardness: hardnessField(),
      compound: compoundField(),
    },
    'O-ring in a groove of a flat face, closed by another face',
    Object.fromEntries(
      ['grooveDiameter', 'grooveWidth', 'closureDiameter', 'backupRings', 'backupThickness'].map((field) => [
        field,
        ofBore(field),
      ]),
    ),
  );

/** An O-ring and its groove: radial by default, or in a face. */
export const sealSchema = () => oneOf('seal', [radialSeal(), faceSeal()], 'O-ring and its groove');

/** A seal as parsed. */
export type SealPart = z.output<ReturnType<typeof sealSchema>>;

/** A face seal. */
export type FaceSealPart = Extract<SealPart, { readonly seal: 'face' }>;

export const isFaceSeal = (seal: SealPart): seal is FaceSealPart => seal.seal === 'face';
