// The flow path along a grain column at one instant, cut into cells from the head end.

/** Kinds of cells: a stretch of bore, or a gap over the whole section between segments or behind the last. */
export enum CellKind {
  bore,
  gap,
}

/** A flow path, as columns of plain SI numbers of which the first `count` are in use. */
export interface PortCells {
  count: number;
  readonly kind: Uint8Array;
  /** [m] */
  readonly length: Float64Array;
  /** Open area in the middle of the cell [m²]. */
  readonly area: Float64Array;
  /** Burning area [m²]; in a gap that of the end faces, which no gas flows along. */
  readonly burning: Float64Array;
  /** Hydraulic diameter of the port [m]. */
  readonly diameter: Float64Array;
  /** Volume of the gas [m³]. */
  readonly volume: Float64Array;
}

export const portCells = (room: number): PortCells => ({
  count: 0,
  kind: new Uint8Array(room),
  length: new Float64Array(room),
  area: new Float64Array(room),
  burning: new Float64Array(room),
  diameter: new Float64Array(room),
  volume: new Float64Array(room),
});

/** Adds a cell behind the last. */
export function addPortCell(
  cells: PortCells,
  kind: CellKind,
  length: number,
  area: number,
  burning: number,
  diameter: number,
  volume = area * length,
): void {
  const i = cells.count++;
  cells.kind[i] = kind;
  cells.length[i] = length;
  cells.area[i] = area;
  cells.burning[i] = burning;
  cells.diameter[i] = diameter;
  cells.volume[i] = volume;
}
