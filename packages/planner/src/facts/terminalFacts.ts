import type { RepairJob } from '../job/index.ts'
import type { Assume } from '../job/inner.ts'

/** Kind of terminal. */
export type TerminalKind = NonNullable<NonNullable<RepairJob['terminal']>['kind']>

/** Facts of the terminal at the end of the lead. */
export interface TerminalFacts {
  readonly kind: TerminalKind
  /** True if its kind is assumed. */
  readonly assumedKind: boolean
  readonly studMm: number | null
  /** The lead's end in sentences: "plug", "stud", "clamp". */
  readonly place: string
}

const places: Readonly<Record<TerminalKind, string>> = {
  'contact-in-housing': 'plug',
  'push-on': 'push-on terminal',
  ring: 'stud',
  fork: 'stud',
  'screw-clamp': 'clamp',
  'spring-clamp': 'clamp',
  'cable-lug': 'stud',
}

/** From this area on a cable lug is assumed: common practice. */
const lugFromMm2 = 10

/** The terminal's kind: given, else common for wire of this size. */
export function terminalFacts({ terminal }: RepairJob, assume: Assume, areaMm2 = 0): TerminalFacts {
  const usual: TerminalKind = terminal?.studMm !== undefined ? 'ring' : areaMm2 >= lugFromMm2 ? 'cable-lug' : 'contact-in-housing'
  const kind = assume('terminal.kind', terminal?.kind, usual, 'as leads of this size commonly end; say what it is where it differs')
  return { kind, assumedKind: terminal?.kind === undefined, studMm: terminal?.studMm ?? null, place: places[kind] }
}

/** Terminals that hold bare strands and are not crimped. */
export const clampedKinds: readonly TerminalKind[] = ['screw-clamp', 'spring-clamp']
/** Terminals that go on a stud with a nut. */
export const studKinds: readonly TerminalKind[] = ['ring', 'fork', 'cable-lug']
