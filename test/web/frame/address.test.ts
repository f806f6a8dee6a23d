import { describe, expect, test } from 'vitest'
import { addressOf, linkFrom } from '../../../src/web/frame/addressOf.ts'

describe('an address', () => {
  test.for([
    ['/', '', { study: null, unknown: false }],
    ['/studies/runners', '', { study: 'runners', station: 'ask', rest: [] }],
    ['/studies/runners/read/0a1b/7', '', { study: 'runners', station: 'read', rest: ['0a1b', '7'] }],
    ['/studies/runners/plan', '?window=load&why=time', { station: 'plan', search: { window: 'load', why: 'time' } }],
    ['/studies/runners/nowhere', '', { study: 'runners', unknown: true }],
    ['/elsewhere', '', { study: null, unknown: true }],
    ['/studies/%E0%A4%A', '', { study: null, unknown: true }],
  ] as const)('%s%s', ([path, query, want]) => {
    expect(addressOf(path, query)).toMatchObject(want)
  })

  const here = addressOf('/studies/runners/read/0a1b/7', '?window=load&tour=3')

  test.for([
    [{ station: 'plan' }, '/studies/runners/plan?tour=3'],
    [{ rest: ['0a1b', 8] }, '/studies/runners/read/0a1b/8?tour=3'],
    [{ search: { why: 'time' } }, '/studies/runners/read/0a1b/7?window=load&tour=3&why=time'],
    [{ search: { window: null, tour: null } }, '/studies/runners/read/0a1b/7'],
    [{ study: 'other' }, '/studies/other/ask?tour=3'],
    [{ study: null }, '/?tour=3'],
    [{ rest: ['a/b c'] }, '/studies/runners/read/a%2Fb%20c?tour=3'],
  ] as const)('%o leads to %s', ([change, want]) => {
    expect(linkFrom(here, change)).toBe(want)
  })
})
