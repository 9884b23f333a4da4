import { insulations } from './insulations.ts'
import { metals } from './metals.ts'
import type { InsulationName, MetalName, SleeveMaterialName, SolderName } from './names.ts'
import { sleeveMaterials } from './sleeveMaterials.ts'
import { solders } from './solders.ts'

/**
 * Whether a text from outside names a metal of the table; then its type is MetalName.
 *
 * @equation row of metals
 * @symbol known - result - 1 - true where the table holds the name
 * @throws nothing
 * @example
 * isMetalName('tinned-copper') // true
 * @example
 * isMetalName('copper') // false
 * @source the names of the table metals
 */
export const isMetalName = (name: string): name is MetalName => Object.hasOwn(metals, name)

/**
 * Whether a text from outside names a solder of the table; then its type is SolderName.
 *
 * @equation row of solders
 * @symbol known - result - 1 - true where the table holds the name
 * @throws nothing
 * @example
 * isSolderName('SAC305') // true
 * @source the names of the table solders
 */
export const isSolderName = (name: string): name is SolderName => Object.hasOwn(solders, name)

/**
 * Whether a text from outside names an insulation of the table; then its type is InsulationName.
 *
 * @equation row of insulations
 * @symbol known - result - 1 - true where the table holds the name
 * @throws nothing
 * @example
 * isInsulationName('PVC') // true
 * @source the names of the table insulations
 */
export const isInsulationName = (name: string): name is InsulationName => Object.hasOwn(insulations, name)

/**
 * Whether a text from outside names a sleeve material of the table; then its type is SleeveMaterialName.
 *
 * @equation row of sleeveMaterials
 * @symbol known - result - 1 - true where the table holds the name
 * @throws nothing
 * @example
 * isSleeveMaterialName('polyolefin') // true
 * @source the names of the table sleeveMaterials
 */
export const isSleeveMaterialName = (name: string): name is SleeveMaterialName => Object.hasOwn(sleeveMaterials, name)
