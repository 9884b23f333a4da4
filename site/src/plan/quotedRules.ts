import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { cautionRules, methodDecidingRules, methodRules, practiceRules } from '@strandwise/core/rules'
import type { Plugin } from 'vite'

const name = '\0quoted-rules'
const planner = dirname(dirname(fileURLToPath(import.meta.resolve('@strandwise/planner/report'))))

/** The text of every module of the planner. */
function sources(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name)
    if (entry.isDirectory()) return sources(path)
    return path.endsWith('.js') ? [readFileSync(path, 'utf8')] : []
  })
}

/** Rules of other sections that the planner's code names by id. */
function quotedElsewhere() {
  const code = sources(planner).join('\n')
  const whole = new Set([...cautionRules, ...methodRules, ...methodDecidingRules])
  return practiceRules.filter((rule) => !whole.has(rule) && code.includes(`'${rule.id}'`))
}

/**
 * In the planning worker the planner looks up only the rules that it names itself. The whole list is 45 kB, and is loaded when a section of the plan is opened.
 */
export function quotedRules(): Plugin {
  return {
    name: 'quoted-rules',
    enforce: 'pre',
    resolveId: (id, importer) => (id === '@strandwise/core' && importer !== undefined && /planner\/dist\/facts\/rule\.js/.test(importer) ? name : undefined),
    load: (id) =>
      id === name
        ? `import { cautionRules, methodDecidingRules, methodRules } from '@strandwise/core'
export { ruleFigure } from '@strandwise/core'
export const practiceRules = [...cautionRules, ...methodRules, ...methodDecidingRules, ...${JSON.stringify(quotedElsewhere())}]`
        : undefined,
  }
}
