import * as z from 'zod/mini'
import { bare, choice, interval, loadStates, methodNames, places, quantity, readingKinds, text, yesNo } from '../job/inner.ts'

const readingFound = z.strictObject({
  kind: choice(readingKinds, 'Kind', 'What was read.', 'drop'),
  from: choice(places, 'From', 'Where the first probe stood.', 'joint-in'),
  to: choice(places, 'To', 'Where the second probe stood.', 'joint-out'),
  load: choice(loadStates, 'Load', 'What the load was doing.', 'on'),
  when: z.exactOptional(choice(['still', 'moved'], 'When', 'Whether the lead was moved while you read.', 'still')),
  low: bare({ from: -1e12, to: 1e12 }, 'Low', 'Low end of the reading with its meter.', 0.0012),
  high: bare({ from: -1e12, to: 1e12 }, 'High', 'High end of the reading with its meter.', 0.0016),
  currentA: z.exactOptional(quantity('currentA', { from: 0.000001, to: 2000 }, 'Current at the time', 'Through the wire while you read.', 4)),
  atC: z.exactOptional(quantity('temperatureC', { from: -60, to: 300 }, 'Air at the time', 'Round the wire while you read.', 20)),
})

const ratioFound = z.strictObject({
  /** 1, or 2 for an inserted length. */
  joint: z.literal([1, 2]),
  jointV: interval('voltageV', { from: 0, to: 100 }, 'Over the joint', 'From bare wire to bare wire over the joint.', { low: 0.0012, high: 0.0014 }),
  wireV: interval('voltageV', { from: 0, to: 100 }, 'Over the wire', 'Over as much plain wire beside it, at the same moment.', { low: 0.0015, high: 0.0017 }),
  wireLengthMm: quantity('lengthMm', { above: 0, to: 10000 }, 'Length of plain wire', 'Between the two probes on the plain wire, as long as the joint.', 25),
})

/** Findings on the finished repair. */
export const foundShape = z.strictObject({
  date: text('Date', 'Year, month and day of the readings.', '2026-05-04', 10),
  title: z.exactOptional(text('Job', "Title of the job that was mended; must be the job's own.", 'Bilge pump feed', 120)),
  readings: z.array(readingFound).check(z.maxLength(50)),
  ratio: z.exactOptional(z.array(ratioFound).check(z.maxLength(2))),
  tugN: z.exactOptional(quantity('forceN', { from: 0, to: 10000 }, 'Tug', 'By hand, along the wire.', 15)),
  samplePullN: z.exactOptional(quantity('forceN', { from: 0, to: 100000 }, 'Sample', 'At which a sample made the same way gave.', 160)),
  riseK: z.exactOptional(
    z.strictObject({
      jointK: quantity('temperatureDifferenceK', { from: -50, to: 1000 }, 'Joint', 'Above the air.', 12),
      wireK: quantity('temperatureDifferenceK', { from: -50, to: 1000 }, 'Wire', 'Above the air, 200 mm away.', 9),
      afterS: quantity('timeS', { from: 0, to: 1e6 }, 'After', 'So long at full load.', 600),
    }),
  ),
  visual: z.exactOptional(z.record(z.string().check(z.minLength(1), z.maxLength(120)), yesNo('By eye', 'Whether it is so.'))),
  method: z.exactOptional(choice(methodNames, 'Way', 'How it was joined. Left open: as intended.', 'crimped-butt-splice')),
  jointLengthMm: z.exactOptional(quantity('lengthMm', { above: 0, to: 1000 }, 'Length of the joint', 'From bare wire to bare wire.', 25)),
  by: z.exactOptional(text('By', 'Who made and read it.', 'the owner', 120)),
  place: z.exactOptional(text('Place', 'Where the repair is.', 'under the aft thwart', 120)),
  cause: z.exactOptional(text('Cause', 'What broke it.', 'flexed behind the plug', 200)),
  tool: z.exactOptional(text('Tool', 'Tool and setting.', 'ratchet tool, die 1 to 1.5 mm²', 200)),
  consumables: z.exactOptional(text('Consumables', 'Barrel, sleeve, solder.', 'sealed butt splice', 200)),
})
