import { DomainError, requireFiniteResult, requirePositive, requireWhole } from '../errors/index.ts'
import type { Balance } from './balance.ts'
import { resolveWire } from './resolveWire.ts'
import { type WireHeat, wireDefaults } from './wire.ts'

/** A bundle of equal wires that all carry the same current; the surface terms act on its outside. */
export type WireBundle = WireHeat & { readonly loadedWires: number; readonly bundleOutsideMm: number; readonly bundleConductivityWPerMK?: number }

/** Beyond any bundle; keeps the arithmetic finite. */
const largestOutsideM = 1e30

/** The bundle as one cylinder whose heat is spread evenly over its section. */
export function bundleBalance(i: WireBundle): Balance {
  const wire = resolveWire(i)
  const n = requireWhole('loadedWires', i.loadedWires, 1)
  const outsideM = requirePositive('bundleOutsideMm', i.bundleOutsideMm) / 1000
  const k = requirePositive('bundleConductivityWPerMK', i.bundleConductivityWPerMK ?? wireDefaults.bundleConductivityWPerMK)
  const least = wire.outsideM * Math.sqrt(n)
  if (outsideM < least * (1 - 1e-12)) {
    throw new DomainError('bundleOutsideMm', i.bundleOutsideMm, `at least ${(least * 1000).toPrecision(4)}, the area of ${n} wires`, undefined, 'contradiction')
  }
  requireFiniteResult('bundleOutsideMm', i.bundleOutsideMm, outsideM > largestOutsideM ? Infinity : outsideM)
  return {
    ...wire,
    outsideM,
    insideMKPerW: 1 / (4 * Math.PI * k),
    filmMKPerW: wire.filmMKPerW === null ? null : (wire.filmMKPerW * wire.outsideM) / outsideM,
    resistance20OhmPerM: n * wire.resistance20OhmPerM,
  }
}
