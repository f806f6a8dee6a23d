/**
 * A long invented record as CSV: steps of one speed each, friction 0.2 with a little noise from a fixed seed. Made by a
 * plain loop, since a test that waits for the virtual rig would wait longer for it than for what it tests.
 */
export function longRecord(rows: number, steps = 20): Buffer {
  const lever = 0.015
  const force = 5
  const interval = 0.001
  const perStep = Math.ceil(rows / steps)
  let state = 20261125
  const noise = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32 - 0.5
  }
  const pieces: string[] = ['Time [s],Angular velocity [rad/s],Torque [mN·m],Axial force [N],Angle [rad],Step\n']
  let angle = 0
  let piece = ''
  for (let row = 0; row < rows; row++) {
    const step = Math.floor(row / perStep)
    const speed = 0.5 * 1.2 ** step
    angle += speed * interval
    const torque = 1000 * lever * force * 0.2 * (1 + 0.02 * noise())
    const time = ((row + 1) * interval).toFixed(3)
    piece += `${time},${speed.toFixed(4)},${torque.toFixed(4)},${(force + 0.02 * noise()).toFixed(4)},${angle.toFixed(4)},${step + 1}\n`
    if (row % 5000 === 4999) {
      pieces.push(piece)
      piece = ''
    }
  }
  return Buffer.from(pieces.join('') + piece)
}
