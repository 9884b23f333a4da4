import { type PlanValue, printedValue } from '../facts/inner.ts'
import { type FormField, type FormGroup, JobError, type RepairJob } from '../job/index.ts'
import { planRepair, type RepairPlan } from './index.ts'
import { lampWith, planJobs } from './planJobs.sample.ts'

type Tree = Record<string, unknown>

/** A field of the job with the path of its group's object in a job. */
export interface Field {
  readonly name: string
  readonly group: FormGroup
  readonly field: FormField
}

/** Absence as one of the values of an optional field. */
const absent = Symbol('absent')

function numbersOf({ low = 0, high = 1, whole, aboveLow }: FormField, example: unknown, before: unknown): readonly number[] {
  const near = typeof before === 'number' ? [before, 0.5 * before, 2 * before, 5 * before, 0.1 * before] : []
  const shown = typeof example === 'number' ? [example, 3 * example, 0.2 * example] : []
  const least = aboveLow === true ? low + 1e-9 * (high - low) : low
  return [...near, ...shown, least, high]
    .map((value) => Math.min(high, Math.max(least, whole === true ? Math.round(value) : value)))
    .filter((value, index, all) => all.indexOf(value) === index)
}

/** Values to try in a field: absence if optional, each choice, numbers near the value given, near the example, and the ends of the range. */
function valuesOf(field: FormField, before: unknown): readonly unknown[] {
  const gone = field.needed ? [] : [absent]
  const example: unknown = JSON.parse(field.example)
  const given = before === undefined ? [] : [before]
  switch (field.shape) {
    case 'choice':
      return [...gone, ...(field.values ?? [])]
    case 'choices':
      return [...gone, ...given, [], ...(field.values ?? []).map((value) => [value])]
    case 'yes-no':
      return [...gone, true, false]
    case 'text':
      return [...gone, ...given, example, field.path === 'size' ? '10 AWG' : 'another']
    case 'interval': {
      const ends = example as { readonly low: number; readonly high: number }
      const scaled = (factor: number) => ({ low: factor * ends.low, high: factor * ends.high })
      return [...gone, ...given, scaled(1), scaled(2), scaled(0.3), { low: ends.low, high: 1.5 * ends.high }]
    }
    default:
      return [...gone, ...numbersOf(field, example, before)]
  }
}

/** The fields that a kind needs, each with its example. */
const exampleOf = ({ fields }: FormGroup, kind: unknown): Tree =>
  Object.fromEntries(fields.filter(({ needed, onlyOf }) => needed && onlyOf === kind).map(({ path, example }) => [path, JSON.parse(example)]))

const inside = (tree: unknown, path: readonly (string | number)[]): unknown => path.reduce<unknown>((found, key) => (found as Tree | undefined)?.[key], tree)

/** The job with a value, or without one; null if it lacks the group. */
function withValue(job: RepairJob, holderPath: readonly (string | number)[], { group, field }: Field, value: unknown): RepairJob | null {
  const tree = structuredClone(job) as unknown as Tree
  const keys = field.path.split('.')
  const holder = inside(tree, [...holderPath, ...keys.slice(0, -1)]) as Tree | undefined
  if (holder === undefined) return null
  if (field.onlyOf !== undefined && holder.kind !== field.onlyOf) return null
  if (group.kinds.length > 0 && field.path === 'kind') {
    // Another kind has other fields.
    Object.assign(holder, exampleOf(group, value))
    for (const { path, onlyOf } of group.fields) if (onlyOf !== undefined && onlyOf !== value) delete holder[path]
  }
  // Of fields that exclude each other only this one is kept.
  for (const name of group.oneOf.filter((names) => names.includes(field.path)).flat()) delete holder[name]
  const key = keys.at(-1) ?? ''
  if (value === absent) delete holder[key]
  else holder[key] = value
  return tree as unknown as RepairJob
}

/** A line that a reader is told: what it is about, and what it says; `is` is compared with the inputs. */
type Told = readonly [about: string, says: unknown, is?: unknown]

