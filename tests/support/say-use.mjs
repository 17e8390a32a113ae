// Loaded before a program: says on stderr, when it ends, how much memory and time of the processor it took.
process.on("exit", () => {
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
  process.stderr.write(`used ${maxRSS / 1024} MB, ${(userCPUTime + systemCPUTime) / 1e6} s\n`);
});
