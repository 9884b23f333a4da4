import { cpSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { made, root } from '../repository/tree.ts'
import { npmEnvironment } from '../run/place.mjs'
import { run } from '../run/terminal.mjs'

/** The packages and the root's tools; what only the site and the tests need is not needed to type what the documents print. */
const installed = ['--workspace', '@strandwise/core', '--workspace', '@strandwise/working', '--workspace', '@strandwise/planner', '--include-workspace-root']

interface Answer {
  readonly code: number
  readonly output: string
}

/** This tree as a fresh clone: nothing built, nothing installed. */
export class Clone {
  readonly folder = mkdtempSync(join(tmpdir(), 'strandwise-clone-'))

  constructor() {
    cpSync(root, this.folder, { recursive: true, filter: (path) => !made.has(basename(path)) })
  }

  /** A command in the clone's own shell; nothing of this tree is on its path. */
  run(command: string): Promise<Answer> {
    return run('bash', ['-o', 'pipefail', '-c', command], { cwd: this.folder, env: npmEnvironment() })
  }

  /** The first steps of `npm start`: install from npm's cache (from the network where it lacks something), then build the packages. */
  async start(): Promise<Answer> {
    const install = await this.run(`npm ci --prefer-offline --no-audit --no-fund ${installed.join(' ')}`)
    return install.code === 0 ? this.run('npm exec --offline -- tsc -b') : install
  }

  end(): void {
    rmSync(this.folder, { recursive: true, force: true })
  }
}
