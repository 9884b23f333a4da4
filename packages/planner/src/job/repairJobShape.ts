import * as z from 'zod/mini'
import { circuitSchema, loadSchema } from './circuitSchema.ts'
import { choice, text, yesNo } from './fields.ts'
import { readingSchema } from './readingSchema.ts'
import { sleeveSchema } from './sleeveSchema.ts'
import { toolSchema } from './toolSchema.ts'
import { damageSchema, surroundingsSchema, terminalSchema, wireBeyondSchema, wireSchema } from './wireSchema.ts'
import { methodNames, solderNames } from './words.ts'

/** Version of the job format. */
export const jobVersion = 1

/** The job in fixed units, before checks across fields. */
export const repairJobShape = z.strictObject({
  version: z.literal(jobVersion),
  title: z.exactOptional(text('Title', 'Your name for this job.', 'Bilge pump feed', 120)),
  units: z.exactOptional(choice(['metric', 'inch', 'both'], 'Units', 'How the plan prints lengths.', 'metric')),
  circuit: circuitSchema,
  load: loadSchema,
  wire: wireSchema,
  wireBeyond: z.exactOptional(wireBeyondSchema),
  terminal: z.exactOptional(terminalSchema),
  damage: damageSchema,
  surroundings: z.exactOptional(surroundingsSchema),
  readings: z.exactOptional(z.array(readingSchema).check(z.maxLength(50))),
  intendedMethod: z.exactOptional(choice(methodNames, 'What you had in mind', 'The plan says whether it holds.', 'crimped-butt-splice')),
  repair: z.exactOptional(choice(['permanent', 'temporary'], 'Repair', 'To last, or to get home with. Left open: to last.', 'permanent')),
  solderSleeve: z.exactOptional(
    z.strictObject({ ringAlloy: choice(solderNames, 'Ring alloy', 'The solder inside the sleeve.', 'Sn42Bi58'), tube: sleeveSchema }),
  ),
  tools: z.exactOptional(z.array(toolSchema).check(z.maxLength(12))),
  hasCrimpTool: z.exactOptional(yesNo('Crimp tool', 'A full-cycle ratchet tool that matches the splice.')),
  hasTerminalDie: z.exactOptional(yesNo('Terminal die', 'The die for this very terminal.')),
  solders: z.exactOptional(z.array(choice(solderNames, 'Solder', 'The alloys you have.', 'Sn60Pb40')).check(z.maxLength(9))),
  sleeves: z.exactOptional(z.array(sleeveSchema).check(z.maxLength(60))),
  methods: z.exactOptional(
    z.array(choice(methodNames, 'Method', 'The methods that you can use. Left open: all.', 'crimped-butt-splice')).check(z.maxLength(7)),
  ),
})
