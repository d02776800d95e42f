/** What the tests use of unitmath, whose package names no types. */
declare module 'unitmath' {
  export default function unitmath(value: number, unit: string): { to(unit: string): { getValue(): number } };
}
