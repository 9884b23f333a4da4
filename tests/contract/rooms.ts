import type { CircuitRoom, MeterRoom, ProtectionRoom } from './circuits.ts'
import type { CrimpRoom, HeatingRoom, JointRoom, RoutingRoom, SleeveRoom, SolderRoom, SuitabilityRoom } from './joints.ts'
import type { Planner, PlannerInDepth } from './planner.ts'
import type { AmpacityRoom, ConductorRoom, HeatRoom, RulesRoom, TablesRoom } from './wires.ts'
import type { Working } from './working.ts'

/** The contract by room of core, then by package. */
export interface Rooms {
  readonly tables: TablesRoom
  readonly rules: RulesRoom
  readonly heat: HeatRoom
  readonly conductor: ConductorRoom
  readonly ampacity: AmpacityRoom
  readonly circuit: CircuitRoom
  readonly protection: ProtectionRoom
  readonly meter: MeterRoom
  readonly joint: JointRoom
  readonly heating: HeatingRoom
  readonly solder: SolderRoom
  readonly crimp: CrimpRoom
  readonly sleeve: SleeveRoom
  readonly routing: RoutingRoom
  readonly suitability: SuitabilityRoom
  readonly working: Working
  readonly planner: Planner
  readonly plannerInDepth: PlannerInDepth
}

/** A method's parameters are compared both ways by the compiler, a field's only the safe way: so a function that asks for more than the contract gives is caught. */
export type Strict<T> = { readonly [K in keyof T]: T[K] extends (...inputs: infer I) => infer O ? (...inputs: I) => O : T[K] }
