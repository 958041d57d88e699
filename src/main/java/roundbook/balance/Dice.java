package roundbook.balance;

/** A generator of pseudo-random numbers that is the same on every machine. */
final class Dice {
  private long a;
  private long b;

  /** Starts a stream; streams of different seeds have nothing to do with each other. */
  Dice(long seed) {
    a = mix(seed + 0x9E3779B97F4A7C15L);
    b = mix(a ^ 0xD1B54A32D192ED03L);
  }

  private static long mix(long x) {
    long y = (x ^ (x >>> 30)) * 0xBF58476D1CE4E5B9L;
    y = (y ^ (y >>> 27)) * 0x94D049BB133111EBL;
    return y ^ (y >>> 31);
  }

  /** Returns the next 64 bits (xoroshiro128+ by Blackman and Vigna, public domain). */
  long next() {
    long result = a + b;
    long c = b ^ a;
    a = Long.rotateLeft(a, 24) ^ c ^ (c << 16);
    b = Long.rotateLeft(c, 37);
    return result;
  }

  /** Returns a number from 0 to below a bound. */
  int below(int bound) {
    return (int) (((next() >>> 33) * bound) >>> 31);
  }
}
