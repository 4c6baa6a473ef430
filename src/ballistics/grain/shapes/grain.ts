import { instance, list, printable, procedure, type Quantity, q, type Values } from '../../../units';
import { type Flaw, isFlaw } from '../flaws';
import type { BurningEnds, outer } from '../grain-inputs';
import type { Source } from '../surface';
import type { SectionClosedForm } from './closed-form';
import type { GrainShape } from './grain-shape';

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
  const grain = {
    kind,
    outerDiameter,
    length,
    burningEnds,
    flaws,
    shape,
    closedForm: flaws.length > 0 ? undefined : closedForm,
    cautions,
  };
  return printable(grain, () =>
    [`${kind}, ${outerDiameter} × ${length}`, ends, ...flaws.map(({ label }) => label)].join(', '),
  );
}

/** A cylindrical grain with these cavities. */
export const cylindricalGrain = (
  kind: string,
  { outerDiameter, length, burningEnds }: Values<ReturnType<typeof outer>>,
  ports: readonly Source[],
  closedForm?: SectionClosedForm,
): Grain =>
  makeGrain({
    kind,
    shape: {
      envelope: { form: 'cylinder', radius: outerDiameter.si / 2, length: length.si },
      ports,
      inert: [],
    },
    burningEnds,
    closedForm,
  });

const isGrain = (value: unknown): value is Grain =>
  typeof value === 'object' && value !== null && 'shape' in value && 'burningEnds' in value;

/** A grain of any shape. */
export const grainValue = /* @__PURE__ */ instance('the grain', 'a grain', isGrain, {
  remedy: 'Make one with tubularSegment, star or another shape; for a column, use regressColumn',
});

/**
 * The grain passed in is not changed. An error results where a flaw lies outside the grain.
 *
 * @example withFlaws(internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' }), { flaws: [debond({ from: '0 mm', to: '100 mm' })] }).flaws.length // => 1
 */
export const withFlaws = /* @__PURE__ */ procedure({
  name: 'withFlaws',
  title: 'Grain with flaws added',
  source: 'definition of the model: each flaw is additional burning surface',
  subject: grainValue,
  inputs: {
    flaws: list(
      'flaws to add',
      instance('a flaw', 'a flaw made by crack, voidBubble, debond or chippedEdge', isFlaw),
    ),
  },
  gives: 'the grain with these flaws in addition to its own',
  example:
    "withFlaws(freeRod({ outerDiameter: '30 mm', length: '80 mm' }), { flaws: [voidBubble({ diameter: '4 mm', distanceFromAxis: '8 mm', position: '30 mm' })] })",
  run: ({ kind, shape: { envelope, ports, inert }, burningEnds, flaws: own, closedForm }, { flaws }): Grain =>
    makeGrain({
      kind,
      shape: { envelope, ports, inert },
      burningEnds,
      flaws: [...own, ...flaws],
      closedForm,
    }),
});
