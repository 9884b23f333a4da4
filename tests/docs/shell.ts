import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { root } from '../repository/tree.ts'
import { run } from '../run/terminal.mjs'
import type { Fence } from './fences.ts'

/** The lines of a shell block, without prompts and remarks. */
export function commandsIn(fence: Fence): readonly string[] {
  return fence.text
    .split('\n')
    .map((line) => line.replace(/^\$ /, '').trim())
    .filter((line) => line !== '' && !line.startsWith('#'))
}

/** What is checked but not run: npm's scripts would run these very tests, and a clone would leave the tree. */
export function checkedOnly(command: string, scripts: Readonly<Record<string, string>>): 'fine' | 'run' | string {
  const script = /^npm (?:run )?([\w:-]+)/.exec(command)?.[1]
  if (script !== undefined) return ['ci', 'install'].includes(script) || Object.hasOwn(scripts, script) ? 'fine' : `package.json has no script "${script}"`
  return /^(git clone|cd|apt-get) /.test(command) ? 'fine' : 'run'
}

/** Runs commands in a folder of their own, where the data blocks of the document are files and `strandwise` is the built command. */
export class Shell {
  readonly #folder = mkdtempSync(join(tmpdir(), 'strandwise-docs-'))

  constructor(data: readonly Fence[]) {
    const bin = join(this.#folder, '.bin')
    mkdirSync(bin)
    writeFileSync(join(bin, 'strandwise'), `#!/bin/sh\nexec "${process.execPath}" "${root}packages/planner/dist/command/main.js" "$@"\n`)
    chmodSync(join(bin, 'strandwise'), 0o755)
    for (const { file, text } of data) if (file !== undefined) writeFileSync(join(this.#folder, file), `${text}\n`)
  }

  run(command: string): Promise<{ readonly code: number; readonly output: string }> {
    const environment = { ...process.env, PATH: `${join(this.#folder, '.bin')}${delimiter}${process.env.PATH ?? ''}` }
    return run('bash', ['-o', 'pipefail', '-c', command.replace(/\bnpx strandwise\b/g, 'strandwise')], { cwd: this.#folder, env: environment })
  }

  end(): void {
    rmSync(this.#folder, { recursive: true, force: true })
  }
}
