/**
 * A date by a pattern of letters, as `Utilities.formatDate` takes them (those of Java's SimpleDateFormat): yyyy, yy,
 * MMMM, MMM, MM, M, dd, d, EEEE, EEE, HH, H, hh, h, mm, m, ss, s, a; text between apostrophes stands as it is.
 * @throws Error for other letters
 */
export function formatDate(date: Date, timeZone: string, pattern: string): string {
  const part = (options: Intl.DateTimeFormatOptions, type: Intl.DateTimeFormatPartTypes): string => {
    const parts = new Intl.DateTimeFormat('en-US', { timeZone, ...options }).formatToParts(date);
    return parts.find((candidate) => candidate.type === type)?.value ?? '';
  };
  const number = (
    type: 'year' | 'month' | 'day' | 'hour' | 'minute' | 'second',
    cycle: 'h23' | 'h12' = 'h23',
  ) => Number(part({ [type]: 'numeric', hourCycle: cycle }, type));

  return pattern.replace(/'(?:[^']|'')*'|([A-Za-z])\1*/g, (token, letter: string | undefined) => {
    if (letter === undefined) return token === "''" ? "'" : token.slice(1, -1).replace(/''/g, "'");
    const padded = (value: number) => String(value).padStart(token.length, '0');
    switch (letter) {
      case 'y':
        return token === 'yy' ? String(number('year') % 100).padStart(2, '0') : padded(number('year'));
      case 'M':
        if (token.length > 2) return part({ month: token.length > 3 ? 'long' : 'short' }, 'month');
        return padded(number('month'));
      case 'd':
        return padded(number('day'));
      case 'E':
        return part({ weekday: token.length > 3 ? 'long' : 'short' }, 'weekday');
      case 'H':
        return padded(number('hour'));
      case 'h':
        return padded(number('hour', 'h12'));
      case 'm':
        return padded(number('minute'));
      case 's':
        return padded(number('second'));
      case 'a':
        return part({ hour: 'numeric', hourCycle: 'h12' }, 'dayPeriod');
      default:
        throw new Error(`Utilities.formatDate: '${token}' is not implemented by the local host`);
    }
  });
}
