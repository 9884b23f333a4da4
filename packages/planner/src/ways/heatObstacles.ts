import { type Insulation, insulation, knownNominal, type MethodName, type Provenance, type Solder, sleeveMaterial, solder } from '@strandwise/core'
import { type JobFacts, type PlanValue, type PlanVerdict, planValue } from '../facts/inner.ts'
import type { heatingWords } from './heatingWords.ts'
import { jointShape, solderFill } from './jointShape.ts'

/** Why the heating of a soldered joint cannot be computed: a value is unknown or impossible. */
interface HeatObstacle {
  readonly code: keyof typeof heatingWords
  readonly verdict: PlanVerdict
  readonly values: Readonly<Record<string, PlanValue>>
  readonly names: Readonly<Record<string, string>>
  readonly sources: readonly Provenance[]
}

/** Insulation properties needed, in words. */
const ofInsulation: Readonly<Partial<Record<keyof Insulation, string>>> = {
  specificHeatJPerKgK: 'specific heat',
  densityKgPerM3: 'density',
  conductivityWPerMK: 'conductivity',
  shortExposureC: 'limit for seconds',
}
const ofSolder: Readonly<Partial<Record<keyof Solder, string>>> = { specificHeatJPerKgK: 'specific heat', latentHeatJPerKg: 'latent heat' }

function unknownOf(material: Insulation | Solder, wanted: Readonly<Record<string, string>>): readonly HeatObstacle[] {
  const values: Readonly<Record<string, unknown>> = { ...material }
  const missing = Object.keys(wanted).flatMap((property) => (values[property] === null ? [wanted[property] as string] : []))
  if (missing.length === 0) return []
  return [{ code: 'property-unknown', verdict: 'cannot tell', values: {}, names: { material: material.name, missing: missing.join(' and its ') }, sources: [] }]
}

/** Air hot enough to melt the solder without a tool. */
function airMelts(facts: JobFacts, method: MethodName): readonly HeatObstacle[] {
  const { alloy } = solderFill(method, facts)
  const { nominal, provenance } = solder(alloy).solidusC
  if (facts.ambientC < nominal) return []
  const values = { solidus: planValue('solidus', nominal, '°C', provenance), air: planValue('air', facts.ambientC, '°C') }
  return [{ code: 'air-melts', verdict: 'unsound', values, names: { alloy }, sources: [provenance] }]
}

/** A solder sleeve that does not fit over the joint, or shrinks before heating. */
function tubeFails(facts: JobFacts): readonly HeatObstacle[] {
  const tube = facts.job.solderSleeve?.tube
  if (tube === undefined) return []
  const found: HeatObstacle[] = []
  const { widthMm } = jointShape('solder-sleeve', facts)
  if (tube.suppliedInsideMm <= widthMm) {
    const values = { inside: planValue('inside as supplied', tube.suppliedInsideMm, 'mm'), width: planValue('across both wires', widthMm, 'mm') }
    found.push({ code: 'tube-too-narrow', verdict: 'unsound', values, names: {}, sources: [] })
  }
  const material = sleeveMaterial(tube.material)
  const recoveryC = knownNominal(material, 'fullRecoveryC', material.fullRecoveryC)
  if (recoveryC <= facts.ambientC) {
    const values = { recovery: planValue('shrinks at', recoveryC, '°C'), air: planValue('air', facts.ambientC, '°C') }
    found.push({ code: 'tube-shrinks-early', verdict: 'unsound', values, names: {}, sources: [] })
  }
  return found
}

/** Everything that prevents computing the heating of a soldered method; empty if nothing does. */
export function heatObstacles(facts: JobFacts, method: MethodName): readonly HeatObstacle[] {
  const insulations = [...new Set([facts.insulationName, facts.beyond?.insulationName ?? facts.insulationName])]
  return [
    ...insulations.flatMap((name) => unknownOf(insulation(name), ofInsulation)),
    ...unknownOf(solder(solderFill(method, facts).alloy), ofSolder),
    ...airMelts(facts, method),
    ...(method === 'solder-sleeve' ? tubeFails(facts) : []),
  ]
}
