import { isMap, isScalar, type Node } from 'yaml'
import { nearestUnit, unitsFor, unitsOf } from '../../core/quantity/index.ts'
import { type ChannelName, channelNames } from '../../core/terms/index.ts'
import { type ColumnAnswer, type ColumnAnswers, channelDimensions } from './columnAnswers.ts'
import type { Spot } from './gathered.ts'
import { type Entry, namedEntries } from './namedEntries.ts'
import { joined, nearestHint } from './sectionComplaints.ts'
import { type Complaint, setupProblem } from './setupProblem.ts'

const channelWords: readonly string[] = [...channelNames, 'none']

/** Reads `columns`: per heading a channel, a unit or both. */
export function readColumns(entries: ReadonlyMap<string, Entry>, spot: Spot): ColumnAnswers {
  const answers: Record<string, ColumnAnswer> = {}
  const taken = new Map<ChannelName, string>()
  for (const { name: heading, keyNode, valueNode } of entries.values()) {
    const below = { ...spot, path: joined(spot.path, heading) }
    const map = spot.source.behind(valueNode)
    if (!isMap(map) || map.items.length === 0) {
      const what = `The column "${heading}" has neither channel nor unit.`
      const mend = 'Write for example "{ channel: torque, unit: mN·m }" behind it.'
      complain(below, keyNode, { kind: 'sectionExpected', what, mend })
      continue
    }
    const answer = readAnswer(namedEntries(map, below), below)
    // A plain assignment would lose a heading that is called __proto__.
    Object.defineProperty(answers, heading, { value: answer, enumerable: true })
    const { channel } = answer
    if (channel === undefined || channel === 'ignore') continue
    const other = taken.get(channel)
    if (other !== undefined) {
      const what = `"${other}" and "${heading}" are both said to be ${channel}.`
      complain(below, keyNode, {
        kind: 'channelTwice',
        what,
        mend: 'Write "channel: none" for the one that must not be read.',
      })
    }
    taken.set(channel, heading)
  }
  return answers
}

function readAnswer(entries: ReadonlyMap<string, Entry>, spot: Spot): ColumnAnswer {
  const said = new Map<string, string>()
  for (const { name, keyNode, valueNode } of entries.values()) {
    const below = { ...spot, path: joined(spot.path, name) }
    const value = spot.source.behind(valueNode)
    const text = isScalar(value) ? String(value.value ?? '').trim() : ''
    if (name !== 'channel' && name !== 'unit') {
      const mend = nearestHint(name, ['channel', 'unit'])
      complain(below, keyNode, { kind: 'keyUnknown', what: `"${name}" is no key of a column.`, mend })
    } else if (text === '') {
      complain(below, keyNode, {
        kind: 'valueMissing',
        what: `${name} has no plain value.`,
        mend: 'Write one or take the key out.',
      })
    } else {
      said.set(name, text)
    }
  }
  const channel = channelOf(said.get('channel'))
  const unit = said.get('unit')
  const faults: readonly (readonly [string, Complaint | undefined])[] = [
    ['channel', said.has('channel') && channel === undefined ? unknownChannel(said.get('channel') ?? '') : undefined],
    ['unit', unit === undefined ? undefined : unitComplaint(unit, channel === 'ignore' ? undefined : channel)],
  ]
  for (const [name, complaint] of faults) {
    if (complaint !== undefined)
      complain({ ...spot, path: joined(spot.path, name) }, entries.get(name)?.valueNode as Node, complaint)
  }
  return { ...(channel === undefined ? {} : { channel }), ...(unit === undefined ? {} : { unit }) }
}

const channelOf = (word: string | undefined): ColumnAnswer['channel'] =>
  word === 'none' ? 'ignore' : channelNames.find((name) => name === word)

const unknownChannel = (word: string): Complaint => ({
  kind: 'choiceUnknown',
  what: `"${word}" is no channel.`,
  mend: nearestHint(word, channelWords),
})

function unitComplaint(text: string, channel: ChannelName | undefined): Complaint | undefined {
  const dimension = channel === undefined ? undefined : channelDimensions[channel]
  const readings = unitsOf(text)
  const fitting = readings.filter((unit) => dimension === undefined || unit.dimension === dimension)
  if (fitting.length === 0) {
    const nearest = nearestUnit(text, dimension)
    const hint = nearest === undefined ? '' : `Did you mean "${nearest}"? `
    const known =
      dimension === undefined ? 'a unit such as mN·m, 1/min or °C' : `one of ${unitsFor(dimension).join(', ')}`
    const what = readings.length === 0 ? `The unit "${text}" is not known.` : `"${text}" is no unit of ${channel}.`
    return { kind: 'unitUnfit', what, mend: `${hint}Write ${known}.` }
  }
  if (dimension === undefined || fitting.length === 1) return undefined
  const words = fitting.map((unit) => unit.text).join(' or ')
  return { kind: 'unitUnfit', what: `"${text}" can mean ${words}.`, mend: `Write ${words}.` }
}

function complain(spot: Spot, at: Node, complaint: Complaint): void {
  spot.into.problems.push(setupProblem(spot.source.place(at, spot.path), complaint))
}
