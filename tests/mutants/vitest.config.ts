import { relative } from 'node:path';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** A mutant ends with the first test that fails: files that failed for the mutant before come first, then the quick ones. */
class QuickestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const last = ({ project, moduleId }: TestSpecification) =>
      this.ctx.cache.getFileTestResults(`${project.name}:${relative(this.ctx.config.root, moduleId)}`);
    const cost = (file: TestSpecification) => (last(file)?.failed ? 0 : (last(file)?.duration ?? 0));
    return [...files].sort((one, other) => cost(one) - cost(other));
  }
}

/** TESTS=cost,prices: those files alone, for a folder whose tests take long; what they miss another file may see. */
const names = process.env.TESTS?.split(',') ?? ['*'];

/** Test files share a worker: a mutant's tests start in a third of a second. The Stryker configuration names the folder. */
export default defineConfig({
  test: {
    include: names.map((name) => `**/${name}.test.ts`),
    pool: 'threads',
    isolate: false,
    testTimeout: 30_000,
    sequence: { sequencer: QuickestFirst },
  },
});
