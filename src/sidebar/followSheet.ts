const leastPause = 5_000; // ms between two looks at the workbook: each reads all tables
const ownPause = 30_000; // ms, of looks that nobody caused
const patience = 10 * 60_000; // ms without a touch of the panel, after which it looks no more by itself

/**
 * Looks at the workbook when a person turns to the panel (comes back to its tab, focuses it, moves the pointer into it),
 * and now and then while the tab is in sight. Google tells a panel nothing of edits in the sheet, and a look costs a run of
 * the script: so it is rare, and ends when nobody has touched the panel for a while.
 */
export function followSheet(look: () => Promise<unknown>): void {
  let last = Date.now();
  let touched = Date.now();
  let isLooking = false;
  const lookAfter = (pause: number) => {
    if (isLooking || document.visibilityState === 'hidden' || Date.now() - last < pause) return;
    isLooking = true;
    look().finally(() => {
      isLooking = false;
      last = Date.now();
    });
  };
  const turnedTo = () => {
    touched = Date.now();
    lookAfter(leastPause);
  };
  window.addEventListener('focus', turnedTo);
  document.addEventListener('visibilitychange', turnedTo);
  document.documentElement.addEventListener('pointerenter', turnedTo);
  setInterval(() => {
    if (Date.now() - touched < patience) lookAfter(ownPause);
  }, ownPause);
}
