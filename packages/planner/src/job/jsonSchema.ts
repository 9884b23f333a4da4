import * as z from 'zod/mini'
import { type FieldMeta, jobFields } from './fields.ts'
import { repairJobShape } from './repairJobShape.ts'
import { type TwoSpellings, twoSpellings } from './spellings.ts'

interface Node {
  properties?: Record<string, Node>
  required?: string[]
  items?: Node
  oneOf?: Node[]
  anyOf?: Node[]
  allOf?: Node[]
  not?: Node
  [keyword: string]: unknown
}

/** Pattern for text with a unit: a digit or fraction, and a character that is no digit, sign or separator. */
const withUnit = '^(?=[^]*[0-9¼-¾⅐-⅞])(?=[^]*[^0-9\\s.,+−-])[^]+$'

/** Writes metadata as JSON Schema annotations, the only ones that a strict validator knows. */
function annotated(node: Node, { title, description, allowed, example }: FieldMeta): void {
  for (const key of ['allowed', 'example', 'kind', 'unit', 'low', 'high']) delete node[key]
  node.title = title
  node.description = `${description} Allowed: ${allowed}.`
  node.examples = [JSON.parse(example)]
}

/** An object with all these fields; type and properties are repeated because strict validators require it. */
const having = (...names: string[]): Node => ({ type: 'object', properties: Object.fromEntries(names.map((name) => [name, {}])), required: names })

const textWithUnit = (title: unknown): Node => ({ type: 'string', title, description: 'As a text with its unit.', pattern: withUnit })

/** The text spelling of a field, with its unit; for an interval at each end. */
function asWritten(fixed: Node): Node {
  const { properties, examples, ...rest } = fixed
  if (properties === undefined) return textWithUnit(fixed.title)
  const either = Object.entries(properties).map(([key, end]) => [key, { anyOf: [end, textWithUnit(end.title)] }])
  return { ...rest, properties: Object.fromEntries(either) }
}

/** Adds the text spelling of each field and excludes giving both. */
function withSpellings(node: Node, pairs: readonly TwoSpellings[]): void {
  const { properties = {}, required = [] } = node
  const rules: Node[] = []
  for (const { fixed, written } of pairs) {
    const field = properties[fixed]
    if (field === undefined) continue
    properties[written] = asWritten(field)
    const either = [having(fixed), having(written)]
    rules.push(required.includes(fixed) ? { oneOf: either } : { not: having(fixed, written) })
  }
  node.required = required.filter((name) => !pairs.some((pair) => pair.fixed === name))
  if (rules.length > 0) node.allOf = [...(node.allOf ?? []), ...rules]
}

/** Requires exactly one of these fields, in either spelling. */
function exactlyOne(node: Node, pairs: readonly TwoSpellings[], names: readonly string[]): void {
  const all = names.flatMap((name) => [name, ...pairs.filter((pair) => pair.fixed === name).map((pair) => pair.written)])
  node.oneOf = all.map((name) => having(name))
}

/** Groups with fields of which exactly one is required; parseRepairJob words the same rule. */
const oneOfGroups: Readonly<Record<string, readonly string[]>> = { load: ['currentA', 'powerW', 'resistanceOhm'], wire: ['areaMm2', 'size'] }

function withBothSpellings(job: Node): Node {
  for (const [name, node] of Object.entries({ ...job.properties, tube: job.properties?.solderSleeve?.properties?.tube })) {
    const pairs = twoSpellings[name]
    if (node === undefined || pairs === undefined) continue
    const held = node.items ?? node
    for (const option of held.oneOf ?? held.anyOf ?? [held]) {
      withSpellings(option, pairs)
      if (name === 'readings') for (const key of ['value', 'resolution']) readingText(option, key)
    }
    if (oneOfGroups[name] !== undefined) exactlyOne(node, pairs, oneOfGroups[name])
  }
  return job
}

/** A reading's `value` has one name in both spellings: its unit depends on the kind. */
function readingText(reading: Node, key: string): void {
  const number = reading.properties?.[key]
  if (number !== undefined) reading.properties = { ...reading.properties, [key]: { title: number.title, anyOf: [number, textWithUnit(number.title)] } }
}

/**
 * JSON Schema (draft 2020-12) of a job as the command takes it: each field in its fixed unit or as a text with its unit. It uses standard keywords only; contradictory fields are refused by parseRepairJob alone.
 */
export const repairJobJsonSchema: Readonly<Record<string, unknown>> = withBothSpellings(
  z.toJSONSchema(repairJobShape, {
    io: 'input',
    metadata: jobFields,
    override: ({ zodSchema, jsonSchema }) => {
      const meta = jobFields.get(zodSchema)
      if (meta !== undefined) annotated(jsonSchema as Node, meta)
    },
  }) as Node,
)
