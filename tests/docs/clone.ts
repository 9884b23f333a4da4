import { cpSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { made, root } from '../repository/tree.ts'
import { npmEnvironment } from '../run/place.mjs'
import { run } from '../run/terminal.mjs'

/** Workspaces to install: the packages and the root's tools, without those of site and tests. */
const installed = ['--workspace', '@strandwise/core', '--workspace', '@strandwise/working', '--workspace', '@strandwise/planner', '--include-workspace-root']

interface Answer {
  readonly code: number
  readonly output: string
}

/** A fresh clone of this tree: nothing built, nothing installed. */
export class Clone {
  readonly folder = mkdtempSync(join(tmpdir(), 'strandwise-clone-'))

  constructor() {
    cpSync(root, this.folder, { recursive: true, filter: (path) => !made.has(basename(path)) })
  }

  /** Runs a command in the clone's shell, with nothing of this tree on its path. */
  run(command: string): Promise<Answer> {
    return run('bash', ['-o', 'pipefail', '-c', command], { cwd: this.folder, env: npmEnvironment() })
  }

  /** The first steps of `npm start`: install from npm's cache (missing packages from the network), then build the packages. */
  async start(): Promise<Answer> {
    const install = await this.run(`npm ci --prefer-offline --no-audit --no-fund ${installed.join(' ')}`)
    return install.code === 0 ? this.run('npm exec --offline -- tsc -b') : install
  }

  end(): void {
    rmSync(this.folder, { recursive: true, force: true })
  }
}
