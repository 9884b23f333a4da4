import type { AstroIntegration } from 'astro'
import { entries } from '../../../tests/docs/entries.ts'
import type { Handbook } from './facts.ts'
import { readData } from './readData.ts'
import { readFunctions } from './readFunctions.ts'

const factsName = 'virtual:handbook'
const roomsName = 'virtual:handbook-rooms'

/** Module of the packages' rooms, each loaded on the first call of one of its functions. */
function roomsModule(): string {
  const rooms = [...new Set(entries().flatMap((entry) => (entry.kind === 'function' ? [`${entry.package}/${entry.room}`] : [])))]
  return `export const rooms = {\n${rooms.map((room) => `  '${room}': () => import('@strandwise/${room}'),`).join('\n')}\n}`
}

/** Reads docstrings, checks, sizes and tables in plain Node, when the first handbook page asks for them. */
export function handbookIntegration(): AstroIntegration {
  return {
    name: 'handbook',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        let facts: Promise<Handbook> | undefined
        updateConfig({
          vite: {
            plugins: [
              {
                name: 'handbook',
                resolveId: (id: string) => (id === factsName || id === roomsName ? `\0${id}` : undefined),
                async load(id: string) {
                  if (id === `\0${roomsName}`) return roomsModule()
                  if (id !== `\0${factsName}`) return undefined
                  facts ??= readFunctions().then((functions) => ({ functions, data: readData() }))
                  return `export const handbook = ${JSON.stringify(await facts)}`
                },
              },
            ],
          },
        })
      },
    },
  }
}
