import { describe, expect, test } from 'vitest'
import { insulations, type SleeveMaterialName, type SolderName, sleeveMaterials, solders } from '../materials/index.ts'
import { temperatureOrder } from './temperatureOrder.ts'

describe('temperatureOrder', () => {
  test('PTFE tube remelts every soft solder; polyolefin over tin-lead is fine', () => {
    for (const alloy of Object.keys(solders) as SolderName[]) expect(temperatureOrder({ sleeve: 'PTFE', alloy, insulation: 'PVC' }).remelts).toBe(true)
    expect(temperatureOrder({ sleeve: 'polyolefin', alloy: 'Sn63Pb37', insulation: 'PVC' })).toEqual({ remelts: false, spoilsInsulation: false })
  })

  test('PVDF, up to 175 C, remelts the bismuth alloy of 138 C; indium of 118 C does not even bear polyolefin', () => {
    expect(temperatureOrder({ sleeve: 'PVDF', alloy: 'Sn42Bi58', insulation: 'PTFE' }).remelts).toBe(true)
    expect(temperatureOrder({ sleeve: 'polyolefin', alloy: 'In52Sn48', insulation: 'PTFE' }).remelts).toBe(true)
  })

  test('PVDF tube spoils PVC wire and spares PTFE wire', () => {
    expect(temperatureOrder({ sleeve: 'PVDF', insulation: 'PVC' }).spoilsInsulation).toBe(true)
    expect(temperatureOrder({ sleeve: 'PVDF', insulation: 'PTFE' }).spoilsInsulation).toBe(false)
  })

  test('without an alloy, or on an insulation that is not known, it cannot tell', () => {
    expect(temperatureOrder({ sleeve: 'polyolefin', insulation: 'rubber' })).toEqual({ remelts: null, spoilsInsulation: null })
    expect(temperatureOrder({ sleeve: 'polyolefin', insulation: 'toString' }).spoilsInsulation).toBe(null)
  })

  test('every pair of the tables: the hot end of the one against the cool end of the other', () => {
    for (const [sleeve, { fullRecoveryC }] of Object.entries(sleeveMaterials)) {
      for (const [alloy, { solidusC }] of Object.entries(solders)) {
        for (const [insulation, { shortExposureC }] of Object.entries(insulations)) {
          const got = temperatureOrder({ sleeve: sleeve as SleeveMaterialName, alloy: alloy as SolderName, insulation })
          expect(got.remelts).toBe(fullRecoveryC.high > solidusC.low)
          expect(got.spoilsInsulation).toBe(fullRecoveryC.high > shortExposureC.low)
        }
      }
    }
  })

  test('an unknown sleeve or alloy is refused; the error lists the known ones', () => {
    expect(() => temperatureOrder({ sleeve: 'rubber' as 'PVC', insulation: 'PVC' })).toThrow(expect.objectContaining({ name: 'UnknownEntryError' }))
    expect(() => temperatureOrder({ sleeve: 'PVC', alloy: 'gold' as 'SAC305', insulation: 'PVC' })).toThrow(
      expect.objectContaining({ name: 'UnknownEntryError' }),
    )
  })
})
