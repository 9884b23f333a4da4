import fc from 'fast-check'
import { between, everyFormulaAgrees, record, spread } from '../agreement.test.ts'
import { sleeveFormulas } from './sleeveFormulas.ts'

/** A tube that shrinks by one and a half to six times. */
const tube = spread(0.5, 40).chain((recoveredInsideMm) =>
  fc.tuple(
    fc.constant(recoveredInsideMm),
    between(1.5, 6).map((ratio) => ratio * recoveredInsideMm),
  ),
)

everyFormulaAgrees(sleeveFormulas, {
  recoveryRatio: tube.map(([recoveredInsideMm, suppliedInsideMm]) => ({ recoveredInsideMm, suppliedInsideMm })),
  fitSleeve: fc
    .tuple(tube, spread(0.5, 40), between(1, 3))
    .map(([[recoveredInsideMm, suppliedInsideMm], smallestMm, ratio]) => ({ recoveredInsideMm, suppliedInsideMm, smallestMm, largestMm: ratio * smallestMm })),
  recoveredWallMm: tube.chain(([recoveredInsideMm, suppliedInsideMm]) =>
    record({ recoveredInsideMm: fc.constant(recoveredInsideMm), recoveredWallMm: spread(0.1, 4), ontoMm: between(recoveredInsideMm, suppliedInsideMm) }),
  ),
  cutLengthMm: record({
    jointMm: between(0, 200),
    overlapEachSideMm: between(0, 50),
    longitudinalChange: fc.oneof(
      between(-0.2, 0.1),
      between(-0.2, 0).map((low) => ({ low, high: low + 0.1 })),
    ),
  }),
  stackLayers: record({
    coreMm: spread(0.5, 20),
    jointMm: between(0, 100),
    layers: fc.array(
      fc
        .tuple(tube, spread(0.2, 3), between(0, 30), between(-0.2, 0))
        .map(([[recoveredInsideMm, suppliedInsideMm], recoveredWallMm, overlapEachSideMm, low]) => ({
          material: 'polyolefin',
          recoveredInsideMm,
          suppliedInsideMm,
          recoveredWallMm,
          overlapEachSideMm,
          longitudinalChange: { low, high: low + 0.1 },
        })),
      { minLength: 0, maxLength: 4 },
    ),
  }),
})
