import { type InsulationName, insulation, knownNominal, type MetalName, type MethodContext, metal, type Provenance, type WireHeat } from '@strandwise/core'
import { assumptionList, quietly } from '../job/assume.ts'
import { assumed } from '../job/assumed.ts'
import type { PlanAssumption } from '../job/assumption.ts'
import { loadCurrent } from '../job/loadCurrent.ts'
import { airNowC, hottestAirC, metalOf, metreOhm, strandLay, wayBackM } from '../job/loop.ts'
import type { RepairJob } from '../job/repairJob.ts'
import { wireShape } from '../job/wireShape.ts'
import { wireSize } from '../job/wireSize.ts'

/** Everything the sections compute with: what the job says, and what is assumed where it is silent. */
export interface JobFacts {
  readonly job: RepairJob
  readonly assumptions: readonly PlanAssumption[]
  readonly areaMm2: number
  /** As the person would print it on the job card. */
  readonly sizeText: string
  /** Whole gauge where the size is one. */
  readonly gauge: number | null
  readonly material: MetalName
  readonly conductorDiameterMm: number
  readonly insulationName: InsulationName
  readonly insulationThicknessMm: number
  readonly outsideMm: number
  readonly insulationConductivityWPerMK: number
  /** What the wire stands for ever: the low end of the insulation's family, or its plating or metal where that gives up first. */
  readonly limitC: number
  /** Which of them it is, and the source of the plating's or the metal's: the insulation's stands with its material. */
  readonly limitOf: string
  readonly limitSource: Provenance | null
  readonly layFactor: number
  readonly outLengthM: number
  readonly returnLengthM: number
  readonly supplyV: number
  readonly allowedDropV: number
  /** At the temperature of the hottest air; loops count out and return. */
  readonly ohmPerM: number
  readonly currentA: number
  readonly ambientC: number
  readonly hottestC: number
  readonly coldestC: number
  readonly flexes: boolean
  readonly flammableVapour: boolean
  readonly location: MethodContext['location']
  readonly vibration: MethodContext['vibration']
  readonly slackMm: number
  /** Water comes there in some way. */
  readonly wet: boolean
  readonly loadedInBundle: number
  readonly wire: Omit<WireHeat, 'ambientC'>
}

function limit(material: MetalName, insulationName: InsulationName, insulationC: number): Pick<JobFacts, 'limitC' | 'limitOf' | 'limitSource'> {
  const { value, source } = assumed.tinPlatingLimitC
  const { nominal: meltingC, provenance } = metal(material).meltingC
  if (material === 'tinned-copper' && value < insulationC) return { limitC: value, limitOf: 'its tin plating', limitSource: source }
  return meltingC < insulationC
    ? { limitC: meltingC, limitOf: 'the metal itself', limitSource: provenance }
    : { limitC: insulationC, limitOf: `the lowest grade of ${insulationName}`, limitSource: null }
}

/** Reads a job into facts. Nothing is guessed silently: each value that the job does not give stands in `assumptions`. */
export function jobFacts(job: RepairJob): JobFacts {
  const { list, assume } = assumptionList()
  const { circuit, surroundings = {}, wire } = job
  const material = metalOf(job, assume)
  const size = wireSize(wire)
  if (size.gauge !== null) assume('wire.standard', wire.standard, 'AWG', 'an SAE wire of the same number has 3 to 11 % less metal')
  const { conductorDiameterMm, insulationThicknessMm, outsideMm } = wireShape(wire, size, assume)
  const family = insulation(wire.insulation)
  const hottestC = hottestAirC(job, assume)
  const coldestC = assume(
    'surroundings.coldestC',
    surroundings.coldestC,
    Math.min(airNowC(job, quietly), assumed.coldestBelowNowC.value),
    assumed.coldestBelowNowC.why,
  )
  const location = assume('surroundings.location', surroundings.location, assumed.location.value, assumed.location.why)
  const returnLengthM = wayBackM(job, assume)
  const layFactor = strandLay(assume)
  const insulationConductivityWPerMK = knownNominal(family, 'conductivityWPerMK', family.conductivityWPerMK)
  assume(
    'wire.insulationGrade',
    undefined,
    `${family.continuousC.low} °C`,
    `the lowest grade of ${wire.insulation}: a marked wire may stand up to ${family.continuousC.high} °C`,
  )
  return {
    job,
    assumptions: list,
    areaMm2: size.areaMm2,
    sizeText: size.text,
    gauge: size.gauge,
    material,
    conductorDiameterMm,
    insulationName: wire.insulation,
    insulationThicknessMm,
    outsideMm,
    insulationConductivityWPerMK,
    ...limit(material, wire.insulation, family.continuousC.low),
    layFactor,
    outLengthM: wire.outLengthM,
    returnLengthM,
    supplyV: circuit.supplyV,
    allowedDropV: assume('circuit.allowedDropV', circuit.allowedDropV, assumed.dropShare.value * circuit.supplyV, assumed.dropShare.why),
    ohmPerM: metreOhm(job, size.areaMm2),
    currentA: loadCurrent(job, size.areaMm2),
    ambientC: airNowC(job, assume),
    hottestC,
    coldestC,
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
    location,
    vibration: assume('surroundings.vibration', surroundings.vibration, assumed.vibration.value, assumed.vibration.why),
    slackMm: assume('damage.slackMm', job.damage.slackMm, assumed.slackMm.value, assumed.slackMm.why),
    wet: location !== 'dry',
    loadedInBundle: assume('wire.loadedInBundle', wire.loadedInBundle, 1, 'the lead runs by itself in free air'),
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
