import { choice, inputs, length, named, optional } from '../../units';
import { materials } from '../materials/material-table';
import { partTemperature } from '../materials/part-temperature';
import { closureShape } from './closure-shape';

/** The closure as a plate: what it is made of and what carries the pressure, however it is retained. */
export const closurePlate = /* @__PURE__ */ inputs(
  {
    material: named('material of the closure', materials, { example: '6061-T6 bar' }),
    thickness: length('h', 'thickness of the closure where it carries the pressure as a plate', {
      example: '15 mm',
      worse: 'low',
    }),
    edgeSupport: choice('edge condition of the plate', ['clamped', 'simply supported']),
    opening: optional(
      length('d_h', 'diameter of the central hole: port or nozzle', { example: '20 mm', worse: 'high' }),
    ),
    shape: optional(closureShape),
    temperature: partTemperature,
  },
  { meaning: 'closure as a plate' },
);
