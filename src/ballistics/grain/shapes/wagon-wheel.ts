import { count, length, procedure } from '../../../units';
import { outer } from '../grain-inputs';
import { lessThan, misfit } from '../misfit';
import { wagonWheelOutline } from '../surface';
import { cylindricalGrain } from './grain';
import { throughCore } from './prism-core';

/** The spokes add burning area early in the burn only. */
export const wagonWheel = /* @__PURE__ */ procedure({
  name: 'wagonWheel',
  title: 'Parallel-sided spokes of propellant inside a ring; ends inhibited by default',
  source: 'geometry',
  inputs: {
    ...outer('none'),
    spokes: count('N', 'number of spokes', { min: 2, example: 6 }),
    ringInnerDiameter: length('d_r', 'inner diameter of the ring', { example: '60 mm' }),
    spokeThickness: length('t', 'thickness of a spoke', { example: '6 mm' }),
    spokeTipDiameter: length('d_s', 'twice the distance of the flat tip of a spoke from the axis', {
      example: '20 mm',
    }),
  },
  checks: [
    lessThan('ringInnerDiameter', 'outerDiameter', 'the outer diameter'),
    lessThan('spokeTipDiameter', 'ringInnerDiameter', 'the inner diameter of the ring'),
    ({ spokes, ringInnerDiameter, spokeThickness, spokeTipDiameter }) => {
      const half = spokeThickness.si / 2;
      const sine = Math.sin(Math.PI / spokes);
      return misfit(
        half < (spokeTipDiameter.si / 2) * sine + 1e-12 && half < (ringInnerDiameter.si / 2) * sine,
        'spokeThickness',
        spokeThickness,
        'small enough to leave a gap between the tips of the spokes',
      );
    },
  ],
  gives: 'the grain',
  example: {
    spokes: 6,
    outerDiameter: '80 mm',
    ringInnerDiameter: '60 mm',
    spokeThickness: '6 mm',
    spokeTipDiameter: '20 mm',
    length: '100 mm',
  },
  run: (values) => {
    const wheel = wagonWheelOutline({
      spokes: values.spokes,
      ringRadius: values.ringInnerDiameter.si / 2,
      halfThickness: values.spokeThickness.si / 2,
      spokeRadius: values.spokeTipDiameter.si / 2,
    });
    return cylindricalGrain('wagon wheel', values, [throughCore('wheel', wheel, values.length.si)]);
  },
});
