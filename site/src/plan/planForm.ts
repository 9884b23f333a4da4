import { type FormGroup, jobForm } from '@strandwise/planner/job'
import type { PageGroup } from './answers.ts'
import { firstStops, laterGroups } from './layout.ts'

/** Merges kind, size and area of a wire into one field: "18 AWG", "1.5", "7/0.3 mm". */
function withOneSize(group: FormGroup): FormGroup {
  if (!group.fields.some((field) => field.path === 'areaMm2')) return group
  return {
    ...group,
    oneOf: group.oneOf.filter((names) => !names.includes('areaMm2')),
    fields: group.fields
      .filter((field) => field.path !== 'areaMm2')
      .map((field) =>
        field.path === 'size' ? { ...field, needed: group.needed, description: 'As printed on the wire or its reel: 18 AWG, 1.5 (mm²), 7/0.3 mm.' } : field,
      ),
  }
}

const order = [...firstStops.flatMap((stop) => stop.asks.map(({ group }) => group)), 'readings', ...laterGroups]
const place = (group: FormGroup): number => (order.includes(group.id) ? order.indexOf(group.id) : order.length)

/** Visible fields first, in page order. */
function inPageOrder(group: FormGroup): FormGroup {
  const open = firstStops.flatMap((stop) => stop.asks).find((asked) => asked.group === group.id)?.open ?? []
  const rank = (path: string) => (open.includes(path) ? open.indexOf(path) : open.length)
  return { ...group, fields: [...group.fields].sort((a, b) => rank(a.path) - rank(b.path)) }
}

/** The form of the plan page: the job's own, with one size for a wire, in the order down the wire. */
export const planForm: readonly FormGroup[] = jobForm.map((group) => inPageOrder(withOneSize(group))).sort((a, b) => place(a) - place(b))

/** The parts of the form that the page needs; the worker has the checks and messages. */
export const pageForm = (): readonly PageGroup[] =>
  planForm.map(({ id, at, most, oneOf, kinds, needed, fields }) => ({
    id,
    at,
    oneOf,
    kinds,
    needed,
    ...(most === undefined ? {} : { most }),
    fields: fields.map(({ path, title, shape, needed: wanted, kind, unit, values, onlyOf }) => ({
      path,
      title,
      shape,
      needed: wanted,
      ...(kind === undefined ? {} : { kind }),
      ...(unit === undefined ? {} : { unit }),
      ...(values === undefined ? {} : { values }),
      ...(onlyOf === undefined ? {} : { onlyOf }),
    })),
  }))
