import { Ajv, type ErrorObject } from 'ajv'
import { done, failed, type Outcome } from '../../core/terms/index.ts'
import { type PackageProblemKind, packageProblem } from './packageProblem.ts'

/** A JSON text that must keep to a schema; `T` is what the schema describes. */
export function readJson<T>(bytes: Uint8Array, schema: object, file: string): Outcome<T> {
  const damaged = (why: string) => packageProblem('packageDamaged' satisfies PackageProblemKind, { file }, why)
  let value: unknown
  try {
    value = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes))
  } catch {
    return failed(damaged('it is no JSON in UTF-8'))
  }
  const keeps = new Ajv({ allErrors: true, strict: false }).compile<T>(schema)
  if (keeps(value)) return done(value)
  return failed(...(keeps.errors ?? []).slice(0, most).map((error) => damaged(inWords(error))))
}

/** Most problems of one file that are told. */
const most = 20

const inWords = ({ instancePath, message }: ErrorObject): string =>
  `${instancePath === '' ? 'it' : instancePath} ${message ?? 'is not as it must be'}`
