import * as z from 'zod/mini'
import { bare, choice, quantity } from './fields.ts'
import { loadStates, places, readingKinds } from './words.ts'

export const readingSchema = z.strictObject({
  kind: choice(
    readingKinds,
    'Kind',
    'resistance: ohms range, two leads. drop: volts along the wire under load. four-wire: separate current and sense leads. voltage: volts between two places. insulation: an insulation tester. current: a clamp. temperature: a thermometer on the place.',
    'drop',
  ),
  from: choice(places, 'From', 'Where the first probe stood.', 'joint-in'),
  to: choice(places, 'To', 'Where the second probe stood.', 'joint-out'),
  load: choice(loadStates, 'Load', 'on: working. off: switched off, the feed alive. unplugged: its plug is off as well.', 'on'),
  value: bare(
    { from: -1e12, to: 1e12 },
    'Reading',
    'In ohm for resistance, four-wire and insulation, in volt for drop and voltage, in ampere for current, in °C for temperature.',
    0.35,
  ),
  percentOfReading: z.exactOptional(bare({ from: 0, to: 100 }, 'Percent of reading', "From the meter's stated accuracy: the percentage.", 0.8)),
  counts: z.exactOptional(bare({ from: 0, to: 10000 }, 'Counts', "From the meter's stated accuracy: the count of last digits.", 3)),
  resolution: z.exactOptional(bare({ above: 0, to: 1e9 }, 'Resolution', 'One count on the range used, in the unit of the reading.', 0.01)),
  leadOhm: z.exactOptional(quantity('resistanceOhm', { from: 0, to: 100 }, 'Leads', 'What the meter shows with its probes touching.', 0.2)),
  leadUncertaintyOhm: z.exactOptional(
    quantity('resistanceOhm', { from: 0, to: 100 }, 'Leads, plus or minus', 'How much that figure changes when you repeat it.', 0.1),
  ),
  currentA: z.exactOptional(
    quantity('currentA', { from: 0.000001, to: 2000 }, 'Current at the time', 'Through the wire while you read. Left open: the load current.', 4),
  ),
  atC: z.exactOptional(
    quantity(
      'temperatureC',
      { from: -60, to: 300 },
      'Wire temperature at the time',
      'Temperature of the wire while you read. Left open: that of the air now.',
      20,
    ),
  ),
  when: z.exactOptional(choice(['still', 'moved'], 'When', 'still: nothing touched the lead. moved: the lead was flexed while you read.', 'still')),
})
