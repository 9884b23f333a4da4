import * as z from 'zod/mini'
import { choice, interval, quantity, text } from './fields.ts'
import { sleeveMaterialNames } from './words.ts'

export const sleeveSchema = z.strictObject({
  name: z.exactOptional(text('Name', 'What you call it.', 'lined 6 to 2', 80)),
  material: choice(sleeveMaterialNames, 'Material', 'What the sleeve is made of; it says when it shrinks.', 'polyolefin-adhesive-lined'),
  suppliedInsideMm: quantity('lengthMm', { from: 0.05, to: 200 }, 'Inside, as supplied', 'Inside diameter before shrinking, the least that is promised.', 6.4),
  recoveredInsideMm: quantity(
    'lengthMm',
    { from: 0.05, to: 200 },
    'Inside, recovered',
    'Inside diameter after free shrinking, the most that is promised.',
    2.1,
  ),
  recoveredWallMm: quantity('lengthMm', { from: 0.002, to: 20 }, 'Wall, recovered', 'Wall after free shrinking, lining included.', 1),
  longitudinalChange: interval(null, { from: -0.5, to: 0.5 }, 'Change in length', 'As a signed share: -0.1 is 10 % shorter after shrinking.', {
    low: -0.1,
    high: 0.05,
  }),
  adhesiveWallMm: z.exactOptional(quantity('lengthMm', { from: 0.001, to: 20 }, 'Lining', 'The part of the recovered wall that is adhesive.', 0.4)),
})
