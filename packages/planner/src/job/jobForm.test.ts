import { describe, expect, it } from 'vitest'
import { bilgePumpFeed } from '../demo/bilgePumpFeed.ts'
import { jobForm } from './jobForm.ts'
import { repairJobJsonSchema } from './jsonSchema.ts'

interface Node {
  readonly type?: string
  readonly title?: string
  readonly description?: string
  readonly properties?: Readonly<Record<string, Node>>
  readonly required?: readonly string[]
  readonly items?: Node
  readonly anyOf?: readonly Node[]
  readonly oneOf?: readonly Node[]
  readonly const?: unknown
}

/** Every described leaf of the JSON Schema that zod wrote: an independent walk over the same schema. */
function described(node: Node, path: string): readonly string[] {
  // The text spelling of a field is the same question.
  if (node.description === 'As a text with its unit.' || node.properties?.low?.anyOf !== undefined) return []
  if (node.title !== undefined) return [path]
  const options = node.properties === undefined ? (node.anyOf ?? node.oneOf) : undefined
  if (options !== undefined) return options.flatMap((option) => described(option, path))
  if (node.items !== undefined) return described(node.items, node.items.title === undefined ? `${path}.#` : path)
  return Object.entries(node.properties ?? {}).flatMap(([key, inside]) => described(inside, path === '' ? key : `${path}.${key}`))
}

const full = (at: string, path: string, list: boolean) => [at, list ? '#' : '', path].filter((part) => part !== '').join('.')
const fields = jobForm.flatMap((group) => group.fields.map((field) => ({ ...field, full: full(group.at, field.path, group.most !== undefined) })))

describe('the form of a job', () => {
  it('asks for every field that the schema describes, once, and for no other', () => {
    // The discriminator of tools is a literal without description in the schema, but the form must ask for it.
    const wanted = new Set([...described(repairJobJsonSchema as Node, ''), 'tools.#.kind'])
    const asked = fields.map((field) => field.full)
    expect(wanted.size).toBeGreaterThan(60)
    expect([...asked].sort()).toEqual([...wanted].sort())
  })

  it('tells what is needed as the schema does', () => {
    const needed = jobForm.filter((group) => group.at !== '' && group.needed).map((group) => group.at)
    expect([...needed].sort()).toEqual((repairJobJsonSchema.required as string[]).filter((name) => name !== 'version').sort())
    expect(fields.find((field) => field.full === 'wire.insulation')?.needed).toBe(true)
    expect(fields.find((field) => field.full === 'wire.material')?.needed).toBe(false)
    expect(fields.find((field) => field.full === 'sleeves.#.material')?.needed).toBe(true)
  })

  it('carries unit, range and whether the low end is inside it', () => {
    expect(fields.find((field) => field.full === 'circuit.supplyV')).toMatchObject({ kind: 'voltageV', unit: 'V', low: 0.001, high: 1000 })
    expect(fields.find((field) => field.full === 'terminal.acceptsMm2')).toMatchObject({ low: 0, aboveLow: true })
    const distance = fields.find((field) => field.full === 'damage.fromTerminationMm')
    expect(distance).toMatchObject({ shape: 'quantity', unit: 'mm', low: 0 })
    expect(distance).not.toHaveProperty('aboveLow')
    expect(fields.find((field) => field.full === 'wire.strandCount')).toMatchObject({ shape: 'number', whole: true })
    expect(fields.find((field) => field.full === 'title')).toMatchObject({ shape: 'text', longest: 120 })
  })

  it('carries words to choose from, intervals, and the spelling with a unit', () => {
    expect(fields.find((field) => field.full === 'surroundings.location')?.values).toEqual(['dry', 'damp', 'splash', 'submerged'])
    expect(fields.find((field) => field.full === 'solders')).toMatchObject({ shape: 'choices' })
    expect(fields.find((field) => field.full === 'terminal.sealInsideMm')).toMatchObject({ shape: 'interval', kind: 'lengthMm', written: 'sealInside' })
    expect(fields.find((field) => field.full === 'solderSleeve.tube.recoveredWallMm')).toMatchObject({ shape: 'quantity', written: 'recoveredWall' })
    expect(fields.find((field) => field.full === 'load.inrushS')).toMatchObject({ written: 'inrushTime' })
  })

  it('marks what only an iron or only hot air has', () => {
    const tools = jobForm.find((group) => group.id === 'tools')
    expect(tools?.kinds).toEqual(['iron', 'hot-air'])
    expect(tools?.fields[0]).toMatchObject({ path: 'kind', shape: 'choice', needed: true, values: ['iron', 'hot-air'] })
    expect(tools?.fields.find((field) => field.path === 'name')).not.toHaveProperty('onlyOf')
    expect(tools?.fields.find((field) => field.path === 'setC')).toMatchObject({ onlyOf: 'iron' })
    expect(tools?.fields.find((field) => field.path === 'airC')).toMatchObject({ onlyOf: 'hot-air', needed: true })
  })

  it('has a place for every group of the demo job', () => {
    for (const name of Object.keys(bilgePumpFeed).filter((key) => key !== 'version')) {
      expect(
        jobForm.some((group) => group.at === name || group.fields.some((field) => group.at === '' && field.path === name)),
        name,
      ).toBe(true)
    }
  })
})
