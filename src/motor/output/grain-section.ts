import { motorRegression } from '../motor-grain';
import type { Review } from '../review/review-result';
import { facts, figure, percent, type ReportSection, section, shown } from './content';
import { plotRegression } from './plot-regression';

/** Section on the grain: burning area against depth, without and with the assumed flaw. */
export function grainSection({ motor }: Pick<Review, 'motor'>): readonly ReportSection[] {
  const documented = motorRegression(motor);
  const { assumedFlaw } = motor.grain;
  const grains =
    assumedFlaw === undefined
      ? documented
      : {
          'as documented': documented,
          'with the assumed flaw': motorRegression(motor, 'with the assumed flaw'),
        };
  return section({
    id: 'grain',
    title: 'Grain',
    lead: assumedFlaw?.reason === undefined ? [] : [`A flaw is assumed because ${assumedFlaw.reason}.`],
    figures: [
      {
        id: 'grain-plot',
        title: 'Burning area against burned depth',
        description: 'Burning area of the whole grain against depth burned normal to the surface.',
        spec: (width) => plotRegression(grains, { width }),
      },
    ],
    tables: [
      facts('Grain as documented', [
        ['propellant volume', shown(documented.castVolume)],
        ['volumetric loading', percent(documented.volumetricLoading, 1)],
        ['web', shown(documented.web)],
        ['depth at burnout', shown(documented.burnout)],
        ['mean burning area', shown(documented.meanBurningArea.to('cm^2'))],
        ['maximum/mean burning area', figure(documented.neutrality)],
        ['sliver fraction', percent(documented.sliverFraction, 1)],
      ]),
    ],
  });
}
