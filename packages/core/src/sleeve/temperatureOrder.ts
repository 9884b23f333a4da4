import { UnknownEntryError } from '../errors/index.ts'
import { entryAt } from '../errors/inner.ts'
import { insulations, type SleeveMaterialName, type SolderName, sleeveMaterial, solder } from '../materials/index.ts'

/**
 * Whether shrinking a sleeve over a finished joint remelts its solder, and whether it damages the insulation beneath.
 *
 * Compares the hot end of the sleeve's full recovery with the cool end of solder or insulation. null is "cannot tell": no alloy given, or insulation unknown.
 *
 * @equation remelts: T_rec > T_sol; spoils: T_rec > T_ins
 * @symbol T_rec - sleeve - C - high end of the sleeve's full recovery
 * @symbol T_sol - alloy - C - solidus of the solder, low end
 * @symbol T_ins - insulation - C - low end of the insulation's short exposure
 * @throws UnknownEntryError for a sleeve material or an alloy that is not known, or a sleeve whose full recovery is not
 * @example
 * temperatureOrder({ sleeve: 'PTFE', alloy: 'Sn63Pb37', insulation: 'PVC' }) // { remelts: true, spoilsInsulation: true }
 * @source the materials tables; common practice: shrink well below the solidus
 */
export function temperatureOrder(i: { readonly sleeve: SleeveMaterialName; readonly alloy?: SolderName; readonly insulation: string }): {
  readonly remelts: boolean | null
  readonly spoilsInsulation: boolean | null
} {
  const recovery = entryAt('sleeve', () => sleeveMaterial(i.sleeve)).fullRecoveryC
  if (recovery === null) throw new UnknownEntryError('sleeve.fullRecoveryC', i.sleeve, [])
  const exposure = Object.entries(insulations).find(([name]) => name === i.insulation)?.[1].shortExposureC ?? null
  return {
    remelts: i.alloy === undefined ? null : recovery.high > solder(i.alloy).solidusC.low,
    spoilsInsulation: exposure === null ? null : recovery.high > exposure.low,
  }
}
