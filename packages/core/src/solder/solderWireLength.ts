import { DomainError, requireFiniteResult, requirePositive } from '../errors/index.ts'
import { frozen } from '../errors/inner.ts'

/** Defaults of solderWireLengthMm: solid wire. */
export const solderWireDefaults = /* @__PURE__ */ frozen({
  fluxVolumeFraction: 0,
  provenance: { status: 'derived', source: 'solid solder wire; wire with a core of flux has its share by volume printed or asked for' },
} as const)

/**
 * Gives the length of solder wire to feed for a volume of solder.
 *
 * Add what drips or stays on the tip.
 *
 * @equation l = 4 V/(pi d^2 (1 - f))
 * @symbol V - volumeMm3 - mm3 - solder that the joint takes
 * @symbol d - wireDiameterMm - mm - diameter of the solder wire
 * @symbol f - fluxVolumeFraction else solderWireDefaults.fluxVolumeFraction - 1 - share of flux in the wire, by volume
 * @symbol l - result - mm - length to feed
 * @domain volumeMm3: above 0
 * @domain wireDiameterMm: above 0
 * @domain optional fluxVolumeFraction: from 0 below 1
 * @throws DomainError outside the domain
 * @example
 * solderWireLengthMm({ volumeMm3: 5, wireDiameterMm: 1, fluxVolumeFraction: 0.1 }) // 7.0736
 * @source derived: plane geometry
 */
export function solderWireLengthMm(i: { readonly volumeMm3: number; readonly wireDiameterMm: number; readonly fluxVolumeFraction?: number }): number {
  const V = requirePositive('volumeMm3', i.volumeMm3)
  const d = requirePositive('wireDiameterMm', i.wireDiameterMm)
  const f = i.fluxVolumeFraction ?? solderWireDefaults.fluxVolumeFraction
  if (!(typeof f === 'number' && f >= 0 && f < 1)) {
    const code = typeof f !== 'number' || Number.isNaN(f) ? 'not-a-number' : Number.isFinite(f) ? 'out-of-range' : 'not-finite'
    throw new DomainError('fluxVolumeFraction', f, 'from 0 to below 1', undefined, code)
  }
  return requireFiniteResult('wireDiameterMm', d, (4 * V) / (Math.PI * d * d * (1 - f)))
}
