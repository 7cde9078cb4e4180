import { useDesk } from '../job/desk.ts'
import { Part } from '../job/Part.tsx'
import { t } from '../words/index.ts'
import { useCustomerLanguage } from '../words/useCustomerLanguage.ts'
import { Signed, signaturesFor } from './Signed.tsx'
import { receivedText } from './shown.ts'

/** The customer signs for what is handed over: one signature, and the fact that car and keys changed hands. */
export function Received() {
  const { facts, state } = useDesk()
  const language = useCustomerLanguage(state.opened?.language)
  const signatures = signaturesFor(facts, state.corrections, 'handover')
  const handed = state.keys.filter((key) => key.onBench)
  if (language === null) return null
  const shown = receivedText(language, state)
  const replaced = signatures.flatMap(({ fact, body }) => [
    fact.id,
    ...(body.fact !== undefined &&
    facts.some((one) => one.id === body.fact && one.kind === 'vehicle-handed-over')
      ? [body.fact]
      : []),
  ])
  return (
    <Part title={t('sign.received')} about={<p>{t('sign.received.why')}</p>}>
      <Signed
        signatures={signatures}
        wish={{
          purpose: 'handover',
          shown,
          language,
          signer: state.authority.consents.at(-1)?.signer ?? '',
          fact: (to) => {
            const id = crypto.randomUUID()
            return {
              id,
              beside: [{ id, kind: 'vehicle-handed-over', body: { to, keys: handed.map((key) => key.id) } }],
            }
          },
          replaces: replaced,
        }}
      />
    </Part>
  )
}
