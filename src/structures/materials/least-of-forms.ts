import type { Datum, StressDatum } from './datum';
import type { BearingData, Material } from './material';

/**
 * A material whose product form is not named: every strength is the minimum of these forms, with the source of
 * that form. Common properties (stiffness, heat) are those of the first.
 */
export function leastOfForms(
  name: string,
  form: string,
  forms: readonly [Material, ...Material[]],
  caution: string,
): Material {
  const [first] = forms;
  const least = <D extends StressDatum | Datum<number>>(
    of: (one: Material) => D | undefined,
  ): D | undefined =>
    forms
      .map(of)
      .filter((one) => one !== undefined)
      .reduce<D | undefined>(
        (low, one) => (low === undefined || size(one) < size(low) ? one : low),
        undefined,
      );
  const bearing = (of: (one: Material) => BearingData | undefined): BearingData => ({
    ...given(
      'at1_5',
      least((one) => of(one)?.at1_5),
    ),
    ...given(
      'at2_0',
      least((one) => of(one)?.at2_0),
    ),
  });
  return {
    ...first,
    name,
    form,
    ...given(
      'ultimateStrength',
      least((one) => one.ultimateStrength),
    ),
    ...given(
      'yieldStrength',
      least((one) => one.yieldStrength),
    ),
    // A form whose table has no grain direction holds across the grain as along it.
    transverse: {
      ...given(
        'ultimateStrength',
        least((one) => one.transverse?.ultimateStrength ?? one.ultimateStrength),
      ),
      ...given(
        'yieldStrength',
        least((one) => one.transverse?.yieldStrength ?? one.yieldStrength),
      ),
    },
    ...given(
      'compressiveYield',
      least((one) => one.compressiveYield),
    ),
    ...given(
      'shearUltimate',
      least((one) => one.shearUltimate),
    ),
    bearingUltimate: bearing((one) => one.bearingUltimate),
    bearingYield: bearing((one) => one.bearingYield),
    ...given(
      'elongation',
      least((one) => one.elongation),
    ),
    cautions: [caution],
  };
}

const size = ({ value }: StressDatum | Datum<number>): number =>
  typeof value === 'number' ? value : value.si;

const given = <K extends string, D>(field: K, datum: D | undefined): { readonly [F in K]?: D } =>
  // The one key is of K, which an object literal with a computed key does not tell the compiler.
  (datum === undefined ? {} : { [field]: datum }) as { readonly [F in K]?: D };
