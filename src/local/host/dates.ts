/**
 * Spreadsheet dates: days since 30 December 1899 on the clock of the sheet's time zone, which is here the time zone of
 * the process, so that a script's `getFullYear()` reads what the cell shows.
 */
const dayLength = 86_400_000; // ms
const epoch = Date.UTC(1899, 11, 30);

export function dateFromSerial(serial: number): Date {
  const clock = new Date(epoch + Math.round(serial * 86_400) * 1000); // whole seconds, as cells show them
  return new Date(
    clock.getUTCFullYear(),
    clock.getUTCMonth(),
    clock.getUTCDate(),
    clock.getUTCHours(),
    clock.getUTCMinutes(),
    clock.getUTCSeconds(),
  );
}

export function serialFromDate(date: Date): number {
  const clock = Date.UTC(
    date.getFullYear(),
    date.getMonth(),
    date.getDate(),
    date.getHours(),
    date.getMinutes(),
    date.getSeconds(),
    date.getMilliseconds(),
  );
  return (clock - epoch) / dayLength;
}

/** Whether a value is a Date of any realm: the script's dates are not instances of the host's class. */
export function isDate(value: unknown): value is Date {
  return Object.prototype.toString.call(value) === '[object Date]';
}

/** Format that a date gets when the cell has none. */
export function dateFormat(date: Date): string {
  const hasTime = date.getHours() + date.getMinutes() + date.getSeconds() > 0;
  return hasTime ? 'm/d/yyyy hh:mm:ss' : 'm/d/yyyy';
}
