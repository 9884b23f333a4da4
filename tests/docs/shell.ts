import type { Fence } from './fences.ts'

/** The commands of a shell block, without prompts and comments. */
export function commandsIn(fence: Fence): readonly string[] {
  return fence.text
    .split('\n')
    .map((line) => line.replace(/^\$ /, '').trim())
    .filter((line) => line !== '' && !line.startsWith('#'))
}

/** Commands that are checked but not run: npm's scripts would run these tests, and a clone would leave the tree. */
export function checkedOnly(command: string, scripts: Readonly<Record<string, string>>): 'fine' | 'run' | string {
  const script = /^npm (?:run )?([\w:-]+)/.exec(command)?.[1]
  if (script !== undefined) return ['ci', 'install'].includes(script) || Object.hasOwn(scripts, script) ? 'fine' : `package.json has no script "${script}"`
  return /^(git clone|cd|apt-get) /.test(command) ? 'fine' : 'run'
}
