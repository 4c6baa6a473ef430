import * as z from 'zod/mini';
import { boltClass, boltClassNames, oRing, threadGeometry } from '../../structures';
import { choice, counted, explained, listOf, part, words } from './fields';
import { lookedUp } from './looked-up';
import { materialField } from './material-field';
import { measure } from './measure';

/** The tube that holds the pressure. */
export const caseSchema = () =>
  part(
    {
      material: materialField('the material of the case'),
      outsideDiameter: measure('length', 'outside diameter of the case', '54 mm'),
      wall: measure('length', 'wall of the case', '3 mm'),
      length: measure('length', 'length of the case', '360 mm'),
      chamberLength: measure('length', 'length of the chamber between the closures', '320 mm'),
      wallTemperature: z.optional(
        measure('temperature', 'hottest that the case gets while it is under pressure', '80 degC'),
      ),
    },
    'the case',
  );

/** What lies between grain and case. */
export const linerSchema = () =>
  part(
    {
      material: materialField('the material of the liner'),
      thickness: measure('length', 'thickness of the liner', '1 mm'),
    },
    'the liner',
  );

const sealSchema = () =>
  part(
    {
      ring: lookedUp('the size of the O-ring, by its AS568 number', '029', oRing),
      grooveDiameter: measure('length', 'diameter of the bottom of the groove', '44 mm'),
      grooveWidth: measure('length', 'width of the groove', '2.7 mm'),
      closureDiameter: measure('length', 'diameter of the closure beside the groove', '47.9 mm'),
      hardness: z.optional(
        measure('dimensionless', 'hardness, Shore A', '70', { min: 70, max: 90, words: '70 to 90' }),
      ),
      compound: z.optional(materialField('the rubber of the ring')),
      backupRings: z.optional(counted('the number of backup rings', 0)),
      backupThickness: z.optional(measure('length', 'thickness of a backup ring', '1.3 mm')),
    },
    'an O-ring and its groove',
  );

const jointSchema = () =>
  part(
    {
      thread: lookedUp('the thread of the bolts', 'M5', threadGeometry),
      boltClass: lookedUp('the strength class of the bolts', 'A2-70', boltClass, boltClassNames()),
      count: counted('the number of bolts'),
      rows: z.optional(counted('the number of rows of bolts')),
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
      misplacement: z.optional(
        measure('length', 'by how much a hole may lie out of place', '0.05 mm', {
          min: 0,
          words: '0 or more',
        }),
      ),
    },
    'the radial bolts that hold a closure',
  );

/** A closure, how it is held, and its seals. */
export const closureSchema = (which: string) =>
  part(
    {
      material: materialField(`the material of the ${which} closure`),
      thickness: measure(
        'length',
        `thickness of the ${which} closure where it carries the pressure as a plate`,
        '15 mm',
      ),
      held: choice(['clamped', 'simply supported'], 'how the edge of the plate is held'),
      opening: z.optional(measure('length', 'diameter of the hole in its middle: port or nozzle', '20 mm')),
      temperature: z.optional(
        measure('temperature', 'hottest that the closure gets while it is under pressure', '80 degC'),
      ),
      joint: jointSchema(),
      seals: listOf(sealSchema(), 'O-rings, the one nearest the gas first'),
      notes: z.optional(words('remarks')),
    },
    `the ${which} closure`,
  );
