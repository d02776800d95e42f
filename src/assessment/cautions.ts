/** What is said with every result. */
export const cautions: readonly string[] = [
  'Estimates for choosing and quoting an engine, not for flight.',
  'The finished aircraft’s own weighing, its approved limits, the makers’ manuals and the authority’s rules decide.',
  'Structure, mount, fuel, cooling and electrical changes want someone qualified. Local rules differ.',
];
