import { airProperties, churchillBernsteinNusselt, type HeatJointInput, type HeatSide, type MethodName, type Tool } from '@strandwise/core'
import type { Assume } from '../job/assume.ts'
import { assumed } from '../job/assumed.ts'
import type { JobTool } from '../job/repairJob.ts'
import type { JobFacts } from './jobFacts.ts'
import { solderedJoint } from './soldered.ts'

/** Longest that a tool is held on: an iron on thin or thick wire, a stream of hot air. Common practice. */
export function longestHoldS(tool: JobTool, facts: JobFacts): number {
  if (tool.kind === 'hot-air') return 60
  return facts.areaMm2 >= 4 ? 10 : 5
}

/** Film coefficient of a stream across a cylinder at the mean of stream and joint temperature. */
function streamFilmWPerM2K(airC: number, speedMPerS: number, diameterMm: number): number {
  const air = airProperties((airC + 100) / 2)
  const reynolds = (air.densityKgPerM3 * speedMPerS * diameterMm * 1e-3) / air.viscosityPaS
  return (churchillBernsteinNusselt({ reynolds, prandtl: air.prandtl }) * air.conductivityWPerMK) / (diameterMm * 1e-3)
}

/** The tool as the model takes it: what the person did not say is assumed, and listed. */
export function modelTool(tool: JobTool, index: number, facts: JobFacts, overlapMm: number, assume: Assume): Tool {
  const path = `tools.${index}`
  if (tool.kind === 'iron') {
    const contact = assume(`${path}.contact`, tool.contact, 'wetted', 'the tip is tinned and a bead of solder bridges tip and joint')
    const usual = contact === 'dry' ? assumed.iron.dryContactKPerW : assumed.iron.wettedContactKPerW
    return {
      kind: 'iron',
      setC: assume(`${path}.setC`, tool.setC, assumed.iron.setC, 'a usual setting for wire'),
      maximumW: tool.powerW,
      tipResistanceKPerW: assume(`${path}.tipResistanceKPerW`, tool.tipResistanceKPerW, assumed.iron.tipResistanceKPerW, assumed.iron.why),
      contactResistanceKPerW: assume(`${path}.contactResistanceKPerW`, tool.contactResistanceKPerW, usual, assumed.iron.why),
    }
  }
  const airSpeedMPerS = assume(`${path}.airSpeedMPerS`, tool.airSpeedMPerS, assumed.airSpeedMPerS.value, assumed.airSpeedMPerS.why)
  const nozzleMm = assume(`${path}.nozzleMm`, tool.nozzleMm, assumed.nozzleMm.value, assumed.nozzleMm.why)
  const sweptMm = Math.max(0, (nozzleMm - overlapMm) / 2)
  return {
    kind: 'hot-air',
    airC: tool.airC,
    airSpeedMPerS,
    sweptMm,
    ...(sweptMm > 0 ? { sweptFilmWPerM2K: streamFilmWPerM2K(tool.airC, airSpeedMPerS, facts.outsideMm) } : {}),
  }
}

/** Bare wire between solder and insulation: about one outer diameter. */
export function stubMm(facts: JobFacts): number {
  return facts.outsideMm
}

export function heatInput(method: MethodName, facts: JobFacts, tool: Tool, toolOffS: number): HeatJointInput {
  const joint = solderedJoint(method, facts)
  const side: HeatSide = {
    areaMm2: facts.areaMm2,
    material: facts.material,
    diameterMm: facts.conductorDiameterMm,
    stubMm: stubMm(facts),
    insulation: facts.insulationName,
    insulationOutsideMm: facts.outsideMm,
  }
  return {
    ambientC: facts.ambientC,
    tool,
    joint: { lapMm: joint.overlapMm, diameterMm: joint.widthMm, solderMm3: joint.solderMm3 },
    conductors: [side, side],
    alloy: joint.alloy,
    toolOffS,
    observeS: toolOffS + 30,
  }
}
