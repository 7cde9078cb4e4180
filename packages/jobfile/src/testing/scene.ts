import type { SceneFact } from '../demo/index.ts'
import type { Fact } from '../facts/index.ts'
import { TestDevice } from './device.ts'

/** Signs the facts of a scene with a real test device, at the scene's own minutes. */
export async function playScene(
  scene: readonly SceneFact[],
  job = 'test-job',
): Promise<{ tablet: TestDevice; facts: Fact[] }> {
  const tablet = await TestDevice.create()
  const start = Date.UTC(2026, 0, 12, 8, 0, 0)
  for (const { minute, kind, body } of scene) {
    await tablet.write(kind, body, { job, at: new Date(start + Math.round(minute * 60_000)).toISOString() })
  }
  return { tablet, facts: tablet.facts }
}
