import { type InsulationName, insulation, knownNominal, type MetalName, type MethodContext, metal, type Provenance, type WireHeat } from '@strandwise/core'
import type { PlanAssumption, RepairJob } from '../job/index.ts'
import { airNowC, assumed, assumptionList, hottestAirC, loadCurrent, metalOf, metreOhm, strandLay, wayBackM, wireShape, wireSize } from '../job/inner.ts'
import { type BeyondFacts, beyondFacts } from './beyond.ts'
import { type FuseKind, fuseKindOf } from './fuseKind.ts'
import type { Units } from './print.ts'
import { type TerminalFacts, terminalFacts } from './terminalFacts.ts'

/** Input of all sections: the job's values, and assumptions for those missing. */
export interface JobFacts {
  readonly job: RepairJob
  readonly units: Units
  readonly assumptions: readonly PlanAssumption[]
  readonly areaMm2: number
  /** Size as printed on the job card. */
  readonly sizeText: string
  /** Whole AWG gauge; null for a size that is not a gauge. */
  readonly gauge: number | null
  readonly strandCount: number | null
  readonly material: MetalName
  readonly conductorDiameterMm: number
  readonly insulationName: InsulationName
  readonly insulationThicknessMm: number
  readonly outsideMm: number
  readonly insulationConductivityWPerMK: number
  /** Continuous temperature limit: of the insulation's grade, or of plating or metal if lower. */
  readonly limitC: number
  /** What sets the limit, and the source if plating or metal does; the insulation's is with its material. */
  readonly limitOf: string
  readonly limitSource: Provenance | null
  readonly layFactor: number
  readonly outLengthM: number
  readonly returnLengthM: number
  readonly supplyV: number
  readonly allowedDropV: number
  /** At the hottest air's temperature; loops are out plus return. */
  readonly ohmPerM: number
  readonly currentA: number
  /** On and off times of a cyclic load; null for a continuous one. */
  readonly duty: { readonly onS: number; readonly offS: number } | null
  readonly ambientC: number
  readonly hottestC: number
  readonly coldestC: number
  readonly location: MethodContext['location']
  readonly vibration: MethodContext['vibration']
  readonly flexes: boolean
  readonly flammableVapour: boolean
  /** True if water reaches the joint in any way. */
  readonly wet: boolean
  readonly loadedInBundle: number
  readonly slackMm: number
  /** Given or assumed; null if neither kind nor fuse is given. */
  readonly fuseKind: FuseKind | null
  /** The wire on the other side of the joint, if it differs. */
  readonly beyond: BeyondFacts | null
  readonly terminal: TerminalFacts
  readonly temporary: boolean
  /** True if the damage is in the return. */
  readonly onReturn: boolean
  readonly wire: Omit<WireHeat, 'ambientC'>
}

function limit(
  material: MetalName,
  insulationName: InsulationName,
  insulationC: number,
  graded: boolean,
): Pick<JobFacts, 'limitC' | 'limitOf' | 'limitSource'> {
  const { value, source } = assumed.tinPlatingLimitC
  const { nominal: meltingC, provenance } = metal(material).meltingC
  if (material === 'tinned-copper' && value < insulationC) return { limitC: value, limitOf: 'its tin plating', limitSource: source }
  if (meltingC < insulationC) return { limitC: meltingC, limitOf: 'the metal itself', limitSource: provenance }
  return { limitC: insulationC, limitOf: graded ? `its ${insulationName}` : `the lowest grade of ${insulationName}`, limitSource: null }
}

/** Computes the facts of a job. Each value missing from the job is listed in `assumptions`. */
export function jobFacts(job: RepairJob): JobFacts {
  const { list, assume } = assumptionList()
  const { circuit, damage, load, surroundings = {}, wire } = job
  const material = metalOf(job, assume)
  const size = wireSize(wire)
  if (size.gauge !== null) assume('wire.standard', wire.standard, 'AWG', 'an SAE wire of the same number has 3 to 11 % less metal')
  const { conductorDiameterMm, insulationThicknessMm, outsideMm } = wireShape(wire, size, assume)
  const family = insulation(wire.insulation)
  const ambientC = airNowC(job, assume)
  const hottestC = hottestAirC(job, assume)
  const coldestC = assume('surroundings.coldestC', surroundings.coldestC, Math.min(ambientC, assumed.coldestBelowNowC.value), assumed.coldestBelowNowC.why)
  const location = assume('surroundings.location', surroundings.location, assumed.location.value, assumed.location.why)
  const gradeC = assume(
    'wire.insulationGradeC',
    wire.insulationGradeC,
    family.continuousC.low,
    `the lowest grade of ${wire.insulation}: a marked wire may stand up to ${family.continuousC.high} °C`,
  )
  const layFactor = strandLay(assume)
  const insulationConductivityWPerMK = knownNominal(family, 'conductivityWPerMK', family.conductivityWPerMK)
  const { onS, offS } = load
  return {
    job,
    units: job.units ?? 'metric',
    assumptions: list,
    areaMm2: size.areaMm2,
    sizeText: size.text,
    gauge: size.gauge,
    strandCount: size.strandCount ?? wire.strandCount ?? null,
    material,
    conductorDiameterMm,
    insulationName: wire.insulation,
    insulationThicknessMm,
    outsideMm,
    insulationConductivityWPerMK,
    ...limit(material, wire.insulation, gradeC, wire.insulationGradeC !== undefined),
    layFactor,
    outLengthM: wire.outLengthM,
    returnLengthM: wayBackM(job, assume),
    supplyV: circuit.supplyV,
    allowedDropV: assume('circuit.allowedDropV', circuit.allowedDropV, assumed.dropShare.value * circuit.supplyV, assumed.dropShare.why),
    ohmPerM: metreOhm(job, size.areaMm2),
    currentA: loadCurrent(job, size.areaMm2),
    duty: onS !== undefined && offS !== undefined ? { onS, offS } : null,
    ambientC,
    hottestC,
    coldestC,
    location,
    vibration: assume('surroundings.vibration', surroundings.vibration, assumed.vibration.value, assumed.vibration.why),
    flexes: assume(
      'surroundings.flexes',
      surroundings.flexes,
      false,
      'the lead is fixed on both sides of the joint; a lead that moves in use forbids a splice there',
    ),
    flammableVapour: assume(
      'surroundings.flammableVapour',
      surroundings.flammableVapour,
      false,
      'you smell and keep no fuel, gas or solvent there; if you do, nothing hot is used',
    ),
    wet: location !== 'dry',
    loadedInBundle: assume('wire.loadedInBundle', wire.loadedInBundle, 1, 'the lead runs by itself in free air'),
    slackMm: assume('damage.slackMm', damage.slackMm, assumed.slackMm.value, assumed.slackMm.why),
    fuseKind: fuseKindOf(job, assume),
    beyond: beyondFacts(job, assume),
    terminal: terminalFacts(job, assume, size.areaMm2),
    temporary: job.repair === 'temporary',
    onReturn: damage.where === 'return',
    wire: {
      areaMm2: size.areaMm2,
      material,
      conductorDiameterMm,
      layFactor,
      insulationThicknessMm,
      insulationConductivityWPerMK,
    },
  }
}
