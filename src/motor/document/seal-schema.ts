import * as z from 'zod/mini';
import { oRing } from '../../structures';
import { oneOf, part, positiveCount } from './fields';
import { materialField } from './material-field';
import { measure } from './measure';
import { tableName } from './table-name';

const ringField = () => tableName('the size of the O-ring, by its AS568 number', '029', oRing);
const hardnessField = () =>
  z.optional(measure('dimensionless', 'hardness, Shore A', '70', { min: 70, max: 90, words: '70 to 90' }));
const compoundField = () => z.optional(materialField('the rubber of the ring'));

const ofFace = (field: string): string =>
  `'${field}' belongs to a seal in a face: write "seal": "face", or give the groove of a radial seal, grooveDiameter, grooveWidth and closureDiameter; one of both is expected`;
const ofBore = (field: string): string =>
  `'${field}' belongs to a radial seal: leave "seal": "face" out, or give the groove of a seal in a face, grooveOutsideDiameter, grooveInsideDiameter and grooveDepth; one of both is expected`;

const radialSeal = () =>
  part(
    {
      seal: z.optional(z.literal('radial')),
      ring: ringField(),
      grooveDiameter: measure('length', 'diameter of the bottom of the groove', '44 mm'),
      grooveWidth: measure('length', 'width of the groove', '2.7 mm'),
      closureDiameter: measure('length', 'diameter of the closure beside the groove', '47.9 mm'),
      hardness: hardnessField(),
      compound: compoundField(),
      backupRings: z.optional(positiveCount('the number of backup rings', 0)),
      backupThickness: z.optional(measure('length', 'thickness of a backup ring', '1.3 mm')),
    },
    'an O-ring in a groove around the closure, against the bore of the case',
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
        'outside diameter of the groove; the pressure inside pushes the ring against it',
        '44 mm',
      ),
      grooveInsideDiameter: measure('length', 'inside diameter of the groove', '36.5 mm'),
      grooveDepth: measure('length', 'depth of the groove, along the axis', '2 mm'),
      faceGap: z.optional(
        measure(
          'length',
          'how far the faces stand apart under pressure: play of what holds the closure, stretch and bending',
          '0.05 mm',
          { min: 0, words: '0 or more' },
        ),
      ),
      hardness: hardnessField(),
      compound: compoundField(),
    },
    'an O-ring in a groove of a flat face, which another face closes',
    Object.fromEntries(
      ['grooveDiameter', 'grooveWidth', 'closureDiameter', 'backupRings', 'backupThickness'].map((field) => [
        field,
        ofBore(field),
      ]),
    ),
  );

/** An O-ring and its groove: radial, where nothing is said, or in a face. */
export const sealSchema = () => oneOf('seal', [radialSeal(), faceSeal()], 'an O-ring and its groove');

/** A seal as read. */
export type SealPart = z.output<ReturnType<typeof sealSchema>>;

/** A seal in a face. */
export type FaceSealPart = Extract<SealPart, { readonly seal: 'face' }>;

export const isFaceSeal = (seal: SealPart): seal is FaceSealPart => seal.seal === 'face';
