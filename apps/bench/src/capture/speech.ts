/**
 * @module Speech to words, where the browser offers it (Web Speech API, W3C community group draft). On the device when
 * the browser can; otherwise the browser may send what is said to its maker, so the person is asked first.
 */
import { language } from '../words/index.ts'

interface SpeechResultEvent extends Event {
  readonly results: ArrayLike<ArrayLike<{ readonly transcript: string }> & { readonly isFinal: boolean }>
}

interface Recognition extends EventTarget {
  lang: string
  continuous: boolean
  interimResults: boolean
  processLocally?: boolean
  start(): void
  stop(): void
  abort(): void
}

interface RecognitionMaker {
  new (): Recognition
  available?(options: { langs: readonly string[]; processLocally: boolean }): Promise<string>
}

function maker(): RecognitionMaker | null {
  const holder = globalThis as {
    readonly SpeechRecognition?: RecognitionMaker
    readonly webkitSpeechRecognition?: RecognitionMaker
  }
  return holder.SpeechRecognition ?? holder.webkitSpeechRecognition ?? null
}

/** Whether this browser offers speech at all. */
export function speechOffered(): boolean {
  return maker() !== null
}

function spokenLanguage(): string {
  return navigator.languages.find((one) => one.startsWith(`${language()}-`)) ?? language()
}

/** Whether it can be done on this device, nothing leaving it. Unknown counts as no. */
export async function speechStaysHere(): Promise<boolean> {
  const asked = maker()?.available?.({ langs: [spokenLanguage()], processLocally: true })
  return (await asked?.catch(() => '')) === 'available'
}

/** A person being listened to. */
export interface Listening {
  /** Ends it and keeps what was understood. */
  readonly stop: () => void
  /** Ends it and hears no more. */
  readonly drop: () => void
}

/** Listens until the person pauses. `onWords` hears everything understood so far, `onEnd` why it ended. */
export function listen(
  here: boolean,
  onWords: (words: string) => void,
  onEnd: (why: 'done' | 'nothing' | 'refused') => void,
): Listening | null {
  const Maker = maker()
  if (Maker === null) return null
  const recognition = new Maker()
  recognition.lang = spokenLanguage()
  recognition.continuous = true
  recognition.interimResults = true
  if (here) recognition.processLocally = true
  let why: 'done' | 'nothing' | 'refused' = 'nothing'
  const end = new AbortController()
  const listening = { signal: end.signal }
  recognition.addEventListener(
    'result',
    (event) => {
      const words = Array.from((event as SpeechResultEvent).results, (result) => result[0]?.transcript ?? '')
      why = 'done'
      onWords(words.join(' ').replace(/\s+/g, ' ').trim())
    },
    listening,
  )
  recognition.addEventListener(
    'error',
    (event) => {
      const code = (event as Event & { readonly error?: string }).error
      if (code === 'not-allowed' || code === 'service-not-allowed') why = 'refused'
    },
    listening,
  )
  recognition.addEventListener('end', () => onEnd(why), listening)
  recognition.start()
  return {
    stop: () => recognition.stop(),
    drop: () => {
      end.abort()
      recognition.abort()
    },
  }
}
