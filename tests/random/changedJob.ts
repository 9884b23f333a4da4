import { type FormField, type FormGroup, jobForm, type RepairJob } from '@strandwise/planner/job'

type Tree = Record<string, unknown>

/** An answer of the job form, by its path in its group. */
interface FormPlace {
  readonly path: readonly string[]
  readonly group: FormGroup
  readonly field: FormField
}

/** A change of an answer. A list's entry is counted round, and one past its end is added. */
export interface Change {
  readonly place: FormPlace
  /** near: times `factor`; anywhere: at `share` of its range; end: an end of its range; written: with its unit; gone: removed. */
  readonly how: 'near' | 'anywhere' | 'end' | 'written' | 'gone'
  readonly factor: number
  readonly share: number
  readonly entry: number
}

export const formFields: readonly FormPlace[] = jobForm.flatMap((group) =>
  group.fields.map((field): FormPlace => ({ path: field.path.split('.'), group, field })),
)

/** Texts of sizes, and texts that must not end in a page or a terminal. */
const sizes = ['18 AWG', '2.5 mm²', '19/0.3 mm', '2/0', '0.05 mm²', '40 AWG', '95 mm²', '7 x 32 AWG']
const texts = ['plain', '<script>alert(1)</script>', '# heading', '| cell |', 'Ünïcödé — 日本', 'a'.repeat(70)]

const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null && !Array.isArray(value)

function read(tree: Tree, path: readonly string[]): unknown {
  return path.reduce<unknown>((inside, key) => (isTree(inside) ? inside[key] : undefined), tree)
}

function put(tree: Tree, path: readonly string[], value: unknown): void {
  const [key = '', ...rest] = path
  if (rest.length === 0) {
    if (value === undefined) delete tree[key]
    else tree[key] = value
    return
  }
  if (!isTree(tree[key])) tree[key] = {}
  put(tree[key] as Tree, rest, value)
}

/** A minimal group: every required field with its own example, and the first of each set of which one is required. */
function begun(group: FormGroup, kind: string | undefined): Tree {
  const tree: Tree = kind === undefined ? {} : { kind }
  for (const { path, needed, onlyOf, example } of group.fields)
    if (needed && path !== 'kind' && (onlyOf === undefined || onlyOf === kind)) put(tree, path.split('.'), JSON.parse(example))
  for (const [name = ''] of group.oneOf) put(tree, name.split('.'), JSON.parse(group.fields.find(({ path }) => path === name)?.example ?? 'null'))
  return tree
}

/** The minimal job: required fields only. */
export const least = Object.assign(
  { version: 1 },
  ...jobForm.filter(({ needed, at }) => needed && at !== '').map((group) => ({ [group.at]: begun(group, undefined) })),
) as RepairJob

/** By its logarithm where it can be, so that small numbers are as likely as large ones. */
function anywhere({ low = 0, high = 1 }: FormField, share: number): number {
  return low > 0 ? low * (high / low) ** share : low + (high - low) * share ** 3
}

function numberFor(field: FormField, { how, factor, share }: Change, before: unknown): number {
  const { low = 0, high = 1, whole } = field
  const number = how === 'end' ? (share < 0.5 ? low : high) : how === 'near' && typeof before === 'number' ? before * factor : anywhere(field, share)
  const inside = Math.min(high, Math.max(low, number))
  return whole === true ? Math.round(inside) : inside
}

function valueFor(change: Change, before: unknown): unknown {
  const { how, share } = change
  const { field } = change.place
  const { values, low, high, shape, needed } = field
  if (how === 'gone') return needed ? before : undefined
  const pick = <T>(list: readonly T[]): T => list[Math.floor(share * list.length)] as T
  if (shape === 'choices' && values !== undefined) return [...new Set([pick(values), values[change.entry % values.length] as string])]
  if (values !== undefined) return pick(values)
  if (shape === 'yes-no') return share < 0.5
  if (shape === 'text') return field.path === 'size' ? pick(sizes) : pick(texts).slice(0, field.longest)
  if (low === undefined || high === undefined) return before
  const number = numberFor(field, change, shape === 'interval' && isTree(before) ? before.low : before)
  if (shape === 'interval') return { low: number, high: Math.min(high, number + share * (how === 'near' ? Math.abs(number) : high - number)) }
  return number
}

/** The list's entry that a change is of; one past the end is begun. */
function entryOf(tree: Tree, { place: { group, field }, entry, share }: Change): Tree {
  tree[group.at] ??= []
  const list = tree[group.at] as Tree[]
  const at = entry % Math.min(list.length + 1, group.most ?? 1)
  const found = list[at] ?? begun(group, field.onlyOf ?? group.kinds[Math.floor(share * group.kinds.length)])
  list[at] = found
  return found
}

/** The object that has the answer; a missing group is begun. */
function holderOf(tree: Tree, change: Change): Tree {
  const { group } = change.place
  if (group.at === '') return tree
  if (group.most !== undefined) return entryOf(tree, change)
  tree[group.at] ??= begun(group, undefined)
  return tree[group.at] as Tree
}

function apply(tree: Tree, change: Change): void {
  const { group, field, path } = change.place
  const { how } = change
  if (how === 'gone' && group.at !== '' && !(group.at in tree)) return
  const holder = holderOf(tree, change)
  // Another kind of tool has other fields: it is begun anew.
  if (field.onlyOf !== undefined && holder.kind !== field.onlyOf) replace(holder, begun(group, field.onlyOf))
  const value = valueFor(change, read(holder, path))
  if (path[0] === 'kind' && group.kinds.length > 0 && value !== holder.kind) {
    replace(holder, begun(group, String(value)))
    return
  }
  if (how !== 'gone') for (const names of group.oneOf) if (names.includes(field.path)) for (const name of names) put(holder, name.split('.'), undefined)
  const spelt = how === 'written' && field.written !== undefined && field.unit !== undefined && typeof value === 'number'
  put(holder, path, spelt ? undefined : value)
  if (field.written !== undefined) put(holder, [...path.slice(0, -1), field.written], spelt ? `${value} ${field.unit}` : undefined)
}

function replace(holder: Tree, other: Tree): void {
  for (const key of Object.keys(holder)) delete holder[key]
  Object.assign(holder, other)
}

/** The job with its answers changed in turn. */
export function changed(job: RepairJob, changes: readonly Change[]): RepairJob {
  const tree = structuredClone(job) as unknown as Tree
  for (const change of changes) apply(tree, change)
  return tree as unknown as RepairJob
}
