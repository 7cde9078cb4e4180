import { useDesk } from '../../job/desk.ts'
import { OpenSession } from './OpenSession.tsx'
import { Recovery } from './Recovery.tsx'
import { SessionGuide } from './SessionGuide.tsx'

/** The session as it stands: to be opened, guided one step at a time, or broken off and to be brought back. */
export function Session() {
  const { sessionOpen, breakOff } = useDesk().state.teaching
  return (
    <>
      {breakOff !== null && !sessionOpen && <Recovery breakOff={breakOff} />}
      {sessionOpen ? <SessionGuide /> : breakOff === null && <OpenSession />}
    </>
  )
}
