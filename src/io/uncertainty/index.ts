export { readModel } from './readModel.ts'
export type { OutputQuantity, UncertaintyModel } from './uncertaintyModel.ts'
