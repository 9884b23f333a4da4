import type { Equivalents } from '../equivalent.ts'

export const solder: Equivalents = {
  'core/solder/adviceSearch.ts': [
    [
      'trial < mostTrials',
      ['trial <= mostTrials', 'Math.abs(bad - good) >=', 'Math.min(Math.abs(bad)'],
      'one halving more or less of what is near enough already',
    ],
    ["typeof from === 'number'", ['from >= 0', 'to >= 0'], 'the logarithm of 0 is without end too'],
    ['if (down === null', ['false'], 'a way that does not exist is endlessly far: the other is taken all the same'],
  ],
  'core/solder/edgeStep.ts': [
    ['trial < mostTrials', ['true', 'trial <= mostTrials', 'b - a >='], 'the number of trials is a guard; the place is found long before'],
    ['if (fx === 0)', ['false'], 'a place found exactly is found once more'],
    ['fx > 0 === fa > 0', ['fx >= 0'], 'differs only at one exact value, at which both ways give the same'],
  ],
  'core/solder/finMesh.ts': [
    ['k < degreeBelow.length', ['k <= degreeBelow.length', 'share <='], 'differs only at one exact value, at which both ways give the same'],
    ['of breaksM(wire)', ['at - (ends[ends.length - 1] ?? 0) >='], 'differs only at one exact value, at which both ways give the same'],
    ['i === rule.degree ? right', ['false'], 'the last point of an element is its end, but for rounding'],
    ['Math.abs((nodes[i]', ['i <= nodes.length', 'Math.abs((nodes[i] ?? 0) - x) <='], 'no two nodes are equally near to a place that is a node'],
  ],
  'core/solder/heatExchange.ts': [
    [
      'source.setRiseK - rise) / source.resistanceKPerW > source',
      ['(source.setRiseK - rise) / source.resistanceKPerW >='],
      'differs only at one exact value, at which both ways give the same',
    ],
    [
      'source.setRiseK - body) / source.tipResistanceKPerW > source',
      ['(source.setRiseK - body) / source.tipResistanceKPerW >=', 'true'],
      'at the limit itself both give the same; what has no limit compares with nothing',
    ],
  ],
  'core/solder/heatResult.ts': [['if (wire === undefined)', ['false'], 'every conductor has its wire: the check is for the types']],
  'core/solder/heatingEdges.ts': [
    ['const crown =', ['slopeBefore >= 0', 'slopeAfter <= 0'], 'a turn at the very end of a step is that end'],
    [
      'const dip =',
      ['slopeBefore <= 0', 'slopeAfter >= 0', 'before >= limit', 'after >= limit', 'true'],
      'looking for a turn that need not be looked for only takes time',
    ],
    ['edgeWithin(step, x)', [';'], 'the search for the place looked there last, to a ten-millionth of the step'],
    ['const afterTurn =', ['true', 'x <= 1'], 'behind the end of the step nothing is added'],
    ['record.limitAtS[w] === Infinity', ['before >= limit'], 'differs only at one exact value, at which both ways give the same'],
  ],
  'core/solder/heatingEvents.ts': [
    ['body !== null && source.kind', ['true'], 'a tube has a body: the check is for the types'],
    ["kind === 'body-up' || kind === 'body-down') return moving", ['true'], 'on a plateau the rise stands and passes nothing; elsewhere it is what moves'],
    ["joint.phase === 'solid') record.solidusAtS", ['true'], 'what melts has passed its solidus before: the first time stays'],
    ['if (body === null) return', ['false'], 'an event of a body comes only where there is one: the check is for the types'],
    ['if (body === null || step.source.kind', ['false', 'body === null &&'], 'only a tube recovers, and it has a body: the check is for the types'],
  ],
  'core/solder/lump.ts': [
    ['else if (heat >= liquid)', ['heat > liquid'], 'differs only at one exact value, at which both ways give the same'],
    ['if (heat < solid)', ['heat <= solid'], 'differs only at one exact value, at which both ways give the same'],
    ["return lump.phase === 'melting' && lump.melt", ['true'], 'what melts holds a melt: the check is for the types'],
    ["if (lump.phase !== 'melting' || lump.melt", ['false'], 'what melts holds a melt: the check is for the types'],
  ],
  'core/solder/moments.ts': [
    ['if (zx < seriesBelow)', ['zx <= seriesBelow'], 'differs only at one exact value, at which both ways give the same'],
    ['j <= seriesTerms', ['j < seriesTerms'], 'the last term of the series is below the last digit'],
  ],
  'core/solder/parabola.ts': [
    ['if (ends < 0 && !', ['b >= 0', 'b <= -2 * c'], 'a crown at the very start or end passes nothing that the ends do not'],
    ['return x > 0 && x < 1', ['x >= 0', 'x <= 1'], 'a crown at an end is that end'],
  ],
  'core/solder/readHeatJoint.ts': [['wires[found]?.tails', ['wires[found].tails'], 'what was found is there: the check is for the types']],
  'core/solder/readWire.ts': [
    ["property === 'shortExposureC'", ['true'], 'every insulation of the table has a short exposure'],
    ["the bare wire's diameterMm", ['diameterM / 1000'], 'in the words of an error alone'],
    ['outsideMm < diameterM * 1000', ['outsideMm <='], 'differs only at one exact value, at which both ways give the same'],
  ],
  'core/solder/rowWithin.ts': [['if (weight === 0)', ['false'], 'a mode without weight adds nothing: leaving it out only saves time']],
  'core/solder/solveLinear.ts': [
    ['k < n; k++', ['k <= n'], 'a row beyond the part has no row below it in the part'],
    ['> Math.abs(a[pivot', ['Math.abs(a[i * 4 + k] as number) >='], 'of two equal pivots either will do'],
    ['if (pivot !== k)', ['true'], 'a row changed with itself stays'],
    ['if (factor === 0)', ['false'], 'nothing is taken off: leaving it out only saves time'],
  ],
  'core/solder/stepTable.ts': [['A.left1] = beta', ['at - A.left1'], 'the place is 0']],
  'core/solder/wireModes.ts': [
    ['b < n; b++', ['b <= n'], 'what is written beyond the end of a list of fixed length is not kept, or is written over'],
    ['for (let i = 0; i < n; i++) {', ['i <= n'], 'a row that belongs to no mode is turned by nothing'],
  ],
  'core/solder/heatingWires.ts': [
    ['const table = place(heated, ((level', ['level % keptTables - keptTables'], 'a place is a place: each level has its own all the same'],
    ['limitedBelowK(source) > 0', ['limitedBelowK(source) >= 0'], 'differs only at one exact value, at which both ways give the same'],
    ['tables: new Array<', ['new Array()', 'keptTables - 1'], 'a place that is not there yet is made'],
  ],
  'core/solder/steadyJoint.ts': [
    ['trial < mostTrials', ['trial <= mostTrials', 'trial--'], 'the number of trials is a guard; the root is found long before'],
    ['if (excess > 0) low', ['excess >= 0'], 'differs only at one exact value, at which both ways give the same'],
    ['const tails = wires[w]?.tails', ['wires[w].tails'], 'the wire is there: the check is for the types'],
    [
      'if (!(next >= low',
      ['false', 'true', 'next >= low ||', 'next > low', '(low + high) * 2', 'low - high'],
      'a guard: from above the tangent of a balance that bends down does not pass its root',
    ],
    ['if (Math.abs(next - rise)', ['Math.abs(next - rise) <'], 'differs only at one exact value, at which both ways give the same'],
    ["throw new ConvergenceError('the steady joint", ['high + low'], 'in the words of an error alone, which no joint is known to reach'],
    ['exchange(model, by, false', ['true'], 'a tube has no heater that could be at its limit'],
    ['(own > 0 ?', ['true', 'own >= 0'], 'what a tube hands on the joint always takes: the check is a guard'],
    [
      'loose >= source.recoveryRiseK',
      ['loose > source', 'true'],
      'at the temperature of recovery itself, or for the tube that was found a line before, both give the same',
    ],
  ],
  'core/solder/symmetricModes.ts': [
    ['k < n - 2; k++', ['k <= n - 2', 'n + 2'], 'a column that ends at its second number needs no reflection, one beyond the end has none'],
    ['if (norm - first * first === 0)', ['norm + first * first'], 'a column that is tridiagonal already is only turned round'],
    ['const pivot = first > 0', ['first >= 0'], 'either sign will do'],
    ['p[i] = (p[i] as number) - half', ['k - 1', 'i <= n'], 'what stands above the part, or beyond it, is read no more'],
    ['for (let i = k + 1; i < n; i++) {', ['k - 1', 'i <= n'], 'what stands above the part, or beyond it, is read no more'],
    ['for (let j = k + 1; j < n; j++) matrix', ['j <= n'], 'what stands above the part, or beyond it, is read no more'],
    ['r[i] = (r[i] as number) - dot', ['i <= n'], 'beyond the row nothing is kept'],
    ['let g = ((d[l + 1]', ['(d[l + 1] as number) + (d[l]'], 'another shift comes to the same rates, later'],
    ['g = (d[m] as number) - (d[l]', ['(d[m] as number) - (d[l] as number) -', 'g > 0'], 'another shift comes to the same rates, later'],
    ['for (let i = 0; i < n; i++) rates', ['i <= n'], 'beyond the list nothing is kept'],
  ],
  'core/solder/adviceChanges.ts': [['.sort((a, b) =>', ['false'], 'two moves without measure differ by no number, which sorts as nothing does']],
  'core/solder/heatingRun.ts': [
    ['edges: []', ['['], 'the edges are made before they are read'],
    ['run.atChange[w]?.set', ['run.atChange[w].set'], 'each wire has its place: the check is for the types'],
  ],
  'core/solder/heatingLoop.ts': [
    ['if (count === mostSteps)', ['false', 'endS + run.nowS'], 'the number of steps is a guard, which no run is known to reach'],
    ['found: Passing = {', ['{}'], 'it is filled before it is read'],
  ],
  'core/solder/heatingStep.ts': [
    ['model.wires[w]?.tails', ['model.wires[w].tails'], 'the wire is there: the check is for the types'],
    ['for (let trial = 0;', ['trial--'], 'the number of trials is a guard; Newton is done long before'],
    ['if (trial === mostTrials', ['false', '!(change <= Infinity)', 'change <= Infinity'], 'the number of trials is a guard; Newton is done long before'],
    ['if (body !== null) {', ['true'], 'without a body its rows are not solved, and what they hold is 0'],
    ['let change = Math.max', ['Math.min'], 'both stages settle with the same change'],
    ['if (change <= newtonChange', ['change < newtonChange'], 'differs only at one exact value, at which both ways give the same'],
    ['bodyFixed && body !== null', ['true'], 'what is fixed is there: the check is for the types'],
  ],
}
