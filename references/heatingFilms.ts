import { readFileSync } from 'node:fs'
import { type HeatJointInput, heatJoint } from '../packages/core/src/heating/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'
import { figures } from './figures.ts'

interface GoldenJoint {
  readonly id: string
  readonly inputs: HeatJointInput
  /** The films' rule in an independent solution. */
  readonly rule: Readonly<Record<string, number | null>>
  /** Independent solution with films that vary with the local temperature. */
  readonly full: Readonly<Record<string, number | null>>
}

const { joints } = JSON.parse(readFileSync(new URL('./data/heatingFilms.json', import.meta.url), 'utf8')) as { readonly joints: readonly GoldenJoint[] }
const isTime = (name: string): boolean => name.endsWith('S')

function casesOf(of: 'rule' | 'full', allowed: (name: string, value: number) => ReferenceCase['allowed']): readonly ReferenceCase[] {
  return joints.flatMap((joint) => {
    let result: ReadonlyMap<string, number> | undefined
    return Object.entries(joint[of]).flatMap(([name, value]): readonly ReferenceCase[] => {
      if (value === null) return []
      const tolerance = allowed(name, value)
      const got = (): number => {
        result ??= figures(heatJoint(joint.inputs))
        return result.get(name) ?? Number.NaN
      }
      return [
        {
          title: `${joint.id}: ${name}`,
          printed: String(value),
          unit: isTime(name) ? 's' : 'C',
          got,
          ...(tolerance === undefined ? {} : { allowed: tolerance }),
        },
      ]
    })
  })
}

const source = 'heating of six lap joints with films that are not given: node-centred volumes and a box scheme of separate origin'

export const reference: readonly Reference[] = [
  {
    source,
    clause: 'films taken once, half way to the wetting temperature',
    status: 'derived',
    cases: casesOf('rule', (name) =>
      isTime(name) ? { relative: 1e-3, why: 'what accuracy 1 is tested to' } : { absolute: 0.1, why: 'what accuracy 1 is tested to' },
    ),
  },
  {
    source,
    clause: 'films that follow the temperature at each place and instant',
    status: 'derived',
    notes: 'The distance of the rule itself: 0.6 % in liquidus, 2.4 % in wetted, 1.0 K at the edge, 6.4 K at steady state.',
    cases: casesOf('full', (name) => {
      if (name === 'liquidusAtS') return { relative: 6.5e-3, why: "the rule's own distance" }
      if (isTime(name)) return { relative: 2.5e-2, why: "the rule's own distance" }
      return { absolute: name.startsWith('steady') ? 6.5 : 1.1, why: "the rule's own distance" }
    }),
  },
]
