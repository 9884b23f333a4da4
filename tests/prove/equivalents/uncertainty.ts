import type { Equivalents } from '../equivalent.ts'
import { atOneValue } from './reasons.ts'

export const uncertainty: Equivalents = {
  'working/uncertainty/correlations.ts': [
    ['if (above && below)', ['true', 'above || below'], 'both rows are there: the check is for the types'],
    ['const before = triangle', ['['], 'the row is there: the check is for the types'],
    ['k < column; k++', ['k <= column'], 'the row ends before that column'],
    ['const entry = pivot > slack', ['pivot >= slack'], atOneValue],
    ['if (pivot <= slack', ['Math.abs(sum) >=', 'pivot < slack'], atOneValue],
    ['if (left < -slack)', ['left <='], atOneValue],
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
  'working/uncertainty/random.ts': [['if (v > 0 &&', ['v >= 0', 'Math.log(1 - stream()) <='], atOneValue]],
  'working/uncertainty/studentT.ts': [
    ['if (k > 8.5)', ['k >= 8.5'], 'past 8 the share is 1 to the last bit either way'],
    ['for (let n = 1;', ['true', 'n <= mostTerms', 'term >= lastBit', 'lastBit / sum'], 'further terms are below the last bit'],
    ['if (x <= 0)', ['x < 0', 'false'], 'the fraction gives 0 there too'],
    ['if (x >= 1)', ['x > 1', 'false'], 'the fraction gives 1 there too'],
    ['for (let m = 1;', ['m <= mostTerms'], 'further terms are below the last bit'],
    ['if (Math.abs(d * c - 1)', ['Math.abs(d * c - 1) <='], 'further terms are below the last bit'],
    ['for (; z < 15;', ['z <= 15'], 'from 15 on five terms reach the last bits, from 16 on too'],
    ['const series =', ['1 / 1260 +', '1 / 1680 +'], 'below the last bits'],
    ['const normal =', ['false', 'degreesOfFreedom >'], 'from 10^8 degrees of freedom on both ways give the same, to one part in 10^8'],
    ['while (outside(high)', ['outside(high) >=', 'true', 'high <= 1e12'], 'a guard: every share lies within'],
    ['for (let step = 0;', ['step <= 80', 'true', 'high - low >=', 'high + low', 'lastBit / high'], 'further halvings are below the last bit'],
    ['if (outside(middle)', ['outside(middle) >='], atOneValue],
  ],
}
