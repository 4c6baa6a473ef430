import { MeopError, type Quantity } from '../../units';
import type { RetainingRingSi } from './retaining-ring-modes';
import type { RetainingRingValues } from './review-retaining-ring';
import { type RingSizes, ringConflicts, sizesInBore } from './ring-sizes';

const procedure = 'reviewRetainingRing';
const room = 293.15;
/** Tapered rings touch about this part of the circle (engineering practice, no published source). */
const usualContact = 0.9;
const required = ['grooveDepth', 'edgeMargin', 'thickness'] as const;

/** A retaining ring in SI, with the sizes of a standard ring where its name is given. @throws MeopError */
export function ringSi({ tube, ring, sealDiameter }: RetainingRingValues): RetainingRingSi {
  const boreDiameter = tube.outsideDiameter.si - 2 * tube.wall.si;
  const sizes = ringSizes(ring, boreDiameter);
  const { grooveDepth, grooveWidth, thickness } = sizes;
  if (grooveDepth >= tube.wall.si)
    throw refused('grooveDepth', ring.grooveDepth, `less than the wall of the case (${tube.wall})`);
  if (grooveWidth !== undefined && thickness >= grooveWidth)
    throw refused('thickness', ring.thickness, `less than the width of the groove (${ring.grooveWidth})`);
  return {
    boreDiameter,
    sealDiameter: sealDiameter?.si ?? boreDiameter,
    grooveDepth,
    edgeMargin: sizes.edgeMargin,
    wall: tube.wall.si,
    ringThickness: thickness,
    ringStrength: ring.shearStrength.si,
    contactFactor: ring.contactFactor ?? usualContact,
    caseRise: Math.max(0, (tube.wallTemperature?.si ?? room) - room),
    dishing:
      ring.dishingCapacity === undefined || ring.chamfer === undefined
        ? undefined
        : {
            capacity: ring.dishingCapacity.si,
            statedChamfer: ring.dishingChamfer?.si,
            chamfer: ring.chamfer.si,
            play: ring.play?.si ?? 0,
          },
  };
}

type Sized = Pick<RingSizes, (typeof required)[number]> & Partial<RingSizes>;

function ringSizes(ring: RetainingRingValues['ring'], bore: number): Sized {
  if (ring.ring !== undefined) {
    const { grooveDepth, grooveWidth, thickness } = ring;
    const [conflict] = ringConflicts(ring.ring, bore, {
      grooveDepth: exact(grooveDepth),
      grooveWidth: exact(grooveWidth),
      thickness: exact(thickness),
    });
    if (conflict !== undefined) {
      const { field, expected } = conflict;
      throw refused(field, field === 'ring' ? ring.ring.name : ring[field], expected, 'contradiction');
    }
  }
  const standard: Partial<RingSizes> = ring.ring === undefined ? {} : sizesInBore(ring.ring, bore);
  const size = (field: (typeof required)[number]): number => {
    const si = ring[field]?.si ?? standard[field];
    if (si !== undefined) return si;
    throw new MeopError({
      code: 'missing-field',
      procedure,
      path: `ring.${field}`,
      expected: `the ${field} of the ring, or the name of a standard ring in ring.ring`,
    });
  };
  const grooveWidth = ring.grooveWidth?.si ?? standard.grooveWidth;
  return {
    grooveDepth: size('grooveDepth'),
    edgeMargin: size('edgeMargin'),
    thickness: size('thickness'),
    ...(grooveWidth !== undefined && { grooveWidth }),
  };
}

const exact = (value: Quantity<'length'> | undefined) => value && { si: value.si, plusMinus: 0 };

const refused = (field: string, given: unknown, expected: string, code = 'out-of-domain'): MeopError =>
  new MeopError({ code, procedure, path: `ring.${field}`, ...(given !== undefined && { given }), expected });
