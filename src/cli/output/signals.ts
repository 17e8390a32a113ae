const signals = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/**
 * Does something when the process is asked to stop, and then stops it by the same signal, so that whoever asked sees
 * that it was heard. Whoever asks again meanwhile does not break it off.
 *
 * @returns what takes the request back
 */
export function onSignal(act: () => void): () => void {
  const handle = (signal: NodeJS.Signals) => {
    act();
    off();
    process.kill(process.pid, signal);
  };
  const off = () => {
    for (const signal of signals) process.off(signal, handle);
  };
  for (const signal of signals) process.on(signal, handle);
  return off;
}
