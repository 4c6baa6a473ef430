/** Origin of a value: the calculation that was called, and the path of the value in its argument. */
export interface Place {
  readonly procedure: string;
  /** Empty for the argument itself. */
  readonly path: string;
}

/** The path of a field below a place. */
export const pathTo = ({ path }: Place, field: string | number): string =>
  path === '' ? String(field) : `${path}.${field}`;
