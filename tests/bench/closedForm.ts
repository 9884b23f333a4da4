import { awgToAreaMm2, lapJointResistanceOhm, resistanceOhm, transferLengthMm, voltageDropV } from '@strandwise/core'
import { compiled, fromText } from './mathematics.ts'
import { type Candidate, measure } from './measure.ts'
import type { Figure } from './report.ts'

/** Design limits: at most 1.5 times the same arithmetic inline, at least 15 times faster than compiled mathjs and 400 times faster than mathjs from text. */
const limits = { inline: 1.5, compiled: 15, text: 400 } as const

interface Case {
  readonly name: string
  readonly expression: string
  /** Inputs vary with the index, so that the compiler cannot fold constants. */
  readonly scope: (index: number) => Record<string, number>
  readonly library: Candidate
  readonly inline: Candidate
}

const copper = { rho: 1.7241e-8, alpha: 0.00393 } as const

const r2At = (index: number): number => 0.0343 + (index % 8) / 1024

const cases: readonly Case[] = [
  {
    name: 'awgToAreaMm2',
    expression: 'pi/4 * (0.127 * 92^((36 - n)/39))^2',
    scope: (index) => ({ n: index % 40 }),
    library: loop((index) => awgToAreaMm2(index % 40)),
    inline: loop((index) => (Math.PI / 4) * (0.127 * 92 ** ((36 - (index % 40)) / 39)) ** 2),
  },
  {
    name: 'voltageDropV',
    expression: 'I * (Ro + Rr)',
    scope: (index) => ({ I: index % 16, Ro: 0.05 + (index % 8) / 64, Rr: 0.04 }),
    library: loop((index) => voltageDropV({ currentA: index % 16, outResistanceOhm: 0.05 + (index % 8) / 64, returnResistanceOhm: 0.04 })),
    inline: loop((index) => (index % 16) * (0.05 + (index % 8) / 64 + 0.04)),
  },
  {
    name: 'resistanceOhm',
    expression: '1e6 * rho * (1 + alpha * (T - 20)) * L/A',
    scope: (index) => ({ ...copper, T: index % 64, L: 10 + (index % 16), A: 1.5 + (index % 8) }),
    library: loop((index) => resistanceOhm({ areaMm2: 1.5 + (index % 8), lengthM: 10 + (index % 16), material: 'annealed-copper', temperatureC: index % 64 })),
    inline: loop((index) => (1e6 * copper.rho * (1 + copper.alpha * ((index % 64) - 20)) * (10 + (index % 16))) / (1.5 + (index % 8))),
  },
  {
    name: 'transferLengthMm',
    expression: '1000/sqrt((r1 + r2) * g)',
    scope: (index) => ({ r1: 0.0172, r2: 0.0172 + (index % 8) / 1024, g: 1e5 + (index % 64) }),
    library: loop((index) => transferLengthMm({ conductorsOhmPerM: [0.0172, 0.0172 + (index % 8) / 1024], interfaceSPerM: 1e5 + (index % 64) })),
    inline: loop((index) => 1000 / Math.sqrt((0.0172 + (0.0172 + (index % 8) / 1024)) * (1e5 + (index % 64)))),
  },
  {
    name: 'lapJointResistanceOhm',
    expression: 'r1 * r2/(r1 + r2) * l + ((r1^2 + r2^2) * (exp(s * l) + exp(-s * l))/2 + 2 * r1 * r2)/((r1 + r2) * s * (exp(s * l) - exp(-s * l))/2)',
    scope: (index) => ({ r1: 0.0172, r2: r2At(index), l: 0.005 + (index % 64) * 1e-4, s: Math.sqrt((0.0172 + r2At(index)) * (1e5 + (index % 64))) }),
    library: loop((index) =>
      lapJointResistanceOhm({ overlapMm: 5 + (index % 64) * 0.1, conductorsOhmPerM: [0.0172, r2At(index)], interfaceSPerM: 1e5 + (index % 64) }),
    ),
    inline: loop((index) => {
      const r1 = 0.0172
      const r2 = r2At(index)
      const l = (5 + (index % 64) * 0.1) / 1000
      const s = r1 + r2
      const lambda = Math.sqrt(s * (1e5 + (index % 64)))
      const d = -Math.expm1(-lambda * l)
      const shared = (r1 / s) * (r2 / s)
      return s * shared * l + ((s / lambda) * ((1 - 2 * shared) * d * d + 2 * (1 - d))) / (d * (2 - d))
    }),
  },
]

function loop(one: (index: number) => number): Candidate {
  return (count) => {
    let sum = 0
    for (let index = 0; index < count; index += 1) sum += one(index)
    return sum
  }
}

/** The four variants must agree before their times mean anything. */
function mustAgree({ name, expression, scope, library, inline }: Case): void {
  const wanted = compiled(expression)(scope(0)) + compiled(expression)(scope(1))
  for (const got of [library(2), inline(2)]) {
    if (Math.abs(got - wanted) > 1e-9 * Math.abs(wanted))
      throw new Error(`${name}: the library, the inline form and mathjs don't compute the same, ${got} and ${wanted}`)
  }
}

/** Closed-form functions against the same arithmetic inline, compiled by mathjs, and parsed from text. */
export function closedForm(): readonly Figure[] {
  return cases.flatMap((one): Figure[] => {
    mustAgree(one)
    const [run, text] = [compiled(one.expression), fromText(one.expression)]
    const scopes = Array.from({ length: 64 }, (_, index) => one.scope(index))
    const scopeOf = (index: number) => scopes[index % 64] as Record<string, number>
    const [library, inline, byCompiled, byText] = measure({
      library: one.library,
      inline: one.inline,
      compiled: loop((i) => run(scopeOf(i))),
      text: loop((i) => text(scopeOf(i))),
    }).map(({ nsPerCall }) => nsPerCall) as [number, number, number, number]
    return [
      {
        what: `${one.name} against inline`,
        value: library / inline,
        unit: 'times its time',
        atMost: limits.inline,
        note: `${library.toFixed(1)} ns, inline ${inline.toFixed(1)} ns`,
      },
      { what: `${one.name} against mathjs compiled`, value: byCompiled / library, unit: 'times faster', atLeast: limits.compiled },
      { what: `${one.name} against mathjs from text`, value: byText / library, unit: 'times faster', atLeast: limits.text },
    ]
  })
}
