import type { Provenance } from '@strandwise/core'

const practice = (source: string): Provenance => ({
  status: 'common practice',
  source,
})

/** What counts as sound in a healthy circuit. Each is common practice, and listed as an assumption where it decides. */
export const sound = {
  jointMm: {
    low: 5,
    high: 40,
    source: practice('a sound joint is worth 5 to 40 mm of its wire'),
  },
  contactMm: {
    low: 10,
    high: 80,
    source: practice('a sound contact is worth 10 to 80 mm of its wire'),
  },
  fuseV: {
    low: 0.06,
    high: 0.12,
    source: practice('a sound fuse drops 0.06 to 0.12 V at its rating'),
  },
  /** Where no rating is given: the fuse carries at most three quarters of it. */
  fuseLoadShare: 0.75,
  lay: {
    low: 1.01,
    high: 1.05,
    source: practice('strands run 1 to 5 % longer than the wire'),
  },
  lengthShare: {
    low: 0.98,
    high: 1.02,
    source: practice('a length is known within 2 %'),
  },
  /** A battery of so many nominal volts, from flat to charging. */
  batteryV: {
    low: 11.5,
    high: 14.8,
    ofV: 12,
    source: practice('a 12 V battery reads 11.5 to 14.8 V'),
  },
  supplyShare: {
    low: 0.98,
    high: 1.07,
    source: practice('a supply holds its voltage within -2 and +7 %'),
  },
  /** Of the supply, lost inside it at the working current. */
  sourceShare: {
    low: 0.002,
    high: 0.02,
    source: practice('a sound supply loses 0.2 to 2 % inside itself'),
  },
  loadShare: {
    low: 0.93,
    high: 1.07,
    source: practice('a load takes within 7 % of what is stated'),
  },
  /** A current that is typed beside a reading. */
  currentShare: {
    low: 0.99,
    high: 1.01,
    source: practice('a current read at the same time is known within 1 %'),
  },
  /** Of the drop budget: what a stretch may take beyond a healthy one. */
  faultShareOfBudget: 0.1,
  /** Of the supply, lost off load: a resting battery drifts less. */
  offLoadShare: 0.05,
  /** At full load a sound joint is at most so much warmer than its wire. */
  hotPlaceK: 10,
  overRangeOhm: 1e7,
  leak: { belowOhm: 1e6, goodAboveOhm: 1e7 },
  /** Feed to return with the load unplugged: below this many times the load's own resistance it is a short. */
  shortOhm: 10,
} as const
