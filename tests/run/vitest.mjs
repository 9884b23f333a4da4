import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { tool } from './build.mjs'
import { newNode, root, toolEnvironment } from './place.mjs'
import { run } from './terminal.mjs'

/** Counts from a vitest report; a file that failed to load counts as one failure. */
export function counts(report) {
  const unloaded = report.testResults.filter((file) => file.status === 'failed' && file.assertionResults.every((test) => test.status !== 'failed')).length
  return { passed: report.numPassedTests, failed: report.numFailedTests + unloaded, left: report.numPendingTests + report.numTodoTests }
}

/** Runs one vitest project and counts its tests. */
export async function vitestProject(project, environment = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'strandwise-'))
  const file = join(folder, 'report.json')
  try {
    const args = [
      tool('vitest'),
      'run',
      '--config',
      'tests/vitest.config.ts',
      '--project',
      project,
      '--reporter=dot',
      '--reporter=json',
      `--outputFile.json=${file}`,
    ]
    const { code, output } = await run(newNode(), args, { cwd: root, env: toolEnvironment(environment) })
    const { passed, failed, left } = counts(JSON.parse(readFileSync(file, 'utf8')))
    const note = [`${passed} passed`, ...(failed > 0 ? [`${failed} failed`] : []), ...(left > 0 ? [`${left} left out`] : [])].join(', ')
    // A run that fails without a failing test (an uncaught error, no tests) counts as one failure.
    return { ok: code === 0, output, note, passed, failed: code === 0 ? failed : Math.max(failed, 1) }
  } catch (error) {
    return { ok: false, output: String(error?.stack ?? error), note: '', passed: 0, failed: 1 }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
