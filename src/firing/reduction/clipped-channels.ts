import { MeopError } from '../../units';
import { type AnalysedRecord, analysedRecord } from '../analysis/analysed-record';
import { step } from '../cleaning/step';
import type { Firing } from '../firing';
import type { Clipping } from '../saturation/clipping';
import { recoverPressure, recoverThrust } from '../saturation/recover';
import type { Recovery } from '../saturation/recovery';
import type { ReductionFacts } from './reduction-inputs';

/** Clipping by channel, at the levels after subtraction of the baselines. */
export interface ClippedChannels {
  readonly pressure?: Clipping;
  readonly thrust?: Clipping;
}

export type AnyRecovery = Recovery<'absolute pressure'> | Recovery<'force'>;

/** A record whose clipped channel is reconstructed as far as the other channel and the inputs allow. */
export interface Reconstruction {
  readonly record: AnalysedRecord;
  /** Reconstruction of a channel that is certainly clipped. */
  readonly recovery: AnyRecovery | undefined;
  /** Reconstruction of a channel that may be clipped; it is not in the record. */
  readonly uncertain: AnyRecovery | undefined;
}

/** Reconstructs a channel that is certainly clipped, and adds a caution for one that may be. */
export function reconstructClipped(
  given: AnalysedRecord,
  clipping: ClippedChannels,
  facts: ReductionFacts,
): Reconstruction {
  const found = recovered(given, clipping, facts);
  const possible = found ? undefined : recovered(given, softOnly(clipping), facts);
  const recovery = found && 'record' in found ? found : undefined;
  const uncertain = possible && 'record' in possible ? possible : undefined;
  let record = recovery ? analysedRecord(recovery.record) : given;
  if (found && 'why' in found) record = step(record, { cautions: [found.why] }, found.why);
  for (const caution of clippingCautions(clipping, uncertain))
    record = step(record, { cautions: [caution] }, caution);
  return { record, recovery, uncertain };
}

/** Cautions on tops that may be due to clipping or to the motor; these values are not changed. */
function clippingCautions(clipping: ClippedChannels, uncertain: AnyRecovery | undefined): readonly string[] {
  return (['pressure', 'thrust'] as const).flatMap((channel) => {
    const found = clipping[channel];
    if (found === undefined || found.certain) return [];
    const when = found.spans.map(({ from, to }) => `${from.toFixed(3)} to ${to.toFixed(3)} s`).join(', ');
    const looks =
      found.evidence === 'soft limit'
        ? 'falls below its line with the other channel, as with an amplifier near its limit or a changing throat'
        : 'has a flat top, as with clipping or a true plateau';
    const then =
      uncertain?.channel === channel ? `. If it is limited, its peak was ${uncertain.peak.value}` : '';
    return [
      `${channel}: the trace ${looks} (${when})${then}. It was not reconstructed. If the channel was at its limit, specify { ranges: { ${channel}: … } }.`,
    ];
  });
}

/** Possible soft limits, treated as certain. */
function softOnly(clipping: ClippedChannels): ClippedChannels {
  const { pressure, thrust } = clipping;
  const soft = (found: Clipping | undefined): boolean => found?.evidence === 'soft limit' && !found.certain;
  return {
    ...(pressure && soft(pressure) && { pressure: { ...pressure, certain: true } }),
    ...(thrust && soft(thrust) && { thrust: { ...thrust, certain: true } }),
  };
}

function recovered(
  record: Firing,
  clipping: ClippedChannels,
  facts: ReductionFacts,
): AnyRecovery | { readonly why: string } | undefined {
  const { pressure, thrust } = clipping;
  const known = {
    throatGrowth: 'little' as const,
    expansionRatio: facts.expansionRatio,
    ...(facts.idealCharacteristicVelocity !== undefined && {
      characteristicVelocity: facts.idealCharacteristicVelocity,
      massBalanceUncertainty: 0.05,
    }),
    prediction: facts.prediction,
  };
  try {
    if (pressure?.certain) return recoverPressure(record, { ...known, clipping: pressure });
    if (thrust?.certain) return recoverThrust(record, { ...known, clipping: thrust });
  } catch (error) {
    if (error instanceof MeopError && error.code === 'no-recovery')
      return {
        why: `${error.path}: the channel is clipped, and there are not enough data to reconstruct it. ${error.remedy}.`,
      };
    throw error;
  }
  return undefined;
}
