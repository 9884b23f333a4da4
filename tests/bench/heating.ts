import { type HeatJointInput, heatJoint } from '@strandwise/core'
import { measureOnce } from './measure.ts'
import type { Figure } from './report.ts'

const wires = [
  { areaMm2: 0.326, diameterMm: 0.76, insulationOutsideMm: 1.56 },
  { areaMm2: 0.75, diameterMm: 1.1, insulationOutsideMm: 2.3 },
  { areaMm2: 1.5, diameterMm: 1.6, insulationOutsideMm: 2.9 },
  { areaMm2: 4, diameterMm: 2.6, insulationOutsideMm: 4.2 },
] as const
const tools = [
  { kind: 'iron', setC: 370, maximumW: 60, tipResistanceKPerW: 1.5, contactResistanceKPerW: 3 },
  { kind: 'iron', setC: 350, maximumW: 25, tipResistanceKPerW: 4, contactResistanceKPerW: 10, tipHeatCapacityJPerK: 1 },
  { kind: 'hot-air', airC: 350, airSpeedMPerS: 10, sweptMm: 10, sweptFilmWPerM2K: 150 },
] as const
const alloys = ['Sn63Pb37', 'SAC305'] as const

/** Invented joints: four wires, three tools, two alloys. */
function cases(): readonly HeatJointInput[] {
  return wires.flatMap((wire) =>
    tools.flatMap((tool) =>
      alloys.map((alloy): HeatJointInput => {
        const side = { ...wire, stubMm: 5, insulation: 'PVC' } as const
        return {
          ambientC: 23,
          tool,
          joint: { lapMm: 8, diameterMm: 2 * wire.diameterMm, solderMm3: 3 * wire.areaMm2 },
          conductors: [side, side],
          alloy,
          toolOffS: 8,
        }
      }),
    ),
  )
}

/** Heating curves of invented joints: median over joints of the median time. */
export function heating(): readonly Figure[] {
  const times = cases().map((input) => measureOnce(() => heatJoint(input), 9))
  const medians = times.map(({ medianMs }) => medianMs).sort((a, b) => a - b)
  const residual = Math.max(...cases().map((input) => heatJoint(input).energyResidual))
  return [
    { what: 'heating curve, median', value: medians[Math.floor(medians.length / 2)] as number, unit: 'ms', atMost: 0.5 },
    { what: 'heating curve, slowest joint', value: medians.at(-1) as number, unit: 'ms' },
    { what: 'energy residual, largest', value: residual, unit: 'of the heat in' },
  ]
}
