import { readFileSync } from 'node:fs'
import { root } from '../repository/tree.ts'

/** What is read of a mutant. */
export interface Mutant {
  readonly status: string
  readonly mutatorName: string
  readonly replacement: string
  readonly fileName: string
  readonly location: {
    readonly start: { readonly line: number; readonly column: number }
    readonly end: { readonly line: number; readonly column: number }
  }
}

/** Changes that no test can notice, or that none is meant to: they live, and count as alive, for a reason. Of each: a stretch of the line it begins on, what stands in its place or the beginning of it, and why. */
type Equivalent = readonly [line: string, replacements: readonly string[], reason: string]

/** By file within packages/. */
export const equivalents: Readonly<Record<string, readonly Equivalent[]>> = {
  'core/joint/transferLength.ts': [
    ['if (made === Array', ['false', '{}'], 'the long way gives the same, slower'],
    ["if (typeof r1 === 'number'", ['false', '{}', 'r1 > 0', 'r2 > 0'], 'the long way gives the same, slower'],
    ['if (coupling >= smallestNormal', ['false', 'coupling > smallestNormal'], 'the long way gives the same, slower'],
  ],
  'core/joint/lapCurrents.ts': [['u < shortestCoupling', ['u <= shortestCoupling'], 'differs only at one exact value, at which both ways give the same']],
  'core/routing/packBundle.ts': [
    ['radius < thin', ['radius <= thin'], 'differs only at one exact value, at which both ways give the same'],
    ['if (thick < 0)', ['thick <= 0'], 'the first wire is never thin'],
    ["requireFiniteResult('diametersMm', [d1, d2]", ['[]'], 'in what the error shows alone'],
    [
      'problem.place[2 * count] = found',
      ['2 / count', 'found[2 * thick] && 0', '2 / thick'],
      'read only for a wire that finds no corner: thick ones that touch leave one',
    ],
    ['const centresMm = new Array', ['new Array()'], 'a place that is not there yet is made'],
  ],
  'core/routing/packingDescent.ts': [
    ['i < a.length', ['i <= a.length'], 'beyond a list there is nothing, and nothing is kept'],
    ['i < to.length', ['i <= to.length'], 'beyond a list there is nothing, and nothing is kept'],
    ['i < step.length', ['i <= step.length'], 'beyond a list there is nothing, and nothing is kept'],
    ['i < place.length', ['i <= place.length'], 'beyond a list there is nothing, and nothing is kept'],
    ['if (nextEnergy <=', ['nextEnergy < energy'], 'differs only at one exact value, at which both ways give the same'],
    ['if (bend > flat)', ['bend >= flat'], 'differs only at one exact value, at which both ways give the same'],
  ],
  'core/routing/packingEnergy.ts': [
    ['if (reach < 0 ||', ['reach <= 0', 'fromCentre2 >='], 'what just touches adds nothing'],
    ['if (distance2 >= apart', ['distance2 > apart'], 'what just touches adds nothing'],
  ],
  'core/routing/packingSearch.ts': [
    [
      'for (let tries = 0;',
      ['tries < count ||', 'true', 'tries <= count', 'tries--'],
      'the number of tries is a guard: there are unlike wires where this is asked',
    ],
    [
      'if (updateForces(problem, exactStiffness) < settled)',
      ['updateForces(problem, exactStiffness) <= settled'],
      'differs only at one exact value, at which both ways give the same',
    ],
    ['if (from === undefined)', ['false'], 'there is a candidate: the check is for the types'],
    ['if (winner !== undefined', ['true', 'problem.place'], 'there is a winner, and nothing is settled after it'],
  ],
  'core/routing/packingStarts.ts': [['inRadii <= 2', ['inRadii < 2'], 'differs only at one exact value, at which both ways give the same']],
  'core/routing/packFew.ts': [['const ey =', ['y2 + y1'], 'the first wire lies on the axis']],
  'core/routing/packingCorners.ts': [
    ['const out = Math.sqrt', ['Math.sqrt(x * x + y * y) - radius'], 'the same wire at every corner: its own radius decides nothing'],
    ['if (out >= best', ['out > best'], 'differs only at one exact value, at which both ways give the same'],
  ],
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
  'working/uncertainty/correlations.ts': [
    ['if (above && below)', ['true', 'above || below'], 'both rows are there: the check is for the types'],
    ['const before = triangle', ['['], 'the row is there: the check is for the types'],
    ['k < column; k++', ['k <= column'], 'the row ends before that column'],
    ['const entry = pivot > slack', ['pivot >= slack'], 'differs only at one exact value, at which both ways give the same'],
    ['if (pivot <= slack', ['Math.abs(sum) >=', 'pivot < slack'], 'differs only at one exact value, at which both ways give the same'],
    ['if (left < -slack)', ['left <='], 'differs only at one exact value, at which both ways give the same'],
    ['if (column < row &&', ['true', 'column <= row', 'column >= row'], 'each pair stands on both sides of the diagonal, and joins itself without harm'],
  ],
  'working/uncertainty/linear.ts': [
    ['input.uncertainty > 0', ['input.uncertainty >= 0'], 'what is certain is multiplied by 0'],
    ['matrix[row]?.[column]', ['matrix[row][column]'], 'the row is there: the check is for the types'],
    ['inputs[place]?.degreesOfFreedom', ['inputs[place].degreesOfFreedom'], 'the input is there: the check is for the types'],
    ['const own = group.reduce', ['total -'], 'its square is the same'],
    ['if (finite.length > 0)', ['true', 'finite.length >= 0'], 'endless degrees of freedom add nothing'],
    ['const step = at +', ['at - Math.max'], 'a step to the other side has the same slope'],
    ['const moved =', ['value - steps'], 'all slopes turn round, and their products stay'],
    ['2 * side)', ['2 / side'], 'of 1 and -1 both are two steps'],
  ],
}

interface Unmatched {
  readonly file: string
  readonly line: string
  readonly replacement: string
}

/** Puts beside each survivor of a room the reason that is known for it, and tells the reasons that match none. */
export function judge(
  room: string,
  alive: readonly Mutant[],
): { readonly judged: readonly { readonly mutant: Mutant; readonly reason: string | null }[]; readonly unmatched: readonly Unmatched[] } {
  const known = Object.entries(equivalents)
    .filter(([file]) => file.startsWith(`${room}/`))
    .flatMap(([file, list]) => list.flatMap(([line, replacements, reason]) => replacements.map((replacement) => ({ file, line, replacement, reason }))))
  const unmatched = new Set<Unmatched>(known)
  const texts = new Map<string, readonly string[]>()
  const lineOf = ({ fileName, location }: Mutant): string => {
    const lines = texts.get(fileName) ?? readFileSync(root + fileName, 'utf8').split('\n')
    texts.set(fileName, lines)
    return lines[location.start.line - 1] ?? ''
  }
  const judged = alive.map((mutant) => {
    const file = mutant.fileName.replace(/^packages\//, '').replace('/src/', '/')
    const replacement = mutant.replacement.replace(/\s+/g, ' ')
    const found = known.find((one) => one.file === file && lineOf(mutant).includes(one.line) && replacement.startsWith(one.replacement))
    if (found !== undefined) unmatched.delete(found)
    return { mutant, reason: found?.reason ?? null }
  })
  return { judged, unmatched: [...unmatched] }
}
