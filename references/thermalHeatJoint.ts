import { readFileSync } from 'node:fs'
import { type HeatJointInput, heatJoint, heatJointAdvice, heatJointBand, heatVerdict } from '../packages/core/src/heating/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'
import { figures } from './figures.ts'

interface GoldenCase {
  readonly id: string
  readonly inputs: HeatJointInput
  readonly expected: Readonly<Record<string, unknown>>
  readonly numericalError: Readonly<Record<string, number>>
}

const cases = JSON.parse(readFileSync(new URL('./data/thermalHeatJoint.json', import.meta.url), 'utf8')) as readonly GoldenCase[]

const steady = (name: string): boolean => name.startsWith('steady')

function casesAt(accuracy: number, wanted: (name: string) => boolean, allowed: (name: string, error: number) => ReferenceCase['allowed']): ReferenceCase[] {
  return cases.flatMap((golden) => {
    // Computed anew for each figure, so that a changed model affects all of them.
    const got = (name: string): number => figures(heatJoint({ ...golden.inputs, accuracy })).get(name) ?? Number.NaN
    return [...figures(golden.expected)]
      .filter(([name]) => wanted(name))
      .map(([name, value]): ReferenceCase => {
        const tolerance = allowed(name, golden.numericalError[name.split('.')[0] ?? ''] ?? 0)
        return {
          title: `${golden.id}, accuracy ${accuracy}, ${name}`,
          printed: String(value),
          unit: name.includes('S') ? 's' : 'C',
          got: () => got(name),
          ...(tolerance === undefined ? {} : { allowed: tolerance }),
        }
      })
  })
}

const isTime = (name: string): boolean => /S(\.\d+)?$/.test(name)

const source = 'heating of 19 lap joints: box scheme on graded grids, two grids extrapolated, adaptive time steps stopped at every change of phase'
const clause = (accuracy: string): string => `golden cases, ${accuracy}`

/** Golden time of wetting by another function, set up so that it must find the golden case. */
function wetting(id: string, title: string, got: (inputs: HeatJointInput) => number | null, allowed: ReferenceCase['allowed']): ReferenceCase {
  const golden = cases.find((one) => one.id === id) as GoldenCase
  return {
    title: `${id}, ${title}`,
    printed: String(golden.expected.wettedAtS),
    unit: 's',
    got: () => got(golden.inputs) ?? Number.NaN,
    ...(allowed === undefined ? {} : { allowed }),
  }
}
const tested = { relative: 1e-3, why: 'what accuracy 1 is tested to' }

/** Iron with its contact a factor better or worse. */
function withContact(inputs: HeatJointInput, factor: number): HeatJointInput {
  const { tool } = inputs
  return tool.kind === 'iron' ? { ...inputs, tool: { ...tool, contactResistanceKPerW: tool.contactResistanceKPerW * factor } } : inputs
}

const slowIron = 'iron-6-sac305-60w-slow'
const ends: readonly ReferenceCase[] = [
  wetting(slowIron, 'best end of a contact twice as bad', (inputs) => heatJointBand({ ...withContact(inputs, 2), contactFactor: 2 }).best.wettedAtS, tested),
  wetting(
    slowIron,
    'worst end of a contact twice as good',
    (inputs) => heatJointBand({ ...withContact(inputs, 0.5), contactFactor: 2 }).worst.wettedAtS,
    tested,
  ),
  ...['iron-1-sncu-60w-cold-day', 'air-2.5-sn63-swept-25mm-altitude'].map((id) =>
    wetting(
      id,
      'nominal end of the verdict',
      ({ toolOffS: _off, observeS: _observe, sampleTimesS: _samples, ...inputs }) => heatVerdict(inputs).ends.nominal.wettedAtS,
      tested,
    ),
  ),
  wetting(
    slowIron,
    'lifted at 5 s: when the advice would lift it, so that it flows',
    (inputs) => {
      const to = heatJointAdvice({ ...inputs, toolOffS: 5, sampleTimesS: [] }).toFlow.find(({ lever }) => lever === 'toolOffS')?.to
      return typeof to === 'number' ? to : null
    },
    { relative: 0.01, why: 'the advice rounds to three digits, upwards' },
  ),
]

export const reference: readonly Reference[] = [
  { source, clause: 'bands, verdict and advice set onto the golden cases', status: 'derived', cases: ends },
  {
    source,
    clause: clause('steady state'),
    status: 'derived',
    cases: casesAt(1, steady, () => ({ relative: 1e-9, why: 'both sides solve the closed fin; the golden figures carry twelve digits' })),
  },
  {
    source,
    clause: clause('accuracy 1'),
    status: 'derived',
    cases: casesAt(
      1,
      (name) => !steady(name),
      (name) =>
        isTime(name)
          ? { relative: 1e-3, why: 'what accuracy 1 is tested to; 0.3 % is promised' }
          : { absolute: 0.1, why: 'what accuracy 1 is tested to; 0.5 K is promised' },
    ),
  },
  {
    source,
    clause: clause('accuracy 0.01'),
    status: 'derived',
    cases: casesAt(
      0.01,
      (name) => !steady(name),
      (name, error) =>
        isTime(name)
          ? { relative: 2e-5, absolute: error, why: "a fiftieth of what accuracy 1 is tested to, or the golden figure's own error where that is larger" }
          : { absolute: 2e-3, why: 'a fiftieth of what accuracy 1 is tested to' },
    ),
  },
]
