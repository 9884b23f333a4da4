import type { AstroIntegration } from 'astro'
import { entries } from '../../../tests/docs/entries.ts'
import type { Handbook } from './facts.ts'
import { codeOf } from './functionCode.ts'
import { readData } from './readData.ts'
import { readFunctions } from './readFunctions.ts'

const functions = () => entries().filter(({ kind }) => kind === 'function')

/** Module of the rooms that hold a function too large for a file of its own, each loaded on the first call. */
async function roomsModule(): Promise<string> {
  const codes = await codeOf(functions())
  const rooms = [...new Set(functions().flatMap((entry) => (codes[entry.name]?.code === null ? [`${entry.package}/${entry.room}`] : [])))]
  return `export const rooms = {\n${rooms.map((room) => `  '${room}': () => import('@strandwise/${room}'),`).join('\n')}\n}`
}

async function handbookModule(): Promise<string> {
  const handbook: Handbook = { functions: await readFunctions(await codeOf(functions())), data: readData() }
  return `export const handbook = ${JSON.stringify(handbook)}`
}

/** Module of the functions' files by name. */
async function codeModule(): Promise<string> {
  const codes = Object.entries(await codeOf(functions())).flatMap(([name, { code }]) => (code === null ? [] : [[name, code] as const]))
  return `export const codeByName = ${JSON.stringify(Object.fromEntries(codes))}`
}

const modules: Readonly<Record<string, () => Promise<string>>> = {
  'virtual:handbook': handbookModule,
  'virtual:handbook-code': codeModule,
  'virtual:handbook-rooms': roomsModule,
}

/** Reads docstrings, checks, code and tables in plain Node, when the first handbook page asks for them. */
export function handbookIntegration(): AstroIntegration {
  return {
    name: 'handbook',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        const made = new Map<string, Promise<string>>()
        updateConfig({
          vite: {
            plugins: [
              {
                name: 'handbook',
                resolveId: (id: string) => (Object.hasOwn(modules, id) ? `\0${id}` : undefined),
                load(id: string) {
                  const make = modules[id.slice(1)]
                  if (id[0] !== '\0' || make === undefined) return undefined
                  const text = made.get(id) ?? make()
                  made.set(id, text)
                  return text
                },
              },
            ],
          },
        })
      },
    },
  }
}
