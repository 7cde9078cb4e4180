/**
 * @module Tells a clock that runs far too fast from transfers that really paused.
 *
 * Some recordings state milliseconds as seconds: then every consecutive frame seems to come seconds after the one
 * before, evenly, in every transfer. A real pause stands out from the other gaps. (The rule is ours; a recording of
 * this kind is among the public test captures of scapy.)
 */

import type { Assembled } from '../isotp/assembled.ts'
import { N_CR_SECONDS } from '../isotp/transfer.ts'

/** Gaps of one transfer that differ by less than this factor are even. */
const EVEN = 4
/** Gaps needed in one transfer to call it even. */
const ENOUGH_GAPS = 3

/** Watches the segmented messages of one channel. */
export class ClockCheck {
  #late = 0
  #prompt = 0
  #evenlyLate = 0

  /** Counts one whole segmented message. */
  transfer(message: Assembled): void {
    if (message.late === undefined) {
      this.#prompt++
      return
    }
    this.#late++
    const even = message.shortestGap > N_CR_SECONDS / 2 && message.longestGap < message.shortestGap * EVEN
    if (even && message.gaps >= ENOUGH_GAPS) this.#evenlyLate++
  }

  /** True when the pauses come from the clock: N_Cr cannot be applied then. */
  get isFast(): boolean {
    return this.#evenlyLate > 0 && this.#evenlyLate * 2 >= this.#late && this.#late > this.#prompt
  }
}
