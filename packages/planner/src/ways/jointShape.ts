import { knownNominal, type MethodName, type SolderName, solder, solderVolumeMm3, solderWireLengthMm } from '@strandwise/core'
import { figure, type JobFacts } from '../facts/inner.ts'
import { assumed } from '../job/inner.ts'
import { solderedMethods } from './methodTitles.ts'

/** Diameter of the common solder wire in which solder is measured out. */
export const solderWireMm = 1

/** Dimensions of a joint: width and length, stripping, and wire consumed. */
interface JointShape {
  /** Bare length or barrel, from one edge of insulation to the other. */
  readonly lengthMm: number
  /** Width of its widest part, without a sleeve. */
  readonly widthMm: number
  readonly stripMm: number
  /** Length of wire that it consumes. */
  readonly consumesMm: number
  /** Overlap of the soldered wires; 0 for a crimp. */
  readonly overlapMm: number
  /** Bare wire between solder and insulation; 0 for a crimp. */
  readonly stubMm: number
}

/** Diameters of the thinner and the thicker conductor. */
export function conductorsMm(facts: JobFacts): {
  readonly thinMm: number
  readonly thickMm: number
  readonly outsideMm: { readonly low: number; readonly high: number }
} {
  const d = facts.conductorDiameterMm
  const other = facts.beyond?.conductorDiameterMm ?? d
  const outside = facts.beyond?.outsideMm ?? facts.outsideMm
  return {
    thinMm: Math.min(d, other),
    thickMm: Math.max(d, other),
    outsideMm: { low: Math.min(facts.outsideMm, outside), high: Math.max(facts.outsideMm, outside) },
  }
}

/** Bare wire between solder and insulation: as given with the tool, else about one outside diameter. */
function stubMm(facts: JobFacts, tool = 0): number {
  return facts.job.tools?.[tool]?.stubMm ?? facts.outsideMm
}

/** Dimensions of a joint by this method. */
export function jointShape(method: MethodName, facts: JobFacts, tool = 0): JointShape {
  const { thinMm, thickMm, outsideMm } = conductorsMm(facts)
  if (method === 'soldered-lap' || method === 'solder-sleeve') {
    const overlapMm = assumed.overlapDiameters.value * thinMm
    const stub = stubMm(facts, tool)
    return { lengthMm: overlapMm + 2 * stub, widthMm: thinMm + thickMm, stripMm: overlapMm + stub, consumesMm: overlapMm, overlapMm, stubMm: stub }
  }
  if (method === 'soldered-lineman-splice') return wrapped(thinMm, thickMm, stubMm(facts, tool))
  if (method === 'new-crimped-terminal')
    return { lengthMm: terminalStripMm(facts), widthMm: outsideMm.high, stripMm: terminalStripMm(facts), consumesMm: 0, overlapMm: 0, stubMm: 0 }
  // A common uninsulated barrel is about a millimetre wider than the wire's insulation.
  const barrelMm = assumed.barrelMm.value
  return { lengthMm: barrelMm, widthMm: outsideMm.high + 1, stripMm: assumed.stripOfBarrel.value * barrelMm, consumesMm: 0, overlapMm: 0, stubMm: 0 }
}

/** Each end wrapped round the other: a turn goes round both wires, and is as wide as its wire. */
function wrapped(thinMm: number, thickMm: number, stub: number): JointShape {
  const turns = figure('jg-lineman', 'minTurnsEach')
  const windsMm = turns * thickMm
  const stripMm = turns * Math.PI * (thinMm + thickMm) + windsMm + thickMm + stub
  const lengthMm = 2 * (windsMm + stub + thickMm)
  return { lengthMm, widthMm: thinMm + 2 * thickMm, stripMm, consumesMm: 2 * stripMm - lengthMm, overlapMm: 2 * windsMm, stubMm: stub }
}

/** Strip length for the terminal's barrel or clamp: the maker's, else this. Common practice. */
function terminalStripMm({ conductorDiameterMm: d, terminal }: JobFacts): number {
  if (terminal.kind === 'contact-in-housing' || terminal.kind === 'push-on') return Math.max(4, 2.5 * d)
  if (terminal.kind === 'screw-clamp' || terminal.kind === 'spring-clamp') return Math.max(8, 3 * d)
  return Math.max(6, 2 * d)
}

/** Solder of a joint: alloy, volume, and length of solder wire. */
interface SolderFill {
  readonly alloy: SolderName
  readonly alloyOhmM: number
  readonly volumeMm3: number
  /** Inputs of the volume. */
  readonly volumeOf: Parameters<typeof solderVolumeMm3>[0]
  readonly wireMm: number
}

/** The alloy used: the sleeve's ring, else the first of the job's solders, else tin-lead. */
export function alloyFor(method: MethodName, facts: JobFacts): SolderName {
  if (method === 'solder-sleeve' && facts.job.solderSleeve !== undefined) return facts.job.solderSleeve.ringAlloy
  return facts.job.solders?.[0] ?? 'Sn60Pb40'
}

export function solderFill(method: MethodName, facts: JobFacts): SolderFill {
  const { thinMm, thickMm } = conductorsMm(facts)
  const { overlapMm } = jointShape(method, facts)
  const name = alloyFor(method, facts)
  const alloy = solder(name)
  // Solder also fills the voids between strands of both wires.
  const void1Mm2 = Math.max(0, (Math.PI / 4) * facts.conductorDiameterMm ** 2 - facts.areaMm2)
  const void2Mm2 = facts.beyond === null ? void1Mm2 : Math.max(0, (Math.PI / 4) * facts.beyond.conductorDiameterMm ** 2 - facts.beyond.areaMm2)
  const volumeOf = { overlapMm, diametersMm: [thinMm, thickMm], strandVoidMm2: void1Mm2 + void2Mm2 } as const
  const volumeMm3 = solderVolumeMm3(volumeOf)
  return {
    alloy: name,
    alloyOhmM: knownNominal(alloy, 'resistivityOhmM', alloy.resistivityOhmM),
    volumeMm3,
    volumeOf,
    wireMm: Math.ceil(solderWireLengthMm({ volumeMm3, wireDiameterMm: solderWireMm })),
  }
}

export const isSoldered = (method: MethodName): boolean => solderedMethods.includes(method)
