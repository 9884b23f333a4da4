import { readFileSync } from 'node:fs'
import { heatSolderSleeve } from '../packages/core/src/heating/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'
import { figures } from './figures.ts'

interface GoldenCase {
  readonly id: string
  readonly inputs: Parameters<typeof heatSolderSleeve>[0]
  readonly expected: Readonly<Record<string, number | null>>
  /** Difference between the two solutions. */
  readonly difference: Readonly<Record<string, number>>
}

const golden = JSON.parse(readFileSync(new URL('./data/solderSleeve.json', import.meta.url), 'utf8')) as readonly GoldenCase[]
const isTime = (name: string): boolean => name.endsWith('S')

export const reference: readonly Reference[] = [
  {
    source: 'solder sleeves in hot air, the tube with a temperature of its own beside the lap: two solutions written apart, each extrapolated from two grids',
    clause: 'golden cases s1 and s3, accuracy 1',
    status: 'derived',
    cases: golden.flatMap(({ id, inputs, expected, difference }) => {
      let result: ReadonlyMap<string, number> | undefined
      const got = (name: string): number => {
        result ??= figures(heatSolderSleeve(inputs))
        return result.get(name) ?? Number.NaN
      }
      return Object.entries(expected).flatMap(([name, value]): readonly ReferenceCase[] =>
        value === null
          ? []
          : [
              {
                title: `${id}: ${name}`,
                printed: String(value),
                unit: isTime(name) ? 's' : 'C',
                got: () => got(name),
                allowed: isTime(name)
                  ? { relative: 1e-3, absolute: difference[name] ?? 0, why: 'what accuracy 1 is tested to' }
                  : { absolute: 0.1, why: 'what accuracy 1 is tested to' },
              },
            ],
      )
    }),
  },
]
