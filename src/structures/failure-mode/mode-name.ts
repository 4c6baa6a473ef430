/** The name of every failure mode as people read it, in one place: everything else goes by the identifier. */
const names = {
  // Plain tube.
  'bore-hoop-yield': 'yield at the bore, hoop stress',
  'bore-von-mises-yield': 'yield at the bore, von Mises',
  'oval-tube-yield': 'yield of an oval tube',
  'burst-barlow': 'burst, Barlow',
  'burst-mean-diameter': 'burst, mean diameter',
  'burst-turner': 'burst, Turner',
  'burst-faupel': 'burst, Faupel',
  'burst-svensson': 'burst, Svensson',
  'proof-yield': 'yield at the proof test',
  // Radial bolts.
  'case-bearing-yield': 'bearing yield, case wall',
  'case-bearing': 'bearing, case wall',
  'case-tear-out': 'tear-out of the case end, planes from the hole edge',
  'case-tear-out-40': 'tear-out of the case end, planes at 40°',
  'net-section-yield': 'net section of the case, yield',
  'net-section': 'net section of the case',
  'case-folding-yield': 'folding of the case at the bolts, yield',
  'hole-row-hoop-yield': 'hoop yield, hole row',
  'hole-row-hoop': 'hoop stress, hole row',
  'bolt-shear-yield': 'bolt shear, yield',
  'bolt-shear': 'bolt shear',
  'bolt-combined-yield': 'preload, torsion and shear of the bolts, yield',
  'bolt-bearing-yield': 'bearing yield, bolts',
  'bolt-bending-yield': 'combined bolt bending and shear, yield',
  'bolt-bending': 'combined bolt bending and shear',
  'closure-bearing-yield': 'bearing yield, closure threads',
  'closure-bearing': 'bearing, closure threads',
  'closure-tear-out': 'tear-out of the closure, planes from the hole edge',
  'closure-hole-thread-shear': "shear of the closure's threads",
  // Bolts in tension.
  'tension-bolt-proof': 'proof load of the bolts',
  'tension-bolt-yield': 'tension and torsion of the bolts, yield',
  'tension-bolt-break': 'tension of the bolts',
  'tension-bolt-thread-shear': 'shear of the threads of the bolts',
  'tapped-thread-shear-yield': 'shear of the tapped threads, yield',
  'tapped-thread-shear': 'shear of the tapped threads',
  'bolt-head-bearing-yield': 'bearing under the bolt heads, yield',
  'joint-separation': 'separation of the clamped parts',
  'tapped-end-tension-yield': 'tension of the tapped end, yield',
  'tapped-end-tension': 'tension of the tapped end',
  'tapped-end-hoop-yield': 'hoop stress at the tapped holes, yield',
  'tapped-end-hoop': 'hoop stress at the tapped holes',
  'flange-bending-yield': 'bending of the flange, yield',
  'flange-bending': 'bending of the flange',
  'flange-wall-bending-yield': 'bending of the wall next to the flange, yield',
  // Retaining ring.
  'ring-shear': 'shear of the ring',
  'groove-bearing-yield': 'bearing of the groove, yield',
  'land-shear-yield': 'shear of the land, yield',
  'land-shear': 'shear of the land',
  'land-bending-yield': 'bending of the land, yield',
  'ring-dishing': 'dishing of the ring',
  'groove-wall-tension-yield': 'tension of the wall under the groove, yield',
  'groove-wall-tension': 'tension of the wall under the groove',
  'groove-wall-folding-yield': 'folding of the wall under the groove, yield',
  'groove-hoop-yield': 'hoop at the groove, yield',
  'groove-hoop': 'hoop at the groove',
  // Thread of a closure.
  'case-thread-shear-yield': "shear of the case's thread, yield",
  'case-thread-shear': "shear of the case's thread",
  'closure-thread-shear-yield': "shear of the closure's thread, yield",
  'closure-thread-shear': "shear of the closure's thread",
  'thread-disengagement': 'threads that no longer meet',
  'thread-wall-tension-yield': 'tension of the wall under the thread, yield',
  'thread-wall-tension': 'tension of the wall under the thread',
  'thread-wall-folding-yield': 'folding of the wall under the thread, yield',
  'thread-hoop-yield': 'hoop at the thread, yield',
  'thread-hoop': 'hoop at the thread',
  // Plate of a closure, throat insert.
  'plate-bending-yield': 'bending of the plate, yield',
  'plate-bending': 'bending of the plate',
  'plate-ring-bending-yield': 'bending of the thin ring of the plate, yield',
  'plate-ring-bending': 'bending of the thin ring of the plate',
  'plate-shear-yield': 'shear of the plate at its support, yield',
  'plate-shear': 'shear of the plate at its support',
  'head-stress-yield': 'stress of the dished head, yield',
  'head-stress': 'stress of the dished head',
  'insert-hoop': 'hoop tension, unsupported, full chamber pressure at the throat',
  // Nozzle retention.
  'seat-bearing': 'bearing of the insert on its seat',
  'insert-plug-shear': 'shear of the insert through the opening of its seat',
  'insert-bending': 'bending of the insert on its seat',
  'lip-bearing-yield': 'bearing of the lip of the seat, yield',
  'lip-shear-yield': 'shear of the lip of the seat, yield',
  'lip-shear': 'shear of the lip of the seat',
  'lip-bending-yield': 'bending of the lip of the seat, yield',
  'lip-bending': 'bending of the lip of the seat',
  'retainer-bearing-yield': 'bearing of the retainer plate, yield',
  'retainer-shear-yield': 'shear of the retainer plate, yield',
  'retainer-shear': 'shear of the retainer plate',
  'retainer-bending-yield': 'bending of the retainer plate, yield',
  'retainer-bending': 'bending of the retainer plate',
  // Stand and restraint.
  'member-buckling': 'buckling of a member',
  'stand-anchor-pull': 'anchor uplift',
  'rope-tension': 'wire rope with terminations',
  'shackle-load': 'shackle',
  'anchor-bolt-shear': 'anchor bolt, shear',
  'anchor-bolt-tension': 'anchor bolt, tension',
  'anchor-bolt-shear-and-tension': 'anchor bolt, both',
} as const;

/** A failure mode by identifier: stable, whatever its name reads like. */
export type FailureModeId = keyof typeof names;

/** Whether a string is the identifier of a failure mode. */
export const isFailureModeId = (id: string): id is FailureModeId => Object.hasOwn(names, id);

/**
 * The name of a failure mode as people read it.
 *
 * @example modeName('case-bearing') // => 'bearing, case wall'
 */
export const modeName = (id: FailureModeId): string => names[id];
