import { drawingSheet } from '../drawing/drawing-sheet';
import { motorLayout } from '../layout';
import type { Review } from '../review/review-result';
import { type ReportSection, section } from './content';

/** Section with the drawing of the motor. */
export function drawingSection({ motor }: Pick<Review, 'motor'>): readonly ReportSection[] {
  const layout = motorLayout(motor);
  return section({
    id: 'drawing',
    title: 'Section of the motor',
    figures: [
      {
        id: 'motor-section',
        title: 'Section of the motor along its axis',
        description:
          'The motor as its document describes it, to scale, with the grain, its flaws and the dimensions of each end.',
        draw: (width) => drawingSheet(motor, layout, width),
      },
    ],
  });
}
