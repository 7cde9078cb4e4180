import { createRoute, z } from '@hono/zod-openapi'
import { enrolDevice } from '@shearline/store'
import { describe } from '../board/index.ts'
import { take } from '../problem/index.ts'
import { address, json, jsonBody, problems } from './describe.ts'
import type { ApiParts } from './parts.ts'
import { deviceSchema } from './schemas.ts'

/** Health of the server and the devices it knows. */
export function deviceRoutes({ store, version, clock }: ApiParts) {
  return [
    address({
      route: createRoute({
        method: 'get',
        path: '/api/health',
        summary: 'Says that the server runs, which version, and the device it signs with.',
        responses: {
          200: json(z.object({ ok: z.literal(true), version: z.string(), device: deviceSchema }), 'It runs.'),
          ...problems,
        },
      }),
      handler: (c) => c.json({ ok: true as const, version, device: describe(store.device) }, 200),
    }),
    address({
      route: createRoute({
        method: 'get',
        path: '/api/devices',
        summary: 'Lists every enrolled device with its public key.',
        responses: {
          200: json(z.object({ devices: z.array(deviceSchema) }), 'First enrolled first.'),
          ...problems,
        },
      }),
      handler: async (c) => c.json({ devices: (await store.devices()).map(describe) }, 200),
    }),
    address({
      route: createRoute({
        method: 'post',
        path: '/api/devices',
        summary: 'Enrols a device and writes so into the register; the same device again changes nothing.',
        request: { body: jsonBody(deviceSchema) },
        responses: {
          200: json(z.object({ device: deviceSchema }), 'The device as it is kept.'),
          ...problems,
        },
      }),
      handler: async (c) => {
        const enrolled = take(
          await enrolDevice(store, c.req.valid('json'), { by: store.device.name, now: clock() }),
        )
        return c.json({ device: describe(enrolled) }, 200)
      },
    }),
  ] as const
}
