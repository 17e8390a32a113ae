/** Numbers from 0 to 1 by a linear congruential generator (Park and Miller 1988: 16807, 2³¹ − 1). */
export function* seeded(seed: number): Generator<number, never> {
  for (let state = seed; ; ) {
    state = (state * 16_807) % 2_147_483_647;
    yield state / 2_147_483_647;
  }
}
