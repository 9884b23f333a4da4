import {
  type InsulationName,
  insulation,
  knownNominal,
  type MetalName,
  type Provenance,
  resistanceOhmPerM,
  strandedDiameterMm,
  type WireHeat,
} from '@strandwise/core'
import type { RepairJob } from '../job/repairJob.ts'
import { wireSize } from '../job/wireSize.ts'
import type { PlanAssumption } from '../plan/repairPlan.ts'
import { assumed, commonInsulationThicknessMm } from './assumed.ts'
import { loadCurrent } from './loadCurrent.ts'

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
  /** What the wire stands for ever: the low end of the insulation's family, or its plating where that gives up first. */
  readonly limitC: number
  /** Which of the two it is, and the source of the plating's: the insulation's stands with its material. */
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
  /** Water comes there in some way. */
  readonly wet: boolean
  readonly loadedInBundle: number
  readonly wire: Omit<WireHeat, 'ambientC'>
}

/** A note of what was assumed: the field as a path, the value, and why. */
export type Assume = <T>(field: string, given: T | undefined, value: T, why: string) => T

function assumptionList(): { readonly list: PlanAssumption[]; readonly assume: Assume } {
  const list: PlanAssumption[] = []
  return {
    list,
    assume: (field, given, value, why) => {
      if (given !== undefined) return given
      list.push({ field, value, why })
      return value
    },
  }
}

function limit(material: MetalName, insulationName: InsulationName, insulationC: number): Pick<JobFacts, 'limitC' | 'limitOf' | 'limitSource'> {
  const { value, source } = assumed.tinPlatingLimitC
  return material === 'tinned-copper' && value < insulationC
    ? { limitC: value, limitOf: 'its tin plating', limitSource: source }
    : { limitC: insulationC, limitOf: `the lowest grade of ${insulationName}`, limitSource: null }
}

/** Reads a job into facts. Nothing is guessed silently: each value that the job does not give stands in `assumptions`. */
export function jobFacts(job: RepairJob): JobFacts {
  const { list, assume } = assumptionList()
  const { circuit, surroundings, wire } = job
  const material = assume('wire.material', wire.material, assumed.material.value, assumed.material.why)
  const size = wireSize(wire)
  if (size.gauge !== null) assume('wire.standard', wire.standard, 'AWG', 'an SAE wire of the same number has 3 to 11 % less metal')
  const solidMm = Math.sqrt((4 * size.areaMm2) / Math.PI)
  const conductorDiameterMm =
    size.strandCount !== undefined && size.strandDiameterMm !== undefined
      ? strandedDiameterMm({ strandCount: size.strandCount, strandDiameterMm: size.strandDiameterMm })
      : solidMm * 1.13
  const insulationThicknessMm =
    wire.insulationThicknessMm ??
    (wire.outsideDiameterMm === undefined
      ? assume('wire.insulationThicknessMm', undefined, commonInsulationThicknessMm(size.areaMm2), 'a common wall for wire of this area')
      : Math.max(0.05, (wire.outsideDiameterMm - conductorDiameterMm) / 2))
  const family = insulation(wire.insulation)
  const hottestC = assume(
    'surroundings.hottestC',
    surroundings.hottestC,
    Math.max(surroundings.ambientC, assumed.hottestAboveNowC.value),
    assumed.hottestAboveNowC.why,
  )
  const coldestC = assume(
    'surroundings.coldestC',
    surroundings.coldestC,
    Math.min(surroundings.ambientC, assumed.coldestBelowNowC.value),
    assumed.coldestBelowNowC.why,
  )
  const returnLengthM = assume('wire.returnLengthM', wire.returnLengthM, wire.outLengthM, 'the return runs beside the feed')
  const layFactor = assume('wire.layFactor', undefined, assumed.layFactor.value, assumed.layFactor.why)
  const ohmPerM = resistanceOhmPerM({ areaMm2: size.areaMm2, material, temperatureC: hottestC, layFactor })
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
    outsideMm: wire.outsideDiameterMm ?? conductorDiameterMm + 2 * insulationThicknessMm,
    insulationConductivityWPerMK,
    ...limit(material, wire.insulation, family.continuousC.low),
    layFactor,
    outLengthM: wire.outLengthM,
    returnLengthM,
    supplyV: circuit.supplyV,
    allowedDropV: assume('circuit.allowedDropV', circuit.allowedDropV, assumed.dropShare.value * circuit.supplyV, assumed.dropShare.why),
    ohmPerM,
    currentA: loadCurrent(job, ohmPerM * (wire.outLengthM + returnLengthM)),
    ambientC: surroundings.ambientC,
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
    wet: surroundings.location !== 'dry',
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
