import { writeFileSync } from "node:fs";

// Loaded before a program: writes to the file SAY_USE, when it ends, how much memory and time of the processor it took. A pipe that
// is full at the end would lose it.
process.on("exit", () => {
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
  writeFileSync(
    process.env.SAY_USE,
    JSON.stringify({ megabytes: maxRSS / 1024, seconds: (userCPUTime + systemCPUTime) / 1e6 }),
  );
});
