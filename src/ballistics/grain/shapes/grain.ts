import { type Quantity, type QuantityInput, q } from '../../../units';
import type { FieldsOf } from '../../../units/known-fields';
import type { Flaw } from '../flaws';
import { readChoice, refused } from '../measure';
import type { SectionClosedForm } from './closed-form';
import type { GrainShape } from './grain-shape';

/** Flat ends of a grain that burn. */
export type BurningEnds = 'both' | 'head' | 'aft' | 'none';

/** Dimensions of every cylindrical grain. */
export interface OuterMeasures {
  /** Diameter of the cast propellant [length, above zero]. */
  readonly outerDiameter: QuantityInput<'length'>;
  /** Length of the cast propellant [length, above zero]. */
  readonly length: QuantityInput<'length'>;
  /** Flat ends that burn; the others are inhibited. The default depends on the shape. */
  readonly burningEnds?: BurningEnds;
}

/** Fields of {@link OuterMeasures}, for the check of arguments in each shape. */
export const outerFields: FieldsOf<OuterMeasures> = {
  outerDiameter: 'required',
  length: 'required',
  burningEnds: 'optional',
};

/** Reads the ends that burn; `otherwise` is the default of the shape. */
export const readEnds = (
  context: string,
  given: BurningEnds | undefined,
  otherwise: BurningEnds,
): BurningEnds => readChoice(context, 'burningEnds', given ?? otherwise, ['both', 'head', 'aft', 'none']);

/** Throws unless the value was made by a function that makes grains. */
export function requireGrain(context: string, field: string, given: unknown): void {
  if (typeof given === 'object' && given !== null && 'shape' in given) return;
  const isColumn = typeof given === 'object' && given !== null && 'segments' in given;
  throw refused(
    context,
    field,
    isColumn ? String(given) : given,
    'a grain made by tubularSegment, star or another shape',
    isColumn ? 'Use regressColumn for a column' : undefined,
  );
}

/**
 * A cast grain: kind, outer dimensions and burning surfaces. Made by {@link tubularSegment}, {@link star} and the
 * other shapes; used by {@link regress}. Axial positions are measured from the head end (0) to the aft end, angles
 * about the axis from the x axis.
 */
export interface Grain {
  /** Name of the shape. */
  readonly kind: string;
  readonly outerDiameter: Quantity<'length'>;
  readonly length: Quantity<'length'>;
  readonly burningEnds: BurningEnds;
  readonly flaws: readonly Flaw[];
  /** Its surfaces in SI numbers, for the kernel. */
  readonly shape: GrainShape;
  /** Closed form of the section, where one exists and the grain has no flaw. */
  readonly closedForm: SectionClosedForm | undefined;
  readonly cautions: readonly string[];
  toString(): string;
}

/** Assembles a grain from its kernel shape. */
export function makeGrain(parts: {
  readonly kind: string;
  readonly shape: Omit<GrainShape, 'flaws' | 'headBurns' | 'aftBurns'>;
  readonly burningEnds: BurningEnds;
  readonly flaws?: readonly Flaw[];
  readonly closedForm?: SectionClosedForm | undefined;
}): Grain {
  const { kind, burningEnds, flaws = [], closedForm } = parts;
  const envelope = parts.shape.envelope;
  const shape: GrainShape = {
    ...parts.shape,
    headBurns: burningEnds === 'both' || burningEnds === 'head',
    aftBurns: burningEnds === 'both' || burningEnds === 'aft',
    flaws: flaws.map((flaw) => flaw.place(envelope)),
  };
  const cautions = [...new Set(flaws.flatMap((flaw) => flaw.cautions))];
  const outerDiameter = q(2 * envelope.radius, 'm').to('mm');
  const length = q(envelope.length, 'm').to('mm');
  const ends =
    burningEnds === 'none'
      ? 'ends inhibited'
      : `${burningEnds} end${burningEnds === 'both' ? 's' : ''} burning`;
  const text = (): string =>
    [`${kind}, ${outerDiameter} × ${length}`, ends, ...flaws.map(({ label }) => label)].join(', ');
  return {
    kind,
    outerDiameter,
    length,
    burningEnds,
    flaws,
    shape,
    closedForm: flaws.length > 0 ? undefined : closedForm,
    cautions,
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
}

/**
 * Adds flaws to a grain. The grain passed in is not changed.
 *
 * @throws MeopError `grain-measure` when a flaw lies outside the grain
 * @example withFlaws(internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' }), debond({ from: '0 mm', to: '100 mm' })).flaws.length // => 1
 */
export function withFlaws(grain: Grain, ...flaws: readonly Flaw[]): Grain {
  requireGrain('withFlaws', 'grain', grain);
  if (flaws.length === 0) throw refused('withFlaws', 'flaws', undefined, 'at least one flaw');
  const stray = flaws.findIndex((flaw) => typeof flaw?.place !== 'function');
  if (stray >= 0)
    throw refused(
      'withFlaws',
      `flaws[${stray}]`,
      flaws[stray],
      'a flaw made by crack, voidBubble, debond or chippedEdge',
    );
  const { envelope, ports, inert } = grain.shape;
  return makeGrain({
    kind: grain.kind,
    shape: { envelope, ports, inert },
    burningEnds: grain.burningEnds,
    flaws: [...grain.flaws, ...flaws],
    closedForm: grain.closedForm,
  });
}
