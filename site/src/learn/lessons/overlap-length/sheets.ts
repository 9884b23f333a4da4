import { resistanceOhmPerM, strandedAreaMm2, strandedDiameterMm } from '@strandwise/core/conductor'
import { lapOverlapDiameters } from '@strandwise/core/solder'
import type { Sheets, SheetTask } from '../../lesson/sheets.ts'
import { oneOf } from '../../random.ts'

/** Common flexible constructions, as in catalogues. */
const wires = [
  { strandCount: 16, strandDiameterMm: 0.2 },
  { strandCount: 24, strandDiameterMm: 0.2 },
  { strandCount: 32, strandDiameterMm: 0.2 },
  { strandCount: 30, strandDiameterMm: 0.25 },
  { strandCount: 50, strandDiameterMm: 0.25 },
] as const
const counts = [3, 4, 5, 6] as const
const currentsA = [2, 3, 4, 5, 6] as const
const inchMm = 25.4

export const sheets: Sheets = {
  title: 'Soldered overlap',
  problem(stream, form) {
    const wire = oneOf(wires, stream)
    const diameters = oneOf(counts, stream)
    const currentA = oneOf(currentsA, stream)
    // Computed from the rounded numbers that the sheet prints.
    const areaMm2 = Number(strandedAreaMm2(wire).toFixed(2))
    const diameterMm = Number(strandedDiameterMm(wire).toFixed(2))
    const mOhmPerM = Number((1000 * resistanceOhmPerM({ areaMm2, material: 'annealed-copper', temperatureC: 20 })).toFixed(1))
    const overlapMm = diameters * diameterMm
    const microOhm = mOhmPerM * overlapMm
    const microWatt = microOhm * currentA ** 2
    const across = form === 'C' ? `${(diameterMm / 2 / inchMm).toFixed(4)} inch from its middle to its edge` : `${diameterMm} mm across`
    const least: SheetTask = {
      ask: 'How long is the shortest overlap that the workmanship rule allows?',
      unit: 'mm',
      answer: lapOverlapDiameters.low * diameterMm,
      box: `overlap = ${lapOverlapDiameters.low} × diameter over the strands`,
      usual: [
        { value: (lapOverlapDiameters.low * diameterMm) / 2, says: 'took the radius for the diameter', marks: 1 },
        { value: lapOverlapDiameters.high * diameterMm, says: 'took the longest overlap', marks: 1 },
        { value: lapOverlapDiameters.low * wire.strandDiameterMm, says: 'took the diameter of one strand', marks: 0 },
        ...(form === 'C' ? [{ value: (lapOverlapDiameters.low * diameterMm) / inchMm, says: 'stayed in inches', marks: 1 }] : []),
      ],
    }
    return {
      given: `Copper wire of ${wire.strandCount} strands of ${wire.strandDiameterMm} mm, ${across}. One metre of it has ${mOhmPerM} mΩ at 20 °C. You lap it over ${diameters} diameters and it carries ${currentA} A.`,
      tasks: [
        least,
        {
          ask: `What may your lap of ${diameters} diameters resist at most, to be no worse than the wire?`,
          unit: 'µΩ',
          answer: microOhm,
          box: 'limit in µΩ = mΩ of one metre × overlap in mm',
          usual: [
            { value: microOhm / 2, says: 'took the radius for the diameter', marks: 1 },
            { value: microOhm / 1000, says: 'gave milliohms as microohms', marks: 1 },
            { value: mOhmPerM * diameterMm, says: 'reckoned with one diameter of overlap', marks: 1 },
          ],
        },
        {
          ask: 'How much heat does a lap at that limit make?',
          unit: 'µW',
          answer: microWatt,
          box: 'heat = resistance × current × current',
          usual: [
            { value: microOhm * currentA, says: 'forgot to square the current', marks: 0 },
            { value: microWatt / 2, says: 'took the radius for the diameter', marks: 1 },
          ],
        },
      ],
    }
  },
  trap: 'the width stands in inches and from the middle to the edge: it is a radius',
  why: {
    ask: 'a colleague makes the lap 15 diameters long, so that it holds a hanging lamp. What do you tell them?',
    points: [
      'the current needs two to three diameters and uses no more',
      'solder under a lasting pull creeps and lets go, however long the lap',
      'the wire is tied on both sides, so that the joint feels no pull',
    ],
  },
}
