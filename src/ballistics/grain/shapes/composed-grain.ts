import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { readLength, requireFit } from '../measure';
import type { Core } from './core';
import { type Grain, makeGrain, type OuterMeasures, outerFields, readEnds } from './grain';

const fields: FieldsOf<Parameters<typeof composedGrain>[0]> = { ...outerFields, cores: 'required' };

/**
 * A grain with any union of cores: {@link cylinderCore}, {@link coneCore}, {@link finCore}, {@link sphereCore}. Cores
 * may overlap and are all open to the chamber from the start. Ends are inhibited by default.
 *
 * @throws MeopError `grain-measure`
 * @example composedGrain({ outerDiameter: '50 mm', length: '90 mm', cores: [cylinderCore({ diameter: '14 mm' }), finCore({ count: 4, thickness: '3 mm', tipDiameter: '32 mm', from: '50 mm' })] }).kind // => 'composed grain'
 */
export function composedGrain(options: OuterMeasures & { readonly cores: readonly Core[] }): Grain {
  const context = 'composedGrain';
  requireFields(context, options, fields);
  const radius = readLength(context, 'outerDiameter', options.outerDiameter) / 2;
  const length = readLength(context, 'length', options.length);
  requireFit(options.cores.length > 0, context, 'cores', options.cores, 'a list of at least one core');
  options.cores.forEach((core, i) => {
    requireFit(
      typeof core?.place === 'function',
      context,
      `cores[${i}]`,
      core,
      'a core made by cylinderCore, coneCore, finCore or sphereCore',
    );
  });
  const envelope = { form: 'cylinder', radius, length } as const;
  return makeGrain({
    kind: 'composed grain',
    shape: { envelope, ports: options.cores.map((core) => core.place(envelope)), inert: [] },
    burningEnds: readEnds(context, options.burningEnds, 'none'),
  });
}
