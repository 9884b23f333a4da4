import type { InsulationName, Interval, MetalName, MethodName, Provenance, SleeveMaterialName } from './names.ts'

// The public contract: What a rule looks at.

export interface Sleeve {
  readonly name?: string
  readonly material: SleeveMaterialName
  readonly suppliedInsideMm: number
  readonly recoveredInsideMm: number
  readonly recoveredWallMm: number
  readonly longitudinalChange: Interval
  readonly adhesiveWallMm?: number
}

export type CircuitKind =
  | 'power'
  | 'motor'
  | 'lighting'
  | 'signal'
  | 'data-pair'
  | 'thermocouple'
  | 'safety'
  | 'airbag'
  | 'high-voltage'
  | 'mains'
  | 'fuel-or-explosive'

export interface MethodContext {
  readonly circuit: CircuitKind
  readonly location: 'dry' | 'damp' | 'splash' | 'submerged'
  readonly vibration: 'none' | 'some' | 'strong'
  readonly flexes: boolean
  readonly hottestC: number
  readonly coldestC: number
  readonly currentA: number
  readonly areaMm2: number
  readonly metals: readonly [MetalName, MetalName]
  readonly insulation: InsulationName
  readonly accessMm?: number
  readonly distanceToTerminationMm?: number
  readonly flammableVapour: boolean
  readonly tools: readonly ('iron' | 'hot-air' | 'crimp-tool' | 'terminal-die')[]
  readonly reversible?: boolean
  readonly rules?: readonly ('small-craft' | 'aircraft' | 'road-vehicle' | 'space' | 'none')[]
}

export type SectionId = 'readings' | 'wire-and-protection' | 'cut-back' | 'method' | 'joint' | 'heating' | 'covering' | 'strain-relief' | 'proof'

export interface PracticeRule {
  readonly id: string
  readonly decides: SectionId | 'cautions'
  readonly statement: string
  readonly conditions: readonly {
    readonly field: string
    readonly op: '=' | '!=' | '<' | '<=' | '>' | '>='
    readonly values: readonly (string | number | boolean)[]
  }[]
  readonly effect: 'forbids' | 'requires' | 'favours' | 'limits' | 'informs'
  readonly methods: readonly MethodName[]
  readonly values: Readonly<Record<string, unknown>>
  readonly source: Provenance
  readonly conflictsWith?: readonly string[]
}
