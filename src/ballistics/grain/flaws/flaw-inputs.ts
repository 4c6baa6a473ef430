import { flag, length, optional } from '../../../units';
import { direction, endPosition, startPosition } from '../grain-inputs';

/** Circumferential position. */
export const flawAngle = direction('circumferential position of its centre');

/** Whether it burns from the start. */
export const open = optional(
  flag('whether it burns from the start; if omitted, determined from the surfaces that it meets'),
);

/** Distance of the inner edge of a crack from the axis. */
export const innerRadius = length('r_i', 'distance of its inner edge from the axis', {
  min: 0,
  example: '8 mm',
  worse: 'neither',
});

/** Distance of the outer edge of a crack from the axis. */
export const outerRadius = length('r_o', 'distance of its outer edge from the axis', {
  example: '18 mm',
  worse: 'neither',
});

/** Axial extent. */
export const flawExtent = { from: startPosition('start position'), to: endPosition('end position') };
