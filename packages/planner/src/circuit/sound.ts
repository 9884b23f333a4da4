import type { Provenance } from '@strandwise/core'

const practice = (source: string): Provenance => ({
  status: 'common practice',
  source,
})

/** Limits of a healthy circuit. Each is common practice, and listed as an assumption if it decides. */
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
  /** Load over fuse rating assumed without a rating: at most three quarters. */
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
  /** Battery voltage from flat to charging, over the nominal. */
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
  /** Share of the supply voltage lost inside the source at the working current. */
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
  /** Uncertainty of a current entered beside a reading. */
  currentShare: {
    low: 0.99,
    high: 1.01,
    source: practice('a current read at the same time is known within 1 %'),
  },
  /** Share of the drop budget that a stretch may drop above a healthy one. */
  faultShareOfBudget: 0.1,
  /** Share of the supply lost without load; a resting battery drifts less. */
  offLoadShare: 0.05,
  /** Largest rise of a sound joint above its wire at full load. */
  hotPlaceK: 10,
  overRangeOhm: 1e7,
  leak: { belowOhm: 1e6, goodAboveOhm: 1e7 },
  /** Resistance from feed to return, load unplugged, below which it is a short, in units of the load's resistance. */
  shortOhm: 10,
} as const
