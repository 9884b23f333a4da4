import type { InsulationName, MetalName } from '../materials/index.ts'

/** Repair methods; every method rule names some of these. */
export type MethodName =
  | 'soldered-lap'
  | 'soldered-lineman-splice'
  | 'crimped-butt-splice'
  | 'crimped-and-sealed-butt-splice'
  | 'solder-sleeve'
  | 'new-crimped-terminal'
  | 'replace-the-run'

/** What the wire feeds. A plan refuses the last five; for a data pair it gives a caution at best and defers to the maker's procedure. */
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

/** Facts that decide the method: the circuit, the place, the wire, the tools at hand and the rule sets that the job names. */
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
