/** The seed of a test file: another every run, or that of an earlier one: `HOSTILE_SEED=12345 npx vitest run tests/hostile`. */
const given = Number(process.env.HOSTILE_SEED);

export const seed =
  Number.isInteger(given) && given > 0 ? given : (Date.now() ^ (process.pid << 8)) & 0x7fffffff;

/** How many times as many as in `npm test`. */
const share = Number(process.env.HOSTILE_SHARE);
export const times = (runs: number) => Math.ceil(runs * (share > 0 ? share : 1));

export const say = (what: string) => console.log(`${what} (HOSTILE_SEED=${seed})`);
