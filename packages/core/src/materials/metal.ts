import { UnknownEntryError } from '../errors/index.ts'
import { metals } from './metals.ts'
import type { MetalName } from './names.ts'
import type { Metal } from './properties.ts'

/**
 * The properties of a conductor or terminal metal, each with low, nominal, high and provenance.
 *
 * @equation row of metals
 * @symbol metal - result - 1 - resistivity, temperature coefficient, density, specific heat, conductivity, strength, melting point
 * @throws UnknownEntryError for a name that the table does not hold, with the known names
 * @example
 * metal('annealed-copper') // { name: 'annealed-copper', temperatureCoefficient20PerK: { nominal: 0.00393 } }
 * @source each property names its own
 */
export function metal(name: MetalName): Metal {
  // Called by every closed form with a metal in it: a switch is twice as fast as a look-up by key, and free for a constant name.
  switch (name) {
    case 'annealed-copper':
      return metals['annealed-copper']
    case 'hard-drawn-copper':
      return metals['hard-drawn-copper']
    case 'tinned-copper':
      return metals['tinned-copper']
    case 'copper-clad-aluminium':
      return metals['copper-clad-aluminium']
    case 'aluminium-1350':
      return metals['aluminium-1350']
    case 'tin':
      return metals.tin
    case 'brass-cuzn30':
      return metals['brass-cuzn30']
    case 'brass-cuzn37':
      return metals['brass-cuzn37']
    case 'phosphor-bronze-cusn5':
      return metals['phosphor-bronze-cusn5']
    case 'low-carbon-steel':
      return metals['low-carbon-steel']
    case 'nickel':
      return metals.nickel
    case 'silver':
      return metals.silver
    default:
      throw new UnknownEntryError('material', name, Object.keys(metals))
  }
}
