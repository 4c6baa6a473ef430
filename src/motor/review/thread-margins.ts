import {
  closureForce,
  externalThreadShearArea,
  governing,
  internalThreadShearArea,
  lameHoopStress,
  type Margin,
  margin,
  marginTable,
  radialDisplacement,
  type ThreadedClosureReview,
  threadRadialPressure,
} from '../../structures';
import { fromSiValue, type Quantity, unitOf } from '../../units';
import type { ClosureAtMeop } from './closure-at-meop';
import { closureHeat } from './closure-heat';
import { type CutWall, cutWallFormulas, cutWallSteps } from './cut-wall-steps';
import { reviewMargin } from './review-margin';
import type { ReviewMargin } from './review-result';
import { meshed, type ThreadAt, type Threaded, threadAsCut, threadAt, usedUpAt } from './thread-at-pressure';
import { narrowestCase, pressureAreaDiameter } from './worst-sizes';

type ThreadJudged = ClosureAtMeop<Threaded>;

/**
 * The thread of a closure. While the case is hot the closure may be as hot, and weaker, or still cold, so that the case opens
 * more against it: each mode is judged with the one that leaves less.
 */
export function threadMargins(judged: ThreadJudged): {
  readonly margins: readonly ReviewMargin[];
  readonly thread: ThreadedClosureReview;
  readonly cautions: readonly string[];
} {
  const { motor, closure, meop, settings } = judged;
  const heat = closureHeat(motor, closure);
  const [warm, ...others] = (heat === undefined ? [undefined] : [heat, undefined]).map((temperature) => {
    const at = threadAt(motor, closure, settings, temperature);
    const { review, partsAt } = meshed(at, meop.si);
    return {
      review,
      margins: [
        ...review.margins.map((one) => explainedMargin(judged, one, review, at, partsAt)),
        ...(partsAt === undefined ? [] : [partedMargin(judged, partsAt)]),
      ],
    };
  });
  const all = [warm, ...others].flatMap(({ margins }) => margins);
  const modes = [...new Set(all.map(({ mode }) => mode))];
  const margins = modes.map((mode) => {
    const among = all.filter((one) => one.mode === mode);
    const first = among.reduce((a, b) =>
      (b.failurePressure?.si ?? 0) < (a.failurePressure?.si ?? 0) ? b : a,
    );
    return { ...governing(among), ...(first.failurePressure && { failurePressure: first.failurePressure }) };
  });
  const worst = governing(margins);
  const widest = others.reduce(
    (most, { review }) => (review.growth.si > most.si ? review.growth : most),
    warm.review.growth,
  );
  const cautions = [
    // That the closure may be cold is tried; where its heat is not known, that is said of the closure.
    ...warm.review.cautions.filter((text) => !text.includes('closureTemperature')),
    ...(threadAsCut(motor, closure).isPartial
      ? [
          'the bore of the case is wider than the minor diameter of a full thread: the threads are judged as low as it leaves them',
        ]
      : []),
  ];
  const endForce = closureForce({ pressure: meop, sealDiameter: pressureAreaDiameter(motor, closure) });
  const text = (): string =>
    [
      `end force ${endForce}; the case opens by ${widest} against the closure; governed by ${worst.mode}`,
      marginTable(margins),
      ...cautions.map((caution) => `caution: ${caution}`),
    ].join('\n');
  return {
    margins,
    cautions,
    thread: {
      endForce,
      growth: widest,
      margins,
      governing: worst,
      passes: worst.marginOfSafety >= 0,
      cautions,
      toString: text,
      ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
    },
  };
}

/** The threads no longer reach each other: as certain as a broken part. */
const partedMargin = ({ part, meop, settings }: ThreadJudged, partsAt: Quantity<'gauge pressure'>) =>
  reviewMargin(
    margin({
      mode: 'threads that no longer meet',
      applied: meop,
      allowable: partsAt,
      factor: settings.factors.ultimateFactor,
      source: 'Geometry of the case as it opens: pressure, flanks and heat',
      cautions: [
        `the case opens so far that the threads part at ${partsAt}: a coarser thread or a thicker wall is wanted; what else is said of the thread at MEOP is too good`,
      ],
    }),
    { part, formulas: ['reviewThreadedClosure'], meop },
  );

