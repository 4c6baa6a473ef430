import { table } from '../../units';
import type { Origin } from './datum';
import type { Material, Retention } from './material';

type Row = readonly [property: string, datum: (Origin & { readonly value: unknown }) | undefined];

/** A record that prints as a table; a copy made of its fields is a plain record again. */
export function printedMaterial(record: Material): Material {
  const value = (): string => materialText(record);
  return Object.defineProperties(
    { ...record },
    { toString: { value }, [Symbol.for('nodejs.util.inspect.custom')]: { value } },
  );
}

/** A material as people read it: every value with its basis, the sources once below. */
export function materialText(material: Material): string {
  const { name, form, notes = [], cautions = [], atTemperature, afterExposure } = material;
  const sources: string[] = [];
  const numberOf = ({ source, provenance, note }: Origin): string => {
    const said = [source, ...(provenance === 'published' ? [] : [provenance]), ...(note ? [note] : [])].join(
      '; ',
    );
    if (!sources.includes(said)) sources.push(said);
    return `[${sources.indexOf(said) + 1}]`;
  };
  const rows = valuesOf(material).flatMap(([property, datum]) =>
    datum === undefined
      ? []
      : [{ property, value: String(datum.value), basis: datum.basis, source: numberOf(datum) }],
  );
  return [
    `${name}: ${form}`,
    ...(rows.length > 0 ? [table(rows)] : []),
    ...hotLine('strength at temperature', atTemperature, numberOf),
    ...hotLine('strength after exposure', afterExposure, numberOf),
    ...sources.map((source, i) => `[${i + 1}] ${source}`),
    ...notes.map((text) => `note: ${text}`),
    ...cautions.map((text) => `caution: ${text}`),
  ].join('\n');
}

function valuesOf(material: Material): readonly Row[] {
  const { transverse, bearingYield, bearingUltimate, typical, serviceTemperature } = material;
  return [
    ['ultimate strength', material.ultimateStrength],
    ['yield strength', material.yieldStrength],
    ['ultimate strength, across the grain', transverse?.ultimateStrength],
    ['yield strength, across the grain', transverse?.yieldStrength],
    ['compressive yield strength', material.compressiveYield],
    ['shear strength', material.shearUltimate],
    ['bearing strength at e/D 1.5', bearingUltimate?.at1_5],
    ['bearing strength at e/D 2', bearingUltimate?.at2_0],
    ['bearing yield strength at e/D 1.5', bearingYield?.at1_5],
    ['bearing yield strength at e/D 2', bearingYield?.at2_0],
    ['ultimate strength', typical?.ultimateStrength],
    ['yield strength', typical?.yieldStrength],
    ['shear strength', typical?.shearUltimate],
    ['Brinell hardness', typical?.hardness],
    ['tensile strength, minimum stated', typical?.tensileStrength?.min],
    ['tensile strength, maximum stated', typical?.tensileStrength?.max],
    ['flexural strength, minimum stated', typical?.flexuralStrength?.min],
    ['flexural strength, maximum stated', typical?.flexuralStrength?.max],
    ['compressive strength, minimum stated', typical?.compressiveStrength?.min],
    ['compressive strength, maximum stated', typical?.compressiveStrength?.max],
    ['elongation', material.elongation],
    ['elastic modulus', material.elasticModulus],
    ["Poisson's ratio", material.poissonRatio],
    ['density', material.density],
    ['thermal expansion', material.thermalExpansion],
    ['thermal conductivity', material.thermalConductivity],
    ['specific heat', material.specificHeat],
    ['coldest service', serviceTemperature?.min],
    ['hottest service', serviceTemperature?.max],
  ];
}

const hours = (seconds: number): string => `${Number((seconds / 3600).toPrecision(3))} h`;

function hotLine(
  what: string,
  retention: Retention | undefined,
  numberOf: (origin: Origin) => string,
): readonly string[] {
  if (retention === undefined) return [];
  const curves = [...retention.ultimate, ...retention.yield];
  const hottest = Math.max(...curves.flatMap(({ points }) => points.map(([kelvin]) => kelvin)));
  const times = [...new Set(curves.map(({ exposure }) => exposure))].sort((a, b) => a - b).map(hours);
  return [
    `${what}: known to ${Math.round(hottest - 273.15)} °C, held for ${times.join(', ')}: allowable({ material, property, temperature, exposure }) ${numberOf(retention.origin)}`,
  ];
}
