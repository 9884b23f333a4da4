import { parseRepairJob, planWithPictures } from '@strandwise/planner'
import { gliderBatteryLead, workshopLedStrip } from '@strandwise/planner/demo'
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
  'a motor of a milliohm behind thick insulation, in cycles': {
    ...gliderBatteryLead,
    units: 'inch',
    load: { resistanceOhm: 0.001, onS: 20, offS: 120 },
    wire: { ...gliderBatteryLead.wire, insulationThicknessMm: 7.50507392881036 },
  },
  'a thermometer of 220 degrees either way, in Fahrenheit': {
    ...workshopLedStrip,
    readings: [{ kind: 'temperature', from: 'joint-in', to: 'joint-out', load: 'on', value: -80, counts: 220, resolution: 1, percentOfReading: 1 }],
  },
} as const

describe('jobs at the ends of the schema are planned', () => {
  test.each(Object.entries(extreme))('%s', (_, job) => {
    expect(planWithPictures(parseRepairJob(job)).plan.version).toBe(2)
  })
})
