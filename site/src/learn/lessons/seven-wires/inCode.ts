import { bundleCurrentA, groupingFactor, packBundle } from '@strandwise/core'

const wireMm = 2.33
const wire = { areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30 } as const
const limitC = 70

const packed = (count: number) => packBundle(Array.from({ length: count }, () => wireMm))
const each = (loadedWires: number, bundle = packed(loadedWires)): number =>
  bundleCurrentA({ ...wire, limitC, loadedWires, bundleOutsideMm: bundle.diameterMm }) ?? 0

const aloneA = each(1)
const ofSeven = packed(7)
const sevenA = each(7, ofSeven)
const left = sevenA / aloneA
const together = (7 * sevenA) / aloneA

const bundleMm = ofSeven.diameterMm
const ofCurve = groupingFactor({ loadedConductors: 7, table: 'as50881' })
const threeOfSevenA = each(3, ofSeven)

export { aloneA, bundleMm, each, left, limitC, ofCurve, ofSeven, packed, sevenA, threeOfSevenA, together, wire, wireMm }