/** What a plan tells: decision, findings and their printed figures, steps, parts, assumptions, rules. */
function told(plan: RepairPlan): readonly Told[] {
  const { decision, diagnosis, units } = plan
  const figure = (about: string, value: PlanValue): Told => [`${about} ${value.name}`, printedValue(value, units), value.value]
  const finding = (at: string, { code, verdict, values, names = {} }: RepairPlan['decision']['why']): readonly Told[] => [
    [`${at} ${code}`, verdict],
    ...Object.values(values).map((value) => figure(`${at} ${code}`, value)),
    ...Object.entries(names).map(([key, name]): Told => [`${at} ${code} ${key}`, name]),
  ]
  return [
    ['kind', decision.kind],
    ['method', decision.method],
    ['fuse', decision.fuseA],
    ['wire', decision.wire?.size],
    ['wire length', decision.wire?.lengthM],
    ['verdict', plan.verdict],
    ...finding('why', decision.why),
    ...(decision.notAsMeant === null ? [] : finding('not as meant', decision.notAsMeant)),
    ...decision.lengths.map((value) => figure('length', value)),
    ...plan.sections.flatMap(({ id, findings, values }) => [...findings.flatMap((found) => finding(id, found)), ...values.map((value) => figure(id, value))]),
    ...plan.ways.flatMap((way) => [[way.method, way.verdict] as const, ...finding(way.method, way.decides)]),
    ...diagnosis.answered.flatMap(({ reading, finding: found }) => finding(`reading ${reading}`, found)),
    ...diagnosis.stretches.map(({ from, to, verdict }): Told => [`${from} to ${to}`, verdict]),
    ['leading', diagnosis.leading.join()],
    ['next', JSON.stringify(diagnosis.next?.probe)],
    ...plan.sequence.flatMap(({ code, values }, index) => [[`step ${index}`, code] as const, ...values.map((value) => figure(`step ${index}`, value))]),
    ...plan.parts.map(({ name, quantity }): Told => [`part ${name}`, quantity]),
    ...plan.options.map(({ of, name, verdict }): Told => [`${of} ${name}`, verdict]),
    ...plan.assumptions.map(({ field, value }): Told => [`assumed ${field}`, JSON.stringify(value)]),
    ...plan.rules.flatMap(({ holding, possible }) => [
      ...holding.map(({ id }): Told => [`rule ${id}`, 'holds']),
      ...possible.map(({ id }): Told => [`rule ${id}`, 'possible']),
    ]),
    ...plan.cautions.map((caution): Told => [`caution ${caution}`, 'told']),
  ]
}

const same = (one: number, other: number): boolean => Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other))
const scales = [1, 1000, 0.001, 100, 0.01]

/** True for a value that only repeats one of the inputs, also in another prefix of its unit. */
function echoes(value: unknown, inputs: readonly unknown[]): boolean {
  return inputs.some((input) => {
    if (typeof value === 'number' && typeof input === 'number') return scales.some((scale) => same(value, scale * input))
    if (typeof input === 'object' && input !== null) return echoes(value, Object.values(input))
    return value === input || (typeof value === 'string' && typeof input === 'string' && value.includes(input))
  })
}

const planned = new Map<string, RepairPlan | null>()
function planFor(job: RepairJob): RepairPlan | null {
  const key = JSON.stringify(job)
  const known = planned.get(key)
  if (known !== undefined) return known
  let plan: RepairPlan | null = null
  try {
    plan = planRepair(job)
  } catch (error) {
    if (!(error instanceof JobError)) throw error
  }
  planned.set(key, plan)
  return plan
}

const echo = Symbol('echo')

/** The first difference between two plans that is neither an echo of the inputs nor the assumption of the field itself. */
function difference(one: RepairPlan, other: RepairPlan, inputs: readonly unknown[], path: string): string | null {
  const of = (plan: RepairPlan) => new Map(told(plan).map(([about, says, is = says]) => [about, echoes(is, inputs) ? echo : says]))
  const [before, after] = [of(one), of(other)]
  for (const about of new Set([...before.keys(), ...after.keys()])) {
    if (about === `assumed ${path}` || echoes(about, inputs)) continue
    const [was, is] = [before.get(about), after.get(about)]
    if (was !== is && was !== echo && is !== echo) return `${about}: ${String(was)} | ${String(is)}`
  }
  return null
}