function explainedMargin(
  judged: ThreadJudged,
  one: Margin,
  review: ThreadedClosureReview,
  at: ThreadAt,
  partsAt: Quantity<'gauge pressure'> | undefined,
): ReviewMargin {
  const { part, meop } = judged;
  const isShear = one.mode.startsWith('shear');
  // Just before the threads part, in proportion from there on.
  const found =
    partsAt === undefined ? one : margin({ ...one, applied: one.applied.times(meop.si / partsAt.si) });
  return reviewMargin(found, {
    part,
    formulas: formulasOf(one.mode),
    steps: () => stepsOf(judged, one.mode, review.growth, partsAt ?? meop),
    ...(isShear ? { failurePressure: usedUpAt(at, found, meop.si) } : { meop }),
  });
}

const area = (mode: string) => (mode.includes("case's") ? internalThreadShearArea : externalThreadShearArea);

const formulasOf = (mode: string): readonly string[] => [
  'closureForce',
  ...(mode.startsWith('shear')
    ? ['threadRadialPressure', 'lameHoopStress', 'radialDisplacement', area(mode).name]
    : mode.startsWith('hoop')
      ? ['threadRadialPressure', ...cutWallFormulas(mode)]
      : cutWallFormulas(mode)),
];

/** The calculation of a mode, at a pressure. */
function stepsOf(
  { motor, closure }: ThreadJudged,
  mode: string,
  growth: Quantity<'length'>,
  pressure: Quantity<'gauge pressure'>,
): readonly { toString(): string }[] {
  const geometry = threadAsCut(motor, closure);
  const outsideDiameter = narrowestCase(motor);
  const { limits, pitchDiameter, pitch, majorDiameter } = geometry;
  const engagement = closure.thread.engagement.value;
  const end = { pressure, sealDiameter: pressureAreaDiameter(motor, closure) };
  const load = closureForce(end);
  const flanks = { load, pitchDiameter, engagement };
  const roots = majorDiameter.si + (pitch.si * Math.sqrt(3)) / 8;
  const cut = Math.max(roots, closure.thread.reliefDiameter?.value.si ?? 0);
  const insideDiameter = fromSiValue<'length'>(cut, 'length', unitOf('mm'));
  const inside = fromSiValue<'gauge pressure'>(
    pressure.si + threadRadialPressure(flanks).si,
    'gauge pressure',
    unitOf('MPa'),
  );
  const wall = {
    load,
    pressure: inside,
    insideDiameter,
    outsideDiameter,
    arm: outsideDiameter.plus(insideDiameter).per(2).minus(pitchDiameter).per(2),
    material: motor.case.material,
    temperature: motor.case.wallTemperature?.value,
  };
  const push =
    mode.startsWith('shear') || mode.startsWith('hoop') ? [threadRadialPressure.explain(flanks)] : [];
  const first = [closureForce.explain(end), ...push];
  if (!mode.startsWith('shear')) return [...first, ...(cutWallSteps(mode, wall) ?? [])];
  const opened = [
    ...openingSteps(wall),
    `the case opens by ${growth} in diameter against the closure: twice that growth, and what heat adds`,
  ];
  const [explanation, sheared] = mode.includes("case's")
    ? (() => {
        const sizes = {
          engagement,
          pitch,
          externalMajorMin: limits.externalMajorMin,
          internalPitchMax: limits.internalPitchMax.plus(growth),
        };
        return [internalThreadShearArea.explain(sizes), internalThreadShearArea(sizes)] as const;
      })()
    : (() => {
        const sizes = {
          engagement,
          pitch,
          internalMinorMax: limits.internalMinorMax.plus(growth),
          externalPitchMin: limits.externalPitchMin,
        };
        return [externalThreadShearArea.explain(sizes), externalThreadShearArea(sizes)] as const;
      })();
  const stress = fromSiValue<'stress'>(load.si / sheared.si, 'stress', unitOf('MPa'));
  return [...first, ...opened, explanation, `f = ${load} / ${sheared} = ${stress}`];
}

/** How far the pressure of chamber and flanks opens the wall at the thread; nothing where its stiffness is not known. */
function openingSteps(wall: CutWall): readonly { toString(): string }[] {
  const { elasticModulus, poissonRatio } = wall.material;
  if (elasticModulus === undefined || poissonRatio === undefined) return [];
  const { pressure, insideDiameter, outsideDiameter } = wall;
  const radius = insideDiameter.per(2);
  const cylinder = { pressure, insideRadius: radius, outsideRadius: outsideDiameter.per(2), radius };
  return [
    lameHoopStress.explain(cylinder),
    radialDisplacement.explain({
      radius,
      elasticModulus: elasticModulus.value,
      poissonRatio: poissonRatio.value,
      hoop: lameHoopStress(cylinder),
      radial: fromSiValue<'stress'>(-pressure.si, 'stress', unitOf('MPa')),
      longitudinal: '0 MPa',
    }),
  ];
}
