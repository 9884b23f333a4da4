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
  waveform: z.exactOptional(choice(['dc', 'ac'], 'Waveform', 'Direct or alternating; direct where you do not say.', 'dc')),
  allowedDropV: z.exactOptional(
    quantity('voltageV', { from: least, to: 100 }, 'Allowed drop', 'Over the whole run, out and return; 3 % of the supply where you do not say.', 0.36),
  ),
  sourceResistanceOhm: z.exactOptional(
    quantity('resistanceOhm', { from: 0, to: 100 }, 'Source resistance', 'Of the battery or supply itself; it limits the current into a short circuit.', 0.02),
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
  rules: z.optional(z.array(choice(ruleBodies, 'Rules', 'Bodies of rules that bind this repair.', 'small-craft')).check(z.maxLength(5))),
})

export const loadSchema = z.strictObject({
  currentA: z.exactOptional(quantity('currentA', { from: least, to: 2000 }, 'Load current', 'While working. Give this, or the power, or the resistance.', 4.2)),
  powerW: z.exactOptional(quantity('powerW', { from: least, to: 50000 }, 'Load power', 'Of a load that holds its power.', 50)),
  resistanceOhm: z.exactOptional(quantity('resistanceOhm', { from: 0.001, to: 1e6 }, 'Load resistance', 'Of a lamp or heater at working temperature.', 2.9)),
  inrushA: z.exactOptional(quantity('currentA', { from: least, to: 20000 }, 'Inrush', 'Peak when it starts.', 15)),
  inrushS: z.exactOptional(quantity('timeS', { from: least, to: 60 }, 'Inrush time', 'How long the peak lasts.', 0.2)),
  stallA: z.exactOptional(quantity('currentA', { from: least, to: 20000 }, 'Stall current', 'Of a motor that is held still.', 14)),
  onS: z.exactOptional(quantity('timeS', { from: least, to: 1e7 }, 'On time', 'Of a load that comes and goes.', 30)),
  offS: z.exactOptional(quantity('timeS', { from: least, to: 1e7 }, 'Off time', 'Of a load that comes and goes.', 300)),
})
