import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { ModelFacts, RoomFacts } from './facts.ts'

const docBeforeFunction = /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export (?:async )?function\*? (\w+)/g

function sourcesIn(folder: string): readonly string[] {
  return readdirSync(folder)
    .sort()
    .flatMap((name) => {
      const path = join(folder, name)
      if (statSync(path).isDirectory()) return sourcesIn(path)
      return name.endsWith('.ts') && !/\.(test|sample)\.ts$/.test(name) && name !== 'index.ts' ? [path] : []
    })
}

/** Text of a docstring without stars, split at each tag. */
function tagsOf(doc: string): { readonly sentence: string; readonly tag: (name: string) => readonly string[] } {
  const text = doc
    .split('\n')
    .map((line) => line.replace(/^\s*\*? ?/, ''))
    .join('\n')
  const [head = '', ...rest] = text.split(/\n@/)
  const tags = rest.map((part) => /^(\w+)\s*([\s\S]*)$/.exec(part)).map((match) => [match?.[1] ?? '', (match?.[2] ?? '').trim().replace(/\s+/g, ' ')] as const)
  return { sentence: head.trim().replace(/\s+/g, ' '), tag: (name) => tags.filter(([found]) => found === name).map(([, value]) => value) }
}

function modelOf(name: string, doc: string): Omit<ModelFacts, 'checks'> {
  const { sentence, tag } = tagsOf(doc)
  return {
    name,
    sentence,
    equations: tag('equation').filter((equation) => !equation.startsWith('row of')),
    symbols: tag('symbol'),
    domains: tag('domain'),
    sources: tag('source'),
  }
}

/** Functions that a room exports, with their docstrings. */
export function roomsOf(
  root: string,
  packageName: string,
  rooms: readonly string[],
): readonly Omit<RoomFacts, 'models'>[] & readonly { readonly models: readonly Omit<ModelFacts, 'checks'>[] }[] {
  return rooms.map((room) => {
    const folder = join(root, 'packages', packageName, 'src', room)
    const door = readFileSync(join(folder, 'index.ts'), 'utf8')
    const models = sourcesIn(folder).flatMap((path) =>
      [...readFileSync(path, 'utf8').matchAll(docBeforeFunction)].map((match) => modelOf(match[2] ?? '', match[1] ?? '')),
    )
    return { package: packageName, room, models: models.filter((model) => new RegExp(`\\b${model.name}\\b`).test(door)) }
  })
}
