import { DomainError, requireBetween, UnknownEntryError } from '@strandwise/core/errors'
import type { Known } from './uncertain.ts'

/** Correlation coefficients of all inputs, row by row. */
export type Matrix = readonly (readonly number[])[]

/** Checks the pairs and writes them into a matrix with ones on its diagonal. */
export function matrixOf(inputs: readonly Known[], pairs: readonly (readonly [string, string, number])[]): Matrix {
  const names = inputs.map(({ name }) => name)
  const rows = names.map((_, row) => names.map((__, column): number => (row === column ? 1 : 0)))
  pairs.forEach(([first, second, coefficient], index) => {
    const path = `options.correlations.${index}`
    const at = [first, second].map((name, place) => {
      const found = names.indexOf(name)
      if (found < 0) throw new UnknownEntryError(`${path}.${place}`, name, names)
      return found
    })
    const [row = 0, column = 0] = at
    requireBetween(`${path}.2`, coefficient, -1, 1)
    if (row === column) throw new DomainError(`${path}.1`, second, 'another input than the first', undefined, 'contradiction')
    const [above, below] = [rows[row], rows[column]]
    if (above && below) {
      above[column] = coefficient
      below[row] = coefficient
    }
  })
  triangleOf(rows)
  return rows
}

/** Rounding may leave a vanishing variance this far below 0 at coefficients of 1 or -1. */
const slack = 1e-9

/** Cholesky factor: it turns independent draws into correlated ones. Impossible combinations of coefficients are refused. */
export function triangleOf(matrix: Matrix): Matrix {
  const triangle: number[][] = []
  for (const [row, coefficients] of matrix.entries()) {
    const line: number[] = []
    let left = 1
    for (let column = 0; column < row; column++) {
      const before = triangle[column] ?? []
      let sum = coefficients[column] ?? 0
      for (let k = 0; k < column; k++) sum -= (line[k] ?? 0) * (before[k] ?? 0)
      const pivot = before[column] ?? 0
      const entry = pivot > slack ? sum / pivot : 0
      if (pivot <= slack && Math.abs(sum) > 1e-6) throw impossible()
      line.push(entry)
      left -= entry * entry
    }
    if (left < -slack) throw impossible()
    line.push(Math.sqrt(Math.max(0, left)))
    triangle.push(line)
  }
  return triangle
}

function impossible(): DomainError {
  return new DomainError(
    'options.correlations',
    'a list',
    'coefficients that can hold together',
    'JCGM 102: a correlation matrix has no negative eigenvalue',
    'contradiction',
  )
}

/** Groups of inputs correlated directly or through others, by index. */
export function groupsOf(matrix: Matrix): readonly (readonly number[])[] {
  const group = matrix.map((_, place) => place)
  for (const [row, coefficients] of matrix.entries()) {
    for (const [column, coefficient] of coefficients.entries()) {
      const [from, to] = [group[row], group[column]]
      if (column < row && coefficient !== 0 && from !== undefined && to !== undefined) {
        for (const [place, label] of group.entries()) if (label === from) group[place] = to
      }
    }
  }
  return [...new Set(group)].map((label) => group.flatMap((own, place) => (own === label ? [place] : [])))
}
