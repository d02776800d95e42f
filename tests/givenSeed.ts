/** Properties draw other values every run, and say their seed when they fail; with HOSTILE_SEED they draw those of that seed. */
const given = Number(process.env.HOSTILE_SEED);

if (Number.isInteger(given) && given > 0) {
  const { configureGlobal } = await import('fast-check');
  configureGlobal({ seed: given });
}

export {};
