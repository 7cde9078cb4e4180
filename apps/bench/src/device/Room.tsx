import { useEffect, useState } from 'react'
import formCss from '../form/form.module.css'
import { dropSent, type Room, readRoom } from '../sync/room.ts'
import { size } from '../words/amounts.ts'
import { t } from '../words/index.ts'

/** Whether the bench opens without a connection, the room it uses, and the way to free some: only what the server has is ever dropped. */
export function RoomLine() {
  const [room, setRoom] = useState<Room | null>(null)
  const [whole, setWhole] = useState(false)
  useEffect(() => {
    void readRoom().then(setRoom)
    void navigator.serviceWorker?.ready.then(() => setWhole(true))
  }, [])
  return (
    <>
      <p>{whole ? t('device.whole') : t('device.not-whole')}</p>
      {room !== null && <p>{t('device.room', { used: size(room.used) })}</p>}
      {room !== null && room.droppable > 0 && (
        <div className={formCss.foot}>
          <p>{t('device.droppable')}</p>
          <button
            type="button"
            className={formCss.plain}
            onClick={() => void dropSent().then(readRoom).then(setRoom)}
          >
            {t('device.drop-sent', { size: size(room.droppable) })}
          </button>
        </div>
      )}
    </>
  )
}
