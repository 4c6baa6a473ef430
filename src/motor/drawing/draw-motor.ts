import { length, optional, procedure } from '../../units';
import { motorSubject } from '../document/motor-subject';
import { motorLayout } from '../layout';
import { drawingSheet } from './drawing-sheet';

/**
 * Draws what the document describes: case, liner, grain with its flaws, and each closure that has a layout, with seals,
 * fasteners and throat insert. Printed at its own size the scales are true. Colours are CSS variables with the printed
 * colours as fallback.
 *
 * @example drawMotor(demoMotor()).slice(0, 4) // => '<svg'
 */
export const drawMotor = /* @__PURE__ */ procedure({
  name: 'drawMotor',
  title: 'Section of a motor to scale, with dimensions',
  source: 'the layout of the document; drawing conventions of ISO 128 and ISO 129-1 (from memory)',
  subject: motorSubject,
  inputs: {
    width: optional(
      length('w', 'width of the paper; the default fits a sheet of A4', {
        min: 0.06,
        max: 2,
        example: '180 mm',
      }),
      0.18,
    ),
  },
  gives: 'the drawing as SVG, in its size on paper',
  example: 'drawMotor(demoMotor())',
  run: (motor, { width }): string => drawingSheet(motor, motorLayout(motor), width.si * 1000),
});
