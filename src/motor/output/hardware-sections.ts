import type { ReviewCheck } from '../review/review-check';
import type { Review } from '../review/review-result';
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

/** Section on the O-rings. */
export function sealSection(review: Review): readonly ReportSection[] {
  const { seals, faceSeals } = review;
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
            every.every(({ seal }) => seal.passes)
              ? 'All seal checks are satisfied over the full tolerance range.'
              : 'At least one seal check is not satisfied over the full tolerance range.',
          ],
    tables: [
      {
        name: 'O-rings at MEOP, minimum to maximum over the tolerances',
        columns: [
          { name: 'seal' },
          { name: 'squeeze under pressure', numeric: true },
          { name: 'stretch', numeric: true },
          { name: 'gland fill', numeric: true },
          { name: 'maximum diametral clearance', numeric: true },
          { name: 'result' },
        ],
        rows: seals.map(({ closure, place, gland }) => [
          textCell(`${closure} closure, seal ${place}`),
          band(gland.squeezeUnderPressure),
          band(gland.stretch),
          band(gland.fill),
          shown(gland.clearanceUnderPressure.max.to('mm')),
          { text: gland.passes ? 'pass' : failing(gland.checks), verdict: judged(gland.passes) },
        ]),
      },
      {
        name: 'O-rings in face glands at MEOP, minimum to maximum over the tolerances',
        columns: [
          { name: 'seal' },
          { name: 'squeeze under pressure', numeric: true },
          { name: 'interference with the seat', numeric: true },
          { name: 'gland fill', numeric: true },
          { name: 'effective seal diameter', numeric: true },
          { name: 'result' },
        ],
        rows: faceSeals.map(({ closure, place, face }) => [
          textCell(`${closure} closure, seal ${place} (face)`),
          band(face.squeezeUnderPressure),
          band(face.seat),
          band(face.fill),
          shown(face.sealDiameter.to('mm')),
          { text: face.passes ? 'pass' : failing(face.checks), verdict: judged(face.passes) },
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

/** Section on the ranges of the instruments. */
export function instrumentSection({ instruments }: Review): readonly ReportSection[] {
  return section({
    id: 'instruments',
    title: 'Instruments',
    tables: [
      {
        name: 'Instrument range and expected maximum in the worst case',
        columns: [
          { name: 'instrument' },
          { name: 'range', numeric: true },
          { name: 'expected maximum', numeric: true },
          { name: 'range/expected maximum', numeric: true },
          { name: 'samples in rise', numeric: true },
          { name: 'result' },
        ],
        rows: instruments.map(({ name, measures, range, expected, headroom, rise, passes, checks }) => [
          textCell(`${name} (${measures})`),
          shown(range),
          expected === undefined ? unknown : shown(expected),
          headroom === undefined ? unknown : figure(headroom, 3),
          rise === undefined ? unknown : figure(rise.samples, 3),
          { text: passes ? 'pass' : failing(checks), verdict: judged(passes) },
        ]),
      },
    ],
    cautions: [...new Set(instruments.flatMap(({ cautions }) => cautions))],
    remarks: instruments.flatMap(({ name, checks }) =>
      checks.map(({ message }: ReviewCheck) => `${name}: ${message}`),
    ),
  });
}

/** Section on the force that pushes the nozzle out. */
export function retentionSection({ retention }: Review): readonly ReportSection[] {
  if (retention === undefined) return [];
  return section({
    id: 'nozzle-retention',
    title: 'Nozzle retention',
    lead: ['Force at MEOP on the seat of the throat insert. The seat is evaluated for the blocked throat.'],
    tables: [
      facts('Nozzle retention', [
        ['force with the throat blocked', shown(retention.blocked)],
        ['force on the sealed area without the throat', shown(retention.annulus)],
        ['force in ideal flow, by control volume', shown(retention.flowing)],
        ['ideal thrust', shown(retention.thrust)],
      ]),
    ],
    cautions: retention.cautions,
  });
}

/** Section on the restraint of the motor. */
export function standSection({ restraint }: Review): readonly ReportSection[] {
  if (restraint === undefined) return [];
  return section({
    id: 'restraint',
    title: 'Restraint',
    lead: ['Rope load if the motor breaks loose at full thrust and takes up the slack.'],
    tables: [
      facts('Restraint', [
        ['snatch load', shown(restraint.snatchLoad)],
        ['impact factor (load/thrust)', figure(restraint.impactFactor, 3)],
        ['speed at the end of slack', restraint.takeUpSpeed && shown(restraint.takeUpSpeed)],
        ['load per rope', shown(restraint.ropeLoad)],
        ['strength of a rope with terminations', shown(restraint.terminatedStrength)],
        ['required breaking force', shown(restraint.requiredBreakingForce)],
      ]),
    ],
  });
}
