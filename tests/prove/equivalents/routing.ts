import type { Equivalents } from '../equivalent.ts'
import { atOneValue } from './reasons.ts'

export const routing: Equivalents = {
  'core/routing/packBundle.ts': [
    ['radius < thin', ['radius <= thin'], atOneValue],
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
    ['if (nextEnergy <=', ['nextEnergy < energy'], atOneValue],
    ['if (bend > flat)', ['bend >= flat'], atOneValue],
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
    ['if (updateForces(problem, exactStiffness) < settled)', ['updateForces(problem, exactStiffness) <= settled'], atOneValue],
    ['if (from === undefined)', ['false'], 'there is a candidate: the check is for the types'],
    ['if (winner !== undefined', ['true', 'problem.place'], 'there is a winner, and nothing is settled after it'],
  ],
  'core/routing/packingStarts.ts': [['inRadii <= 2', ['inRadii < 2'], atOneValue]],
  'core/routing/packFew.ts': [['const ey =', ['y2 + y1'], 'the first wire lies on the axis']],
  'core/routing/packingCorners.ts': [
    ['const out = Math.sqrt', ['Math.sqrt(x * x + y * y) - radius'], 'the same wire at every corner: its own radius decides nothing'],
    ['if (out >= best', ['out > best'], atOneValue],
  ],
}
