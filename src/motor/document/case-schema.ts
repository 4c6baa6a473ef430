import * as z from 'zod/mini';
import { part } from './fields';
import { materialField } from './material-field';
import { measure } from './measure';

/** The pressure-bearing tube. */
export const caseSchema = () =>
  part(
    {
      material: materialField('material of the case'),
      outsideDiameter: measure('length', 'outside diameter of the case', '54 mm'),
      wall: measure('length', 'wall thickness of the case', '3 mm'),
      length: measure('length', 'length of the case', '360 mm'),
      chamberLength: measure('length', 'length of the chamber between the closures', '320 mm'),
      wallTemperature: z.optional(
        measure('temperature', 'maximum case temperature while under pressure', '80 degC'),
      ),
    },
    'case',
  );

/** The liner between grain and case. */
export const linerSchema = () =>
  part(
    {
      material: materialField('material of the liner'),
      thickness: measure('length', 'thickness of the liner', '1 mm'),
    },
    'liner',
  );
