import { existsSync } from 'node:fs'
import { run, step } from './terminal.mjs'

/** Installs GNU parallel where it is missing and we may; its test says so where it is left out. */
export async function ensureParallel() {
  const { output } = await run('parallel', ['--version'])
  if (/GNU parallel/.test(output) || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  await step('parallel', async () => {
    await run('apt-get', ['update'], { env: environment })
    const install = await run('apt-get', ['install', '-y', '--no-install-recommends', 'parallel'], { env: environment })
    // Its test is left out with a reason where this failed.
    return { ok: true, output: '', note: install.code === 0 ? 'installed' : 'not installed' }
  })
}
