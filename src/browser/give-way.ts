/** How long a script works before the page has its turn: on a slow phone four times that is still no wait [ms]. */
const turnMs = 5;
let began = 0;

/** Lets the page answer and paint, where this script has been at work for long; to be asked between two pieces of work. */
export async function giveWay(): Promise<void> {
  if (performance.now() - began < turnMs) return;
  await anotherTask();
  began = performance.now();
}

/** Goes on in another task; sooner than by a timer, which browsers hold back where one follows another. */
export function anotherTask(): Promise<void> {
  return new Promise((begun) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      begun();
    };
    port2.postMessage(undefined);
  });
}
