import { requireFiniteResult, requirePositive, UnknownEntryError } from '../errors/index.ts'
import { type MetalName, metals } from '../materials/index.ts'
import { resistivityOhmM } from './resistivity.ts'

/** Magnetic constant in H/m: 4 pi 1e-7 to ten digits in the SI of 2019. */
const magneticConstantHPerM = 4e-7 * Math.PI
const mmPerM = 1000
/** Ferromagnetic metals: their permeability is far from 1 and varies with the field, so no single number applies. */
const magnetic: readonly MetalName[] = ['low-carbon-steel', 'nickel']

/**
 * Depth in which an alternating current falls to 1/e: a wire thinner than twice this carries it evenly, and its d.c. resistance holds.
 *
 * @equation delta = sqrt(rho/(pi f mu0))
 * @symbol rho - material - ohm m - resistivity of the metal at the temperature
 * @symbol T - temperatureC - C - temperature of the metal
 * @symbol f - frequencyHz - Hz - frequency
 * @symbol mu0 - material - H/m - magnetic constant; relative permeability 1
 * @symbol delta - result - mm - skin depth
 * @domain temperatureC: from -60 to 300
 * @domain frequencyHz: above 0
 * @throws DomainError outside the domain
 * @throws UnknownEntryError for a metal that the table does not hold, and for steel and nickel, which are magnetic
 * @example
 * skinDepthMm({ material: 'annealed-copper', temperatureC: 20, frequencyHz: 50 }) // 9.3458
 * @source classical eddy-current theory, plane conductor
 */
export function skinDepthMm(i: { readonly material: MetalName; readonly temperatureC: number; readonly frequencyHz: number }): number {
  if (magnetic.includes(i.material))
    throw new UnknownEntryError(
      'material',
      i.material,
      Object.keys(metals).filter((name) => !magnetic.includes(name as MetalName)),
    )
  requirePositive('frequencyHz', i.frequencyHz)
  const depthM = Math.sqrt(resistivityOhmM(i.material, i.temperatureC) / (Math.PI * magneticConstantHPerM * i.frequencyHz))
  return requireFiniteResult('frequencyHz', i.frequencyHz, depthM * mmPerM)
}
