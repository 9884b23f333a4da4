import type { FormField, FormGroup } from '@strandwise/planner/job'
import { type Answers, askedFields, pathIn, textsOf, unitOf } from './answers.ts'
import { planForm } from './planForm.ts'
import { areaText } from './readSize.ts'

type Plain = Readonly<Record<string, unknown>>
const isPlain = (value: unknown): value is Plain => typeof value === 'object' && value !== null && !Array.isArray(value)

function inside(value: unknown, path: string): unknown {
  return path.split('.').reduce<unknown>((node, key) => (isPlain(node) && Object.hasOwn(node, key) ? node[key] : undefined), value)
}

const asText = (value: unknown): string => (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' ? String(value) : '')

/** The job's value of a field, in either spelling. */
function given(holder: unknown, field: FormField): unknown {
  const fixed = inside(holder, field.path)
  if (fixed !== undefined || field.written === undefined) return fixed
  return inside(holder, [...field.path.split('.').slice(0, -1), field.written].join('.'))
}

/** A wire's area fills the field of its size. */
function areaInstead(holder: unknown, path: string): readonly (readonly [string, string])[] {
  const areaMm2 = inside(holder, 'areaMm2')
  const written = asText(inside(holder, 'area'))
  if (areaMm2 === undefined) return written === '' ? [] : [[path, written]]
  return [[path, areaText(areaMm2)]]
}

function fieldTexts(holder: unknown, at: string, group: FormGroup): readonly (readonly [string, string])[] {
  return group.fields.flatMap((field) => {
    const value = given(holder, field)
    const path = pathIn(at, field.path)
    if (value === undefined) return field.path === 'size' ? areaInstead(holder, path) : []
    if (field.shape === 'choices') return Array.isArray(value) ? [[path, value.map(asText).join(',')] as const] : []
    if (field.shape === 'interval') return isPlain(value) ? [[`${path}.low`, asText(value.low)] as const, [`${path}.high`, asText(value.high)] as const] : []
    return [[path, asText(value)] as const]
  })
}

/** "5.2 mm" becomes 5.2 where the field's unit is mm anyway. */
function withoutOwnUnit(answers: Answers): Answers {
  const bare = askedFields(planForm, answers).flatMap((asked) => {
    const unit = unitOf(asked, answers)
    return textsOf(asked.field, asked.path).flatMap((name): readonly (readonly [string, string])[] => {
      const text = (answers[name] ?? '').trim()
      const number = text.slice(0, text.length - unit.length).trimEnd()
      return unit !== '' && text.endsWith(unit) && /^[-+−]?\d+(?:\.\d+)?$/.test(number) ? [[name, number]] : []
    })
  })
  return { ...answers, ...Object.fromEntries(bare) }
}

/** Fills the form from a job in either spelling; quantities typed in another unit than the field's keep it. */
export function answersFrom(job: unknown): Answers {
  const texts = planForm.flatMap((group) => {
    if (group.at === '') return fieldTexts(job, '', group)
    const value = inside(job, group.at)
    if (group.most === undefined) return fieldTexts(value, group.at, group)
    const entries = Array.isArray(value) ? value.slice(0, group.most) : []
    return [[group.at, String(entries.length)] as const, ...entries.flatMap((entry, index) => fieldTexts(entry, `${group.at}.${index}`, group))]
  })
  return withoutOwnUnit(Object.fromEntries(texts))
}
