import { insulation, type ProvenanceStatus } from '../../materials/index.ts'
import { type HeatEnd, type HeatEndName, type HeatFinding, type HeatJudgement, type HeatVerdictInput, heatVerdictDefaults } from './verdictTypes.ts'

type Ends = Readonly<Record<HeatEndName, HeatEnd>>

const order = ['unsound', 'cannot tell', 'caution', 'sound'] as const satisfies readonly HeatJudgement[]

/** Sorts findings, worst first; equal verdicts keep their order. */
export function worstFirst(findings: readonly HeatFinding[]): readonly HeatFinding[] {
  return [...findings].sort((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict))
}

/** Finding on wetting and its time. */
export function flowFinding(i: HeatVerdictInput, { favourable, nominal, unfavourable }: Ends): HeatFinding {
  const { soundWithinS, wettedWithinS } = heatVerdictDefaults[i.tool.kind]
  const values = {
    favourableS: favourable.wettedAtS,
    nominalS: nominal.wettedAtS,
    unfavourableS: unfavourable.wettedAtS,
    soundWithinS,
    wettedWithinS,
    favourableSteadyC: favourable.result.steadyC,
    nominalSteadyC: nominal.result.steadyC,
  }
  if (nominal.wettedAtS === null) {
    const never = favourable.wettedAtS === null
    return { code: never ? 'never-wets' : 'only-favourable-wets', verdict: never ? 'unsound' : 'cannot tell', values }
  }
  if (unfavourable.wettedAtS === null) return { code: 'unfavourable-does-not-wet', verdict: 'caution', values }
  const latestS = Math.max(favourable.wettedAtS ?? 0, nominal.wettedAtS, unfavourable.wettedAtS)
  return latestS > soundWithinS ? { code: 'wets-late', verdict: 'caution', values } : { code: 'wets', verdict: 'sound', values }
}

/** A passed limit is unsound if published, else a caution at most. */
function judged(status: ProvenanceStatus, passed: Readonly<Record<HeatEndName, boolean>>): HeatJudgement {
  const { favourable, nominal, unfavourable } = passed
  if (!favourable && !nominal && !unfavourable) return 'sound'
  if (status !== 'published') return 'caution'
  if (favourable && nominal) return 'unsound'
  return nominal ? 'cannot tell' : 'caution'
}

/** Status of a conductor's limit. The table's short exposure limit counts as an estimate, since it is a melting point or short-circuit limit used for a few seconds' heat at the edge. */
function statusOf(i: HeatVerdictInput, conductor: number): ProvenanceStatus {
  return i.limitStatuses?.[conductor] ?? (i.conductors[conductor]?.insulationLimitC === undefined ? 'derived' : 'published')
}

function limitOf(i: HeatVerdictInput, conductor: number): number | null {
  const side = i.conductors[conductor]
  if (side?.insulationLimitC !== undefined) return side.insulationLimitC
  return side?.insulation === undefined ? null : (insulation(side.insulation).shortExposureC?.low ?? null)
}

/** Peak of the copper or the outer face, whichever is hotter. */
const peakOf = (end: HeatEnd, conductor: number): number =>
  Math.max(end.result.insulationPeakC[conductor] ?? -Infinity, end.result.insulationOuterPeakC[conductor] ?? -Infinity)

/** Findings on each insulation's edge; conductors with equal results share one. */
export function limitFindings(i: HeatVerdictInput, ends: Ends): readonly HeatFinding[] {
  const found: HeatFinding[] = []
  i.conductors.forEach((_, conductor) => {
    const limitC = limitOf(i, conductor)
    if (limitC === null) return
    const status = statusOf(i, conductor)
    const peaks = {
      favourable: peakOf(ends.favourable, conductor),
      nominal: peakOf(ends.nominal, conductor),
      unfavourable: peakOf(ends.unfavourable, conductor),
    }
    const verdict = judged(status, { favourable: peaks.favourable > limitC, nominal: peaks.nominal > limitC, unfavourable: peaks.unfavourable > limitC })
    const values = {
      conductor,
      limitC,
      status,
      favourableC: peaks.favourable,
      nominalC: peaks.nominal,
      unfavourableC: peaks.unfavourable,
      nominalExposureS: ends.nominal.result.insulationExposureS[conductor] ?? 0,
    }
    const twin = found.some((other) => other.values.limitC === limitC && other.values.status === status && other.values.nominalC === peaks.nominal)
    if (!twin) found.push({ code: verdict === 'sound' ? 'limit-kept' : 'limit-passed', verdict, values })
  })
  return found
}

/** Finding on the tube's short-time limit before the joint is wetted; in the whole run if it does not wet. */
export function tubeFindings(i: HeatVerdictInput, ends: Ends): readonly HeatFinding[] {
  const limitC = i.tube?.shortLimitC
  if (limitC === undefined) return []
  const passedAt = ({ result, wettedAtS }: HeatEnd): number | null => {
    const at = 'tubeShortLimitAtS' in result ? result.tubeShortLimitAtS : null
    return at !== null && at < (wettedAtS ?? Infinity) ? at : null
  }
  const at = { favourable: passedAt(ends.favourable), nominal: passedAt(ends.nominal), unfavourable: passedAt(ends.unfavourable) }
  const status = i.tubeLimitStatus ?? 'from memory'
  const verdict = judged(status, { favourable: at.favourable !== null, nominal: at.nominal !== null, unfavourable: at.unfavourable !== null })
  if (verdict === 'sound') return []
  const peakC = 'tubeOuterPeakC' in ends.nominal.result ? ends.nominal.result.tubeOuterPeakC : null
  return [
    {
      code: 'tube-limit-passed',
      verdict,
      values: { limitC, status, favourableS: at.favourable, nominalS: at.nominal, unfavourableS: at.unfavourable, nominalPeakC: peakC },
    },
  ]
}
