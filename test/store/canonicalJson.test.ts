import fc from 'fast-check'
import { expect, test } from 'vitest'
import { canonicalJson } from '../../src/store/index.ts'

const jsonValue = fc.jsonValue().filter((value) => !JSON.stringify(value).includes('"__proto__"'))

test('says the same value as JSON does', () => {
  fc.assert(
    fc.property(jsonValue, (value) => {
      expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)))
    }),
  )
})

test('does not depend on the order of keys', () => {
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (value) => {
      const turned = Object.fromEntries(Object.entries(value).reverse())
      expect(canonicalJson(turned)).toBe(canonicalJson(value))
    }),
  )
})

test.for([
  [{ b: 1, a: [true, null, 'x"\n'] }, '{"a":[true,null,"x\\"\\n"],"b":1}'],
  [{ a: undefined, Z: 1e21, z: -0 }, '{"Z":1e+21,"z":0}'],
  [[], '[]'],
])('%j is %s', ([value, text]) => {
  expect(canonicalJson(value)).toBe(text)
})

test.for([Number.NaN, Number.POSITIVE_INFINITY, [undefined], 1n, () => 1, { a: { b: Number.NaN } }])(
  'refuses %s, which JSON would change',
  (value) => {
    expect(() => canonicalJson(value)).toThrow(RangeError)
  },
)
