/** Version of all that is written for machines. Raised when a field changes its meaning or goes; new fields leave it as it is. */
export const schemaVersion = '1'
