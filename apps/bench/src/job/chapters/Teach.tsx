import { useState } from 'react'
import { Amount } from '../../form/Amount.tsx'
import formCss from '../../form/form.module.css'
import { Words } from '../../form/Words.tsx'
import { Reason } from '../../keys/Differences.tsx'
import { Tag } from '../../keys/Tag.tsx'
import { SupplyReading } from '../../supply/SupplyReading.tsx'
import { volts as voltsWords } from '../../words/amounts.ts'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { useDesk } from '../desk.ts'
import css from '../job.module.css'
import { Part, RecordForm, useFresh } from '../Part.tsx'
import { teachingOrder } from '../teaching-order.ts'

/** The session as it goes: opened, each key with the car's own count and the supply, broken off or closed. */
export function TeachChapter() {
  const { state } = useDesk()
  const { sessionOpen, sessionClosed, taught, breakOff, rehearsal } = state.teaching
  const order = teachingOrder(state)
  const left = order.filter((key) => !taught.includes(key))
  const started = sessionOpen || sessionClosed || taught.length > 0
  return (
    <>
      {breakOff !== null && <Mend />}
      {sessionOpen ? (
        <p>{t('teach.is-open')}</p>
      ) : (
        <Part
          title={t('teach.open')}
          need={sessionClosed ? 'session-not-opened' : 'session-not-opened key-not-taught session-not-closed'}
          settled={sessionClosed}
          more={t('teach.open.again')}
          about={started && <p>{sessionClosed ? t('teach.is-closed') : t('teach.is-stopped')}</p>}
        >
          <RecordForm
            submit={t('teach.open.record')}
            drafts={() => [{ kind: 'session-opened', body: { rehearsed: rehearsal !== null } }]}
          >
            <p>
              {rehearsal === null
                ? t('teach.not-rehearsed')
                : t('teach.rehearsed', { order: order.join(', ') })}
            </p>
          </RecordForm>
        </Part>
      )}
      <Part
        title={t('teach.keys')}
        need="key-not-taught"
        about={order.length === 0 && <p>{t('rehearsal.no-keys')}</p>}
      >
        <ol className={css.steps}>
          {order.map((key) => (
            <KeyStep key={key} label={key} next={left[0] === key} />
          ))}
        </ol>
      </Part>
      {sessionOpen && (
        <Part
          title={t('teach.close')}
          need="session-not-closed"
          settled={left.length > 0}
          more={t('teach.close.early')}
        >
          <Close ready={left.length === 0} />
        </Part>
      )}
      <SupplyReading during="session" />
      <BelowFloor />
    </>
  )
}

function KeyStep({ label, next }: { readonly label: string; readonly next: boolean }) {
  const { state } = useDesk()
  const [count, setCount] = useState<number | null>(null)
  const [volts, setVolts] = useState<number | null>(null)
  const jobKey = state.keys.find((one) => one.id === label)
  const taught = state.teaching.taught.includes(label)
  return (
    <li
      className={css.rehearsed}
      data-need={taught || !state.teaching.sessionOpen ? undefined : `key-not-taught:${label}`}
    >
      <span className={css.rehearsedHead}>
        {jobKey !== undefined && <Tag letter={label} colour={jobKey.colour} />}
        <strong>{taught ? t('teach.taught', { key: label }) : t('teach.key', { key: label })}</strong>
      </span>
      {!taught && next && state.teaching.sessionOpen && (
        <RecordForm
          submit={t('teach.key.record', { key: label })}
          drafts={() => [
            {
              kind: 'key-taught',
              body: {
                key: label,
                ...(count === null ? {} : { carCount: count }),
                ...(volts === null ? {} : { volts }),
              },
            },
          ]}
        >
          <div className={formCss.row}>
            <Amount
              label={t('teach.count')}
              hint={t('teach.count.hint')}
              value={count}
              onChange={setCount}
              most={99}
              optional
            />
            <Amount
              label={t('supply.volts')}
              unit="V"
              value={volts}
              onChange={setVolts}
              most={60}
              step={0.1}
              decimals={2}
              optional
            />
          </div>
        </RecordForm>
      )}
    </li>
  )
}

function Close({ ready }: { readonly ready: boolean }) {
  const [count, setCount] = useState<number | null>(null)
  return (
    <RecordForm
      submit={t('teach.close.record')}
      drafts={() => [{ kind: 'session-closed', body: count === null ? {} : { carCount: count } }]}
    >
      {!ready && <p>{t('teach.not-all')}</p>}
      <Amount
        label={t('teach.count')}
        hint={t('teach.count.hint')}
        value={count}
        onChange={setCount}
        most={99}
        optional
      />
    </RecordForm>
  )
}

function Mend() {
  const { state } = useDesk()
  const [how, setHow] = useState('')
  const [fresh, renew] = useFresh()
  const { breakOff } = state.teaching
  if (breakOff === null) return null
  return (
    <Part
      title={t('mend.title', { after: breakOff.after })}
      need="break-off-open"
      about={<p>{t('mend.why', { why: say(`break.${breakOff.why}`) })}</p>}
    >
      <RecordForm
        key={fresh}
        submit={t('record')}
        onDone={renew}
        drafts={() => [{ kind: 'break-off-mended', body: { how } }]}
      >
        <p>{t('mend.first')}</p>
        <Words label={t('mend.how')} hint={t('mend.how.hint')} value={how} onChange={setHow} />
      </RecordForm>
    </Part>
  )
}

function BelowFloor() {
  const { state } = useDesk()
  const { setting, minimumVolts } = state.supply
  if (setting === null || minimumVolts === null || minimumVolts >= setting.floorVolts) return null
  const explained = !state.tumblers.some((tumbler) =>
    tumbler.needs.some((need) => need.code === 'supply-below-floor'),
  )
  return (
    <Part
      title={t('supply.below', { minimum: voltsWords(minimumVolts), floor: voltsWords(setting.floorVolts) })}
      need="supply-below-floor"
      settled={explained}
      more={t('differences.again')}
    >
      <Reason code="supply-below-floor" />
    </Part>
  )
}
