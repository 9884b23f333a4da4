import { fileURLToPath } from 'node:url'
import * as materials from '@strandwise/core/materials'
import { practiceRules } from '@strandwise/core/rules'
import * as tables from '@strandwise/core/tables'
import type { AstroIntegration } from 'astro'
import type { MethodFacts } from './facts.ts'
import { checksOf, countBySource, readReferences } from './readChecks.ts'
import { roomsOf } from './readDocs.ts'
import { recalledIn } from './recalled.ts'

const root = fileURLToPath(new URL('../../../', import.meta.url))
const coreRooms = ['heat', 'conductor', 'ampacity', 'circuit', 'protection', 'meter', 'joint', 'solder', 'crimp', 'sleeve', 'routing', 'suitability']
const doorName = 'virtual:method-facts'

async function methodFacts(): Promise<MethodFacts> {
  const references = await readReferences(root)
  const rooms = [...roomsOf(root, 'core', coreRooms), ...roomsOf(root, 'working', ['uncertainty'])]
  return {
    rooms: rooms.map((room) => ({ ...room, models: room.models.map((model) => ({ ...model, checks: checksOf(model.name, references) })) })),
    sources: countBySource(references),
    recalled: recalledIn({ ...materials, ...tables, 'rules of the trade': practiceRules }),
  }
}

/** Reads docstrings, references and provenance once, in plain Node, and hands them to the pages as a module. */
export function methodFactsIntegration(): AstroIntegration {
  return {
    name: 'method-facts',
    hooks: {
      'astro:config:setup': async ({ updateConfig }) => {
        const facts = await methodFacts()
        updateConfig({
          vite: {
            plugins: [
              {
                name: 'method-facts',
                resolveId: (id: string) => (id === doorName ? `\0${doorName}` : undefined),
                load: (id: string) => (id === `\0${doorName}` ? `export const facts = ${JSON.stringify(facts)}` : undefined),
              },
            ],
          },
        })
      },
    },
  }
}
