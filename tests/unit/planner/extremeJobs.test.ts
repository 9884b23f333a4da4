import { parseRepairJob, planWithPictures } from '@strandwise/planner'
import { gliderBatteryLead } from '@strandwise/planner/demo'
import { describe, expect, test } from 'vitest'

const { areaMm2: _area, ...gliderWire } = gliderBatteryLead.wire

// Each ended in an error of a model when random jobs found it.
const extreme = {
  'a cycled current that warms nothing': {
    ...gliderBatteryLead,
    circuit: { kind: 'power', supplyV: 11.1, allowedDropV: 0.5 },
    load: { currentA: 0.0000018150157935562004, onS: 20, offS: 120 },
    wire: { ...gliderWire, size: '2/0' },
  },
} as const

describe('jobs at the ends of the schema are planned', () => {
  test.each(Object.entries(extreme))('%s', (_, job) => {
    expect(planWithPictures(parseRepairJob(job)).plan.version).toBe(2)
  })
})
