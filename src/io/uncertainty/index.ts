export { readModel } from './readModel.ts'
export type { InputQuantity, OutputQuantity, UncertaintyModel } from './uncertaintyModel.ts'
