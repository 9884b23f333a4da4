import { type HeatChange, heatJointAdviceDefaults, type MethodName, type SolderName, solder, solders } from '@strandwise/core'
import { parseQuantity } from '@strandwise/working/quantity'
import { type JobFacts, type PlanValue, planValue, printed } from '../facts/inner.ts'
import type { JobTool } from '../job/index.ts'
import { toolRanges } from '../job/inner.ts'
import { heatObstacles } from './heatObstacles.ts'
import type { ToolHeat } from './heatTool.ts'
import { alloyFor, jointShape } from './jointShape.ts'

/** A change as the plan prints it, and the job with what a reader would enter: more than one where two units print it. */
export interface Position {
  readonly text: string
  /** null where it is not a number. */
  readonly to: PlanValue | null
  readonly entered: readonly { readonly facts: JobFacts; readonly tool: JobTool }[]
}

/** A setting that can be advised, with its positions from the present one outwards. */
export interface Lever {
  readonly name: HeatChange['lever']
  /** Where it stands; null where it has no number. */
  readonly from: number | null
  readonly positions: readonly Position[]
}

type Slider = keyof typeof sliders

/** Numbers of a tool: their step, unit and kind, and the words of a change. Whole tens of °C are whole degrees Fahrenheit as well. */
const sliders = {
  setC: { lever: 'setC', step: 10, unit: '°C', kind: 'temperatureC', before: 'a tip setting of', after: '' },
  powerW: { lever: 'maximumW', step: 5, unit: 'W', kind: 'powerW', before: 'a tool of', after: '' },
  airC: { lever: 'airC', step: 10, unit: '°C', kind: 'temperatureC', before: 'air of', after: ' at the joint' },
  airSpeedMPerS: { lever: 'airSpeedMPerS', step: 0.5, unit: 'm/s', kind: 'speedMPerS', before: 'an air speed of', after: '' },
  stubMm: { lever: 'stubMm', step: 0.5, unit: 'mm', kind: 'lengthMm', before: 'bare wire to the insulation of', after: '' },
  clipMm: { lever: 'clip', step: 0.5, unit: 'mm', kind: 'lengthMm', before: 'a metal clip on the bare wire,', after: ' from the solder' },
} as const

/** The job with another tool in the place of this one. */
function withTool(facts: JobFacts, index: number, tool: JobTool): { readonly facts: JobFacts; readonly tool: JobTool } {
  const tools = (facts.job.tools ?? []).map((other, n) => (n === index ? tool : other))
  return { facts: { ...facts, job: { ...facts.job, tools } }, tool }
}

/** The numbers that a reader takes from the print, in the setting's own unit. */
function asPrinted(value: number, slider: Slider, units: JobFacts['units']): readonly number[] {
  const { unit, kind } = sliders[slider]
  const systems = units === 'both' ? (['metric', 'inch'] as const) : [units]
  return [...new Set(systems.map((system) => parseQuantity(printed(value, unit, system), kind)))]
}

/** What workshops have and a job can say. */
function reach(slider: Slider): { readonly low: number; readonly high: number } {
  const { low, high } = heatJointAdviceDefaults.limits[sliders[slider].lever]
  const { from, to } = toolRanges[slider]
  return { low: Math.max(low, from), high: Math.min(high, to) }
}

/** A setting moved in whole steps from where it stands to its end. */
function slide(facts: JobFacts, { tool, index }: ToolHeat, slider: Slider, from: number, end: number): Lever {
  const { lever, step, unit, before, after } = sliders[slider]
  const up = end > from
  const range = reach(slider)
  const positions: Position[] = []
  const last = Math.floor(Math.abs(end - from) / step) + 1
  const first = up ? Math.floor(from / step) : Math.ceil(from / step)
  for (let n = 1; n <= last; n += 1) {
    const to = step * (first + (up ? n : -n))
    const values = asPrinted(to, slider, facts.units)
    if (values.some((value) => value < range.low || value > range.high || (up ? value <= from || value > end : value >= from || value < end))) continue
    const text = `${before} ${printed(to, unit, facts.units)}${after}`
    const entered = values.map((value) => withTool(facts, index, { ...tool, [slider]: value } as JobTool))
    positions.push({ text, to: planValue(lever, to, unit), entered })
  }
  return { name: lever, from, positions }
}

/** A setting towards its highest or lowest position. */
export function towards(facts: JobFacts, heat: ToolHeat, slider: 'setC' | 'powerW' | 'airC' | 'airSpeedMPerS', end: 'low' | 'high'): Lever {
  const lever = sliders[slider].lever
  const from = (heat.inputs.tool as Readonly<Partial<Record<typeof lever, number>>>)[lever]
  return from === undefined ? { name: lever, from: null, positions: [] } : slide(facts, heat, slider, from, reach(slider)[end])
}

/** By workmanship, at most two outside diameters of bare wire. */
const mostStubDiameters = 2
/** Half the clip's width: least distance between its middle and the insulation. */
const clipMarginMm = 1

/** More bare wire to the insulation. */
export function longerStub(facts: JobFacts, method: MethodName, heat: ToolHeat): Lever {
  const outsideMm = Math.max(...heat.inputs.conductors.map((side) => side.insulationOutsideMm))
  return slide(facts, heat, 'stubMm', jointShape(method, facts, heat.index).stubMm, mostStubDiameters * outsideMm)
}

/** A clip on the bare wire, or the present one moved, nearer to the joint step by step; a stream's tool has none. */
export function nearerClip(facts: JobFacts, method: MethodName, heat: ToolHeat): Lever {
  const { tool, index } = heat
  if (tool.kind !== 'iron') return { name: 'clip', from: null, positions: [] }
  const bareMm = jointShape(method, facts, index).stubMm - clipMarginMm
  const from = Math.min(tool.clipMm ?? Number.POSITIVE_INFINITY, bareMm + sliders.clipMm.step)
  const lever = slide(facts, heat, 'clipMm', from, reach('clipMm').low)
  return { ...lever, from: null, positions: lever.positions.filter(({ to }) => to !== null && to.value <= bareMm) }
}

/** The present clip taken off. */
export function noClip(facts: JobFacts, { tool, index }: ToolHeat): Lever {
  if (tool.kind !== 'iron' || tool.clipMm === undefined) return { name: 'clip', from: null, positions: [] }
  const { clipMm: _clip, ...bare } = tool
  return { name: 'clip', from: null, positions: [{ text: 'no clip on the wire', to: null, entered: [withTool(facts, index, bare)] }] }
}

/** Other alloys, each a lever of its own, the one with the nearest liquidus first. */
export function otherAlloys(facts: JobFacts, method: MethodName, { tool }: ToolHeat): readonly Lever[] {
  const present = alloyFor(method, facts)
  const away = (name: SolderName): number => Math.abs(solder(name).liquidusC.nominal - solder(present).liquidusC.nominal)
  return (Object.keys(solders) as SolderName[])
    .filter((name) => name !== present)
    .sort((one, other) => away(one) - away(other))
    .map((name) => ({ name, facts: { ...facts, job: { ...facts.job, solders: [name] } } }))
    .filter((other) => heatObstacles(other.facts, method).length === 0)
    .map((other) => ({ name: 'alloy', from: null, positions: [{ text: `the alloy ${other.name}`, to: null, entered: [{ facts: other.facts, tool }] }] }))
}
