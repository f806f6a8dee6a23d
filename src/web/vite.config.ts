import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vite'

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url))

/**
 * Builds the browser face into dist/web, where the server finds it. No inline script, no inline picture: the page is served
 * under a content security policy that refuses both. For work on the page: `vite src/web`, with a server on KUFE_API.
 */
export default defineConfig(({ command }) => {
  // Whoever builds, a test among them, builds what people get.
  if (command === 'build') process.env.NODE_ENV = 'production'
  return {
    root: here('.'),
    base: '/',
    oxc: { jsx: { runtime: 'automatic' } },
    build: {
      outDir: here('../../dist/web'),
      emptyOutDir: true,
      target: 'es2024',
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      manifest: true,
      reportCompressedSize: false,
      rolldownOptions: {
        treeshake: {
          // Core and figures only compute: a station brings of them what it uses, not the whole room behind an index.
          moduleSideEffects: (id) => !/\/src\/(core|figure)\//.test(id),
        },
      },
    },
    server: { host: '127.0.0.1', proxy: { '/api': process.env.KUFE_API ?? 'http://127.0.0.1:4700' } },
  }
})
