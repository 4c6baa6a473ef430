import { gamma } from '../../thermo/gas-inputs';
import {
  absolutePressure,
  area,
  fromSiValue,
  MeopError,
  procedure,
  type Quantity,
  ratio,
  unitOf,
} from '../../units';
import { entranceMach, entrancePressure } from './bore-entrance';
import { machSquared, stagnationRatio } from './impulse-flow';
import { entranceLoss, momentumFactor } from './port-inputs';

/** The flow through a gap between two segments. */
export interface SegmentGapFlow {
  readonly gapMach: number;
  readonly gapPressure: Quantity<'absolute pressure'>;
  /** Stagnation pressure in the gap/stagnation pressure at the exit of the bore ahead of it. */
  readonly stagnationRatio: number;
  /** Mach number behind the entrance of the next bore. */
  readonly nextMach: number;
  readonly nextPressure: Quantity<'absolute pressure'>;
}

const name = 'segmentGapFlow';

/**
 * Flow from a bore into a gap over the whole section, and on into the next bore, without gas added in the gap. The pressure of the
 * bore acts on the step (Borda-Carnot); the next bore is entered isentropically, less the entrance loss.
 *
 * @throws MeopError `no-solution` where the next bore is too small for the flow
 * @example segmentGapFlow({ boreMach: 0.3, borePressure: '3 MPa', boreArea: '314.159 mm^2', gapArea: '1963.5 mm^2', nextArea: '314.159 mm^2', gamma: 1.14 }).nextMach.toFixed(8) // => '0.31228606'
 */
export const segmentGapFlow = /* @__PURE__ */ procedure({
  name,
  title: 'Flow through the gap between two segments',
  source:
    'momentum balance over an abrupt enlargement (Borda-Carnot) and isentropic contraction; loss at a sharp entrance quoted from memory, not verified',
  inputs: {
    boreMach: ratio('M_1', 'Mach number at the exit of the bore ahead of the gap', { min: 0, max: 1 }),
    borePressure: absolutePressure('p_1', 'static pressure at the exit of that bore', { above: 0 }),
    boreArea: area('A_1', 'area of that bore'),
    gapArea: area('A_g', 'open area of the gap'),
    nextArea: area('A_2', 'area of the bore behind the gap'),
    gamma,
    entranceLoss,
    momentumFactor,
  },
  checks: [
    ({ boreArea, gapArea }) =>
      gapArea.si >= boreArea.si
        ? undefined
        : { path: 'gapArea', given: gapArea, expected: `at least the area of the bore, ${boreArea}` },
  ],
  gives: 'Mach number and pressure in the gap and behind the entrance of the next bore',
  example: {
    boreMach: 0.3,
    borePressure: '3 MPa',
    boreArea: '314 mm^2',
    gapArea: '1960 mm^2',
    nextArea: '314 mm^2',
    gamma: 1.14,
  },
  run: (v): SegmentGapFlow => {
    const { gamma: g, momentumFactor: b } = v;
    const square = v.boreMach ** 2;
    const p = v.borePressure.si;
    // Mass flow times √(R·T_0), so that no gas energy is needed.
    const flow = v.boreArea.si * p * Math.sqrt(g * square * (1 + ((g - 1) / 2) * square));
    const impulse = v.boreArea.si * p * b * g * square + v.gapArea.si * p;
    const gap = machSquared(flow, impulse, 1, g, b);
    const gapPressure = impulse / (v.gapArea.si * (1 + b * g * gap));
    const gas = { gamma: g, gasEnergy: 1, entranceLoss: v.entranceLoss };
    const next = entranceMach(flow, gap, gapPressure, v.nextArea.si, gas);
    if (!(next >= 0) || !(gap >= 0))
      throw new MeopError({
        code: 'no-solution',
        procedure: name,
        path: 'nextArea',
        given: v.nextArea,
        problem: 'the next bore chokes before it passes this flow',
        remedy: 'Give a larger bore, or a lower Mach number ahead of the gap',
      });
    const pressure = (si: number) => fromSiValue<'absolute pressure'>(si, 'absolute pressure', unitOf('MPa'));
    return {
      gapMach: Math.sqrt(gap),
      gapPressure: pressure(gapPressure),
      stagnationRatio: (gapPressure * stagnationRatio(gap, g)) / (p * stagnationRatio(square, g)),
      nextMach: next,
      nextPressure: pressure(entrancePressure(flow, gap, gapPressure, v.nextArea.si, next, gas)),
    };
  },
});
