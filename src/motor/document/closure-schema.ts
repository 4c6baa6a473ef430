import * as z from 'zod/mini';
import { boltClass, boltClassNames, threadGeometry } from '../../structures';
import { choice, explained, listOf, part, positiveCount, textField } from './fields';
import { materialField } from './material-field';
import { measure } from './measure';
import { sealSchema } from './seal-schema';
import { tableName } from './table-name';

const jointSchema = () =>
  part(
    {
      thread: tableName('thread of the bolts', 'M5', threadGeometry),
      boltClass: tableName('strength class of the bolts', 'A2-70', boltClass, boltClassNames()),
      count: positiveCount('number of bolts'),
      rows: z.optional(positiveCount('number of rows of bolts')),
      rowSpacing: z.optional(measure('length', 'distance between rows', '15 mm')),
      shearPlane: explained(choice(['thread', 'shank'], 'part of the bolt in the shear plane'), {
        description: 'part of the bolt in the shear plane between case and closure',
      }),
      holeDiameter: measure('length', 'diameter of the holes in the case', '5.3 mm'),
      edgeDistance: measure('length', 'distance from the hole centres to the end of the case', '11 mm'),
      engagement: measure('length', 'thread engagement in the closure', '8 mm'),
      sealToHoles: z.optional(
        measure('length', 'distance from the seal to the holes, over which the hoop stress decays', '10 mm'),
      ),
      gap: z.optional(
        measure('length', 'gap between case and closure spanned by the bolts', '0.05 mm', {
          min: 0,
          words: '0 or more',
        }),
      ),
      positionTolerance: z.optional(
        measure('length', 'position tolerance of a hole', '0.05 mm', {
          min: 0,
          words: '0 or more',
        }),
      ),
    },
    'radial bolts that retain a closure',
  );

const retainingRingSchema = () =>
  part(
    {
      grooveDepth: measure('length', 'radial depth of the groove in the bore of the case', '1.2 mm'),
      edgeMargin: measure('length', 'distance from the groove to the end of the case', '5 mm'),
      thickness: measure('length', 'thickness of the ring, axial', '1.75 mm'),
      shearStrength: measure('stress', 'shear strength of the ring, from the manufacturer', '800 MPa'),
    },
    'retaining ring in a groove in the bore of the case',
  );

const closureThreadSchema = () =>
  part(
    {
      majorDiameter: measure(
        'length',
        'nominal diameter of the thread in the end of the case; limits of size are 2A/2B for a diameter in inches, otherwise 6g/6H',
        '52 mm',
      ),
      pitch: measure('length', 'pitch of the thread; 1/16 in is 16 threads per inch', '1.5 mm'),
      engagement: measure(
        'length',
        'length of full thread engagement, excluding chamfers and runout',
        '12 mm',
      ),
      reliefDiameter: z.optional(
        measure('length', 'diameter of the runout groove, if deeper than the thread', '53 mm'),
      ),
    },
    'thread that retains a closure in the case',
  );

/** Retention methods of a closure: fields of which exactly one is given, with their descriptions. */
export const retentionMethods = {
  joint: 'radial bolts',
  retainingRing: 'a retaining ring in a groove of the case',
  thread: 'a thread in the case',
} as const;

/** A closure, its retention and its seals. */
export const closureSchema = (which: string) =>
  explained(
    part(
      {
        material: materialField(`material of the ${which} closure`),
        thickness: measure('length', `thickness of the ${which} closure as a plate under pressure`, '15 mm'),
        edgeSupport: choice(['clamped', 'simply supported'], 'edge support of the plate'),
        opening: z.optional(measure('length', 'diameter of the central hole: port or nozzle', '20 mm')),
        temperature: z.optional(
          measure('temperature', 'maximum closure temperature while under pressure', '80 degC'),
        ),
        joint: z.optional(jointSchema()),
        retainingRing: z.optional(retainingRingSchema()),
        thread: z.optional(closureThreadSchema()),
        seals: listOf(sealSchema(), 'O-rings, starting at the gas side'),
        notes: z.optional(textField('remarks')),
      },
      `${which} closure`,
    ),
    // The JSON Schema requires exactly one of them.
    {
      description: `${which} closure`,
      oneOf: Object.keys(retentionMethods).map((field) => ({ required: [field] })),
    },
  );
