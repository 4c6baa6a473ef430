/** Tap drills in millimetres by thread (ISO 2306), read in the table of a public CAD program. */
// biome-ignore format: columns of a table
export const metricTapDrills: readonly (readonly [thread: string, drill: number])[] = [
  ['M1.6x0.35', 1.25], ['M2x0.4', 1.6], ['M2.5x0.45', 2.05], ['M3x0.5', 2.5], ['M3.5x0.6', 2.9],
  ['M4x0.7', 3.3], ['M5x0.8', 4.2], ['M6x1', 5], ['M7x1', 6], ['M8x1.25', 6.8],
  ['M10x1.5', 8.5], ['M12x1.75', 10.2], ['M14x2', 12], ['M16x2', 14], ['M18x2.5', 15.5], ['M20x2.5', 17.5],
  ['M3x0.35', 2.65], ['M4x0.5', 3.5], ['M5x0.5', 4.5], ['M6x0.75', 5.25], ['M8x0.75', 7.25],
  ['M8x1', 7], ['M10x0.75', 9.25], ['M10x1', 9], ['M10x1.25', 8.75], ['M12x1', 11],
  ['M12x1.25', 10.75], ['M12x1.5', 10.5], ['M14x1.5', 12.5], ['M16x1', 15], ['M16x1.5', 14.5],
  ['M18x1.5', 16.5], ['M20x1', 19], ['M20x1.5', 18.5], ['M20x2', 18],
];

/** Tap drills by name and thread, a public chart for machine screws, agreeing with a list in millimetres. */
// biome-ignore format: columns of a table
export const unifiedTapDrills: readonly (readonly [thread: string, drill: string])[] = [
  ['#1-64 UNC', '#53'], ['#2-56 UNC', '#50'], ['#3-48 UNC', '#47'], ['#4-40 UNC', '#43'],
  ['#5-40 UNC', '#38'], ['#6-32 UNC', '#36'], ['#8-32 UNC', '#29'], ['#10-24 UNC', '#25'],
  ['#12-24 UNC', '#16'], ['1/4-20 UNC', '#7'], ['5/16-18 UNC', 'F'], ['3/8-16 UNC', '5/16'],
  ['7/16-14 UNC', 'U'], ['1/2-13 UNC', '27/64'],
  ['#0-80 UNF', '3/64'], ['#1-72 UNF', '#53'], ['#2-64 UNF', '#50'], ['#3-56 UNF', '#45'],
  ['#4-48 UNF', '#42'], ['#5-44 UNF', '#37'], ['#6-40 UNF', '#33'], ['#8-36 UNF', '#29'],
  ['#10-32 UNF', '#21'], ['#12-28 UNF', '#14'], ['1/4-28 UNF', '#3'], ['5/16-24 UNF', 'I'],
  ['3/8-24 UNF', 'Q'], ['7/16-20 UNF', '25/64'], ['1/2-20 UNF', '29/64'],
];
