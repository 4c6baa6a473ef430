import { MeopError } from '../../units';
import { type DocumentProblem, givenAt, type Path, problemOf } from '../document/problems';

/** Runs the calculation of a part; undefined where it throws. The places are where its fields may be in the document. */
export type Attempt = <V>(places: readonly Path[], calculate: () => V) => V | undefined;

/** Lets a refusal through. */
export const orThrow: Attempt = (_, calculate) => calculate();

/** Records the errors of the calculations of parts, at the first of the paths that has the field they name. */
export function refusals(document: unknown): {
  readonly attempt: Attempt;
  readonly problems: readonly DocumentProblem[];
} {
  const problems: DocumentProblem[] = [];
  return {
    problems,
    attempt: (places, calculate) => {
      try {
        return calculate();
      } catch (error) {
        if (!(error instanceof MeopError)) throw error;
        // A calculation groups its inputs: the tube is the case of the document, the ring is in its own place.
        const field = error.path?.split('.').at(-1) ?? '';
        const fields = field === 'temperature' ? ['temperature', 'wallTemperature'] : [field];
        const found = (error.path?.startsWith('tube.') ? [['case']] : places)
          .flatMap((place) => fields.map((one): Path => [...place, one]))
          .find((path) => givenAt(document, path) !== undefined);
        const [place = []] = places;
        const path = found ?? (error.code === 'missing-field' && field !== '' ? [...place, field] : place);
        problems.push(problemOf(error, path, givenAt(document, path)));
        return undefined;
      }
    },
  };
}
