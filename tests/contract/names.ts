// The public contract: Names, provenance, errors.

export type MetalName =
  | 'annealed-copper'
  | 'hard-drawn-copper'
  | 'tinned-copper'
  | 'copper-clad-aluminium'
  | 'aluminium-1350'
  | 'tin'
  | 'brass-cuzn30'
  | 'brass-cuzn37'
  | 'phosphor-bronze-cusn5'
  | 'low-carbon-steel'
  | 'nickel'
  | 'silver'

export type SolderName = 'Sn63Pb37' | 'Sn60Pb40' | 'Sn50Pb50' | 'SAC305' | 'Sn99.3Cu0.7' | 'Sn96.5Ag3.5' | 'Sn95Ag5' | 'Sn42Bi58' | 'In52Sn48'

export type InsulationName = 'PVC' | 'XLPE' | 'ETFE' | 'PTFE' | 'FEP' | 'silicone' | 'PA' | 'PE' | 'TPE'

export type SleeveMaterialName = 'polyolefin' | 'polyolefin-adhesive-lined' | 'PVC' | 'PVDF' | 'PTFE' | 'FEP' | 'fluoroelastomer' | 'silicone' | 'PET'

export type MethodName =
  | 'soldered-lap'
  | 'soldered-lineman-splice'
  | 'crimped-butt-splice'
  | 'crimped-and-sealed-butt-splice'
  | 'solder-sleeve'
  | 'new-crimped-terminal'
  | 'replace-the-run'

export type ProvenanceStatus = 'published' | 'common practice' | 'from memory' | 'derived'

export interface Provenance {
  readonly status: ProvenanceStatus
  readonly source: string
  readonly edition?: string
  readonly clause?: string
}

export interface Interval {
  readonly low: number
  readonly high: number
}

export type Correlation = 'churchill-chu' | 'morgan'

export interface Reason {
  readonly code: string
  readonly parameter?: string
  readonly value?: number
  readonly limit?: number
}

export interface MaterialValue extends Interval {
  readonly nominal: number
  readonly provenance: Provenance
}

export interface DomainErrorShape extends RangeError {
  readonly name: 'DomainError'
  readonly code: string
  readonly parameter: string
  readonly value: unknown
  readonly allowed: string
  readonly source?: string
}

export interface UnknownEntryErrorShape extends RangeError {
  readonly name: 'UnknownEntryError'
  readonly code: string
  readonly parameter: string
  readonly value: unknown
  readonly known: readonly string[]
}

export interface ConvergenceErrorShape extends Error {
  readonly name: 'ConvergenceError'
  readonly code: string
  readonly residual: number
}

export interface NoSteadyStateErrorShape extends RangeError {
  readonly name: 'NoSteadyStateError'
  readonly code: string
  readonly cause: 'runaway' | 'ceiling'
  readonly largestCurrentA: number
  readonly ceilingC: number
}

export type CoreErrorName = 'DomainError' | 'UnknownEntryError' | 'ConvergenceError' | 'NoSteadyStateError'

export interface Band extends Interval {
  readonly models: readonly { readonly correlation: Correlation; readonly value: number }[]
}

export type ProofVerdict = 'passes' | 'fails' | 'cannot tell'
