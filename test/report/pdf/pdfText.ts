import { inflateSync } from 'node:zlib'

/** A PDF taken apart, as far as this project's own files go: plain objects, Flate streams, CID fonts with ToUnicode. */
export class ReadPdf {
  private readonly objects = new Map<number, { readonly head: string; readonly stream: string }>()

  constructor(bytes: Uint8Array) {
    const text = Buffer.from(bytes).toString('latin1')
    for (const match of text.matchAll(/(?:^|\n)(\d+) 0 obj\n/g)) {
      const start = match.index + match[0].length
      const end = text.indexOf('\nendobj', start)
      const at = text.indexOf('stream\n', start)
      const hasStream = at >= 0 && at < end
      const head = text.slice(start, hasStream ? at : end)
      const length = Number(/\/Length (\d+)/.exec(head)?.[1] ?? 0)
      this.objects.set(Number(match[1]), { head, stream: hasStream ? text.slice(at + 7, at + 7 + length) : '' })
    }
  }

  /** Heads of all objects whose head matches. */
  heads(pattern: RegExp): string[] {
    return [...this.objects.values()].map(({ head }) => head).filter((head) => pattern.test(head))
  }

  head(id: number): string {
    return this.objects.get(id)?.head ?? ''
  }

  stream(id: number): string {
    const { head, stream } = this.objects.get(id) ?? { head: '', stream: '' }
    return head.includes('/FlateDecode') ? inflateSync(Buffer.from(stream, 'latin1')).toString('latin1') : stream
  }

  /** Words of each page, in the order in which they are drawn; blanks as they come. */
  pages(): string[] {
    const kids = /\/Kids \[([^\]]*)\]/.exec(this.heads(/\/Type \/Pages/)[0])?.[1] ?? ''
    return [...kids.matchAll(/(\d+) 0 R/g)].map(([, id]) => this.pageText(Number(id)))
  }

  private pageText(id: number): string {
    const head = this.head(id)
    const resources = /\/Resources (\d+) 0 R/.exec(head)?.[1]
    const fonts = resources === undefined ? head : this.head(Number(resources))
    const maps = new Map(
      [...fonts.matchAll(/\/(f\d+) (\d+) 0 R/g)].map(([, name, font]) => [name, this.unicodes(Number(font))]),
    )
    const content = this.stream(Number(/\/Contents (\d+) 0 R/.exec(head)?.[1]))
    let map = new Map<string, string>()
    let words = ''
    for (const { operator, strings, name } of operations(content)) {
      if (operator === 'Tf') map = maps.get(name) ?? map
      if (operator !== 'Tj' && operator !== 'TJ') continue
      for (const [code] of strings.join('').matchAll(/../gs)) words += map.get(code) ?? '\ufffd'
      words += ' '
    }
    return words
  }

  private unicodes(font: number): Map<string, string> {
    const cmap = this.stream(Number(/\/ToUnicode (\d+) 0 R/.exec(this.head(font))?.[1]))
    const map = new Map<string, string>()
    for (const [, glyph, hex] of cmap.matchAll(/<([0-9a-fA-F]{4})> <([0-9a-fA-F]+)>/g)) {
      map.set(Buffer.from(glyph, 'hex').toString('latin1'), Buffer.from(hex, 'hex').swap16().toString('utf16le'))
    }
    return map
  }
}

interface Operation {
  readonly operator: string
  readonly strings: readonly string[]
  /** The last name before it, without its slash. */
  readonly name: string
}

/** Operators of a content stream with the literal strings before them. Parentheses in a string may stand bare where they are balanced. */
function* operations(content: string): Generator<Operation> {
  let strings: string[] = []
  let name = ''
  let at = 0
  while (at < content.length) {
    if (content[at] === '(') {
      const { string, end } = literalAt(content, at + 1)
      strings.push(string)
      at = end
      continue
    }
    const word = /^(?:\/([A-Za-z]\w*)|([A-Za-z]+\*?))/.exec(content.slice(at, at + 40))
    if (word?.[1] !== undefined) name = word[1]
    if (word?.[2] !== undefined) {
      yield { operator: word[2], strings, name }
      strings = []
    }
    at += word?.[0].length ?? 1
  }
}

const letters: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' }

/** A literal string (ISO 32000-1, 7.3.4.2), from behind its first parenthesis. */
function literalAt(content: string, start: number): { string: string; end: number } {
  let string = ''
  let depth = 1
  let at = start
  while (depth > 0 && at < content.length) {
    const sequence = /^\\([0-7]{1,3}|[\s\S])/.exec(content.slice(at, at + 4))
    if (sequence !== null) {
      const [whole, code] = sequence
      string += /[0-7]/.test(code) ? String.fromCharCode(Number.parseInt(code, 8)) : (letters[code] ?? code)
      at += whole.length
      continue
    }
    if (content[at] === '(') depth += 1
    if (content[at] === ')') depth -= 1
    if (depth > 0) string += content[at]
    at += 1
  }
  return { string, end: at }
}
