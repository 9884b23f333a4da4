import { breakEvenOverlapMm, interfaceConductanceSPerM, lapJointResistanceOhm } from '@strandwise/core/joint'
import type { WhatIfView } from '../lesson/lesson.ts'

/** What the slider leaves alone. */
export interface LapGiven {
  readonly ohmPerM: number
  readonly diameterMm: number
  readonly layerMm: number
  readonly layerOhmM: number
  readonly overlapMm: number
  readonly ruleDiameters: readonly [number, number]
}

const shortestMm = 0.4
const longestMm = 10
const points = 49
const micro = 1e6
const figures = 3

const micros = (ohm: number): string => `${(ohm * micro).toPrecision(figures)} µΩ`
const mm = (value: number): string => `${value.toPrecision(2)} mm`

/** Resistance against overlap for a bond this wide, a share of the wire's diameter, with the same length of plain wire beside it. */
export function view(bondShare: number, given: LapGiven): WhatIfView {
  const { ohmPerM, diameterMm, layerMm, layerOhmM, overlapMm, ruleDiameters } = given
  const bondWidthMm = bondShare * diameterMm
  const conductorsOhmPerM = [ohmPerM, ohmPerM] as const
  const interfaceSPerM = interfaceConductanceSPerM({ bondWidthMm, layerMm, layerOhmM })
  const x = Array.from({ length: points }, (_, index) => shortestMm * (longestMm / shortestMm) ** (index / (points - 1)))
  const lap = (length: number): number => lapJointResistanceOhm({ overlapMm: length, conductorsOhmPerM, interfaceSPerM })
  const plain = (length: number): number => (ohmPerM * length) / 1000
  const enoughMm = breakEvenOverlapMm({ conductorsOhmPerM, interfaceSPerM })
  const enough = enoughMm === null ? 'no overlap equals plain wire' : `from ${mm(enoughMm)} of overlap on the lap is no worse than the wire it replaces`
  return {
    spec: {
      title: `Resistance against overlap, bond ${mm(bondWidthMm)} wide`,
      xLabel: 'overlap, mm',
      yLabel: 'µΩ',
      series: [
        { name: 'the lap', kind: 'main', x, y: x.map((length) => lap(length) * micro) },
        { name: 'plain wire of the same length', kind: 'other', x, y: x.map((length) => plain(length) * micro) },
      ],
      limits: [],
      marks: ruleDiameters.map((diameters) => ({ name: `${diameters} wire diameters, ${mm(diameters * diameterMm)}`, x: diameters * diameterMm })),
    },
    sentence: `Bond ${mm(bondWidthMm)} wide: ${enough}. At ${mm(overlapMm)} the lap has ${micros(lap(overlapMm))}, plain wire of that length ${micros(plain(overlapMm))}.`,
  }
}
