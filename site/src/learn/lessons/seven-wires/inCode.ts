import { bundleCurrentA, groupingFactor, packBundle } from '@strandwise/core'

const wireMm = 2.33
const wire = { areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30 } as const
const limitC = 70

const packed = (count: number) => packBundle(Array.from({ length: count }, () => wireMm))
const each = (loadedWires: number, bundled = loadedWires): number =>
  bundleCurrentA({ ...wire, limitC, loadedWires, bundleOutsideMm: packed(bundled).diameterMm }) ?? 0

const aloneA = each(1)
const sevenA = each(7)
const left = sevenA / aloneA
const together = (7 * sevenA) / aloneA

const bundleMm = packed(7).diameterMm
const ofCurve = groupingFactor({ loadedConductors: 7, table: 'as50881' })
const threeOfSevenA = each(3, 7)

export { aloneA, bundleMm, each, left, limitC, ofCurve, packed, sevenA, threeOfSevenA, together, wire, wireMm }
