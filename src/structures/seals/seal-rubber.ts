import type { Quantity } from '../../units';
import { type ExtrusionGapLimit, extrusionGapLimit } from './extrusion-gap';
import { type SealTemperatures, sealTemperatures, type Temperatures } from './seal-temperature';

interface RubberInput extends Temperatures {
  readonly pressure: Quantity<'gauge pressure'> | undefined;
  readonly hardness: number;
}

interface SealRubber {
  readonly thermal: SealTemperatures;
  /** The gap that the rubber bridges, where a pressure is given. */
  readonly limit: ExtrusionGapLimit | undefined;
}

/** The rubber of a seal: its temperatures, and the gap that it bridges under pressure. */
export function sealRubber({ hardness, pressure, ...input }: RubberInput): SealRubber {
  const thermal = sealTemperatures(input);
  const silicone = thermal.compound.name === 'silicone';
  return { thermal, limit: pressure && extrusionGapLimit({ pressure, hardness, silicone }) };
}
