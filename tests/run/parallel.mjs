import { existsSync } from 'node:fs'
import { run, step } from './terminal.mjs'

/** Installs GNU parallel if missing and permitted; otherwise its test is skipped with a note. */
export async function ensureParallel() {
  const { output } = await run('parallel', ['--version'])
  if (/GNU parallel/.test(output) || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  await step('parallel', async () => {
    await run('apt-get', ['update'], { env: environment })
    const install = await run('apt-get', ['install', '-y', '--no-install-recommends', 'parallel'], { env: environment })
    // On failure its test is skipped with a reason.
    return { ok: true, output: '', note: install.code === 0 ? 'installed' : 'not installed' }
  })
}
