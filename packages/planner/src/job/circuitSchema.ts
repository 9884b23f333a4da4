import * as z from 'zod/mini'
import { choice, quantity } from './fields.ts'
import { circuitKinds, fuseKinds, ruleBodies } from './words.ts'

// Lower bounds of the fields: below any real value, yet within the models' ranges.

/** Smallest accepted current, voltage, power or time. */
const least = 0.000001

export const circuitSchema = z.strictObject({
  kind: choice(
    circuitKinds,
    'Circuit',
    'What the wire serves. Airbag, high-voltage, mains, safety and fuel or explosive circuits are refused here, with what to do instead.',
    'motor',
  ),
  supplyV: quantity('voltageV', { from: 0.001, to: 1000 }, 'Supply', 'Nominal voltage of the supply.', 12),
  waveform: z.exactOptional(choice(['dc', 'ac'], 'Waveform', 'Direct or alternating. Left open: direct.', 'dc')),
  allowedDropV: z.exactOptional(
    quantity('voltageV', { from: least, to: 100 }, 'Allowed drop', 'Over the whole run, out and back. Left open: 3 % of the supply.', 0.36),
  ),
  sourceResistanceOhm: z.exactOptional(
    quantity('resistanceOhm', { from: 0, to: 100 }, 'Source resistance', 'Inside the battery or supply; it limits the current into a short circuit.', 0.02),
  ),
  prospectiveCurrentA: z.exactOptional(
    quantity('currentA', { from: least, to: 100000 }, 'Prospective current', 'The most the source can drive into a short circuit at its own terminals.', 600),
  ),
  fuseA: z.exactOptional(quantity('currentA', { from: 0.01, to: 500 }, 'Fuse', 'Rating of the fuse that guards this wire.', 7.5)),
  fuseSeries: z.exactOptional(choice(['ISO 8820-3'], 'Fuse series', 'Standard blade fuses.', 'ISO 8820-3')),
  fuseKind: z.exactOptional(
    choice(fuseKinds, 'Fuse kind', 'A blade in its holder, a link bolted down, a glass or ceramic cartridge, or a breaker that resets.', 'blade'),
  ),
  fuseDistanceM: z.exactOptional(quantity('lengthM', { from: 0, to: 100 }, 'Fuse distance', 'Length of wire from the source to the fuse.', 0.15)),
  // Explicit undefined is allowed too, as in core's MethodContext.
  rules: z.optional(z.array(choice(ruleBodies, 'Rules', 'Whose rules this repair must follow.', 'small-craft')).check(z.maxLength(5))),
})

export const loadSchema = z.strictObject({
  currentA: z.exactOptional(
    quantity('currentA', { from: least, to: 2000 }, 'Load current', 'With the load working. Give this, or its power, or its resistance.', 4.2),
  ),
  powerW: z.exactOptional(quantity('powerW', { from: least, to: 50000 }, 'Load power', 'For a load that keeps its power as the voltage drops.', 50)),
  resistanceOhm: z.exactOptional(quantity('resistanceOhm', { from: 0.001, to: 1e6 }, 'Load resistance', 'For a lamp or heater, at working temperature.', 2.9)),
  inrushA: z.exactOptional(quantity('currentA', { from: least, to: 20000 }, 'Inrush', 'Peak when it starts.', 15)),
  inrushS: z.exactOptional(quantity('timeS', { from: least, to: 60 }, 'Inrush time', 'How long the peak lasts.', 0.2)),
  stallA: z.exactOptional(quantity('currentA', { from: least, to: 20000 }, 'Stall current', 'Current of the motor with its shaft held.', 14)),
  onS: z.exactOptional(quantity('timeS', { from: least, to: 1e7 }, 'On time', 'Of a load that comes and goes.', 30)),
  offS: z.exactOptional(quantity('timeS', { from: least, to: 1e7 }, 'Off time', 'Of a load that comes and goes.', 300)),
})
