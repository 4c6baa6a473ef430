import type { PartId } from '../../structures';
import type { EndLayout, GroovePlace } from './end-layout';
import { type Ligament, practice } from './ligament';
import { solidAt, voidDiameter } from './metal';

type Radial = Extract<GroovePlace, { readonly kind: 'radial' }>;
type Face = Extract<GroovePlace, { readonly kind: 'face' }>;

/** Width of the land next to a groove that practice requires: the cross section of the O-ring or this, whichever is less. */
const land = 2.5e-3;

/** Ligaments around the O-ring grooves of a closure; positions of the end are distances from the end of the case. */
export function sealLigaments(end: EndLayout, part: PartId, outside: number): readonly Ligament[] {
  const radial = end.grooves.filter((one) => one.kind === 'radial');
  const faces = end.grooves.filter((one) => one.kind === 'face');
  return [
    ...radialLigaments(end, part, radial),
    ...faces.flatMap((groove) => faceLigaments(end, part, groove, outside)),
  ];
}

const landOf = (part: PartId, check: string, value: number, section: number): Ligament => ({
  part,
  check,
  value,
  kind: 'length',
  least: Math.min(section, land),
  ...(section !== land && { preferred: Math.max(section, land) }),
  rule: 'the cross section of the O-ring or 2.5 mm, whichever is less',
  source: practice,
});

function radialLigaments(end: EndLayout, part: PartId, grooves: readonly Radial[]): readonly Ligament[] {
  const along = [...grooves].sort((a, b) => a.span.from - b.span.from);
  const [outer] = along;
  const inner = along.at(-1);
  if (outer === undefined || inner === undefined) return [];
  return [
    landOf(
      part,
      'land outside the O-ring groove',
      outer.span.from - solidAt(end, outer.bottomDiameter / 2).from,
      outer.crossSection,
    ),
    landOf(
      part,
      'land inside the O-ring groove',
      solidAt(end, inner.bottomDiameter / 2).to - inner.span.to,
      inner.crossSection,
    ),
    ...along.slice(1).map((groove, i): Ligament => {
      const section = Math.max(groove.crossSection, along[i].crossSection);
      return {
        part,
        check: 'land between the O-ring grooves',
        value: groove.span.from - along[i].span.to,
        kind: 'length',
        least: 1.5 * section,
        rule: '1.5 cross sections of the O-ring',
        source: practice,
      };
    }),
    ...along.flatMap(({ span, bottomDiameter, closureDiameter }): readonly Ligament[] => {
      const inside = voidDiameter(end, span);
      if (inside === 0) return [];
      return [
        {
          part,
          check: 'metal left under the O-ring groove',
          value: (bottomDiameter - inside) / (closureDiameter - inside),
          kind: 'ratio',
          least: 0.6,
          rule: '60 % of the metal next to it',
          source: practice,
        },
      ];
    }),
  ];
}

function faceLigaments(
  end: EndLayout,
  part: PartId,
  { span, outsideDiameter, insideDiameter, crossSection }: Face,
  outside: number,
): readonly Ligament[] {
  const { shoulder, closure } = end;
  const isInShoulder = shoulder !== undefined && span.to <= shoulder.span.to;
  const outer = isInShoulder ? Math.min(shoulder.diameter, outside) : closure.diameter;
  const inner = isInShoulder ? closure.diameter : voidDiameter(end, span);
  return [
    landOf(part, 'land outside the face groove', (outer - outsideDiameter) / 2, crossSection),
    landOf(part, 'land inside the face groove', (insideDiameter - inner) / 2, crossSection),
  ];
}
