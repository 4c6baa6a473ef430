import { motorRegression } from '../motor-grain';
import type { Review } from '../review/review-result';
import { facts, figure, percent, type ReportSection, section, shown } from './content';
import { plotRegression } from './plot-regression';

/** The grain: how its burning area goes with depth, sound and with the flaw that is assumed. */
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
    title: 'The grain',
    lead: assumedFlaw?.reason === undefined ? [] : [`The flaw is assumed because ${assumedFlaw.reason}.`],
    figures: [
      {
        id: 'grain-plot',
        title: 'Burning area over burned depth',
        description: 'Burning area of the whole grain over the distance burned normal to the surface.',
        spec: (width) => plotRegression(grains, { width }),
      },
    ],
    tables: [
      facts('The grain as documented', [
        ['propellant volume', shown(documented.castVolume)],
        ['volumetric loading', percent(documented.volumetricLoading, 1)],
        ['web', shown(documented.web)],
        ['depth at burnout', shown(documented.burnout)],
        ['mean burning area', shown(documented.meanBurningArea.to('cm^2'))],
        ['greatest over mean burning area', figure(documented.neutrality)],
        ['propellant left at the web', percent(documented.sliverFraction, 1)],
      ]),
    ],
  });
}
