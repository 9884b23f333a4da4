import { expect, test } from 'vitest'
import { entries } from './entries.ts'
import { paramLines, withParamLines } from './paramLines.ts'

const all = entries().filter(({ kind }) => kind === 'function')
const of = (name: string) => {
  const found = all.find((entry) => entry.name === name)
  if (found === undefined) throw new Error(`no function is called ${name}`)
  return found
}

test('the inputs of a function with their units and domains, from its tags', () => {
  expect(paramLines(of('wireSagMm'))).toContain('@param i.spanMm - distance between the ties, both at one height, in mm; above 0')
  expect(paramLines(of('awgToAreaMm2'))[0]).toMatch(/^@param gauge - gauge number/)
  expect(paramLines(of('resistanceOhm'))).toContain('@param i.layFactor - length of a strand over length of the wire; at least 1, or left out')
})

test('every function of core with numeric inputs gets its lines', () => {
  const without = all.filter((entry) => entry.package === 'core' && entry.doc.domains.length > 0 && paramLines(entry).length === 0)
  expect(without.map(({ name }) => name)).toEqual([])
})

test('they are put before the first tag, once', () => {
  const declared = '/**\n * How far.\n *\n * @equation s = m\n */\nexport declare function wireSagMm(i: object): number;\n'
  const once = withParamLines(declared, [of('wireSagMm')])
  expect(once).toMatch(/How far\.\n \*\n \* @param i\./)
  expect(withParamLines(once, [of('wireSagMm')])).toBe(once)
})
