import { bundleDiameterMm, bundleTemperatureC, conductorTemperatureBandC, NoSteadyStateError, resistanceOhmPerM, type WireHeat } from '@strandwise/core'
import type { JobFacts } from '../facts/inner.ts'
import type { CircuitInput, WirePiece } from './chain.ts'

/** Where no temperature balances: no insulation is left on a wire this hot. */
const ceilingC = 250

function piece(
  wire: Omit<WireHeat, 'ambientC'>,
  bundle: {
    readonly loadedWires: number
    readonly bundleOutsideMm: number
  } | null,
): WirePiece {
  const { areaMm2, material = 'annealed-copper' } = wire
  const at = (temperatureC: number) => resistanceOhmPerM({ areaMm2, material, temperatureC })
  const coldC = 20
  const coldOhm = at(coldC)
  const perK = (at(coldC + 100) - coldOhm) / 100
  return {
    ohmPerM: (temperatureC) => coldOhm + perK * (temperatureC - coldC),
    steadyC: (currentA, airC) => {
      try {
        const heat = { ...wire, ambientC: airC, currentA }
        const hotC =
          bundle === null
            ? conductorTemperatureBandC(heat).high
            : bundleTemperatureC({
                ...heat,
                ...bundle,
                correlation: 'churchill-chu',
              }).centreC
        return Math.min(Math.max(ceilingC, airC), hotC)
      } catch (error) {
        if (error instanceof NoSteadyStateError) return Math.max(ceilingC, airC)
        throw error
      }
    },
  }
}

/** The job's facts as the chain takes them. */
export function circuitInput(facts: JobFacts): CircuitInput {
  const { circuit, damage, wire } = facts.job
  const bundle =
    facts.loadedInBundle === 1
      ? null
      : {
          loadedWires: facts.loadedInBundle,
          bundleOutsideMm: wire.bundleOutsideMm ?? bundleDiameterMm(Array.from({ length: facts.loadedInBundle }, () => facts.outsideMm)),
        }
  const own = piece(facts.wire, bundle)
  return {
    where: 'feed',
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
    beyond: own,
  }
}
