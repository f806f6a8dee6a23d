import { type Route, routes } from '../contract/index.ts'

const escaped = (text: string): string => text.replace(/[&<>"']/g, (letter) => `&#${letter.charCodeAt(0)};`)

/** A plain page of all routes: no script, its one style beside it. */
export function openApiPage(document: Readonly<Record<string, unknown>>): string {
  const { paths, components } = document as unknown as Document // made by `openApiDocument`
  const groups = Map.groupBy(Object.entries<Route>(routes), ([, { group }]) => group)
  const chapters = [...groups].map(
    ([group, list]) => `<section aria-labelledby="g-${group}"><h2 id="g-${group}">${group}</h2>
${list.map(([id, route]) => routePart(id, route, paths[route.path][route.method])).join('\n')}</section>`,
  )
  const schemas = Object.entries(components.schemas).map(
    ([name, schema]) =>
      `<details id="s-${name}"><summary>${escaped(name)}</summary><pre>${linked(JSON.stringify(schema, null, 2))}</pre></details>`,
  )
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>Routes of the bench</title><link rel="stylesheet" href="/api/page.css"></head>
<body><main><h1>Routes of the bench</h1>
<p>Values are SI; null stands for what is not known. Errors are problem details (RFC 9457), each problem with what, where and what would
mend it. For programs: <a href="/api/openapi.json">the OpenAPI 3.1 document</a>.</p>
<nav aria-label="Chapters">${[...groups.keys(), 'Schemas'].map((group) => `<a href="#g-${group}">${group}</a>`).join(' ')}</nav>
${chapters.join('\n')}
<section aria-labelledby="g-Schemas"><h2 id="g-Schemas">Schemas</h2>${schemas.join('\n')}</section></main></body></html>
`
}

interface Operation {
  readonly parameters?: readonly {
    readonly name: string
    readonly in: string
    readonly required: boolean
    readonly description?: string
    readonly schema: unknown
  }[]
  readonly requestBody?: { readonly content: Readonly<Record<string, { readonly schema?: unknown }>> }
  readonly responses: Readonly<
    Record<string, { readonly description: string; readonly content?: Readonly<Record<string, { schema?: unknown }>> }>
  >
}

interface Document {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>
  readonly components: { readonly schemas: Readonly<Record<string, unknown>> }
}

function routePart(id: string, { method, path, about }: Route, said: Operation): string {
  const rows = (said.parameters ?? []).map(
    ({ name, in: place, required, description = '', schema }) =>
      `<tr><th scope="row"><code>${escaped(name)}</code></th><td>${place}${required ? '' : ', may be left out'}</td>` +
      `<td>${escaped(description)} <code>${linked(JSON.stringify(schema))}</code></td></tr>`,
  )
  const bodies = Object.entries(said.requestBody?.content ?? {}).map(
    ([media, { schema }]) =>
      `<tr><th scope="row">body</th><td>${media}</td><td>${linked(JSON.stringify(schema))}</td></tr>`,
  )
  const answers = Object.entries(said.responses).flatMap(([status, { description, content = {} }]) =>
    /^[245]XX$/.test(status) ? [] : [answerRow(status, description, content)],
  )
  return `<article id="${id}"><h3><span class="method">${method.toUpperCase()}</span> <code>${escaped(path)}</code></h3>
<p>${escaped(about)}</p><table><tbody>${[...rows, ...bodies, ...answers].join('')}</tbody></table></article>`
}

function answerRow(status: string, about: string, content: Readonly<Record<string, { schema?: unknown }>>): string {
  const media = Object.entries(content).map(([type, { schema }]) =>
    schema === undefined ? type : `${type} ${linked(JSON.stringify(schema))}`,
  )
  return `<tr><th scope="row">${status}</th><td>answer</td><td>${escaped(about)} ${media.join(', ')}</td></tr>`
}

/** JSON as text, its references as links to the schemas. */
const linked = (json: string | undefined): string =>
  escaped(json ?? '').replace(
    /\{?(?:\s*)&#34;\$ref&#34;:\s?&#34;#\/components\/schemas\/(\w+)&#34;(?:\s*)\}?/g,
    '<a href="#s-$1">$1</a>',
  )

/** The style of the page. */
export const openApiStyle = `:root{color-scheme:light dark;--ink:#1d2523;--quiet:#5d6a66;--line:#cfd6d3;--paper:#fdfdfb;--accent:#1f6f54}
@media (prefers-color-scheme:dark){:root{--ink:#e6ebe9;--quiet:#9fb0aa;--line:#35423e;--paper:#111a22;--accent:#6cc5a1}}
body{background:var(--paper);color:var(--ink);font:16px/1.5 system-ui,sans-serif;margin:0}
main{max-width:62rem;margin:0 auto;padding:1rem 1.25rem 4rem}
h1{font-size:1.6rem}h2{font-size:1.2rem;border-bottom:1px solid var(--line);margin-top:2.5rem}
h3{font-size:1rem;margin:1.5rem 0 .2rem;overflow-wrap:anywhere}
.method{color:var(--accent);font-weight:600}
a{color:var(--accent)}nav a{margin-right:.8rem}
table{border-collapse:collapse;width:100%;font-size:.9rem}
th,td{text-align:left;vertical-align:top;border-top:1px solid var(--line);padding:.25rem .6rem .25rem 0;overflow-wrap:anywhere}
th{font-weight:500;white-space:nowrap;width:7rem}td:nth-child(2){width:11rem;color:var(--quiet)}
pre{overflow:auto;font-size:.85rem}summary{cursor:pointer;padding:.2rem 0}p{margin:.2rem 0 .6rem}`
