/** Visible fields of a group, and those under "more"; a group may occur in two places. */
export interface Asked {
  readonly group: string
  readonly open: readonly string[]
  /** True if the rest of the group is here. */
  readonly rest: boolean
}

export interface Stop {
  readonly id: string
  readonly title: string
  readonly asks: readonly Asked[]
}

/** Sections of the form for a first plan, in the order down the wire. */
export const firstStops: readonly Stop[] = [
  { id: 'broken', title: 'What is broken', asks: [{ group: 'damage', open: ['kind', 'fromTerminationMm'], rest: true }] },
  {
    id: 'wire',
    title: 'Which wire',
    asks: [{ group: 'wire', open: ['size', 'insulation', 'outLengthM'], rest: true }],
  },
  {
    id: 'feeds',
    title: 'What it feeds',
    asks: [
      { group: 'circuit', open: ['kind', 'supplyV', 'fuseA'], rest: true },
      { group: 'load', open: ['currentA'], rest: true },
    ],
  },
]

/** Optional groups that refine the plan, collapsed at first. */
export const laterGroups: readonly string[] = ['surroundings', 'terminal', 'wire-beyond', 'way', 'tools', 'solder-sleeve', 'solders', 'sleeves']

/** Paths of the answers for a first plan, for the head of the job card. */
export const firstAnswers: ReadonlySet<string> = new Set(
  firstStops.flatMap((stop) => stop.asks.flatMap(({ group, open }) => open.map((path) => `${group}.${path}`))),
)
