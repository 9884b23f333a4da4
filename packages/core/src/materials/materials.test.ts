import { describe, expect, test } from 'vitest'
import type { InsulationName, MaterialValue, MetalName, SleeveMaterialName, SolderName } from './index.ts'
import { insulation, insulations, knownNominal, metal, metals, sleeveMaterial, sleeveMaterials, solder, solders } from './index.ts'

const statuses = ['published', 'common practice', 'from memory', 'derived']
type Owner = { readonly name: string }
const groups: readonly (readonly [string, Readonly<Record<string, Owner>>])[] = [
  ['metals', metals],
  ['solders', solders],
  ['insulations', insulations],
  ['sleeve materials', sleeveMaterials],
]
const properties = ({ name: _name, ...rest }: Owner) => Object.entries(rest as Readonly<Record<string, MaterialValue | null>>)

describe.each(groups)('%s', (_group, table) => {
  test.each(Object.entries(table))('%s: its key is its name, every value low <= nominal <= high, provenance complete', (key, owner) => {
    expect(owner.name).toBe(key)
    for (const [property, value] of properties(owner)) {
      if (value === null) continue
      const where = `${key}.${property}`
      expect([value.low, value.nominal, value.high].every(Number.isFinite), where).toBe(true)
      expect(value.low, where).toBeLessThanOrEqual(value.nominal)
      expect(value.nominal, where).toBeLessThanOrEqual(value.high)
      expect(statuses, where).toContain(value.provenance.status)
      expect(value.provenance.source.length, where).toBeGreaterThan(7)
      expect(value.provenance.source, `${where}: a title, not an address`).not.toMatch(/https?:|www\.|\w\.(?:com|org|net|edu|gov)\b/)
      if (!/C$|Change$/.test(property)) expect(value.low, where).toBeGreaterThan(0)
    }
  })

  test('every entry has the same properties', () => {
    const [first, ...others] = Object.values(table).map((owner) => Object.keys(owner).sort())
    for (const other of others) expect(other).toEqual(first)
  })
})

describe('what physics says of the values', () => {
  test('Wiedemann and Franz: conductivity times resistivity over 293 K is the Lorenz number, 2.44e-8, within 20 % for metals', () => {
    for (const { name, conductivityWPerMK, resistivity20OhmM } of Object.values(metals)) {
      const lorenz = (conductivityWPerMK.nominal * resistivity20OhmM.nominal) / 293.15
      expect(lorenz / 2.44e-8, name).toBeGreaterThan(0.8)
      expect(lorenz / 2.44e-8, name).toBeLessThan(1.2)
    }
  })

  test('the coefficient of copper at any conductivity is that of the standard metal times its conductivity', () => {
    const standard = metals['annealed-copper']
    const hard = metals['hard-drawn-copper']
    const share = standard.resistivity20OhmM.nominal / hard.resistivity20OhmM.nominal
    expect(hard.temperatureCoefficient20PerK.nominal).toBeCloseTo(share * standard.temperatureCoefficient20PerK.nominal, 4)
  })

  test('copper-clad aluminium is its copper and its aluminium side by side, 10 to 15 % copper by area', () => {
    const copper = metals['annealed-copper']
    const aluminium = metals['aluminium-1350']
    const clad = metals['copper-clad-aluminium']
    for (const [share, resistivity, density] of [
      [0.1, clad.resistivity20OhmM.high, clad.densityKgPerM3.low],
      [0.15, clad.resistivity20OhmM.low, clad.densityKgPerM3.high],
    ] as const) {
      expect((1 / (share / copper.resistivity20OhmM.nominal + (1 - share) / aluminium.resistivity20OhmM.nominal)) * 1e8).toBeCloseTo(resistivity * 1e8, 3)
      expect(share * copper.densityKgPerM3.nominal + (1 - share) * aluminium.densityKgPerM3.nominal).toBeCloseTo(density, 0)
    }
    expect(clad.resistivity20OhmM.nominal / copper.resistivity20OhmM.nominal).toBeCloseTo(1.54, 2)
  })

  test('a solder melts from solidus to liquidus, below every conductor metal but tin', () => {
    for (const { solidusC, liquidusC } of Object.values(solders)) {
      expect(solidusC.nominal).toBeLessThanOrEqual(liquidusC.nominal)
      for (const { name, meltingC } of Object.values(metals)) if (name !== 'tin') expect(liquidusC.nominal).toBeLessThan(meltingC.nominal)
    }
  })

  test('no short-exposure limit is below the continuous temperature', () => {
    for (const { continuousC, shortExposureC } of Object.values(insulations)) expect(shortExposureC.low).toBeGreaterThan(continuousC.low)
  })

  test('a sleeve shrinks: its ratio is above 1, it starts before it is done', () => {
    for (const { recoveryRatio, recoveryStartC, fullRecoveryC } of Object.values<ReturnType<typeof sleeveMaterial>>(sleeveMaterials)) {
      if (recoveryRatio !== null) expect(recoveryRatio.low).toBeGreaterThan(1)
      if (recoveryStartC !== null && fullRecoveryC !== null) expect(recoveryStartC.nominal).toBeLessThanOrEqual(fullRecoveryC.nominal)
    }
  })
})

describe('nominals that the golden cases use', () => {
  test.each([
    ['PVC', 0.17, 1350, 1050],
    ['XLPE', 0.286, 930, 2200],
  ] as const)('%s: %d W/(m K), %d kg/m3, %d J/(kg K)', (name, conductivity, density, specificHeat) => {
    const { conductivityWPerMK, densityKgPerM3, specificHeatJPerKgK } = insulation(name)
    expect([conductivityWPerMK?.nominal, densityKgPerM3?.nominal, specificHeatJPerKgK?.nominal]).toEqual([conductivity, density, specificHeat])
  })
})

describe('look-ups', () => {
  test('each name gives its own entry', () => {
    for (const name of Object.keys(metals) as MetalName[]) expect(metal(name)).toBe(metals[name])
    expect(solder('SAC305')).toBe(solders.SAC305)
    expect(insulation('FEP')).toBe(insulations.FEP)
    expect(sleeveMaterial('PVDF')).toBe(sleeveMaterials.PVDF)
  })

  test.each(['gold', '', 'toString', '__proto__', 'constructor', 'Annealed-Copper'])('%j is refused with the known names', (name) => {
    const refused = (parameter: string, table: object) =>
      expect.objectContaining({ name: 'UnknownEntryError', code: 'unknown-entry', parameter, value: name, known: Object.keys(table) })
    expect(() => metal(name as MetalName)).toThrow(refused('material', metals))
    expect(() => solder(name as SolderName)).toThrow(refused('alloy', solders))
    expect(() => insulation(name as InsulationName)).toThrow(refused('insulation', insulations))
    expect(() => sleeveMaterial(name as SleeveMaterialName)).toThrow(refused('material', sleeveMaterials))
  })

  test('a property that is not known is refused by its name and its owner, never guessed', () => {
    const tpe = insulation('TPE')
    expect(tpe.specificHeatJPerKgK).toBeNull()
    expect(() => knownNominal(tpe, 'specificHeatJPerKgK', tpe.specificHeatJPerKgK)).toThrow(
      expect.objectContaining({ name: 'UnknownEntryError', parameter: 'specificHeatJPerKgK', value: 'TPE' }),
    )
    expect(knownNominal(tpe, 'densityKgPerM3', tpe.densityKgPerM3)).toBe(1175)
  })
})
