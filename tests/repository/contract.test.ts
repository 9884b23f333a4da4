import { readFileSync } from 'node:fs'
import ts from 'typescript'
import { describe, expect, test } from 'vitest'
import { offered, roots } from '../contract/assignable.ts'
import { built, builtBeside } from '../contract/built.ts'
import { root } from './tree.ts'

const packageOf = (room: string): 'core' | 'working' | 'planner' => (room === 'working' ? 'working' : room.startsWith('planner') ? 'planner' : 'core')
const rooms = import.meta.glob<Record<string, unknown>>('../../packages/core/src/*/index.ts', { eager: true })
const doorOf = (room: string): Record<string, unknown> =>
  packageOf(room) === 'core' ? (rooms[`../../packages/core/src/${room}/index.ts`] ?? {}) : roots[packageOf(room)]

/** The names of an interface of the contract, read from its text. */
function namesIn(file: string, name: string): readonly string[] {
  const source = ts.createSourceFile(file, readFileSync(`${root}tests/contract/${file}`, 'utf8'), ts.ScriptTarget.Latest, true)
  const found = source.statements.find((statement) => ts.isInterfaceDeclaration(statement) && statement.name.text === name) as
    | ts.InterfaceDeclaration
    | undefined
  return (found?.members ?? []).flatMap((member) => (member.name !== undefined && ts.isIdentifier(member.name) ? [member.name.text] : []))
}

const interfaces: Readonly<Record<keyof typeof built, readonly [string, string]>> = {
  tables: ['wires.ts', 'TablesRoom'],
  rules: ['wires.ts', 'RulesRoom'],
  heat: ['wires.ts', 'HeatRoom'],
  conductor: ['wires.ts', 'ConductorRoom'],
  ampacity: ['wires.ts', 'AmpacityRoom'],
  circuit: ['circuits.ts', 'CircuitRoom'],
  protection: ['circuits.ts', 'ProtectionRoom'],
  meter: ['circuits.ts', 'MeterRoom'],
  joint: ['joints.ts', 'JointRoom'],
  heating: ['joints.ts', 'HeatingRoom'],
  solder: ['joints.ts', 'SolderRoom'],
  crimp: ['joints.ts', 'CrimpRoom'],
  sleeve: ['joints.ts', 'SleeveRoom'],
  routing: ['joints.ts', 'RoutingRoom'],
  suitability: ['joints.ts', 'SuitabilityRoom'],
  working: ['working.ts', 'Working'],
  planner: ['planner.ts', 'Planner'],
  plannerInDepth: ['planner.ts', 'PlannerInDepth'],
}

const listed = (Object.keys(built) as (keyof typeof built)[]).map((room) => [room, [...built[room]] as readonly string[]] as const)
const beside = Object.entries(builtBeside).map(([room, names]) => [room, [...names] as readonly string[]] as const)

describe('the contract', () => {
  test.each([...listed, ...beside])('%s: every built name is exported by the room and by the package', (room, names) => {
    const missing = names.filter((name) => doorOf(room)[name] === undefined || (roots[packageOf(room)] as Record<string, unknown>)[name] === undefined)
    expect(missing, "export the name from the room's index.ts; a name of the contract keeps its place").toEqual([])
  })

  test.each(listed)('%s: every name of the contract that exists is listed as built', (room) => {
    const [file, name] = interfaces[room]
    const contract = namesIn(file, name)
    expect(contract.length).toBeGreaterThan(0)
    const unlisted = contract.filter((one) => doorOf(room)[one] !== undefined && !(built[room] as readonly string[]).includes(one))
    expect(unlisted, 'add the name to tests/contract/built.ts, so that its signature is checked').toEqual([])
  })

  test('what runs is what was compiled against it', () => {
    for (const [room, names] of listed) for (const name of names) expect((offered[room] as Record<string, unknown>)[name], name).toBe(doorOf(room)[name])
  })
})
