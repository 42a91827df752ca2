// Solves each LP text that is named on standard input, one a line, with the HiGHS of the npm package, and answers
// "milliseconds status objective" a line: time of reading and solving, not of starting.
import { createInterface } from 'node:readline';
import { readFileSync } from 'node:fs';
import loader from 'highs';

const [, , seconds] = process.argv;
const highs = await loader();
for await (const file of createInterface({ input: process.stdin })) {
  const text = readFileSync(file, 'utf8');
  const start = performance.now();
  let result;
  try {
    result = highs.solve(text, { time_limit: Number(seconds), mip_rel_gap: 0, threads: 1, output_flag: false });
  } catch (error) {
    result = { Status: `failed:${error.message}`, ObjectiveValue: NaN };
  }
  console.log(`${performance.now() - start}\t${result.Status}\t${result.ObjectiveValue}`);
}
