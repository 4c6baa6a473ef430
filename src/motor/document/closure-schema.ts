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
      thread: tableName('the thread of the bolts', 'M5', threadGeometry),
      boltClass: tableName('the strength class of the bolts', 'A2-70', boltClass, boltClassNames()),
      count: positiveCount('the number of bolts'),
      rows: z.optional(positiveCount('the number of rows of bolts')),
      rowSpacing: z.optional(measure('length', 'distance between rows', '15 mm')),
      shearPlane: explained(choice(['thread', 'shank'], 'what of the bolt lies in the shear plane'), {
        description: 'what of the bolt lies in the shear plane between case and closure',
      }),
      holeDiameter: measure('length', 'diameter of the holes in the case', '5.3 mm'),
      edgeDistance: measure(
        'length',
        'distance from the centres of the holes to the end of the case',
        '11 mm',
      ),
      engagement: measure('length', 'length of thread that holds in the closure', '8 mm'),
      sealToHoles: z.optional(
        measure(
          'length',
          'distance from the seal to the holes, beyond which the hoop stress dies away',
          '10 mm',
        ),
      ),
      gap: z.optional(
        measure('length', 'gap between case and closure that the bolts bridge', '0.05 mm', {
          min: 0,
          words: '0 or more',
        }),
      ),
      positionTolerance: z.optional(
        measure('length', 'by how much a hole may lie out of place', '0.05 mm', {
          min: 0,
          words: '0 or more',
        }),
      ),
    },
    'the radial bolts that hold a closure',
  );

const retainingRingSchema = () =>
  part(
    {
      grooveDepth: measure('length', 'depth of the groove in the bore of the case, radially', '1.2 mm'),
      edgeMargin: measure('length', 'length of case from the groove to its end', '5 mm'),
      thickness: measure('length', 'thickness of the ring, along the axis', '1.75 mm'),
      shearStrength: measure('stress', 'shear strength of the ring, from its maker', '800 MPa'),
    },
    'the retaining ring, in a groove in the bore of the case, that holds a closure',
  );

const closureThreadSchema = () =>
  part(
    {
      majorDiameter: measure(
        'length',
        'nominal diameter of the thread in the end of the case; one in inches has the limits of 2A/2B, another those of 6g/6H',
        '52 mm',
      ),
      pitch: measure('length', 'pitch of the thread; 1/16 in are 16 threads per inch', '1.5 mm'),
      engagement: measure('length', 'length of full thread engaged, without chamfers and runout', '12 mm'),
      reliefDiameter: z.optional(
        measure('length', 'diameter of the runout groove, where it is deeper than the thread', '53 mm'),
      ),
    },
    'the thread by which a closure screws into the case',
  );

/** How a closure can be held: the fields of which it has exactly one, and what each is. */
export const retentionMethods = {
  joint: 'radial bolts',
  retainingRing: 'a retaining ring in a groove of the case',
  thread: 'a thread of its own',
} as const;

/** A closure, how it is held, and its seals. */
export const closureSchema = (which: string) =>
  explained(
    part(
      {
        material: materialField(`the material of the ${which} closure`),
        thickness: measure(
          'length',
          `thickness of the ${which} closure where it carries the pressure as a plate`,
          '15 mm',
        ),
        edgeSupport: choice(['clamped', 'simply supported'], 'how the edge of the plate is held'),
        opening: z.optional(measure('length', 'diameter of the hole in its middle: port or nozzle', '20 mm')),
        temperature: z.optional(
          measure('temperature', 'hottest that the closure gets while it is under pressure', '80 degC'),
        ),
        joint: z.optional(jointSchema()),
        retainingRing: z.optional(retainingRingSchema()),
        thread: z.optional(closureThreadSchema()),
        seals: listOf(sealSchema(), 'O-rings, the one nearest the gas first'),
        notes: z.optional(textField('remarks')),
      },
      `the ${which} closure`,
    ),
    // An editor asks for one of them, and refuses two.
    {
      description: `the ${which} closure`,
      oneOf: Object.keys(retentionMethods).map((field) => ({ required: [field] })),
    },
  );
