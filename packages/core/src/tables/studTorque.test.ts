import { expect, test } from 'vitest'
import { studTorque } from './index.ts'

test('Telecom rectifier manual, table 8-E: 135 lbf in on 5/16-18 is 15.25 N m, and thicker studs take more', () => {
  const row = studTorque.rows.find(({ thread }) => thread === '5/16-18')
  expect(row?.leastTorqueNm).toBeCloseTo(15.253, 3)
  expect(row?.diameterMm).toBeCloseTo(7.94, 2)
  const torques = studTorque.rows.map(({ leastTorqueNm }) => leastTorqueNm)
  expect(torques).toEqual([...torques].sort((a, b) => a - b))
})
