import { readFileSync } from 'node:fs'
import { remadeFilms } from './films.ts'
import { heatDifferences } from './heat.ts'
import { remadeHeatJoint } from './heatJoint.ts'
import { remadeJointService } from './jointService.ts'
import { remadeAfterC, remadeSteadyA, remadeSteadyC } from './wire.ts'

/** Solves the golden cases of references/data independently of the library, and prints the differences from their golden figures. */

interface Case {
  readonly id: string
  readonly model?: string
  /** Inputs differ by model; each solver casts them. */
  readonly inputs: never
  readonly expected: Readonly<Record<string, unknown>>
}
const parsed = (name: string): unknown => JSON.parse(readFileSync(new URL(`../data/${name}.json`, import.meta.url), 'utf8'))
const read = (name: string): readonly Case[] => parsed(name) as readonly Case[]
/** Joints without given films, with their figures by the films' rule. */
const films = (): readonly Case[] =>
  (parsed('heatingFilms') as { readonly joints: readonly { readonly id: string; readonly inputs: never; readonly rule: Case['expected'] }[] }).joints.map(
    ({ id, inputs, rule }) => ({ id, inputs, expected: rule }),
  )

/** Largest differences between recomputed and golden numbers of the same name: relative for times, in kelvin for temperatures. */
function differences(remade: object, golden: Readonly<Record<string, unknown>>): { readonly share: number; readonly kelvin: number } {
  let [share, kelvin] = [0, 0]
  const look = (ours: unknown, theirs: unknown, isShare: boolean): void => {
    if (Array.isArray(ours)) for (const [k, one] of ours.entries()) look(one, (theirs as readonly unknown[])[k], isShare)
    else if (ours === null || theirs === null || typeof theirs !== 'number') {
      if (ours !== theirs) share = Number.POSITIVE_INFINITY
    } else if (isShare) share = Math.max(share, Math.abs((ours as number) - theirs) / Math.max(Math.abs(theirs), 1e-12))
    else kelvin = Math.max(kelvin, Math.abs((ours as number) - theirs))
  }
  for (const [name, ours] of Object.entries(remade)) look(ours, golden[name], /(S|A|W)$/.test(name))
  return { share, kelvin }
}

function wire({ model, inputs, expected }: Case): object | null {
  if (model === 'wire-steady-temperature') return expected.hasSteadyState === true ? { conductorC: remadeSteadyC(inputs) } : null
  if (model === 'wire-steady-current') return expected.allowed === false ? null : { currentA: remadeSteadyA(inputs) }
  return { temperatureC: remadeAfterC(inputs) }
}

/** Solver of each file of golden cases, and its expected agreement. */
const sets: readonly {
  readonly file: string
  readonly cases?: () => readonly Case[]
  readonly remake: (one: Case) => object | null
  readonly share: number
  readonly kelvin: number
}[] = [
  { file: 'thermalWire', remake: wire, share: 1e-9, kelvin: 1e-5 },
  {
    file: 'thermalJointService',
    remake: ({ inputs, expected }: Case) => (expected.hasSteadyState === true ? remadeJointService(inputs) : null),
    share: 1e-9,
    kelvin: 1e-7,
  },
  { file: 'thermalHeatJoint', remake: ({ inputs }: Case) => remadeHeatJoint(inputs), share: 5e-4, kelvin: 0.03 },
  { file: 'heatingFilms', cases: films, remake: ({ inputs }: Case) => remadeFilms(inputs), share: 1e-4, kelvin: 0.01 },
]

let missed = 0
for (const { file, cases = () => read(file), remake, share, kelvin } of sets) {
  let [worstShare, worstKelvin, count] = [0, 0, 0]
  for (const one of cases()) {
    const remade = remake(one)
    if (remade === null) continue
    const found = differences(remade, one.expected)
    count += 1
    worstShare = Math.max(worstShare, found.share)
    worstKelvin = Math.max(worstKelvin, found.kelvin)
    if (found.share > share || found.kelvin > kelvin) {
      missed += 1
      process.stdout.write(`${file} ${one.id}: ${found.share.toExponential(1)} of a time, current or flow, ${found.kelvin.toExponential(1)} K\n`)
    }
  }
  process.stdout.write(
    `${file}: ${count} cases solved again, within ${worstShare.toExponential(1)} (allowed ${share}) and ${worstKelvin.toExponential(1)} K (allowed ${kelvin})\n`,
  )
}
const heat = heatDifferences()
const heatAllowed = { share: 1e-9, percent: 1e-7 }
if (heat.share > heatAllowed.share || heat.percent > heatAllowed.percent) missed += 1
process.stdout.write(
  `goldenHeat: ${heat.count} figures computed again, within ${heat.share.toExponential(1)} (allowed ${heatAllowed.share}), the distances of the air fits within ${heat.percent.toExponential(1)} % (allowed ${heatAllowed.percent})\n`,
)
process.exitCode = missed === 0 ? 0 : 1
