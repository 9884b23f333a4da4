import { expect, test } from 'vitest'
import { insulations, isInsulationName, isMetalName, isSleeveMaterialName, isSolderName, metals, sleeveMaterials, solders } from './index.ts'

const guards = [
  [isMetalName, metals],
  [isSolderName, solders],
  [isInsulationName, insulations],
  [isSleeveMaterialName, sleeveMaterials],
] as const

test.each(guards)('%o takes the names of its table and no other', (guard, table) => {
  for (const name of Object.keys(table)) expect(guard(name)).toBe(true)
  for (const name of ['', 'toString', '__proto__', 'constructor', 'copper', `${Object.keys(table)[0]} `]) expect(guard(name)).toBe(false)
})
