import { customThread, type ThreadedClosureReview, type ThreadGeometry } from '../../structures';
import { threadedClosureReview } from '../../structures/closures/closure-review';
import { analyseThreadedClosure } from '../../structures/closures/review-threaded-closure';
import { leastFavourable } from '../../structures/failure-mode/least-favourable';
import type { ClosureAtMeop } from './closure-at-meop';
import { type Closure, closureHeat } from './closure-heat';
import { narrowestCase, pressureAreaDiameter, weakestCase } from './worst-sizes';

type Threaded = ClosureAtMeop<Closure & { readonly thread: NonNullable<Closure['thread']> }>;

/**
 * Evaluates the thread of a closure. With a hot case the closure may be as hot, and weaker, or still at room
 * temperature, so that the case expands more relative to it: each mode is evaluated with the case that gives the
 * lower margin.
 */
export function worstThread(threaded: Threaded): ThreadedClosureReview {
  const { motor, closure, meop, part, settings } = threaded;
  const { thread, isPartial } = threadAsCut(threaded);
  const { engagement, reliefDiameter } = closure.thread;
  const { material, wallTemperature } = motor.case;
  const heat = closureHeat(motor, closure);
  const variants = (heat === undefined ? [undefined] : [heat, undefined]).map((temperature) =>
    analyseThreadedClosure(
      {
        pressure: meop,
        thread,
        engagement: engagement.value,
        tube: { outsideDiameter: narrowestCase(motor), material, wallTemperature: wallTemperature?.value },
        closureMaterial: closure.material,
        sealDiameter: pressureAreaDiameter(motor, closure),
        reliefDiameter: reliefDiameter?.value,
        closureTemperature: temperature,
        factors: settings.factors,
      },
      part,
    ),
  );
  const [warm, ...others] = variants;
  return threadedClosureReview({
    endForce: warm.endForce,
    growth: others.reduce((most, { growth }) => (growth.si > most.si ? growth : most), warm.growth),
    margins: leastFavourable(variants.map(({ margins }) => margins)),
    // The closure at room temperature is evaluated; an unknown strength at temperature is reported for the closure.
    cautions: [
      ...warm.cautions,
      ...(isPartial
        ? [
            'The bore of the case exceeds the minor diameter of a full thread. The threads are evaluated with the remaining height.',
          ]
        : []),
    ],
  });
}

/** The thread as machined: where the bore exceeds the maximum minor diameter, the thread of the case is shallower. */
function threadAsCut({ motor, closure }: Threaded): {
  readonly thread: ThreadGeometry;
  readonly isPartial: boolean;
} {
  const { majorDiameter, pitch } = closure.thread;
  const whole = customThread({ majorDiameter: majorDiameter.value, pitch: pitch.value });
  const { bore } = weakestCase(motor);
  const isPartial = bore.si > whole.limits.internalMinorMax.si;
  const limits = { ...whole.limits, internalMinorMax: bore };
  return { thread: isPartial ? { ...whole, limits } : whole, isPartial };
}
