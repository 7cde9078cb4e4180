import { createRoute, z } from '@hono/zod-openapi'
import { readRecipients, recipientsSetting, VaultError } from '@shearline/jobfile'
import { Problem } from '../problem/index.ts'
import { address, json, problems } from './describe.ts'
import type { ApiParts } from './parts.ts'

/** To whom this office seals. Public keys only; a tablet shows them as a proposal and a person takes them over. */
export function recipientRoutes({ store }: ApiParts) {
  return [
    address({
      route: createRoute({
        method: 'get',
        path: '/api/recipients',
        summary: 'Lists the public keys that vehicle secrets are sealed to at the office.',
        responses: {
          200: json(
            z.object({ recipients: z.array(z.object({ recipient: z.string(), name: z.string() })) }),
            'First named first.',
          ),
          ...problems,
        },
      }),
      handler: async (c) => {
        try {
          const recipients = [...readRecipients(await store.setting(recipientsSetting))]
          return c.json({ recipients }, 200)
        } catch (error) {
          if (!(error instanceof VaultError)) throw error
          throw new Problem(500, 'damaged', {
            what: error.message,
            where: recipientsSetting,
            doNext: error.doNext,
          })
        }
      },
    }),
  ] as const
}
