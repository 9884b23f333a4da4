/** Fields of a group that stand in the open, and the fields that wait under "more"; a group may come in two places. */
export interface Asked {
  readonly group: string
  readonly open: readonly string[]
  /** Whether the rest of the group waits here. */
  readonly rest: boolean
}

export interface Stop {
  readonly id: string
  readonly title: string
  readonly asks: readonly Asked[]
}

/** The way down the wire: four stops make a first plan. */
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

/** What sharpens the plan: each group waits closed until it is wanted. */
export const laterGroups: readonly string[] = ['surroundings', 'terminal', 'wire-beyond', 'way', 'tools', 'solder-sleeve', 'solders', 'sleeves']

/** Paths of the answers that lead to a first plan, for the head of the job card. */
export const firstAnswers: ReadonlySet<string> = new Set(
  firstStops.flatMap((stop) => stop.asks.flatMap(({ group, open }) => open.map((path) => `${group}.${path}`))),
)
