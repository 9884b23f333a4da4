import type { JobIssue } from '@strandwise/planner/job'
import type { Answers, AskedField } from './answers.ts'
import type { Problem } from './readJob.ts'
import { inUnits, isInch } from './units.ts'

/** Replaces field names in a message by the form's titles. */
function inWords(text: string, asked: readonly AskedField[], holder: string): string {
  return asked
    .filter((item) => item.holder === holder || item.group.at === '')
    .reduce((words, item) => words.replaceAll(new RegExp(`\\b${item.field.path}\\b`, 'g'), item.field.title.toLowerCase()), text)
}

/** Shows an issue of the whole job at the field to correct, in the unit typed there. */
export function issueAtField(issue: JobIssue, asked: readonly AskedField[], answers: Answers): Problem {
  // The form asks for a wire's size instead of its area.
  const path = issue.path.replace(/\.areaMm2$/, '.size')
  const found = asked.find((item) => item.path === path)
  const holder = found?.holder ?? issue.path
  const text = (answers[path] ?? '').trim()
  const unit = found?.field.unit === undefined || found.field.unit === '' ? '' : ` ${found.field.unit}`
  const bare = issue.example.replace(/^"[^"]*":\s*/, '').replaceAll('"', '')
  const example = /^-?\d+(?:\.\d+)?$/.test(bare) ? `${bare}${unit}` : bare
  const system = isInch(text) ? 'inch' : 'metric'
  return {
    path: found === undefined ? (asked.find((item) => item.holder === issue.path)?.path ?? issue.path) : path,
    read: text === '' ? 'nothing' : /^[-−\d.,]+$/.test(text) ? `${text}${unit}` : text,
    allowed: inUnits(inWords(issue.allowed, asked, holder), system),
    example: inUnits(inWords(example, asked, holder), system),
  }
}
