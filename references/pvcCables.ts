import { bundleCurrentA, type WireHeat } from '../packages/core/src/ampacity/index.ts'

/** PVC wires and cables as the tables of building wiring mean them; walls and sheaths of common makes, from memory. */

const limitC = 70
const ambientC = 30
/** Strands fill 0.78 of the conductor's circle and run 2 % longer than it. */
const fill = 0.78

export function pvcWire(areaMm2: number, insulationThicknessMm: number): WireHeat & { readonly conductorDiameterMm: number; readonly limitC: number } {
  return {
    areaMm2,
    conductorDiameterMm: Math.sqrt((4 * areaMm2) / Math.PI / fill),
    layFactor: 1.02,
    insulationThicknessMm,
    insulationConductivityWPerMK: 0.17,
    ambientC,
    limitC,
  }
}

/** Wall of common building wire in mm. */
export const wallMm = (areaMm2: number): number => (areaMm2 <= 1 ? 0.6 : areaMm2 <= 1.5 ? 0.7 : areaMm2 <= 6 ? 0.8 : areaMm2 <= 16 ? 1 : 1.2)
const sheathMm = (areaMm2: number): number => (areaMm2 <= 6 ? 1 : 1.4)
/** Cable's core circle over a core's diameter: the packings of two and three, and 0.78 of the circle filled above. */
const corePacking = (cores: number): number => (cores === 2 ? 2 : cores === 3 ? 2.155 : Math.sqrt(cores / fill))

/** Current of each loaded core of a round sheathed cable in free air: middle of the band of two correlations. */
export function cableCurrentA(areaMm2: number, loadedWires: number): number {
  const wire = pvcWire(areaMm2, wallMm(areaMm2))
  const coreMm = wire.conductorDiameterMm + 2 * wire.insulationThicknessMm
  const bundleOutsideMm = corePacking(loadedWires) * coreMm + 2 * sheathMm(areaMm2)
  const [one, other] = (['churchill-chu', 'morgan'] as const).map((correlation) => bundleCurrentA({ ...wire, correlation, loadedWires, bundleOutsideMm }))
  return ((one ?? Number.NaN) + (other ?? Number.NaN)) / 2
}

/** Current of each of n loaded wires laid together over that of the same number laid apart, in lots of one: how a bunch derates its circuits. */
export function bunchFactor(circuits: number, wiresOfCircuit: number): number {
  const wire = pvcWire(2.5, wallMm(2.5))
  const currentA = (loadedWires: number) => bundleCurrentA({ ...wire, loadedWires }) ?? Number.NaN
  return currentA(circuits * wiresOfCircuit) / currentA(wiresOfCircuit)
}
