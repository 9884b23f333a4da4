import { DomainError, requireFiniteResult, requirePositive, requireWhole } from '../errors/index.ts'
import type { Balance } from './balance.ts'
import { resolveWire } from './resolveWire.ts'
import { type WireHeat, wireDefaults } from './wire.ts'

/**
 * Equal wires in a bundle that carry the same current at the same time; other wires in it carry nothing.
 * bundleOutsideMm is the outside of the whole bundle; absent, the loaded wires lie together by themselves.
 */
export type WireBundle = WireHeat & {
  readonly loadedWires: number
  readonly bundleOutsideMm?: number
  readonly bundleConductivityWPerMK?: number
}

/** The three cases: the bundle as given, the loaded wires packed by themselves, one wire alone. */
export type BundleCaseName = 'bundle' | 'packed' | 'alone'

/** One of the three cases of a bundle. */
interface BundleCase {
  readonly name: BundleCaseName
  readonly balance: Balance
}

/** Fill factor: wire area over the circle round packed wires. */
const packedFill = 0.8
/** Larger than any bundle; keeps the arithmetic finite. */
const largestOutsideM = 1e30

/** Diameter of a circle with the perimeter of the hull of n equal packed wires, in wire diameters; null if the hull is nearly round. */
function hullRatio(n: number): number | null {
  if (n === 1) return 1
  return n <= 4 ? (n + Math.PI) / Math.PI : null
}

/** A cylinder of outsideM diameter, with the loaded wires as a round heat source of coreM diameter at its centre. */
function cylinder(wire: Balance, n: number, outsideM: number, coreM: number, conductivityWPerMK: number): Balance {
  return {
    ...wire,
    outsideM,
    insideMKPerW: (0.25 + 0.5 * Math.log(outsideM / coreM)) / (Math.PI * conductivityWPerMK),
    filmMKPerW: wire.filmMKPerW === null ? null : (wire.filmMKPerW * wire.outsideM) / outsideM,
    resistance20OhmPerM: n * wire.resistance20OhmPerM,
  }
}

/** The three cases of a bundle. The hottest is the answer, so unloaded wires never help. */
export function bundleCases(i: WireBundle): readonly [BundleCase, BundleCase, BundleCase] {
  const wire = resolveWire(i)
  const n = requireWhole('loadedWires', i.loadedWires, 1)
  const k = requirePositive('bundleConductivityWPerMK', i.bundleConductivityWPerMK ?? wireDefaults.bundleConductivityWPerMK)
  const packedM = n === 1 ? wire.outsideM : wire.outsideM * Math.sqrt(n / packedFill)
  requireFiniteResult('loadedWires', n, packedM > largestOutsideM ? Infinity : packedM)
  let outsideM = wire.outsideM * (hullRatio(n) ?? packedM / wire.outsideM)
  if (i.bundleOutsideMm !== undefined) {
    outsideM = requirePositive('bundleOutsideMm', i.bundleOutsideMm) / 1000
    const least = wire.outsideM * Math.sqrt(n)
    if (outsideM < least * (1 - 1e-12)) {
      const allowed = `at least ${(least * 1000).toPrecision(4)}, the area of ${n} wires`
      throw new DomainError('bundleOutsideMm', i.bundleOutsideMm, allowed, undefined, 'contradiction')
    }
    requireFiniteResult('bundleOutsideMm', i.bundleOutsideMm, outsideM > largestOutsideM ? Infinity : outsideM)
  }
  const coreM = Math.min(packedM, outsideM)
  return [
    { name: 'bundle', balance: cylinder(wire, n, outsideM, coreM, k) },
    { name: 'packed', balance: cylinder(wire, n, coreM, coreM, k) },
    { name: 'alone', balance: wire },
  ]
}
