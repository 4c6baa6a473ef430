import { type Arguments, inputs, length, named, optional, type Values } from '../../units';
import { reviewFactors } from '../factors-of-safety';
import { exposure } from '../materials/part-temperature';
import { meop } from '../operating-pressure';
import { tube } from '../shell/tube';
import { threads } from '../threads/thread-table';
import { closurePlate } from './closure-plate';
import { closureThread } from './closure-thread';

const { engagement, reliefDiameter } = closureThread.fields;

/** A closure that screws into the end of the case. */
export const threadedClosure = inputs(
  {
    pressure: meop,
    thread: named('thread of the closure; any with customThread', threads, { example: 'M36' }),
    engagement,
    reliefDiameter,
    // The thread determines the bore, and with it the wall.
    tube: inputs({ ...tube.fields, wall: optional(tube.fields.wall) }, { meaning: tube.meaning }),
    closureMaterial: closurePlate.fields.material,
    closureTemperature: closurePlate.fields.temperature,
    sealDiameter: optional(
      length('D_s', 'diameter of the seal, on which the pressure acts; that of the thread where omitted', {
        example: '60 mm',
      }),
    ),
    exposure,
    factors: reviewFactors,
  },
  { meaning: 'a closure that screws into the end of the case' },
);

/** A closure that screws into the end of the case, as a review takes it. */
export type ThreadedClosure = Arguments<typeof threadedClosure.fields>;

/** The same, read. */
export type ThreadedClosureValues = Values<typeof threadedClosure.fields>;
