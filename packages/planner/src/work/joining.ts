import { heatVerdictDefaults } from '@strandwise/core'
import { terminalName } from '../decision/inner.ts'
import { clampedKinds, figure, type PlanStep, type PlanValue, planValue, rule, studKinds } from '../facts/inner.ts'
import { assumed } from '../job/inner.ts'
import { isSoldered, jointShape, methodTitles, solderFill } from '../ways/inner.ts'
import { samplePull } from './samplePull.ts'
import { step } from './step.ts'
import { torqueWords } from './torque.ts'
import type { Mending } from './worked.ts'

/** Steps of joining: strip, join, solder or crimp. */
export function joining(work: Mending): readonly PlanStep[] {
  const { to, way } = work
  if (to.job.circuit.kind === 'thermocouple') return [step(to.units, 'polarity'), step(to.units, 'thermocouple'), step(to.units, 'cover-legs')]
  if (isSoldered(way.method)) return soldering(work)
  return way.method === 'new-crimped-terminal' ? terminal(work) : crimping(work)
}

/** A sample first, pulled to destruction: it tests this tool with this wire and barrel. */
export function sampleStep({ to }: Mending): PlanStep {
  const pull = samplePull(to)
  if (pull === null) return step(to.units, 'sample-no-table')
  return step(to.units, 'sample', { values: { pull: planValue('sample holds at least', pull.forceN, 'N', pull.source) } })
}

const stripped = ({ to, way }: Mending) => planValue('strip', jointShape(way.method, to).stripMm, 'mm', assumed.strip.source)

const delay = () => planValue('crimp within', figure('me-al-clean-time', 'maxDelayS'), 's', rule('me-al-clean-time').source)
export const isAluminium = ({ to }: Mending): boolean => to.material === 'aluminium-1350'

/** Aluminium is brushed and pasted between stripping and crimping. */
export const aluminiumCrimp = (work: Mending, strip: PlanValue, what: string): PlanStep =>
  step(work.to.units, 'aluminium', { values: { strip, delay: delay() }, names: { what } })

/** The same for a clamp. */
export const aluminiumClamp = (work: Mending, strip: PlanValue): PlanStep => step(work.to.units, 'aluminium-clamp', { values: { strip, delay: delay() } })

function crimping(work: Mending): readonly PlanStep[] {
  const { to, way } = work
  const many = way.cut.splices === 2
  const title = methodTitles[way.method].replace('crimped and sealed', 'sealed').replace('crimped ', '')
  const what = many ? `both ${title}s` : `the ${title}`
  if (isAluminium(work)) return [sampleStep(work), aluminiumCrimp(work, stripped(work), what)]
  return [
    sampleStep(work),
    step(to.units, 'strip-crimp', {
      values: { strip: stripped(work) },
      names: { what, tool: many ? 'the ratchet tool made for them' : 'the ratchet tool made for it' },
    }),
  ]
}

function terminal(work: Mending): readonly PlanStep[] {
  const { to, way } = work
  const { kind } = to.terminal
  const values = { strip: stripped(work) }
  const spliced = way.cut.splices === 0 ? [] : [step(to.units, 'splice-insert', { names: { splices: 'sealed butt splice of the inserted length' } })]
  if (isAluminium(work)) {
    const strip = stripped(work)
    if (clampedKinds.includes(kind)) return [aluminiumClamp(work, strip), ...spliced]
    return [sampleStep(work), aluminiumCrimp(work, strip, `the new ${terminalName(to)}`), ...spliced]
  }
  if (kind === 'spring-clamp') return [step(to.units, 'strip-spring', { values }), ...spliced]
  if (clampedKinds.includes(kind)) return [step(to.units, 'strip-clamp', { values }), ...spliced]
  return [sampleStep(work), step(to.units, 'strip-crimp-terminal', { values, names: { terminal: terminalName(to) } }), ...spliced]
}

/** Unsound heating gets no solder step, as the solder would not flow. */
function soldering(work: Mending): readonly PlanStep[] {
  const { to, way } = work
  const shape = jointShape(way.method, to, way.heat?.index ?? 0)
  const values = {
    strip: planValue('strip', shape.stripMm, 'mm', assumed.ours),
    overlap: planValue('overlap', shape.overlapMm, 'mm', assumed.ours),
    turns: planValue('turns each', figure('jg-lineman', 'minTurnsEach'), '', rule('jg-lineman').source),
  }
  const laid = step(to.units, way.method === 'soldered-lineman-splice' ? 'wind' : way.method === 'solder-sleeve' ? 'lay-sleeve' : 'lay-lap', { values })
  const heating = way.sections.find(({ id }) => id === 'heating')
  if (heating?.verdict === 'unsound' || way.heat === null) return [laid]
  return [laid, ...clipping(work), heated(work)]
}

/** A clip if the edge gets hot, or if the job's tool comes with one. */
function clipping({ to, way }: Mending): readonly PlanStep[] {
  if (way.method === 'solder-sleeve' || way.heat === null) return []
  const { tool, heat } = way.heat
  const hot = heat.findings.some(({ code, verdict }) => code === 'limit-passed' && verdict !== 'sound')
  return hot || (tool.kind === 'iron' && tool.clipMm !== undefined) ? [step(to.units, 'clip')] : []
}

function heated({ to, way }: Mending): PlanStep {
  const tool = way.heat?.tool
  const { nominal, unfavourable } = way.heat?.heat.ends ?? {}
  const kind = tool?.kind ?? 'iron'
  const fill = solderFill(way.method, to)
  const values = {
    solder: planValue('solder wire', fill.wireMm, 'mm'),
    wets: planValue('wetted after', nominal?.wettedAtS ?? heatVerdictDefaults[kind].wettedWithinS, 's'),
    lift: planValue('lift the tool at', nominal?.toolOffS ?? heatVerdictDefaults[kind].soundWithinS, 's'),
    most: planValue('stop at', Math.max(unfavourable?.toolOffS ?? 0, heatVerdictDefaults[kind].wettedWithinS), 's'),
  }
  return step(to.units, way.method === 'solder-sleeve' ? 'heat-sleeve' : 'solder', { values, names: { tool: tool?.name ?? 'tool', alloy: fill.alloy } })
}

/** Removing the old terminal. */
export function releasing({ to }: Mending): PlanStep {
  const { kind } = to.terminal
  const names = { terminal: terminalName(to) }
  if (kind === 'contact-in-housing') return step(to.units, 'release-contact')
  if (kind === 'push-on') return step(to.units, 'release-push-on')
  return studKinds.includes(kind) ? step(to.units, 'release-stud', { names }) : step(to.units, 'release-clamp')
}

export function seating({ to }: Mending): PlanStep {
  const { kind } = to.terminal
  if (kind === 'contact-in-housing') return step(to.units, 'seat-contact')
  if (kind === 'push-on') return step(to.units, 'seat-push-on')
  if (kind === 'spring-clamp') return step(to.units, 'seat-spring')
  if (kind === 'screw-clamp') return step(to.units, 'seat-clamp')
  return step(to.units, 'seat-stud', { names: { terminal: terminalName(to), torque: torqueWords(to) } })
}
