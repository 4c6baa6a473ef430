// Shapes of a port, and the cells they are cut into.
import { linearInterpolant } from '../../numerics';
import { area, inputs, length, list, type Values, variants } from '../../units';
import { addPortCell, CellKind, type PortCells, portCells } from './port-cells';

const portLength = length('L', 'length of the grain', { above: 0, example: '400 mm' });

/** A section of a port, as measured or from a table. */
const section = inputs(
  {
    position: length('z', 'distance from the head end', { min: 0, example: '100 mm' }),
    area: area('A', 'port area', { above: 0, example: '314 mm^2' }),
    perimeter: length('P', 'burning perimeter', { min: 0, example: '62.8 mm' }),
  },
  { meaning: 'section of a port' },
);

/** Shape of a port whose ends do not burn. */
export const portShape = variants('shape', 'shape of the port', {
  tube: inputs(
    { boreDiameter: length('d', 'bore diameter', { above: 0, example: '20 mm' }), length: portLength },
    { meaning: 'bore of constant diameter' },
  ),
  'conical bore': inputs(
    {
      headDiameter: length('d_h', 'bore diameter at the head end', { above: 0, example: '18 mm' }),
      aftDiameter: length('d_a', 'bore diameter at the aft end', { above: 0, example: '26 mm' }),
      length: portLength,
    },
    { meaning: 'bore whose diameter changes evenly' },
  ),
  tabulated: inputs(
    { sections: list('sections from head to aft, the first at 0', section, { min: 2 }) },
    {
      meaning: 'area and perimeter by distance, linear between',
      checks: [
        ({ sections }) =>
          sections[0].position.si === 0
            ? undefined
            : { path: 'sections.0.position', given: sections[0].position, expected: '0, the head end' },
        ({ sections }) => {
          const wrong = sections.findIndex(
            ({ position }, i) => i > 0 && position.si <= sections[i - 1].position.si,
          );
          return wrong < 0
            ? undefined
            : {
                path: `sections.${wrong}.position`,
                given: sections[wrong].position,
                expected: `above that of the section ahead of it, ${sections[wrong - 1].position}`,
              };
        },
      ],
    },
  ),
});

/** Area and burning perimeter of a port along its length. */
export interface PortSections {
  readonly length: number;
  readonly area: (z: number) => number;
  readonly perimeter: (z: number) => number;
}

/** The sections of a shape. */
export function sectionsOf(shape: Values<{ readonly shape: typeof portShape }>['shape']): PortSections {
  if (shape.shape === 'tabulated') {
    const { sections } = shape;
    const at = Float64Array.from(sections, ({ position }) => position.si);
    const areas = linearInterpolant(
      at,
      Float64Array.from(sections, (one) => one.area.si),
    );
    const around = linearInterpolant(
      at,
      Float64Array.from(sections, (one) => one.perimeter.si),
    );
    return { length: at[at.length - 1], area: (z) => areas.at(z), perimeter: (z) => around.at(z) };
  }
  const length = shape.length.si;
  const [from, to] =
    shape.shape === 'tube'
      ? [shape.boreDiameter.si, shape.boreDiameter.si]
      : [shape.headDiameter.si, shape.aftDiameter.si];
  const diameter = (z: number): number => from + ((to - from) * z) / length;
  return {
    length,
    area: (z) => (Math.PI / 4) * diameter(z) ** 2,
    perimeter: (z) => Math.PI * diameter(z),
  };
}

/** Hydraulic diameter of a section. */
export const hydraulicDiameterAt = ({ area: open, perimeter }: PortSections, z: number): number =>
  perimeter(z) > 0 ? (4 * open(z)) / perimeter(z) : Math.sqrt((4 / Math.PI) * open(z));

/** The sections cut into cells of equal length. */
export function cellsOf(sections: PortSections, count: number): PortCells {
  const cells = portCells(count);
  const step = sections.length / count;
  for (let i = 0; i < count; i++) {
    const z = (i + 0.5) * step;
    addPortCell(
      cells,
      CellKind.bore,
      step,
      sections.area(z),
      sections.perimeter(z) * step,
      hydraulicDiameterAt(sections, z),
    );
  }
  return cells;
}
