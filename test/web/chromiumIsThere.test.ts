import { expect, test } from 'vitest'
import { noBrowser } from './startBrowser.ts'

test('where the gate asks for a browser, there is one', () => {
  if (process.env.KUFE_TEST_CHROMIUM === 'required') expect(noBrowser).toBeUndefined()
})
