import * as z from 'zod/mini';
import { part } from './fields';
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
