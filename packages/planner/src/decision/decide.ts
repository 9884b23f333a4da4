import type { MethodName } from '@strandwise/core'
import { bySeverity, type Finding, filled, findingOf, firstSentence, fuseKindWords, type JobFacts, type PlanValue, planValue } from '../facts/inner.ts'
import { assumed } from '../job/inner.ts'
import { isSoldered, type JudgedWay, jointShape, methodTitles, rankNames } from '../ways/inner.ts'
import { type Decided, decideKind, type Grounds } from './decisionKind.ts'
import type { Decision } from './decisionShapes.ts'
import { decisionWords } from './decisionWords.ts'

/** The decision without its final reading, which the proof adds; and the way chosen. */
export interface Deciding {
  readonly decided: Decided
  readonly decision: Omit<Decision, 'doneWhen'>
}

/** Makes the decision, with text and values. */
export function decide(grounds: Grounds): Deciding {
  const decided = decideKind(grounds)
  const { facts, wire } = grounds
  const { way } = decided
  const to = way?.facts ?? facts
  const judged = way?.method === 'replace-the-run' ? wire.judged : wire.found
  const fetched = way === null ? null : wireToFetch(facts, way)
  return {
    decided,
    decision: {
      kind: decided.kind,
      method: way?.method ?? null,
      says: sentence(grounds, decided, fetched),
      why: decided.why,
      notAsMeant: notAsMeant(grounds, decided),
      wire: fetched,
      fuseA: decided.kind === 'refused' ? null : judged.fuseA,
      lengths: way === null ? [] : lengthsOf(to, way),
      before: decided.kind === 'measure first' ? [] : beforeOf(grounds, decided),
    },
  }
}

/** Length of wire for a new run: feed and return if the wire itself was too thin. */
function runLengthM(facts: JobFacts, way: JudgedWay): number {
  if (way.facts.sizeText !== facts.sizeText || way.facts.material !== facts.material) return facts.outLengthM + facts.returnLengthM
  return facts.onReturn ? facts.returnLengthM : facts.outLengthM
}

function wireToFetch(facts: JobFacts, way: JudgedWay): Decision['wire'] {
  const { sizeText: size, areaMm2, insulationName: insulation } = way.facts
  if (way.method === 'replace-the-run') return { size, areaMm2, insulation, lengthM: runLengthM(facts, way) }
  return way.cut.insertMm === 0 ? null : { size, areaMm2, insulation, lengthM: way.cut.insertMm / 1000 }
}

const terminalWords: Readonly<Record<JobFacts['terminal']['kind'], string>> = {
  'contact-in-housing': 'crimped contact',
  'push-on': 'push-on terminal',
  ring: 'ring terminal',
  fork: 'fork terminal',
  'screw-clamp': 'ferrule in its screw clamp',
  'spring-clamp': 'end in its spring clamp',
  'cable-lug': 'cable lug',
}
/** Name of a new terminal for the lead. */
export const terminalName = (facts: JobFacts): string => terminalWords[facts.terminal.kind]

const metalWords: Readonly<Partial<Record<JobFacts['material'], string>>> = { 'tinned-copper': 'tinned ', 'aluminium-1350': 'aluminium ' }
/** A wire as a shopping item: "16 AWG tinned XLPE wire". */
export const wireText = ({ sizeText, material, insulationName }: JobFacts): string => `${sizeText} ${metalWords[material] ?? ''}${insulationName} wire`

function sentence({ facts, diagnosis, wire }: Grounds, { code, way, why }: Decided, fetched: Decision['wire']): string {
  const to = way?.facts ?? facts
  const at = diagnosis.at ?? { from: 'load-', to: 'source-' }
  return filled(
    decisionWords[code].text,
    {
      values: {
        insert: planValue('to put in', way?.cut.insertMm ?? 0, 'mm'),
        length: planValue('new run', fetched?.lengthM ?? 0, 'm'),
        fuse: planValue(wire.found.fuseA === null ? 'fuse as found' : 'fuse to fit', wire.found.fuseA ?? facts.job.circuit.fuseA ?? 0, 'A'),
      },
      names: {
        kind: fuseKindWords[facts.fuseKind ?? 'blade'],
        title: way === null ? '' : methodTitles[way.method],
        wire: wireText(to),
        terminal: terminalName(to),
        place: facts.terminal.place,
        when: facts.wet ? 'after the next rain or wash, and at the next service' : 'at the next service',
        next:
          firstSentence(diagnosis.next?.finding.text ?? '') ||
          'The readings do not show where the fault is: read volts with the load on over the next stretch.',
        from: at.from,
        to: at.to,
        stop: why.text,
      },
    },
    facts.units,
  )
}

