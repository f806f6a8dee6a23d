import { failed, type Outcome, type Outside } from '../../core/terms/index.ts'
import { type Lab, openLab, StoreTrouble } from '../../store/index.ts'
import { changeNow, type LabCall } from './labCall.ts'

/** Opens the lab, does what is to be done and closes it again, whatever happens. */
export async function inLab<T>(
  call: LabCall,
  outside: Outside,
  act: (lab: Lab) => Promise<Outcome<T>>,
): Promise<Outcome<T>> {
  const opened = await openLab(call.place, { change: changeNow(call, outside), program: outside.program })
  if (!opened.ok) return opened
  await using lab = opened.value
  try {
    return await act(lab)
  } catch (error) {
    if (error instanceof StoreTrouble) return failed(...error.problems) // raw bytes say so only once they were read
    throw error
  }
}
