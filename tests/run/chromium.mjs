import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'
import { run, step } from './terminal.mjs'

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable']
const usual = [
  ...names.map((name) => `/usr/bin/${name}`),
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
]

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}

/** Finds a browser: by environment variable, in usual places, or on the path; else undefined. */
export function findChromium(environment = process.env) {
  for (const variable of ['CHROMIUM_PATH', 'CHROME_PATH']) {
    const named = environment[variable]
    if (named === undefined || named === '') continue
    if (!isProgram(named)) throw new Error(`${variable} names "${named}", which is no program: set it to a Chromium, or unset it`)
    return named
  }
  const onPath = (environment.PATH ?? '').split(delimiter).flatMap((folder) => names.map((name) => join(folder, name)))
  return [...usual, ...onPath].find(isProgram)
}

/** Finds the browser for the tests, or installs Debian's if permitted. Throws with advice. */
export async function ensureChromium() {
  const found = findChromium()
  if (found !== undefined) return found
  const advice = 'no Chromium found: install one ("apt-get install chromium"), or set CHROMIUM_PATH to its program'
  if (process.getuid?.() !== 0 || !isProgram('/usr/bin/apt-get')) throw new Error(advice)
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  await step('chromium', async () => {
    const update = await run('apt-get', ['update'], { env: environment })
    const install = await run('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], { env: environment })
    return { ok: install.code === 0, output: update.output + install.output, note: 'installed' }
  })
  const installed = findChromium()
  if (installed === undefined) throw new Error(advice)
  return installed
}
