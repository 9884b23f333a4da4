import type { JobIssue } from '@strandwise/planner/job'
import type { Answers, AskedField } from './answers.ts'
import type { Problem } from './readJob.ts'
import { inUnits, isInch } from './units.ts'

/** Field names of the job file that a message may hold, in the words of the form. */
function inWords(text: string, asked: readonly AskedField[], holder: string): string {
  return asked
    .filter((item) => item.holder === holder || item.group.at === '')
    .reduce((words, item) => words.replaceAll(new RegExp(`\\b${item.field.path}\\b`, 'g'), item.field.title.toLowerCase()), text)
}

/** An issue of the whole job, put at the field to mend and into the unit typed there. */
export function issueAtField(issue: JobIssue, asked: readonly AskedField[], answers: Answers): Problem {
  // The area of a wire is asked for as its size.
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
