import type { Review, ReviewCheck } from '../review/review-result';
import { allSeals } from '../review/seal-review';
import {
  facts,
  figure,
  percent,
  type ReportSection,
  type Shown,
  section,
  shown,
  textCell,
  unknown,
  type Verdict,
} from './content';

const judged = (passes: boolean): Verdict => (passes ? 'pass' : 'fail');

/** The O-rings. */
export function sealSection(review: Review): readonly ReportSection[] {
  const { seals, faceSeals, sealsHold } = review;
  const every = allSeals(review);
  const band = ({ min, max }: { readonly min: number; readonly max: number }): Shown =>
    textCell(`${percent(min, 1).text} to ${percent(max, 1).text}`);
  return section({
    id: 'seals',
    title: 'Seals',
    lead:
      every.length === 0
        ? []
        : [
            sealsHold
              ? 'Every check of every seal holds over all tolerances.'
              : 'Not every check of every seal holds over all tolerances.',
          ],
    tables: [
      {
        name: 'O-rings at MEOP, least to greatest over the tolerances',
        columns: [
          { name: 'seal' },
          { name: 'squeeze under pressure', numeric: true },
          { name: 'stretch', numeric: true },
          { name: 'fill', numeric: true },
          { name: 'greatest gap', numeric: true },
          { name: 'verdict' },
        ],
        rows: seals.map(({ closure, place, gland }) => [
          textCell(`${closure} closure, seal ${place}`),
          band(gland.squeezeUnderPressure),
          band(gland.stretch),
          band(gland.fill),
          shown(gland.clearanceUnderPressure.max.to('mm')),
          { text: gland.passes ? 'holds' : failing(gland.checks), verdict: judged(gland.passes) },
        ]),
      },
      {
        name: 'O-rings in a face at MEOP, least to greatest over the tolerances',
        columns: [
          { name: 'seal' },
          { name: 'squeeze under pressure', numeric: true },
          { name: 'interference with its seat', numeric: true },
          { name: 'fill', numeric: true },
          { name: 'pressure acts on', numeric: true },
          { name: 'verdict' },
        ],
        rows: faceSeals.map(({ closure, place, face }) => [
          textCell(`${closure} closure, seal ${place}, in a face`),
          band(face.squeezeUnderPressure),
          band(face.seat),
          band(face.fill),
          shown(face.sealDiameter.to('mm')),
          { text: face.passes ? 'holds' : failing(face.checks), verdict: judged(face.passes) },
        ]),
      },
    ],
    cautions: [...new Set(every.flatMap(({ seal }) => seal.cautions))],
  });
}

const failing = (checks: readonly { readonly passes: boolean; readonly check: string }[]): string =>
  checks
    .filter(({ passes }) => !passes)
    .map(({ check }) => check)
    .join(', ');

/** Whether the sensors cover what they will see. */
export function instrumentSection({ instruments }: Review): readonly ReportSection[] {
  return section({
    id: 'instruments',
    title: 'Instruments',
    tables: [
      {
        name: 'Ranges against what is expected at the worst case',
        columns: [
          { name: 'instrument' },
          { name: 'range', numeric: true },
          { name: 'expected', numeric: true },
          { name: 'range over expected', numeric: true },
          { name: 'samples in the rise', numeric: true },
          { name: 'verdict' },
        ],
        rows: instruments.map(({ name, measures, range, expected, headroom, rise, passes, checks }) => [
          textCell(`${name} (${measures})`),
          shown(range),
          expected === undefined ? unknown : shown(expected),
          headroom === undefined ? unknown : figure(headroom, 3),
          rise === undefined ? unknown : figure(rise.samples, 3),
          { text: passes ? 'holds' : failing(checks), verdict: judged(passes) },
        ]),
      },
    ],
    cautions: [...new Set(instruments.flatMap(({ cautions }) => cautions))],
    remarks: instruments.flatMap(({ name, checks }) =>
      checks.map(({ message }: ReviewCheck) => `${name}: ${message}`),
    ),
  });
}

/** What holds a motor that breaks free. */
export function standSection({ restraint }: Review): readonly ReportSection[] {
  if (restraint === undefined) return [];
  return section({
    id: 'restraint',
    title: 'Restraint',
    lead: ['The load on the ropes if the motor breaks free at full thrust and takes up their slack.'],
    tables: [
      facts('Restraint', [
        ['greatest load', shown(restraint.snatchLoad)],
        ['load over thrust', figure(restraint.impactFactor, 3)],
        ['speed when the slack is gone', restraint.takeUpSpeed && shown(restraint.takeUpSpeed)],
        ['load of one rope', shown(restraint.ropeLoad)],
        ['strength of a rope with its ends', shown(restraint.terminatedStrength)],
        ['breaking force asked for', shown(restraint.requiredBreakingForce)],
      ]),
    ],
  });
}
