import { requireFiniteResult, requirePositive } from '../errors/index.ts'

/**
 * Shear-lag coefficient of a lap: its inverse is the length over which solder transfers the pull from one conductor to the other.
 *
 * Elastic: the solder does not yield or creep.
 *
 * @equation m = sqrt(G w/s (1/(E1 A1) + 1/(E2 A2)))
 * @symbol G - shearModulusMPa - MPa - shear modulus of the solder
 * @symbol w - bondWidthMm - mm - width of the bond across the lap
 * @symbol s - layerMm - mm - thickness of the solder between the conductors
 * @symbol E1 - conductors.0.modulusMPa - MPa - Young's modulus of the first conductor
 * @symbol A1 - conductors.0.areaMm2 - mm2 - its area
 * @symbol E2 - conductors.1.modulusMPa - MPa - Young's modulus of the second conductor
 * @symbol A2 - conductors.1.areaMm2 - mm2 - its area
 * @symbol m - result - 1/mm - shear-lag coefficient
 * @domain shearModulusMPa: above 0
 * @domain bondWidthMm: above 0
 * @domain layerMm: above 0
 * @domain conductors.0.modulusMPa: above 0
 * @domain conductors.0.areaMm2: above 0
 * @domain conductors.1.modulusMPa: above 0
 * @domain conductors.1.areaMm2: above 0
 * @throws DomainError outside the domain
 * @example
 * shearLagPerMm({ shearModulusMPa: 10000, bondWidthMm: 1, layerMm: 0.1, conductors: [{ modulusMPa: 110000, areaMm2: 1 }, { modulusMPa: 110000, areaMm2: 1 }] }) // 1.3484
 * @source Volkersen 1938 (from memory)
 */
export function shearLagPerMm(i: {
  readonly shearModulusMPa: number
  readonly bondWidthMm: number
  readonly layerMm: number
  readonly conductors: readonly [{ readonly modulusMPa: number; readonly areaMm2: number }, { readonly modulusMPa: number; readonly areaMm2: number }]
}): number {
  const G = requirePositive('shearModulusMPa', i.shearModulusMPa)
  const w = requirePositive('bondWidthMm', i.bondWidthMm)
  const s = requirePositive('layerMm', i.layerMm)
  const give = [0, 1].map((k) => {
    const E = requirePositive(`conductors.${k}.modulusMPa`, i.conductors?.[k]?.modulusMPa as number)
    return 1 / E / requirePositive(`conductors.${k}.areaMm2`, i.conductors?.[k]?.areaMm2 as number)
  }) as [number, number]
  return requireFiniteResult('shearModulusMPa', G, Math.sqrt(((G * w) / s) * (give[0] + give[1])))
}
