import * as core from '@strandwise/core'
import type { AstroIntegration } from 'astro'
import type { MethodFacts } from './facts.ts'
import { runChecks } from './readChecks.ts'
import { recalledIn } from './recalled.ts'

const doorName = 'virtual:method-facts'

async function methodFacts(): Promise<MethodFacts> {
  return { ...(await runChecks()), recalled: recalledIn(core) }
}

/** Runs the references and collects provenance in plain Node, only when the method page asks for it. */
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
