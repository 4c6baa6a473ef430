import type { QuantityInput, SiInput } from '../../units';
import { readNotNegative, refusal } from '../../units/refusal';
import { type ExtrusionGapLimit, extrusionGapLimit } from './extrusion-gap';
import { type SealTemperatures, sealTemperatures, type Temperatures } from './seal-temperature';

interface RubberInput extends Temperatures {
  readonly pressure?: QuantityInput<'gauge pressure'>;
  readonly hardness?: number;
}

interface SealRubber {
  readonly hardness: number;
  readonly pressure: SiInput | undefined;
  readonly thermal: SealTemperatures;
  /** The gap that the rubber bridges, where a pressure is given. */
  readonly limit: ExtrusionGapLimit | undefined;
}

/** The rubber of a seal: how hard it is, how hot and cold it gets, and what it bridges under pressure. */
export function sealRubber(procedure: string, input: RubberInput): SealRubber {
  const { hardness = 70, pressure } = input;
  if (!(hardness >= 70 && hardness <= 90)) throw refusal(procedure, 'hardness', hardness, '70 to 90 Shore A');
  const thermal = sealTemperatures(procedure, input);
  if (pressure === undefined) return { hardness, pressure, thermal, limit: undefined };
  const read = readNotNegative('gauge pressure', 'pressure', pressure, procedure);
  const silicone = thermal.compound.name === 'silicone';
  return { hardness, pressure: read, thermal, limit: extrusionGapLimit({ pressure, hardness, silicone }) };
}
