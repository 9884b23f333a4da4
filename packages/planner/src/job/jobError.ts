import { printable } from './printable.ts'

/** One problem of a job: the field, its value, what is allowed, and a corrected example. */
export interface JobIssue {
  /** Dotted path of the field, e.g. "wire.outLengthM" or "readings.0.value". */
  readonly path: string
  readonly value: unknown
  readonly allowed: string
  /** A corrected value of the field. */
  readonly example: string
}

/** Adds an issue: path, value, what is allowed, a corrected example. */
export type AddIssue = (...issue: [path: string, value: unknown, allowed: string, example: string]) => void

/** A job that cannot be used, with all its issues. */
export class JobError extends Error {
  override readonly name = 'JobError'
  readonly code = 'unusable-job'
  readonly issues: readonly JobIssue[]

  constructor(issues: readonly JobIssue[]) {
    super(issues.map(issueLine).join('\n'))
    this.issues = issues
  }
}

/**
 * One issue as a line of text.
 *
 * @throws nothing
 * @example
 * issueLine({ path: 'wire.outLengthM', value: -3, allowed: 'from 0.001 to 500 m', example: '"outLengthM": 5' }) // "wire.outLengthM: is -3; allowed: from 0.001 to 500 m; for example \"outLengthM\": 5"
 */
export function issueLine(issue: JobIssue): string {
  const example = issue.example === '' ? '' : `; for example ${issue.example}`
  const path = issue.path.length > longest ? `${issue.path.slice(0, longest)}…` : issue.path
  return printable(`${path === '' ? 'the job' : path}: ${shown(issue.value)}; allowed: ${issue.allowed}${example}`)
}

/** Longest path or value shown, in characters. */
const longest = 60

function shown(value: unknown): string {
  if (value === undefined) return 'missing'
  if (Array.isArray(value)) return 'is a list'
  if (typeof value === 'object' && value !== null) return 'is an object'
  if (typeof value === 'string') return `is "${value.length > longest ? `${value.slice(0, longest)}…` : value}"`
  return `is ${String(value)}`
}
