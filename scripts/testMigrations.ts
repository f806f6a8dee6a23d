import type { Migration } from '../src/store/schema/migration.ts'
import { migrations } from '../src/store/schema/migrations.ts'

/** Rows that the made-up last step writes: enough to be killed in the middle. */
export const inventedRows = 30_000

/** The schema of a program to come, for tests: a step that takes its time and rebuilds a kept table. */
export const laterMigrations: readonly Migration[] = [
  ...migrations,
  {
    version: migrations.length + 1,
    name: 'invented for tests',
    statements: () => [
      'create table invented (n integer primary key, text text not null)',
      `with recursive c (n) as (select 1 union all select n + 1 from c where n < ${inventedRows})
        insert into invented select n, 'row ' || n from c`,
      'alter table samples add column colour text',
      'create index invented_text on invented (text)',
    ],
  },
]
