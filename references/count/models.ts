import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const rooms = fileURLToPath(new URL('../../packages/core/src/', import.meta.url))
const docBeforeFunction = /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export (?:async )?function\*? (\w+)/g

/** Public functions of core with an equation in their docstring; look-ups of a row are no models. */
export function models(): readonly string[] {
  return readdirSync(rooms, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name }) => {
      const index = readFileSync(join(rooms, name, 'index.ts'), 'utf8')
      return readdirSync(join(rooms, name), { recursive: true, encoding: 'utf8' })
        .filter((file) => file.endsWith('.ts') && !/\.(test|sample)\.ts$/.test(file))
        .flatMap((file) => [...readFileSync(join(rooms, name, file), 'utf8').matchAll(docBeforeFunction)])
        .flatMap(([, doc = '', found = '']) => (/@equation (?!row of)/.test(doc) && new RegExp(`\\b${found}\\b`).test(index) ? [found] : []))
    })
}
