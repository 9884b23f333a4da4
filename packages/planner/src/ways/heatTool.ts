import {
  type HeatJointInput,
  type HeatSide,
  type HeatVerdict,
  heatJoint,
  heatSolderSleeve,
  type heatVerdict,
  knownNominal,
  type MethodName,
  recoveredWallMm,
  type SolderSleeveTube,
  sleeveMaterial,
  type Tool,
} from '@strandwise/core'
import type { JobFacts } from '../facts/inner.ts'
import type { JobTool } from '../job/index.ts'
import { type Assume, assumed } from '../job/inner.ts'
import { jointShape, solderFill } from './jointShape.ts'

/** The tool as input of the model; missing values are assumed and listed. */
function modelTool(tool: JobTool, index: number, facts: JobFacts, overlapMm: number, assume: Assume): Tool {
  const path = `tools.${index}`
  if (tool.kind === 'iron') {
    const width = assume(`${path}.tipWidthMm`, tool.tipWidthMm, assumed.tipWidthMm.value, assumed.tipWidthMm.why)
    const contact = assume(`${path}.contact`, tool.contact, 'wetted', 'the tip is tinned and a bead of solder bridges tip and joint')
    const usual = contact === 'dry' ? assumed.iron.dryContactKPerW : assumed.iron.wettedContactKPerW
    // Contact conductance is proportional to the tip's area; the usual figure is for a 2 mm tip.
    const byWidth = usual * (assumed.tipWidthMm.value / width) ** 2
    return {
      kind: 'iron',
      setC: assume(`${path}.setC`, tool.setC, assumed.iron.setC, 'a usual setting for wire'),
      maximumW: tool.powerW,
      tipResistanceKPerW: assume(`${path}.tipResistanceKPerW`, tool.tipResistanceKPerW, assumed.iron.tipResistanceKPerW, assumed.iron.why),
      contactResistanceKPerW: assume(`${path}.contactResistanceKPerW`, tool.contactResistanceKPerW, byWidth, assumed.iron.why),
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
    ...(sweptMm > 0 ? { sweptDiameterMm: facts.outsideMm } : {}),
  }
}

/** A joint under one tool, as the model takes it. */
type HeatVerdictInputs = Parameters<typeof heatVerdict>[0]

/** Result of one tool on one joint, with its inputs. */
export interface ToolHeat {
  readonly tool: JobTool
  readonly index: number
  readonly inputs: HeatVerdictInputs
  readonly heat: HeatVerdict
}

type Heated = Omit<HeatJointInput, 'toolOffS' | 'observeS'>

/** The joint under the tool; a clip given with the tool is set on both wires. */
function heatInput(method: MethodName, facts: JobFacts, job: JobTool, index: number, tool: Tool): Heated {
  const shape = jointShape(method, facts, index)
  const fill = solderFill(method, facts)
  const clipMm = job.kind === 'iron' ? job.clipMm : undefined
  const clip = clipMm === undefined ? {} : { clip: { distanceMm: clipMm, resistanceKPerW: assumed.clip.resistanceKPerW, temperatureC: facts.ambientC } }
  const { beyond } = facts
  const side: HeatSide = {
    areaMm2: facts.areaMm2,
    material: facts.material,
    diameterMm: facts.conductorDiameterMm,
    stubMm: shape.stubMm,
    insulation: facts.insulationName,
    insulationOutsideMm: facts.outsideMm,
    ...clip,
  }
  const other: HeatSide =
    beyond === null
      ? side
      : {
          areaMm2: beyond.areaMm2,
          material: beyond.material,
          diameterMm: beyond.conductorDiameterMm,
          stubMm: shape.stubMm,
          insulation: beyond.insulationName,
          insulationOutsideMm: beyond.outsideMm,
          ...clip,
        }
  return {
    ambientC: facts.ambientC,
    tool,
    joint: {
      lapMm: shape.overlapMm,
      diameterMm: method === 'soldered-lineman-splice' ? shape.widthMm : facts.conductorDiameterMm + (beyond?.conductorDiameterMm ?? facts.conductorDiameterMm),
      solderMm3: fill.volumeMm3,
    },
    conductors: [side, other],
    alloy: fill.alloy,
  }
}

/** Input for a joint under a tool, with the tube of a solder sleeve over it. */
export function toolInputs(facts: JobFacts, method: MethodName, tool: JobTool, index: number, assume: Assume): HeatVerdictInputs {
  const model = modelTool(tool, index, facts, jointShape(method, facts, index).overlapMm, assume)
  const base = heatInput(method, facts, tool, index, model)
  const width = tool.kind === 'iron' && tool.tipWidthMm !== undefined ? { tipWidthMm: tool.tipWidthMm } : {}
  const { solderSleeve } = facts.job
  if (method !== 'solder-sleeve' || solderSleeve === undefined) return { ...base, ...width }
  return { ...base, tube: tubeOf(solderSleeve.tube, base.joint.lapMm) }
}

/** Heats a joint with its tool lifted at the given time, without regard to wetting. */
export function heatedFor(inputs: HeatVerdictInputs, times: Pick<HeatJointInput, 'toolOffS' | 'observeS' | 'sampleTimesS'>) {
  const { tipWidthMm: _width, tube, ...joint } = inputs
  return tube === undefined ? heatJoint({ ...joint, ...times }) : heatSolderSleeve({ ...joint, ...times, tube })
}

/** The tube as supplied; constant volume gives its wall at the supplied inside. */
function tubeOf(tube: NonNullable<JobFacts['job']['solderSleeve']>['tube'], lapMm: number): SolderSleeveTube {
  const material = sleeveMaterial(tube.material)
  return {
    insideMm: tube.suppliedInsideMm,
    recoveredInsideMm: tube.recoveredInsideMm,
    wallMm: recoveredWallMm({ recoveredWallMm: tube.recoveredWallMm, recoveredInsideMm: tube.recoveredInsideMm, ontoMm: tube.suppliedInsideMm }),
    lengthMm: Math.max(3 * lapMm, 20),
    recoveryC: knownNominal(material, 'fullRecoveryC', material.fullRecoveryC),
  }
}
