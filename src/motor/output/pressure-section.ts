import { formatNumber } from '../../units';
import { blockageText } from '../assumed-blockage';
import { type Meop, type MeopCase, notIncludedText } from '../meop/meop-result';
import type { Review } from '../review/review-result';
import {
  change,
  headlineOf,
  percent,
  type ReportContent,
  type ReportSection,
  type Shown,
  section,
  shown,
  textCell,
} from './content';

/** MEOP as a key figure, and next to it what it does not include. */
export const meopFigures = ({ pressure, notIncluded }: Meop): ReportContent['keyFigures'] => [
  ['MEOP', shown(pressure)],
  ...(notIncluded.length === 0
    ? []
    : [['not included in MEOP', { text: notIncluded.join(', '), verdict: 'marginal' } as const] as const]),
];

/** Section on MEOP, its basis and its sensitivities. */
export function pressureSection({ meop }: Pick<Review, 'meop'>): readonly ReportSection[] {
  const { nominal, worstCase, percentile, sensitivity, basis, allowance } = meop;
  const row = (name: string, { pressure, peakThrust }: MeopCase, grain: Shown): readonly Shown[] => [
    textCell(name),
    shown(pressure),
    shown(peakThrust),
    grain,
  ];
  const temperature = ({ grainTemperature }: MeopCase): Shown => shown(grainTemperature.to('degC'));
  const share = formatNumber(100 * percentile.share, 6);
  return section({
    id: 'pressure',
    title: 'Maximum expected operating pressure',
    lead: [
      `MEOP: ${meop.pressure} (basis: ${basis}${allowance === 1 ? '' : `, times an allowance of ${formatNumber(allowance)}`})${notIncludedText(meop, '; ')}.`,
      sensitivity.length === 0
        ? 'No input of the pressure has a tolerance, and no temperature range is specified. All Monte Carlo samples equal the nominal motor.'
        : `Monte Carlo, ${percentile.samples} samples (${percentile.distribution} distribution, seed ${percentile.seed}): ${share}th percentile ${percentile.pressure}, 95 % confidence interval ${percentile.band[0]} to ${percentile.band[1]}.`,
    ],
    tables: [
      {
        name: 'Peak pressure and thrust',
        columns: [
          { name: 'case' },
          { name: 'peak pressure', numeric: true },
          { name: 'peak thrust', numeric: true },
          { name: 'grain temperature', numeric: true },
        ],
        rows: [
          row('nominal values', nominal, temperature(nominal)),
          row(`${share}th percentile`, percentile.checked, textCell('full range')),
          row(`worst case, ${worstCase.flaws}`, worstCase, temperature(worstCase)),
        ],
      },
      {
        name: 'Sensitivity of peak pressure, one input at a time',
        columns: [
          { name: 'input' },
          { name: 'nominal and tolerance', numeric: true },
          { name: 'change at lower limit', numeric: true },
          { name: 'change at upper limit', numeric: true },
          { name: 'share of variance', numeric: true },
        ],
        rows: sensitivity.map((one) => [
          textCell(one.input),
          textCell(one.value),
          change(one.atLower),
          change(one.atUpper),
          percent(one.shareOfVariance, 1),
        ]),
      },
    ],
    remarks: [
      ...(worstCase.blockage === undefined ? [] : [blockageText(worstCase.blockage)]),
      ...(worstCase.values.length === 0
        ? []
        : [`Worst case: ${worstCase.values.map(({ input, value }) => `${input} ${value}`).join('; ')}.`]),
    ],
  });
}

/** Content of the report on MEOP. */
export function pressureContent(meop: Meop): ReportContent {
  const { pressure, basis, nominal, worstCase, percentile, cautions, assumptions } = meop;
  const [strongest] = meop.sensitivity;
  return {
    title: nominal.firing.title ?? 'Motor',
    kind: 'maximum expected operating pressure',
    headline: headlineOf(
      `MEOP: ${pressure} (basis: ${basis})${notIncludedText(meop, '; ')}.${strongest === undefined ? '' : ` Main contributor to its variance: ${strongest.input}.`}`,
    ),
    keyFigures: [
      ...meopFigures(meop),
      ['nominal peak', shown(nominal.pressure)],
      ['worst case', shown(worstCase.pressure)],
      [`percentile`, shown(percentile.pressure)],
    ],
    sections: [
      ...pressureSection({ meop }),
      ...section({
        id: 'cautions',
        title: 'Cautions and assumptions',
        cautions,
        remarks: assumptions.map((text) => `Assumption: ${text}`),
      }),
    ],
  };
}
