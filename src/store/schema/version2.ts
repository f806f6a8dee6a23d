import { keepRows } from './keepRows.ts'
import type { Migration } from './migration.ts'
import { textType, versionColumns } from './version1.ts'

/** Papers: JSON documents that people keep about a study, a record or the lab, version by version. */
export const version2: Migration = {
  version: 2,
  name: 'papers',
  statements: (engine) => {
    const text = textType(engine)
    const big = engine === 'postgres' ? 'bigint' : 'integer'
    const place = 'subject, subject_id, kind, name'
    return [
      `create table paper_versions (subject ${text} not null check (subject in ('lab', 'study', 'record')),
        subject_id ${text} not null, kind ${text} not null, name ${text} not null, ${versionColumns},
        content ${text} not null, sha256 ${text} not null check (length(sha256) = 64),
        change ${big} not null references history (seq), primary key (${place}, version),
        foreign key (${place}, supersedes) references paper_versions (${place}, version))
        ${engine === 'sqlite' ? 'strict' : ''}`,
      ...keepRows(engine, { paper_versions: ['subject', 'subject_id', 'kind', 'name', 'version'] }),
    ]
  },
}
