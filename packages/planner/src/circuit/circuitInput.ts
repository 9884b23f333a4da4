import {
  bundleDiameterMm,
  bundleTemperatureC,
  conductorTemperatureBandC,
  NoSteadyStateError,
  resistanceOhmPerM,
  terminalCurrentA,
  type WireHeat,
} from '@strandwise/core'
import type { JobFacts } from '../facts/inner.ts'
import { assumed } from '../job/inner.ts'
import type { CircuitInput, WirePiece } from './chain.ts'

type Heat = Omit<WireHeat, 'ambientC'>

/** Temperature used where there is no steady state: no insulation survives it. */
const ceilingC = 250

function piece(wire: Heat, bundle: { readonly loadedWires: number; readonly bundleOutsideMm: number } | null): WirePiece {
  const { areaMm2, material = 'annealed-copper' } = wire
  const at = (temperatureC: number) => resistanceOhmPerM({ areaMm2, material, temperatureC })
  const coldC = 20
  const coldOhm = at(coldC)
  const perK = (at(coldC + 100) - coldOhm) / 100
  const settled = (currentA: number, airC: number): number => {
    try {
      const heat = { ...wire, ambientC: airC, currentA }
      const hotC = bundle === null ? conductorTemperatureBandC(heat).high : bundleTemperatureC({ ...heat, ...bundle, correlation: 'churchill-chu' }).centreC
      return Math.min(Math.max(ceilingC, airC), hotC)
    } catch (error) {
      if (error instanceof NoSteadyStateError) return Math.max(ceilingC, airC)
      throw error
    }
  }
  // Cache: the same few currents recur.
  const known = new Map<string, number>()
  return {
    ohmPerM: (temperatureC) => coldOhm + perK * (temperatureC - coldC),
    steadyC: (currentA, airC) => {
      const key = `${currentA}|${airC}`
      const found = known.get(key) ?? settled(currentA, airC)
      known.set(key, found)
      return found
    },
  }
}

/** The wire between joint and plug, if it differs. */
function wireBeyond({ wire, beyond }: JobFacts): Heat | null {
  if (beyond === null) return null
  const { areaMm2, material, conductorDiameterMm, insulationThicknessMm, insulationConductivityWPerMK } = beyond
  return { ...wire, areaMm2, material, conductorDiameterMm, insulationThicknessMm, insulationConductivityWPerMK }
}

/** What the terminal carries: its rating, or less where the hottest air leaves less. */
function terminalLimitA({ job, hottestC }: JobFacts): number | null {
  const { ratedCurrentA, ratedAmbientC = assumed.terminal.ratedAmbientC, limitC = assumed.terminal.limitC } = job.terminal ?? {}
  if (ratedCurrentA === undefined) return null
  return hottestC >= limitC ? 0 : Math.min(ratedCurrentA, terminalCurrentA({ ratedCurrentA, ratedAmbientC, limitC, ambientC: hottestC }))
}

/** The chain's input from the job's facts. */
export function circuitInput(facts: JobFacts): CircuitInput {
  const { circuit, damage, load, wire } = facts.job
  const bundle =
    facts.loadedInBundle === 1
      ? null
      : {
          loadedWires: facts.loadedInBundle,
          bundleOutsideMm: wire.bundleOutsideMm ?? bundleDiameterMm(Array.from({ length: facts.loadedInBundle }, () => facts.outsideMm)),
        }
  const own = piece(facts.wire, bundle)
  const other = wireBeyond(facts)
  return {
    where: damage.where ?? 'feed',
    supplyV: facts.supplyV,
    allowedDropV: facts.allowedDropV,
    currentA: facts.currentA,
    ambientC: facts.ambientC,
    outLengthM: facts.outLengthM,
    returnLengthM: facts.returnLengthM,
    fromTerminationM: damage.fromTerminationMm / 1000,
    fuseA: circuit.fuseA ?? null,
    fuseDistanceM: circuit.fuseDistanceM ?? null,
    sourceOhm: circuit.sourceResistanceOhm ?? null,
    wire: own,
    beyond: other === null ? own : piece(other, null),
    load: {
      by: load.powerW !== undefined ? 'power' : load.resistanceOhm !== undefined ? 'resistance' : 'current',
      kind: circuit.kind,
      stallA: load.stallA ?? null,
    },
    terminalA: terminalLimitA(facts),
  }
}
