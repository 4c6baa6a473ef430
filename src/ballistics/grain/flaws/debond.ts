import { angle, optional, procedure } from '../../../units';
import { greaterThan, inMillimetres, requireFit } from '../misfit';
import { prism, wallOutline } from '../surface';
import { type Flaw, NARROW_GAP_CAUTION } from './flaw';
import { flawAngle, flawExtent, open } from './flaw-inputs';

const name = 'debond';

/**
 * A debond burns inwards from the outer surface of the propellant. It burns from the start if it reaches an end of the
 * grain, where the flame enters, or meets the bore or another open flaw, and otherwise from the depth at which the front
 * reaches it; `open` overrides this.
 */
export const debond = /* @__PURE__ */ procedure({
  name,
  title: 'Area of the wall where the propellant is debonded',
  source: 'geometry',
  inputs: {
    ...flawExtent,
    angle: flawAngle,
    width: optional(
      // The slack is for a full turn that was computed.
      angle('β', 'angle spanned', {
        above: 0,
        max: 2 * Math.PI + 1e-9,
        example: '60 deg',
        worse: 'neither',
      }),
      2 * Math.PI,
    ),
    open,
  },
  checks: [greaterThan('to', 'from')],
  gives: 'the flaw, for withFlaws',
  example: { from: '0 mm', to: '30 mm', angle: '0 deg', width: '60 deg' },
  run: ({ from: start, to, angle: { si: middle }, width: { si: width }, open: burns }): Flaw => ({
    kind: 'debond',
    label: `debond from ${start} to ${to}`,
    cautions: [NARROW_GAP_CAUTION],
    place: ({ form, radius, length }) => {
      requireFit(name, form === 'cylinder', 'from', start, 'a position on the wall of a cylindrical grain');
      requireFit(
        name,
        start.si < length,
        'from',
        start,
        `less than the length of the grain (${inMillimetres(length)})`,
      );
      const slack = 1e-9 * length;
      const from = start.si;
      const end = Math.min(to.si, length);
      const atHead = from <= slack;
      const atAft = end >= length - slack;
      const source = prism({
        name,
        outline: wallOutline(radius, middle - width / 2, width),
        from,
        to: end,
        faces: {
          side: [from, end],
          start: atHead ? 'through' : 'burning',
          end: atAft ? 'through' : 'burning',
        },
        mirror: middle,
      });
      return { source, open: burns ?? (atHead || atAft ? true : undefined) };
    },
  }),
});
