import { type Insulation, insulation, knownNominal, type MethodName, type Provenance, type Solder, sleeveMaterial, solder } from '@strandwise/core'
import type { JobFacts } from '../facts/jobFacts.ts'
import { solderedJoint } from '../facts/soldered.ts'
import { degrees, mm } from './print.ts'
import type { PlanVerdict } from './repairPlan.ts'

/** Why the heating of a soldered joint cannot be computed: something is not known, or can't be. */
interface HeatObstacle {
  readonly verdict: PlanVerdict
  /** With what to do. */
  readonly reason: string
  readonly sources: readonly Provenance[]
}

/** What the heating needs to know of each, with its words. */
const ofInsulation: Readonly<Partial<Record<keyof Insulation, string>>> = {
  specificHeatJPerKgK: 'specific heat',
  densityKgPerM3: 'density',
  conductivityWPerMK: 'conductivity',
  shortExposureC: 'limit for seconds',
}
const ofSolder: Readonly<Partial<Record<keyof Solder, string>>> = { specificHeatJPerKgK: 'specific heat', latentHeatJPerKg: 'latent heat' }

function unknownOf(material: Insulation | Solder, wanted: Readonly<Record<string, string>>): readonly HeatObstacle[] {
  const values: Readonly<Record<string, unknown>> = { ...material }
  const missing = Object.keys(wanted).flatMap((property) => (values[property] === null ? [wanted[property]] : []))
  if (missing.length === 0) return []
  return [
    {
      verdict: 'cannot tell',
      reason: `What the heat does to ${material.name} cannot be computed: its ${missing.join(' and its ')} is not known. Crimp instead, or try the same joint with the same tool on a scrap of the same wire, and look at its insulation.`,
      sources: [],
    },
  ]
}

/** Air that melts the solder before any tool does. */
function airMelts(facts: JobFacts, method: MethodName): readonly HeatObstacle[] {
  const { alloy } = solderedJoint(method, facts)
  const { nominal, provenance } = solder(alloy).solidusC
  if (facts.ambientC < nominal) return []
  const reason = `${alloy} begins to melt at ${degrees(nominal)}, and the air there has ${degrees(facts.ambientC)}: no joint of it sets. Take an alloy that melts higher, or crimp.`
  return [{ verdict: 'unsound', reason, sources: [provenance] }]
}

/** A solder sleeve that does not go over the joint, or shrinks before it is heated. */
function tubeFails(facts: JobFacts): readonly HeatObstacle[] {
  const tube = facts.job.solderSleeve?.tube
  if (tube === undefined) return []
  const found: HeatObstacle[] = []
  const { widthMm } = solderedJoint('solder-sleeve', facts)
  if (tube.suppliedInsideMm <= widthMm)
    found.push({
      verdict: 'unsound',
      reason: `The solder sleeve does not slide over the joint: ${mm(tube.suppliedInsideMm)} inside as supplied, against ${mm(widthMm)} across both wires. Take a wider one; how this one would heat is not reckoned.`,
      sources: [],
    })
  const { fullRecoveryC } = sleeveMaterial(tube.material)
  const recoveryC = knownNominal(sleeveMaterial(tube.material), 'fullRecoveryC', fullRecoveryC)
  if (recoveryC <= facts.ambientC)
    found.push({
      verdict: 'unsound',
      reason: `The sleeve of ${tube.material} shrinks at ${degrees(recoveryC)}, and the air there has ${degrees(facts.ambientC)}: it shrinks before it is in place. Work in cooler air.`,
      sources: [],
    })
  return found
}

/** All that keeps the heat of a soldered method from being computed; empty where it can be. */
export function heatObstacles(facts: JobFacts, method: MethodName): readonly HeatObstacle[] {
  return [
    ...unknownOf(insulation(facts.insulationName), ofInsulation),
    ...unknownOf(solder(solderedJoint(method, facts).alloy), ofSolder),
    ...airMelts(facts, method),
    ...(method === 'solder-sleeve' ? tubeFails(facts) : []),
  ]
}
