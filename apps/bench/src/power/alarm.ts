/** @module Sound and vibration when the supply falls; what is switched on is remembered on this device. */

export type AlarmMeans = 'sound' | 'vibration'
const place = (means: AlarmMeans) => `shearline-alarm-${means}`

/** Both are on until somebody switches them off. */
export function alarmOn(means: AlarmMeans): boolean {
  return localStorage.getItem(place(means)) !== 'off'
}

export function switchAlarm(means: AlarmMeans, on: boolean): void {
  localStorage.setItem(place(means), on ? 'on' : 'off')
}

let audio: AudioContext | undefined

/** Sounds and vibrates as far as switched on and the device can: twice low for amber, five times high for stop. */
export function sound(level: 'amber' | 'stop'): void {
  const times = level === 'stop' ? 5 : 2
  if (alarmOn('vibration')) navigator.vibrate?.(Array.from({ length: times * 2 - 1 }, () => 180))
  if (!alarmOn('sound')) return
  audio ??= new AudioContext()
  void audio.resume()
  for (let time = 0; time < times; time += 1) {
    const from = audio.currentTime + time * 0.32
    const tone = audio.createOscillator()
    const loudness = audio.createGain()
    tone.frequency.value = level === 'stop' ? 1400 : 700
    loudness.gain.setValueAtTime(0.001, from)
    loudness.gain.exponentialRampToValueAtTime(0.5, from + 0.02)
    loudness.gain.exponentialRampToValueAtTime(0.001, from + 0.26)
    tone.connect(loudness).connect(audio.destination)
    tone.start(from)
    tone.stop(from + 0.28)
  }
}
