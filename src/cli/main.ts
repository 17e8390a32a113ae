process.exitCode = 0;
