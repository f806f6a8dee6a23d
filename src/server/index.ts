export { builtPage } from './page/builtPage.ts'
export { type Running, type ServerArgs, startServer } from './startServer.ts'
