// Inputs of several plots.
import {
  type Argument,
  absolutePressure,
  either,
  gaugePressure,
  inputs,
  optional,
  ratio,
  words,
} from '../../units';

/** Width of a drawing. */
export const width = optional(ratio('w', 'width of the drawing [px]', { above: 0, example: 640 }), 640);

/** A horizontal line in a pressure plot. */
export const plotLevel = inputs(
  {
    label: words('label of the line', { example: 'MEOP' }),
    // In this order: a pressure without a stated reference is absolute, as the axis is.
    at: either(
      'pressure of the line',
      [absolutePressure('p', 'absolute pressure'), gaugePressure('p', 'pressure above ambient')],
      { example: '7 MPag' },
    ),
  },
  { meaning: 'horizontal line in the pressure plot, such as MEOP or the range of a transducer' },
);

/** A horizontal line in a pressure plot, such as MEOP or the range of a transducer. */
export type PlotLevel = Argument<typeof plotLevel>;
