import { bundleCurrentA, bundleTemperatureC, conductorTemperatureBandC, steadyCurrentBandA, type WireHeat } from '@strandwise/core/ampacity'
import { resistanceOhm } from '@strandwise/core/conductor'
import { NoSteadyStateError } from '@strandwise/core/errors'
import type { Interval, MetalName } from '@strandwise/core/materials'
import type { WireSizeFacts } from './facts.ts'

const correlations = ['churchill-chu', 'morgan'] as const

/** Place of the wire, for both directions of the question. */
export interface Place {
  readonly material: MetalName
  readonly limitC: number
  readonly insulationConductivityWPerMK: number
  readonly insulationThicknessMm: number
  readonly ambientC: number
  readonly loadedWires: number
}

export const heatOf = (areaMm2: number, place: Place, facts: WireSizeFacts): WireHeat => ({
  areaMm2,
  material: place.material,
  layFactor: facts.layFactor,
  insulationThicknessMm: place.insulationThicknessMm,
  insulationConductivityWPerMK: place.insulationConductivityWPerMK,
  ambientC: place.ambientC,
})

/** The bundle as one cylinder, up to the largest number of wires with a known packing. */
export function bundleOf(areaMm2: number, place: Place, facts: WireSizeFacts): WireHeat & { readonly loadedWires: number; readonly bundleOutsideMm: number } {
  const heat = heatOf(areaMm2, place, facts)
  const wireOutsideMm = 2 * Math.sqrt(areaMm2 / Math.PI) + 2 * place.insulationThicknessMm
  const ratio = facts.bundleRatios[place.loadedWires - 1] ?? Number.NaN
  return { ...heat, loadedWires: place.loadedWires, bundleOutsideMm: ratio * wireOutsideMm }
}

/** Continuous current of the wire, by both models of still air; null if none is allowed. */
export function currentBand(areaMm2: number, place: Place, facts: WireSizeFacts): Interval | null {
  const { limitC } = place
  if (limitC <= place.ambientC) return null
  if (place.loadedWires === 1) return steadyCurrentBandA({ ...heatOf(areaMm2, place, facts), limitC })
  const bundle = bundleOf(areaMm2, place, facts)
  const found = correlations.map((correlation) => bundleCurrentA({ ...bundle, correlation, limitC }))
  const [one, other] = found
  return one === undefined || other === undefined || one === null || other === null ? null : { low: Math.min(one, other), high: Math.max(one, other) }
}

/** Conductor in the middle of its bundle by both models of still air; null where it settles nowhere. */
export function temperatureBand(areaMm2: number, currentA: number, place: Place, facts: WireSizeFacts): Interval | null {
  try {
    if (place.loadedWires === 1) return conductorTemperatureBandC({ ...heatOf(areaMm2, place, facts), currentA })
    const bundle = bundleOf(areaMm2, place, facts)
    const found = correlations.map((correlation) => bundleTemperatureC({ ...bundle, correlation, currentA }).centreC)
    return { low: Math.min(...found), high: Math.max(...found) }
  } catch (error) {
    if (error instanceof NoSteadyStateError) return null
    throw error
  }
}

export interface SizeFound {
  readonly size: string
  readonly areaMm2: number
  readonly temperature: Interval
  readonly dropV: number
}

export interface Run {
  readonly currentA: number
  /** Out and back. */
  readonly lengthM: number
  readonly allowedDropV: number
}

/** A size at this current: how hot at worst, and what it drops at that temperature; null where it settles nowhere. */
export function sizeAt(size: string, areaMm2: number, run: Run, place: Place, facts: WireSizeFacts): SizeFound | null {
  const temperature = temperatureBand(areaMm2, run.currentA, place, facts)
  if (temperature === null) return null
  // Past this the metals' own resistance is not known; such a size is far too hot anyway.
  const temperatureC = Math.min(temperature.high, 300)
  const ohm = resistanceOhm({ areaMm2, lengthM: run.lengthM, material: place.material, temperatureC, layFactor: facts.layFactor })
  return { size, areaMm2, temperature, dropV: run.currentA * ohm }
}

/** The thinnest size of a series that stays cool enough, that loses little enough, and that does both; null where none does. */
export function sizesFor(run: Run, place: Place, facts: WireSizeFacts, series: string): Readonly<Record<'heat' | 'drop' | 'both', SizeFound | null>> {
  const found = (facts.series[series] ?? []).flatMap(({ size, areaMm2 }) => sizeAt(size, areaMm2, run, place, facts) ?? [])
  const cool = (item: SizeFound): boolean => item.temperature.high <= place.limitC
  const little = (item: SizeFound): boolean => item.dropV <= run.allowedDropV
  const first = (fits: (item: SizeFound) => boolean): SizeFound | null => found.find(fits) ?? null
  return { heat: first(cool), drop: first(little), both: first((item) => cool(item) && little(item)) }
}
