/**
 * Reads the report of a test run and ends with a line "N passed, N failed". `node test/count.ts <report.json>`.
 * Fails when a test failed, none passed, or there is no report because the run did not get that far.
 */
import { existsSync, readFileSync } from 'node:fs';

type Report = { numPassedTests: number; numFailedTests: number; success: boolean };

/** @returns the line, and whether the run is to count as passed */
export const countOf = (report: Partial<Report> | undefined): { line: string; good: boolean } => {
  const passed = report?.numPassedTests ?? 0;
  // A file that breaks before its first test has failed, though no test of it did.
  const failed = Math.max(report?.numFailedTests ?? 0, report?.success === true ? 0 : 1);
  return { line: `${passed} passed, ${failed} failed`, good: passed > 0 && failed === 0 };
};

if (import.meta.main) {
  const [path = ''] = process.argv.slice(2);
  const { line, good } = countOf(existsSync(path) ? (JSON.parse(readFileSync(path, 'utf8')) as Report) : undefined);
  console.log(line);
  process.exitCode = good ? 0 : 1;
}