/** How a field acts: a job, and the first thing that changes in its plan; null if no job shows it. */
export function actingOn(field: Field): { readonly job: string; readonly changes: string } | null {
  const places = Object.entries(fieldJobs).flatMap(([name, job]) => holdersIn(job, field.group).map((holder) => ({ name, job, holder })))
  const given = ({ job, holder }: (typeof places)[number]) => inside(job, [...holder, ...field.field.path.split('.')]) !== undefined
  // First the jobs that give the field.
  for (const { name, job, holder } of [...places.filter(given), ...places.filter((place) => !given(place))]) {
    const found = actsAt(field, job, holder)
    if (found !== null) return { job: name, changes: found }
  }
  return null
}

/** Paths of a group in a job: the first three entries of a list. */
function holdersIn(job: RepairJob, { at, most }: FormGroup): readonly (readonly (string | number)[])[] {
  if (at === '') return [[]]
  if (most === undefined) return [[at]]
  return ((inside(job, [at]) as readonly unknown[] | undefined) ?? []).slice(0, 3).map((_, index) => [at, index])
}

function actsAt(field: Field, job: RepairJob, holder: readonly (string | number)[]): string | null {
  const keys = field.field.path.split('.')
  const before = inside(job, [...holder, ...keys])
  const path = [...holder, ...keys].join('.')
  let first: { readonly plan: RepairPlan; readonly value: unknown } | null = null
  for (const value of valuesOf(field.field, before)) {
    const changed = withValue(job, holder, field, value)
    const plan = changed === null ? null : planFor(changed)
    if (plan === null) continue
    if (first === null) {
      first = { plan, value }
      continue
    }
    const found = difference(first.plan, plan, [first.value, value], path)
    if (found !== null) return found
  }
  return null
}

const { 'bilge-pump-feed': pump, 'trailer-tail-lamp': lamp, 'orchard-gate': gate, 'workshop-led-strip': strip, 'kiln-heater': heater } = planJobs
const { 'market-stall-fridge': fridge, 'garden-railway-feeder': feeder, 'aircraft, dry, by sleeve': sleeved } = planJobs

/** Jobs that together give every field. */
const fieldJobs = Object.fromEntries(
  Object.entries({
    pump,
    lamp,
    feeder,
    gate,
    strip,
    fridge,
    heater,
    sleeved,
    'pump, its circuit read': planJobs['road-vehicle, dry, crimped'],
    'unlike wires': lampWith({ wireBeyond: { areaMm2: 1, material: 'tinned-copper', insulation: 'XLPE', outsideDiameterMm: 2.6 }, damage: { slackMm: 300 } }),
    'lead that bends': lampWith({ surroundings: { flexes: true, bendRadiusMm: 30, bendCycles: 100_000 }, wire: { outLengthM: 8, strandCount: 30 } }),
    'unlike wires, by size': lampWith({ wireBeyond: { size: '18 AWG' }, damage: { slackMm: 300 } }),
    'fuse without its series': lampWith({ circuit: { fuseSeries: null } }),
  }).filter((entry): entry is [string, RepairJob] => entry[1] !== undefined),
)

/** Jobs with a name of its own for each thing that can have one, and the names. */
export function namedJobs(): readonly (readonly [RepairJob, readonly string[]])[] {
  const { feeder, sleeved } = fieldJobs
  if (feeder === undefined || sleeved?.solderSleeve === undefined) throw new Error('the jobs give sleeves of both kinds')
  const tools = feeder.tools?.map((tool) => ({ ...tool, name: 'grey gun' })) ?? []
  const sleeves = feeder.sleeves?.map((sleeve) => ({ ...sleeve, name: 'blue tube' })) ?? []
  const { solderSleeve } = sleeved
  return [
    [{ ...feeder, title: 'feeder of the yard', tools, sleeves }, ['feeder of the yard', 'grey gun', 'blue tube']],
    [{ ...sleeved, solderSleeve: { ...solderSleeve, tube: { ...solderSleeve.tube, name: 'clear sleeve' } } }, ['clear sleeve']],
  ]
}
