import * as z from 'zod/mini'
import { choice, interval, quantity, text } from './fields.ts'
import { sleeveMaterialNames } from './words.ts'

export const sleeveSchema = z.strictObject({
  name: z.exactOptional(text('Name', 'Your name for it.', 'lined 6 to 2', 80)),
  material: choice(sleeveMaterialNames, 'Material', 'What the sleeve is made of; this sets the temperature at which it shrinks.', 'polyolefin-adhesive-lined'),
  suppliedInsideMm: quantity('lengthMm', { from: 0.05, to: 200 }, 'Inside, as supplied', 'Inside diameter before shrinking: the least its maker states.', 6.4),
  recoveredInsideMm: quantity(
    'lengthMm',
    { from: 0.05, to: 200 },
    'Inside, recovered',
    'Inside diameter after free shrinking: the most its maker states.',
    2.1,
  ),
  recoveredWallMm: quantity('lengthMm', { from: 0.002, to: 20 }, 'Wall, recovered', 'Wall after free shrinking, lining included.', 1),
  longitudinalChange: interval(null, { from: -0.5, to: 0.5 }, 'Change in length', 'After shrinking, as a fraction: -0.1 is 10 % shorter.', {
    low: -0.1,
    high: 0.05,
  }),
  adhesiveWallMm: z.exactOptional(quantity('lengthMm', { from: 0.001, to: 20 }, 'Lining', 'The part of the recovered wall that is adhesive.', 0.4)),
})
