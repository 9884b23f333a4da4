import { demoJobs } from '@strandwise/planner/demo'
import { type FormField, type FormGroup, jobForm, type RepairJob } from '@strandwise/planner/job'
import fc from 'fast-check'

type Tree = Record<string, unknown>

/** Path of an answer in a job; in a list, of its first entry. */
interface Place {
  readonly path: readonly string[]
  readonly group: FormGroup
  readonly field: FormField
}
/** A change: a number times `factor` or at `share` of its range, another choice, or removal. */
interface Change {
  readonly place: Place
  readonly how: 'near' | 'anywhere' | 'end' | 'gone'
  readonly factor: number
  readonly share: number
}

const places = jobForm.flatMap((group) =>
  group.fields.map((field): Place => {
    const holder = group.at === '' ? [] : group.most === undefined ? [group.at] : [group.at, '0']
    return { path: [...holder, ...field.path.split('.')], group, field }
  }),
)

const at = (tree: unknown, path: readonly string[]): unknown => path.reduce<unknown>((inside, key) => (inside as Tree | undefined)?.[key], tree)

/** A minimal group: every required field with its own example. */
function begun(group: FormGroup, kind: string | undefined): Tree {
  const tree: Tree = {}
  for (const { path, needed, onlyOf, example } of group.fields) {
    if (needed && (onlyOf === undefined || onlyOf === kind)) put(tree, path.split('.'), JSON.parse(example))
  }
  return kind === undefined ? tree : { ...tree, kind }
}

function put(tree: Tree, path: readonly string[], value: unknown): void {
  const [key = '', ...rest] = path
  if (rest.length === 0) {
    if (value === undefined) delete tree[key]
    else tree[key] = value
    return
  }
  tree[key] ??= {}
  put(tree[key] as Tree, rest, value)
}

/** Logarithmic interpolation, so that small numbers are as likely as large ones. */
function anywhere({ low = 0, high = 1 }: FormField, share: number): number {
  return low > 0 ? low * (high / low) ** share : low + (high - low) * share ** 3
}

function valueFor({ field }: Place, { how, factor, share }: Change, before: unknown): unknown {
  if (how === 'gone') return field.needed ? before : undefined
  const { values, low, high, whole, shape } = field
  if (shape === 'choices') return values === undefined ? before : [values[Math.floor(share * values.length)]]
  if (values !== undefined) return values[Math.floor(share * values.length)]
  if (shape === 'yes-no') return share < 0.5
  if (low === undefined || high === undefined) return shape === 'text' && field.path === 'size' ? `${Math.round(share * 40)} AWG` : before
  const number = how === 'end' ? (share < 0.5 ? low : high) : how === 'near' && typeof before === 'number' ? before * factor : anywhere(field, share)
  const inside = Math.min(high, Math.max(low, number))
  if (shape === 'interval') return { low: inside, high: Math.min(high, inside + share * (high - inside)) }
  return whole === true ? Math.round(inside) : inside
}

function changed(job: RepairJob, changes: readonly Change[]): RepairJob {
  const tree = structuredClone(job) as unknown as Tree
  for (const change of changes) {
    const { path, group, field } = change.place
    if (group.at !== '' && at(tree, [group.at]) === undefined) {
      const one = begun(group, field.onlyOf ?? group.kinds[0])
      tree[group.at] = group.most === undefined ? one : [one]
    }
    // Removes answers that exclude the new one.
    const others = group.oneOf.filter((names) => names.includes(field.path)).flat()
    for (const name of others) if (name !== field.path && change.how !== 'gone') put(tree, [group.at, name], undefined)
    const holder = at(tree, path.slice(0, group.most === undefined ? 1 : 2)) as Tree | undefined
    if (field.onlyOf !== undefined && holder?.kind !== field.onlyOf) continue
    if (field.path === 'kind' && group.kinds.length > 0) tree[group.at] = [begun(group, String(valueFor(change.place, change, holder?.kind)))]
    else put(tree, path, valueFor(change.place, change, at(tree, path)))
  }
  return tree as unknown as RepairJob
}

const change: fc.Arbitrary<Change> = fc.record({
  place: fc.constantFrom(...places),
  how: fc.constantFrom('near', 'near', 'anywhere', 'anywhere', 'end', 'gone'),
  factor: fc.double({ min: -0.5, max: 0.5, noNaN: true }).map((power) => 10 ** power),
  share: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
})
/** The minimal job: required fields only, each with its own example. */
const least = Object.assign(
  { version: 1 },
  ...jobForm
    .filter((group) => group.needed)
    .map((group) => {
      const started = begun(group, undefined)
      for (const [name = ''] of group.oneOf) put(started, [name], JSON.parse(group.fields.find((field) => field.path === name)?.example ?? 'null'))
      return { [group.at]: started }
    }),
) as RepairJob

/** Wire in air hotter than most models' range. */
const hotWire = fc
  .record({
    insulation: fc.constantFrom('PTFE' as const, 'FEP' as const, 'silicone' as const, 'ETFE' as const),
    hottestC: fc.double({ min: 120, max: 200, noNaN: true }),
  })
  .map(
    ({ insulation, hottestC }) =>
      (job: RepairJob): RepairJob => ({
        ...job,
        wire: { ...job.wire, insulation, material: 'annealed-copper' },
        surroundings: { ...job.surroundings, hottestC },
      }),
  )
const asItIs = (job: RepairJob): RepairJob => job

/** A random job with valid fields, near a demo job or the minimal job, with up to thirty answers changed, added or removed. */
export const anyJob: fc.Arbitrary<RepairJob> = fc
  .tuple(
    fc.constantFrom(least, ...Object.values(demoJobs)),
    fc.oneof(fc.array(change, { minLength: 1, maxLength: 6 }), fc.array(change, { maxLength: 30 })),
    fc.oneof({ weight: 5, arbitrary: fc.constant(asItIs) }, { weight: 1, arbitrary: hotWire }),
  )
  .map(([start, changes, finish]) => finish(changed(start, changes)))
