import type { WireBundle } from './bundleBalance.ts'
import { bundleStates, hottest } from './bundleStates.ts'

/**
 * Gives the temperature in the middle and at the surface of a bundle of equal wires that carry the same current at the same time.
 *
 * The loaded wires are taken to lie together in the middle. The answer is the hottest of three: the bundle as given, the loaded
 * wires packed by themselves, and one wire by itself; so unloaded wires in a bundle never help. Centre and surface belong to the hottest case. Sun is the same W/m in each case. Errs hot if the loaded wires lie apart.
 *
 * @equation q = n I^2 R20 (1 + alpha (Tc - 20)) = convection + radiation - sun at the surface; Tc = Ts + q/(4 pi kb) + q ln(D/Dc)/(2 pi kb)
 * @symbol I - currentA - A - current in each loaded wire
 * @symbol n - loadedWires - 1 - wires that carry it
 * @symbol D - bundleOutsideMm - mm - outside diameter of the bundle; absent, the hull of the loaded wires over pi
 * @symbol Dc - core - mm - outside of the loaded wires, sqrt(n/0.8) diameters of one, at most D
 * @symbol kb - bundleConductivityWPerMK - W/(m K) - conductivity across the bundle, walls and air included
 * @symbol A - areaMm2 - mm2 - area of the conductor
 * @symbol d - conductorDiameterMm - mm - diameter of the conductor, a solid round of the area if absent
 * @symbol K - layFactor - 1 - length of a strand over length of the wire, in R20
 * @symbol rho20 - resistivity20OhmM - ohm m - resistivity at 20 C, in R20 = rho20 K/A
 * @symbol alpha - temperatureCoefficient20PerK - 1/K - temperature coefficient at 20 C
 * @symbol w - insulationThicknessMm - mm - wall of the insulation
 * @symbol k - insulationConductivityWPerMK - W/(m K) - conductivity of the wall
 * @symbol eps - emissivity - 1 - emissivity of the surface
 * @symbol Ta - ambientC - C - temperature of the air and the surroundings
 * @symbol v - airSpeedMPerS - m/s - speed of the air across the wire
 * @symbol p - pressurePa - Pa - absolute pressure of the air
 * @symbol sun - solarAbsorbedWPerM - W/m - sunshine that the surface absorbs
 * @symbol h - filmWPerM2K - W/(m2 K) - film coefficient in place of convection and radiation
 * @symbol Tc - result - C - middle of the bundle, with its surface
 * @domain currentA: at least 0
 * @domain loadedWires: whole at least 1
 * @domain optional bundleOutsideMm: above 0
 * @domain optional bundleConductivityWPerMK: above 0
 * @domain areaMm2: above 0
 * @domain optional conductorDiameterMm: above 0
 * @domain optional layFactor: at least 1
 * @domain optional resistivity20OhmM: above 0
 * @domain optional temperatureCoefficient20PerK: at least 0
 * @domain insulationThicknessMm: at least 0
 * @domain insulationConductivityWPerMK: above 0
 * @domain optional emissivity: from 0 to 1
 * @domain ambientC: from -173.15 to 1626.85
 * @domain optional airSpeedMPerS: at least 0
 * @domain optional pressurePa: at least 1000
 * @domain optional solarAbsorbedWPerM: at least 0
 * @domain optional filmWPerM2K: above 0
 * @throws DomainError outside the domain, and for a bundle too thin to hold its wires
 * @throws UnknownEntryError for a metal that the table does not hold
 * @throws NoSteadyStateError where nothing balances (runaway), or the answer passes the melting point; the current is that of each wire
 * @example
 * bundleTemperatureC({ areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30, currentA: 8, loadedWires: 7, bundleOutsideMm: 7 }) // { centreC: 59.474, surfaceC: 55.924 }
 * @source derived: round heat source in the middle of a cylinder, Fourier; surface as for one wire
 */
export function bundleTemperatureC(i: WireBundle & { readonly currentA: number }): { readonly centreC: number; readonly surfaceC: number } {
  const { centreC, surfaceC } = hottest(bundleStates(i))
  return { centreC, surfaceC }
}
