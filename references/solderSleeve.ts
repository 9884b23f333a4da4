import { readFileSync } from 'node:fs'
import { heatSolderSleeve, heatSolderSleeveBand } from '../packages/core/src/heating/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'
import { figures } from './figures.ts'

interface GoldenCase {
  readonly id: string
  readonly inputs: Parameters<typeof heatSolderSleeveBand>[0]
  readonly expected: Readonly<Record<string, number | null>>
  /** Difference between the two solutions. */
  readonly difference: Readonly<Record<string, number>>
}

const golden = JSON.parse(readFileSync(new URL('./data/solderSleeve.json', import.meta.url), 'utf8')) as readonly GoldenCase[]
const isTime = (name: string): boolean => name.endsWith('S')

const source = 'solder sleeves in hot air, the tube with a temperature of its own beside the lap: two solutions written apart, each extrapolated from two grids'

/** Time of liquidus at one end of a band whose grip and recovery are set so that this end is the golden case. */
const end = (which: 'best' | 'worst'): readonly ReferenceCase[] =>
  golden.map(({ id, inputs, expected, difference }) => {
    const { liquidusAtS = null } = expected
    const sign = which === 'best' ? 1 : -1
    return {
      title: `${id}: liquidusAtS at the ${which} end, of a grip a factor 2 and a recovery 10 K to the other side`,
      printed: String(liquidusAtS),
      unit: 's',
      got: () => {
        const { tube } = inputs
        const set = { ...tube, gripWPerM2K: (tube.gripWPerM2K ?? Number.NaN) * 2 ** -sign, recoveryC: tube.recoveryC + 10 * sign }
        const band = heatSolderSleeveBand({ ...inputs, tube: set, gripFactor: 2, recoverySpreadK: 10, streamFactor: 1, filmFactor: 1 })
        return band[which].liquidusAtS ?? Number.NaN
      },
      allowed: { relative: 1e-3, absolute: difference.liquidusAtS ?? 0, why: 'what accuracy 1 is tested to' },
    }
  })

export const reference: readonly Reference[] = [
  {
    source,
    clause: 'golden cases s1 and s3, accuracy 1',
    status: 'derived',
    cases: golden.flatMap(({ id, inputs, expected, difference }) => {
      // Computed anew for each figure, so that a changed model affects all of them.
      const got = (name: string): number => figures(heatSolderSleeve(inputs)).get(name) ?? Number.NaN
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
  { source, clause: 'the ends of a band, set onto the golden cases', status: 'derived', cases: [...end('best'), ...end('worst')] },
]
