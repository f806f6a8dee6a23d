export { builtPage } from './page/builtPage.ts'
export { startServer } from './startServer.ts'
