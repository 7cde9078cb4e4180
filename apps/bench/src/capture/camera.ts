/** @module The camera at the back of the tablet. Its picture stays in the page; nothing goes to the gallery. */
import { useEffect, useRef, useState } from 'react'

/** Why there is no picture. */
export type CameraTrouble = 'refused' | 'none' | 'busy' | 'insecure'

/** What a browser says of a lamp beside the camera; the types of the platform lack it. */
type WithTorch<T> = T & { readonly torch?: boolean }

export interface Camera {
  readonly video: React.RefObject<HTMLVideoElement | null>
  /** `starting` until the first picture is there. */
  readonly state: 'starting' | 'running' | CameraTrouble
  /** The lamp, when the camera has one. */
  readonly lamp: { readonly on: boolean; readonly turn: () => void } | null
}

/** Runs the camera for as long as the component that uses it is shown. */
export function useCamera(): Camera {
  const video = useRef<HTMLVideoElement>(null)
  const [state, setState] = useState<Camera['state']>('starting')
  const [track, setTrack] = useState<MediaStreamTrack | null>(null)
  const [lit, setLit] = useState(false)
  useEffect(() => {
    let live = true
    let stream: MediaStream | null = null
    const stop = () => {
      for (const one of stream?.getTracks() ?? []) one.stop()
    }
    const start = async () => {
      // Absent where the page is not on loopback or TLS.
      if (navigator.mediaDevices === undefined) return setState('insecure')
      stream = await navigator.mediaDevices.getUserMedia({
        video: { facingMode: 'environment', width: { ideal: 1920 }, height: { ideal: 1080 } },
        audio: false,
      })
      const element = video.current
      if (!live || element === null) return stop()
      element.srcObject = stream
      await element.play()
      if (!live) return
      setTrack(stream.getVideoTracks()[0] ?? null)
      setState('running')
    }
    start().catch((error: unknown) => {
      if (live) setState(troubleOf(error))
    })
    return () => {
      live = false
      stop()
    }
  }, [])
  const hasLamp =
    (track?.getCapabilities?.() as WithTorch<MediaTrackCapabilities> | undefined)?.torch === true
  const turn = () => {
    const wanted = { torch: !lit } as WithTorch<MediaTrackConstraintSet>
    track?.applyConstraints({ advanced: [wanted] }).then(
      () => setLit(!lit),
      () => undefined,
    )
  }
  return { video, state, lamp: hasLamp ? { on: lit, turn } : null }
}

function troubleOf(error: unknown): CameraTrouble {
  const name = error instanceof DOMException ? error.name : ''
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'refused'
  return name === 'NotFoundError' || name === 'OverconstrainedError' ? 'none' : 'busy'
}
