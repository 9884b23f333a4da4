import ts from 'typescript'

/** One value that a caller can set: a parameter itself (path "") or a field beneath it, "tool.setC", "conductors.0.areaMm2". */
export interface Leaf {
  readonly path: string
  readonly kind: 'number' | 'string' | 'boolean'
  readonly optional: boolean
  /** Values of a union type of words or numbers. */
  readonly choices?: readonly (string | number)[]
}

/** Depth limit, above that of any input; it stops recursive types. */
const deepest = 5

const join = (path: string, name: string): string => (path === '' ? name : `${path}.${name}`)

/** The values within an input's type. ".0" stands for the elements of an array; a union of objects gives the fields of each member. */
export function leavesOf(checker: ts.TypeChecker, type: ts.Type, path = '', optional = false, depth = 0): readonly Leaf[] {
  if (depth > deepest) return []
  const members = (type.isUnion() ? type.types : [type]).filter((member) => !(member.flags & (ts.TypeFlags.Undefined | ts.TypeFlags.Null)))
  const mayMiss = optional || members.length < (type.isUnion() ? type.types.length : 1)
  return [...scalars(members, path, mayMiss), ...fields(checker, members, path, mayMiss, depth)]
}

function scalars(members: readonly ts.Type[], path: string, optional: boolean): Leaf[] {
  const found: Leaf[] = []
  const numbers = members.filter((member) => member.isNumberLiteral()).map((member) => member.value)
  const words = members.filter((member) => member.isStringLiteral()).map((member) => member.value)
  if (members.some((member) => member.flags & ts.TypeFlags.Number)) found.push({ path, kind: 'number', optional })
  else if (numbers.length > 0) found.push({ path, kind: 'number', optional, choices: numbers })
  if (members.some((member) => member.flags & ts.TypeFlags.String)) found.push({ path, kind: 'string', optional })
  else if (words.length > 0) found.push({ path, kind: 'string', optional, choices: words })
  if (members.some((member) => member.flags & ts.TypeFlags.BooleanLike)) found.push({ path, kind: 'boolean', optional })
  return found
}

function fields(checker: ts.TypeChecker, members: readonly ts.Type[], path: string, optional: boolean, depth: number): Leaf[] {
  const objects = members.filter((member) => member.flags & (ts.TypeFlags.Object | ts.TypeFlags.Intersection) && member.getCallSignatures().length === 0)
  const found = new Map<string, Leaf>()
  const seen = new Map<string, number>()
  for (const object of objects) {
    for (const leaf of fieldsOf(checker, object, path, optional, depth)) {
      const before = found.get(`${leaf.path} ${leaf.kind}`)
      found.set(`${leaf.path} ${leaf.kind}`, before === undefined ? leaf : merged(before, leaf))
      seen.set(`${leaf.path} ${leaf.kind}`, (seen.get(`${leaf.path} ${leaf.kind}`) ?? 0) + 1)
    }
  }
  // A field of only some members of a union is optional.
  return [...found].map(([key, leaf]) => ((seen.get(key) ?? 0) < objects.length ? { ...leaf, optional: true } : leaf))
}

function merged(a: Leaf, b: Leaf): Leaf {
  const choices = a.choices !== undefined && b.choices !== undefined ? [...new Set([...a.choices, ...b.choices])] : undefined
  return { path: a.path, kind: a.kind, optional: a.optional || b.optional, ...(choices === undefined ? {} : { choices }) }
}

function fieldsOf(checker: ts.TypeChecker, object: ts.Type, path: string, optional: boolean, depth: number): readonly Leaf[] {
  if (checker.isTupleType(object)) {
    return checker
      .getTypeArguments(object as ts.TypeReference)
      .flatMap((element, index) => leavesOf(checker, element, join(path, String(index)), optional, depth + 1))
  }
  if (checker.isArrayType(object)) {
    const [element] = checker.getTypeArguments(object as ts.TypeReference)
    return element === undefined ? [] : leavesOf(checker, element, join(path, '0'), optional, depth + 1)
  }
  return checker.getPropertiesOfType(object).flatMap((property) => {
    const mayMiss = optional || (property.flags & ts.SymbolFlags.Optional) !== 0
    return leavesOf(checker, checker.getTypeOfSymbol(property), join(path, property.name), mayMiss, depth + 1)
  })
}
