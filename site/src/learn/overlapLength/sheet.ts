import { resistanceOhmPerM, resistivityOhmM, strandedAreaMm2, strandedDiameterMm } from '@strandwise/core/conductor'
import { breakEvenOverlapMm, interfaceConductanceSPerM, lapJointResistanceOhm, transferLengthMm } from '@strandwise/core/joint'
import { knownNominal, type SolderName, solder } from '@strandwise/core/materials'
import { lapOverlapDiameters } from '@strandwise/core/solder'
import type { Sheet, SheetCase } from '../lesson/worksheet.ts'
import { oneOf, streamOf } from '../random.ts'

/** Common flexible constructions, as catalogues list them. */
const wires = [
  { strandCount: 16, strandDiameterMm: 0.2 },
  { strandCount: 24, strandDiameterMm: 0.2 },
  { strandCount: 32, strandDiameterMm: 0.2 },
  { strandCount: 30, strandDiameterMm: 0.25 },
  { strandCount: 50, strandDiameterMm: 0.25 },
] as const
const alloys = ['Sn60Pb40', 'Sn63Pb37', 'SAC305', 'Sn96.5Ag3.5'] as const satisfies readonly SolderName[]
const bondShares = [0.3, 0.4, 0.5, 0.6, 0.8] as const
const layersMm = [0.05, 0.1, 0.15] as const
const overlapDiameters = [1, 2, 3, 4, 5, 8] as const
const currentsA = [1, 2, 3, 4, 5, 6] as const
const copper = 'annealed-copper'
const atC = 20
const cases = 3
const figures = 3
/** Lengths are given to a hundredth of a millimetre, and reckoned with as given. */
const decimals = 2

const shown = (value: number, unit: string): string => `${Number(value.toPrecision(figures))} ${unit}`
const rounded = (value: number): number => Number(value.toFixed(decimals))

function sheetCase(stream: () => number): SheetCase {
  const wire = oneOf(wires, stream)
  const name = oneOf(alloys, stream)
  const layerMm = oneOf(layersMm, stream)
  const bondShare = oneOf(bondShares, stream)
  const diameters = oneOf(overlapDiameters, stream)
  const currentA = oneOf(currentsA, stream)
  const alloy = solder(name)
  const layerOhmM = knownNominal(alloy, 'resistivityOhmM', alloy.resistivityOhmM)
  const areaMm2 = rounded(strandedAreaMm2(wire))
  const diameterMm = rounded(strandedDiameterMm(wire))
  const bondWidthMm = rounded(bondShare * diameterMm)
  const overlapMm = rounded(diameters * diameterMm)
  const ohmPerM = resistanceOhmPerM({ areaMm2, material: copper, temperatureC: atC })
  const interfaceSPerM = interfaceConductanceSPerM({ bondWidthMm, layerMm, layerOhmM })
  const pair = { conductorsOhmPerM: [ohmPerM, ohmPerM], interfaceSPerM } as const
  const lapOhm = lapJointResistanceOhm({ ...pair, overlapMm })
  const plainOhm = (ohmPerM * overlapMm) / 1000
  const inRule = diameters >= lapOverlapDiameters.low && diameters <= lapOverlapDiameters.high
  return {
    given: `Copper wire of ${areaMm2} mm², ${diameterMm} mm over its strands, at ${atC} °C. Solder ${name} with ${shown(layerOhmM * 1e9, 'nΩ m')}, bond ${bondWidthMm} mm wide, layer ${layerMm} mm. Overlap ${overlapMm} mm, current ${currentA} A.`,
    tasks: [
      { ask: 'One metre of wire, mΩ', answer: shown(ohmPerM * 1000, 'mΩ') },
      { ask: 'Conductance of the bond per metre, MS/m', answer: shown(interfaceSPerM / 1e6, 'MS/m') },
      { ask: 'Transfer length, mm', answer: shown(transferLengthMm(pair), 'mm') },
      { ask: 'Overlap that equals plain wire, mm', answer: shown(breakEvenOverlapMm(pair) ?? Number.NaN, 'mm') },
      { ask: 'Resistance of the lap, µΩ', answer: shown(lapOhm * 1e6, 'µΩ') },
      { ask: 'As a share of plain wire of that length, %', answer: shown((100 * lapOhm) / plainOhm, '%') },
      { ask: 'Heat in the lap, mW', answer: shown(lapOhm * currentA ** 2 * 1000, 'mW') },
      {
        ask: `Inside ${lapOverlapDiameters.low} to ${lapOverlapDiameters.high} wire diameters?`,
        answer: inRule ? 'yes' : `no: ${diameters} wire diameter${diameters === 1 ? '' : 's'}`,
      },
    ],
  }
}

/** The worksheet of a seed. */
export function sheet(seed: number): Sheet {
  const stream = streamOf(seed)
  return {
    seed,
    title: 'Soldered overlap',
    intro: `Copper at ${atC} °C has ${(resistivityOhmM(copper, atC) * 1e9).toPrecision(4)} nΩ m. Give three figures. The formulas are those of steps 1 to 5.`,
    cases: Array.from({ length: cases }, () => sheetCase(stream)),
  }
}
