import { formatNumber } from '../../units';
import type { Meop, MeopCase } from '../meop/meop-result';
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

/** How MEOP was found and what drives it. */
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
      `MEOP is ${meop.pressure}, by ${basis === 'percentile' ? 'the percentile of motors drawn' : `the ${basis === 'nominal' ? 'nominal values' : 'worst case'}`}${allowance === 1 ? '' : `, times an allowance of ${formatNumber(allowance)}`}.`,
      sensitivity.length === 0
        ? 'No value that bears on it has a tolerance and no temperature range is given: every motor drawn is the nominal one.'
        : `Of ${percentile.samples} motors drawn within their tolerances and temperatures (${percentile.distribution}, seed ${percentile.seed}), ${share} % stay below ${percentile.pressure}, give or take the number drawn: ${percentile.band[0]} to ${percentile.band[1]}.`,
    ],
    tables: [
      {
        name: 'Peak of the firing',
        columns: [
          { name: 'case' },
          { name: 'pressure above ambient', numeric: true },
          { name: 'thrust', numeric: true },
          { name: 'grain', numeric: true },
        ],
        rows: [
          row('nominal values', nominal, temperature(nominal)),
          row(`${share} % of motors drawn`, percentile.checked, textCell('its range')),
          row(`worst case, ${worstCase.flaws}`, worstCase, temperature(worstCase)),
        ],
      },
      {
        name: 'What drives the peak pressure, each value alone',
        columns: [
          { name: 'value' },
          { name: 'nominal and tolerance', numeric: true },
          { name: 'at the lower end', numeric: true },
          { name: 'at the upper end', numeric: true },
          { name: 'share of the scatter', numeric: true },
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
    remarks:
      worstCase.values.length === 0
        ? []
        : [`Worst case: ${worstCase.values.map(({ input, value }) => `${input} ${value}`).join('; ')}.`],
  });
}

/** What a report on MEOP alone says. */
export function pressureContent(meop: Meop): ReportContent {
  const { pressure, basis, nominal, worstCase, percentile, cautions, assumptions } = meop;
  const [strongest] = meop.sensitivity;
  return {
    title: nominal.firing.title ?? 'Motor',
    kind: 'maximum expected operating pressure',
    headline: headlineOf(
      `MEOP is ${pressure}, by the ${basis}${strongest === undefined ? '' : `; ${strongest.input} drives the scatter most`}.`,
    ),
    keyFigures: [
      ['MEOP', shown(pressure)],
      ['nominal peak', shown(nominal.pressure)],
      ['worst case', shown(worstCase.pressure)],
      [`percentile of motors drawn`, shown(percentile.pressure)],
    ],
    sections: [
      ...pressureSection({ meop }),
      ...section({
        id: 'cautions',
        title: 'Cautions and assumptions',
        cautions,
        remarks: assumptions.map((text) => `Assumed: ${text}`),
      }),
    ],
  };
}
