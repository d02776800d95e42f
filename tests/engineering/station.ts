import type { Station } from '../../src/engineering/loading.ts';

export const station = (name: string, arm: number, maximum: number, minimum = 0): Station => ({
  name,
  arm,
  minimum,
  maximum,
});
