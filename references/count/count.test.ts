import { expect, test } from 'vitest'
import type { Reference, ReferenceCase } from '../compare.ts'
import { faultsOf, uncheckedFaults } from './faults.ts'
import { figuresOf } from './figures.ts'
import { recorded } from './recorder.ts'
import { table } from './table.ts'

const double = recorded('double', (x: number) => 2 * x) as (x: number) => number
const item = (title: string, x: number, printed = String(2 * x)): ReferenceCase => ({ title, printed, unit: '1', got: () => double(x) })
const source = (cases: readonly ReferenceCase[], more: Partial<Reference> = {}): Reference => ({
  source: 'a book',
  clause: 'p. 1',
  status: 'published',
  cases,
  ...more,
})
const file = (name: string, reference: Reference) => ({ file: name, reference })

test('a figure counts for the function whose change of 2 % breaks it, and not where half the last digit hides the change', () => {
  const [fine, coarse] = figuresOf([file('a.ts', source([item('fine', 50.05), item('coarse', 2.2, '4')]))])
  expect(fine).toMatchObject({ got: 100.1, met: true, calls: ['double'], checks: ['double'] })
  expect(coarse).toMatchObject({ met: true, calls: ['double'], checks: [] })
})

test('the same figure twice counts once and is a fault', () => {
  const all = figuresOf([file('a.ts', source([item('one', 3), item('again', 3), item('other', 4)]))])
  expect(all.map(({ title, repeats }) => [title, repeats])).toEqual([
    ['one', 1],
    ['other', 0],
  ])
  expect(faultsOf(all)).toEqual(['a.ts: "one", 6, is there 2 times: leave one, or mark the reference oneFigure'])
})

test('equal results from other inputs are two figures', () => {
  const sum = recorded('sum', (a: number, b: number) => a + b) as (a: number, b: number) => number
  const both = [
    { title: '1 + 3', printed: '4', unit: '1', got: () => sum(1, 3) },
    { title: '2 + 2', printed: '4', unit: '1', got: () => sum(2, 2) },
  ]
  expect(figuresOf([file('a.ts', source(both))])).toHaveLength(2)
})

test('one statement of a source in many places counts once without a fault', () => {
  const all = figuresOf([file('a.ts', source([item('one', 3), item('other', 4)], { oneFigure: true }))])
  expect(all).toHaveLength(1)
  expect(faultsOf(all)).toEqual([])
})

test('a source in two files is a fault', () => {
  const all = figuresOf([file('a.ts', source([item('one', 3)])), file('b.ts', source([item('other', 4)]))])
  expect(faultsOf(all)).toEqual(['"a book" stands in a.ts and b.ts: move its figures into one file'])
})

test('what is only looked up is checked and not counted', () => {
  const all = figuresOf([file('a.ts', source([{ ...item('row', 3), looksUp: true }]))])
  expect(table(all).split('\n')[1]?.trim()).toBe('a book')
})

test('a model without a check needs a reason, and a reason needs a model without a check', () => {
  const all = figuresOf([file('a.ts', source([item('fine', 50.05)]))])
  expect(uncheckedFaults(all, ['double', 'half'], {})).toEqual([expect.stringMatching(/^half: no figure/)])
  expect(uncheckedFaults(all, ['double', 'half'], { half: 'why' })).toEqual([])
  expect(uncheckedFaults(all, ['double'], { double: 'why', gone: 'why' })).toEqual([
    expect.stringMatching(/^double: is checked/),
    expect.stringMatching(/^gone: is no model/),
  ])
  expect(uncheckedFaults(figuresOf([file('a.ts', source([item('recalled', 50.05)], { status: 'from memory' }))]), ['double'], {})).toHaveLength(1)
})
