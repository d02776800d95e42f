/** The second half of the edited workbooks of upgrade.test.ts, changed otherwise. */
import { test } from 'vitest';
import { keepEveryInput } from './editedWorkbooks.ts';

test('100 more workbooks changed at random keep every input', { timeout: 1_200_000 }, () =>
  keepEveryInput(100, 1),
);
