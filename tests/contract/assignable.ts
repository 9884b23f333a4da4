import * as core from '@strandwise/core'
import * as ampacity from '@strandwise/core/ampacity'
import * as circuit from '@strandwise/core/circuit'
import * as conductor from '@strandwise/core/conductor'
import * as crimp from '@strandwise/core/crimp'
import * as heat from '@strandwise/core/heat'
import * as heating from '@strandwise/core/heating'
import * as joint from '@strandwise/core/joint'
import * as meter from '@strandwise/core/meter'
import * as protection from '@strandwise/core/protection'
import * as routing from '@strandwise/core/routing'
import * as rules from '@strandwise/core/rules'
import * as sleeve from '@strandwise/core/sleeve'
import * as solder from '@strandwise/core/solder'
import * as suitability from '@strandwise/core/suitability'
import * as tables from '@strandwise/core/tables'
import * as planner from '@strandwise/planner'
import * as working from '@strandwise/working'
import type { built } from './built.ts'
import type { ConvergenceErrorShape, DomainErrorShape, NoSteadyStateErrorShape, UnknownEntryErrorShape } from './names.ts'
import type { Rooms, Strict } from './rooms.ts'

/** What a room must offer by now. */
type Built<R extends keyof Rooms> = Strict<Pick<Rooms[R], Extract<(typeof built)[R][number], keyof Rooms[R]>>>
/** A generic function would lose its type parameter in Strict; it is compared as it stands. */
type BuiltWorking = Strict<Pick<Rooms['working'], Exclude<(typeof built)['working'][number], 'propagate'>>> &
  Pick<Rooms['working'], Extract<(typeof built)['working'][number], 'propagate'>>

/** Compiles only while every built name has the contract's signature; the test beside looks at the same names when they run. */
export const offered = {
  ampacity: ampacity satisfies Built<'ampacity'>,
  circuit: circuit satisfies Built<'circuit'>,
  conductor: conductor satisfies Built<'conductor'>,
  crimp: crimp satisfies Built<'crimp'>,
  heat: heat satisfies Built<'heat'>,
  heating: heating satisfies Built<'heating'>,
  joint: joint satisfies Built<'joint'>,
  meter: meter satisfies Built<'meter'>,
  protection: protection satisfies Built<'protection'>,
  routing: routing satisfies Built<'routing'>,
  rules: rules satisfies Built<'rules'>,
  sleeve: sleeve satisfies Built<'sleeve'>,
  solder: solder satisfies Built<'solder'>,
  suitability: suitability satisfies Built<'suitability'>,
  tables: tables satisfies Built<'tables'>,
  working: working satisfies BuiltWorking,
  planner: planner satisfies Built<'planner'>,
  plannerInDepth: planner satisfies Built<'plannerInDepth'>,
} as const

/** The root offers the same as the rooms. */
export const roots = {
  core: core satisfies Built<'ampacity'> &
    Built<'circuit'> &
    Built<'conductor'> &
    Built<'crimp'> &
    Built<'heat'> &
    Built<'heating'> &
    Built<'joint'> &
    Built<'meter'> &
    Built<'protection'> &
    Built<'routing'> &
    Built<'rules'> &
    Built<'sleeve'> &
    Built<'solder'> &
    Built<'suitability'> &
    Built<'tables'>,
  working,
  planner,
} as const

/** The errors carry what the contract says. */
export type Errors = [
  InstanceType<typeof core.DomainError> extends DomainErrorShape ? true : never,
  InstanceType<typeof core.UnknownEntryError> extends UnknownEntryErrorShape ? true : never,
  InstanceType<typeof core.ConvergenceError> extends ConvergenceErrorShape ? true : never,
  InstanceType<typeof core.NoSteadyStateError> extends NoSteadyStateErrorShape ? true : never,
]
export const errorsCarryIt: Errors = [true, true, true, true]

type Sample = Strict<{ f(i: { readonly reading: number }): number }>
/** The comparison lets through what the contract asks for, and it can fail: on a field that the contract doesn't give, and on another result. */
export const fits = ((i: { readonly reading: number; readonly counts?: number }) => i.reading) satisfies Sample['f']
// @ts-expect-error a field that the contract doesn't give
export const asksForMore = ((i: { readonly reading: number; readonly counts: number }) => i.reading) satisfies Sample['f']
// @ts-expect-error a result that the contract doesn't promise
export const givesLess = ((i: { readonly reading: number }) => (i.reading > 0 ? i.reading : null)) satisfies Sample['f']
