import { spawnSync } from 'node:child_process'
import { root } from '../repository/tree.ts'
import type { PartResult } from './results.ts'

/** Recomputes the golden cases of references/data by independent methods. */
export function goldens(): PartResult {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['references/remake/main.ts'], { cwd: root, encoding: 'utf8' })
  const lines = stdout.trim().split('\n')
  return { ok: status === 0, summary: lines.at(-1) ?? '', details: `\`\`\`text\n${stdout}${stderr}\`\`\`` }
}
