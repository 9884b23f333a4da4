import { fileURLToPath } from 'node:url'
import * as core from '@strandwise/core'
import type { AstroIntegration } from 'astro'
import type { MethodFacts } from './facts.ts'
import { runChecks } from './readChecks.ts'
import { roomsOf } from './readDocs.ts'
import { recalledIn } from './recalled.ts'

const root = fileURLToPath(new URL('../../../', import.meta.url))
const coreRooms = ['heat', 'conductor', 'ampacity', 'circuit', 'protection', 'meter', 'joint', 'heating', 'solder', 'crimp', 'sleeve', 'routing', 'suitability']
const doorName = 'virtual:method-facts'

async function methodFacts(): Promise<MethodFacts> {
  const checks = await runChecks()
  const rooms = [...roomsOf(root, 'core', coreRooms), ...roomsOf(root, 'working', ['uncertainty'])]
  return {
    rooms: rooms.map((room) => ({ ...room, models: room.models.map((model) => ({ ...model, checks: checks.byFunction.get(model.name) ?? [] })) })),
    sources: checks.sources,
    recalled: recalledIn(core),
  }
}

/** Reads docstrings, runs the references and walks the provenance, in plain Node, when the method page first asks: nothing else needs it. */
export function methodFactsIntegration(): AstroIntegration {
  return {
    name: 'method-facts',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        let facts: Promise<MethodFacts> | undefined
        updateConfig({
          vite: {
            plugins: [
              {
                name: 'method-facts',
                resolveId: (id: string) => (id === doorName ? `\0${doorName}` : undefined),
                async load(id: string) {
                  if (id !== `\0${doorName}`) return undefined
                  facts ??= methodFacts()
                  return `export const facts = ${JSON.stringify(await facts)}`
                },
              },
            ],
          },
        })
      },
    },
  }
}
