import type { Equivalents } from '../equivalent.ts'

export const uncertainty: Equivalents = {
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
