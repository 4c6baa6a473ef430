import { formula, length, ratio } from '../../units';

/**
 * Height of thread that a tap drill leaves over the full height of the profile. 65 to 77 % is usual; above 75 % the strength
 * hardly increases (from memory).
 *
 * @example threadPercentage({ diameter: '6 mm', pitch: '1 mm', drill: '5 mm' }) // => 0.7698003589
 */
export const threadPercentage = /* @__PURE__ */ formula({
  name: 'threadPercentage',
  title: 'Height of thread left by a tap drill',
  equation: 'h = (D − d_t) / (3·√3/4·P)',
  source: 'ISO 68-1 and ASME B1.1: twice the height 3/4·H of the profile with H = √3/2·P',
  inputs: {
    diameter: length('D', 'nominal (major) diameter'),
    pitch: length('P', 'pitch'),
    drill: length('d_t', 'diameter of the tap drill'),
  },
  output: ratio('h', 'height of thread/full height'),
  example: { diameter: '6 mm', pitch: '1 mm', drill: '5 mm' },
  requires: [({ diameter, drill }) => drill < diameter || 'the drill is not smaller than the thread'],
  si: ({ diameter, pitch, drill }) => (diameter - drill) / (fullHeight * pitch),
  solve: {
    diameter: (height, { pitch, drill }) => drill + height * fullHeight * pitch,
    drill: (height, { diameter, pitch }) => diameter - height * fullHeight * pitch,
    pitch: (height, { diameter, drill }) => (diameter - drill) / (fullHeight * height),
  },
});

const fullHeight = (3 * Math.sqrt(3)) / 4;
