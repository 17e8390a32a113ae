/** The mark by which a stage of the pipeline says that it is done, and what it made. */
const prefix = "dotdown ";

interface Made {
  readonly count: number;
  readonly of: string;
}

/** Notes that a stage is done, with how many of what it has made; the clock of the process keeps the time. */
export function stageDone(stage: string, count: number, of: string): void {
  performance.mark(`${prefix}${stage}`, { detail: { count, of } satisfies Made });
}

/** Forgets what was noted: a process may run the pipeline more than once. */
export function clearStages(): void {
  for (const { name } of marks()) performance.clearMarks(name);
}

/** A line for each stage that was done since a time [ms of the process's clock]: what it made, and in how long. */
export function stageTimes(sinceMs: number): readonly string[] {
  let beforeMs = sinceMs;
  return marks().map(({ name, startTime, detail }) => {
    const { count, of } = detail as Made;
    const seconds = ((startTime - beforeMs) / 1000).toFixed(2);
    beforeMs = startTime;
    return `${name.slice(prefix.length)}: ${count} ${of} in ${seconds} s`;
  });
}

const marks = () =>
  (performance.getEntriesByType("mark") as PerformanceMark[]).filter(({ name }) => name.startsWith(prefix));