/** Lengths to measure off: cut back, strip, insert, sleeve. */
function lengthsOf(facts: JobFacts, way: JudgedWay): readonly PlanValue[] {
  if (way.method === 'replace-the-run') return [planValue('strip', jointShape('new-crimped-terminal', facts).stripMm, 'mm', assumed.strip.source)]
  const lengths = [
    planValue(way.cut.ends === 2 ? 'cut back each end' : 'cut back', way.cut.eachMm, 'mm'),
    planValue('strip', jointShape(way.method, facts).stripMm, 'mm', isSoldered(way.method) ? undefined : assumed.strip.source),
  ]
  if (way.cut.insertMm > 0) lengths.push(planValue('put in', way.cut.insertMm, 'mm'))
  if (way.covering.cutMm > 0 && way.method !== 'solder-sleeve') lengths.push(planValue('sleeve', way.covering.cutMm, 'mm'))
  return lengths
}

/** Findings already covered by the decision or the steps. */
const notBefore: readonly string[] = [
  'wire-replaced',
  'insert',
  'insert-outside',
  'out-of-zone',
  'long-run',
  'drop-over-ours',
  'limit-passed',
  'support',
  'fuse-slower-than-wire',
  'gives-away',
]

/** Points to settle before beginning: at most two, worst first; among equals a fuse change first. */
function beforeOf({ wire, facts }: Grounds, { way, code }: Decided): readonly Finding[] {
  if (code === 'data-pair') return []
  const judged = way?.method === 'replace-the-run' ? wire.judged : wire.found
  const sections = way === null ? [judged.section] : way.sections
  const fits = code === 'fit-fuse' || code === 'fit-fuse-by-curve'
  const change = fits ? [] : [judged.fuseChange].flatMap((finding) => finding ?? [])
  const others = sections.flatMap((section) => section.findings).filter((finding) => finding.verdict !== 'sound' && !notBefore.includes(finding.code))
  const all = [...new Map([...change, ...others].map((finding) => [finding.code, finding])).values()]
  const first = ['fuse-over-wire', 'overheated', 'fetch-tool', 'no-tool', 'does-not-fit', 'length-unknown']
  const place = ({ code: found }: Finding) => (first.includes(found) ? first.indexOf(found) : first.length)
  return all
    .filter((finding) => !(finding.code === 'overheated' && !wire.suits))
    .filter((finding) => !(fits && finding.code.startsWith('fuse')) && !(facts.duty !== null && finding.code === 'fuse-near-load'))
    .sort((one, other) => bySeverity(one.verdict, other.verdict) || place(one) - place(other))
    .slice(0, 2)
}

/** Why one way ranks below another, by the first differing criterion. */
const rankWords: Readonly<Record<(typeof rankNames)[number], string>> = {
  'forbidden by a rule that binds': 'a rule that binds here forbids it',
  unsafe: 'it is unsafe here',
  unsound: 'it is unsound here',
  'cannot be told': 'it cannot be told whether it holds',
  'something to fetch': 'it needs something that is not at hand',
  'on conditions': 'it is right only on conditions',
  'the whole run': 'it gives up a whole run that can stay',
  'ends to make': 'it has more ends to make',
  joints: 'it has more joints',
  'wire to put in': 'it gives up more of the wire',
  conditions: 'it is right only on more conditions',
  steps: 'it takes more steps',
  'not what was meant': 'another way is as good',
}

function notAsMeant({ facts, ways }: Grounds, { way, kind, code }: Decided): Finding | null {
  const meant = facts.job.intendedMethod
  if (meant === undefined || meant === way?.method || kind === 'refused') return null
  const names = { title: methodTitles[meant satisfies MethodName] }
  if (way === null) {
    const why = code === 'data-pair' ? 'not-by-maker' : kind === 'measure first' ? 'not-yet' : 'not-joined'
    return findingOf(decisionWords, facts.units, why, 'sound', { names })
  }
  const judged = ways().find(({ method }) => method === meant)
  if (judged === undefined) return findingOf(decisionWords, facts.units, 'not-joined', 'sound', { names })
  const { decides } = judged
  if (decides.verdict === 'unsound' || decides.verdict === 'cannot tell') {
    const why = shortReason(decides)
    return findingOf(decisionWords, facts.units, 'not-as-meant', decides.verdict, {
      values: decides.values,
      names: { ...decides.names, ...names, why },
      sources: decides.sources,
      ...(decides.rule === undefined ? {} : { rule: decides.rule }),
    })
  }
  const index = judged.rank.findIndex((value, at) => value !== (way.rank[at] ?? 0))
  const why = rankWords[rankNames[Math.max(0, index)] ?? 'not what was meant']
  return findingOf(decisionWords, facts.units, 'not-as-meant-rank', judged.verdict, { names: { ...names, why } })
}

/** Most words of a reason on the card. */
const shortReasonWords = 20

/** The sentence with a finding's reason; for a prohibition the rule's first sentence, cut at its colon if long. */
function shortReason(finding: Finding): string {
  const sentences = finding.text.split(/(?<=[.!?]) (?=[A-Z0-9])/)
  const sentence = (finding.code === 'forbidden' ? sentences[1] : sentences[0]) ?? finding.text
  if (sentence.split(' ').length <= shortReasonWords) return sentence
  return `${(sentence.split(/[:;]/)[0] ?? sentence).replace(/\.$/, '')}.`
}
