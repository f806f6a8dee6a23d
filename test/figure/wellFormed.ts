const tag = /<(\/?)([a-zA-Z][a-zA-Z0-9]*)(?:\s[a-zA-Z][a-zA-Z0-9-]*="[^"<]*")*\s*(\/?)>/g

/** Every element closed in order, one root: enough of XML 1.0 for what we write. */
export function wellFormed(svg: string): boolean {
  const open: string[] = []
  const body = svg.trim()
  for (const { 0: whole, 1: close, 2: name, 3: selfClosed, index } of body.matchAll(tag)) {
    if (close === '/') {
      if (open.pop() !== name) return false
    } else if (selfClosed !== '/') open.push(name)
    if (open.length === 0 && index + whole.length < body.length) return false
  }
  const between = body.replace(tag, '')
  return open.length === 0 && !between.includes('<') && !/&(?!amp;|lt;|gt;|quot;)/.test(body)
}
