/** Whether a lab's place is a database and not a folder. */
export const isDatabaseAddress = (where: string): boolean => /^postgres(?:ql)?:\/\//.test(where)

/** The address as people may see it: without passwords. */
export const withoutPassword = (address: string): string =>
  address.replace(/^(\w+:\/\/[^:@/?]*):[^@/?]*@/, '$1@').replace(/([?&])(?:ssl)?password=[^&]*/g, '$1password=…')
