import { parseQuantity, QuantityError, type QuantityKind } from '@strandwise/working/quantity'

/** A field that may be written with its unit in the value: `currentA: 4.2` or `current: "4.2 A"`. */
interface TwoSpellings {
  readonly fixed: string
  readonly written: string
  readonly kind: QuantityKind
}

const suffixKinds: readonly (readonly [string, QuantityKind])[] = [
  ['KPerW', 'thermalResistanceKPerW'],
  ['MPerS', 'speedMPerS'],
  ['Mm2', 'areaMm2'],
  ['Ohm', 'resistanceOhm'],
  ['Mm', 'lengthMm'],
  ['M', 'lengthM'],
  ['C', 'temperatureC'],
  ['A', 'currentA'],
  ['V', 'voltageV'],
  ['W', 'powerW'],
  ['S', 'timeS'],
]

/** inrushA and inrushS would both be "inrush": the time is written inrushTime. */
const exceptions: Readonly<Record<string, string>> = { inrushS: 'inrushTime' }

const inGroup: Readonly<Record<string, readonly string[]>> = {
  circuit: ['supplyV', 'allowedDropV', 'sourceResistanceOhm', 'prospectiveCurrentA', 'fuseA', 'fuseDistanceM'],
  load: ['currentA', 'powerW', 'resistanceOhm', 'inrushA', 'inrushS', 'stallA', 'onS', 'offS'],
  wire: ['areaMm2', 'strandDiameterMm', 'insulationThicknessMm', 'outsideDiameterMm', 'outLengthM', 'returnLengthM', 'bundleOutsideMm'],
  terminal: ['ratedCurrentA', 'ratedAmbientC', 'limitC', 'acceptsMm2', 'housingHoleMm', 'sealInsideMm'],
  damage: ['fromTerminationMm', 'discolouredMm', 'slackMm'],
  surroundings: ['ambientC', 'hottestC', 'coldestC'],
  readings: ['leadOhm', 'leadUncertaintyOhm', 'currentA'],
  tools: ['powerW', 'setC', 'tipWidthMm', 'tipResistanceKPerW', 'contactResistanceKPerW', 'airC', 'airSpeedMPerS', 'nozzleMm'],
  tube: ['suppliedInsideMm', 'recoveredInsideMm', 'recoveredWallMm', 'adhesiveWallMm'],
  sleeves: ['suppliedInsideMm', 'recoveredInsideMm', 'recoveredWallMm', 'adhesiveWallMm'],
}

function spellingsOf(fixed: string): TwoSpellings {
  const found = suffixKinds.find(([suffix]) => fixed.endsWith(suffix))
  if (found === undefined) throw new Error(`no unit at the end of ${fixed}`)
  return { fixed, written: exceptions[fixed] ?? fixed.slice(0, -found[0].length), kind: found[1] }
}

/** Group of the job to its fields with two spellings. The form and the JSON Schema read it too. */
export const twoSpellings: Readonly<Record<string, readonly TwoSpellings[]>> = Object.fromEntries(
  Object.entries(inGroup).map(([group, fields]) => [group, fields.map(spellingsOf)]),
)

interface SpellingIssue {
  readonly path: readonly (string | number)[]
  readonly value: unknown
  readonly allowed: string
}

type Plain = Readonly<Record<string, unknown>>

function isPlain(value: unknown): value is Plain {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function read(text: unknown, kind: QuantityKind, path: readonly (string | number)[], issues: SpellingIssue[]): unknown {
  if (typeof text !== 'string') {
    issues.push({ path, value: text, allowed: 'a text with its unit; a bare number goes under the name that ends in the unit' })
    return undefined
  }
  try {
    return parseQuantity(text, kind)
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error
    issues.push({ path, value: text, allowed: `${error.allowed}${error.readings === undefined ? '' : `; it could be ${error.readings.join(' or ')}`}` })
    return undefined
  }
}

function ends(value: unknown, kind: QuantityKind, path: readonly (string | number)[], issues: SpellingIssue[]): unknown {
  if (!isPlain(value)) return read(value, kind, path, issues)
  return Object.fromEntries(Object.entries(value).map(([key, end]) => [key, typeof end === 'string' ? read(end, kind, [...path, key], issues) : end]))
}

function group(name: string, value: unknown, path: readonly (string | number)[], issues: SpellingIssue[]): unknown {
  // A list in a list is nothing that a job has: it is left for the schema to refuse.
  if (Array.isArray(value)) return value.map((item, index) => (isPlain(item) ? group(name, item, [...path, index], issues) : item))
  if (!isPlain(value)) return value
  const result: Record<string, unknown> = Object.create(null)
  for (const [key, item] of Object.entries(value)) result[key] = item
  for (const { fixed, written, kind } of twoSpellings[name] ?? []) {
    if (!Object.hasOwn(value, written)) continue
    delete result[written]
    if (Object.hasOwn(value, fixed)) issues.push({ path: [...path, written], value: value[written], allowed: `one spelling: ${fixed} or ${written}, not both` })
    else result[fixed] = ends(value[written], kind, [...path, written], issues)
  }
  if (name === 'readings' && typeof value.value === 'string') {
    const ohms = value.kind === 'resistance' || value.kind === 'four-wire'
    result.value = read(value.value, ohms ? 'resistanceOhm' : 'voltageV', [...path, 'value'], issues)
  }
  if (name === 'solderSleeve') result.tube = group('tube', value.tube, [...path, 'tube'], issues)
  return { ...result }
}

/** The transform of the schema: written spellings become numbers in the fixed unit; what can't be read is reported at its own path. */
export function canonicalSpelling(input: unknown, context: { readonly issues: unknown[] }): unknown {
  const issues: SpellingIssue[] = []
  const result = withFixedUnits(input, issues)
  for (const issue of issues) {
    context.issues.push({ code: 'custom', input: issue.value, path: [...issue.path], message: issue.allowed, params: { allowed: issue.allowed } })
  }
  return result
}

function withFixedUnits(input: unknown, issues: SpellingIssue[]): unknown {
  if (!isPlain(input)) return input
  return Object.fromEntries(
    Object.entries(input).map(([key, value]) => [key, key === 'solderSleeve' || Object.hasOwn(twoSpellings, key) ? group(key, value, [key], issues) : value]),
  )
}
