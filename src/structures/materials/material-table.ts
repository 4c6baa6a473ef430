import type { NamedTable } from '../../units';
import { type MaterialName, material, materialNames } from './library';
import type { Material } from './material';

/** Materials by name, or as a record with the user's own values. */
export const materials: NamedTable<Material, MaterialName> = {
  what: 'material',
  names: materialNames,
  get usual() {
    return materialNames();
  },
  find: material,
  is: (value): value is Material =>
    typeof value === 'object' &&
    value !== null &&
    ['name', 'form', 'class'].every((field) => typeof Reflect.get(value, field) === 'string'),
};
