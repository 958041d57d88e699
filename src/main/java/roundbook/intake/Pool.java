package roundbook.intake;

import java.util.HashMap;
import java.util.Map;

/**
 * Keeps one of each equal value, so that a tally of a million logs fits in little memory.
 *
 * <p>Lengths and diameters of a tally repeat: they are taken to the nearest quarter of an inch or
 * centimetre.
 */
final class Pool {
  private static final int MOST = 200_000;

  private final Map<Object, Object> values = new HashMap<>();

  /** Returns the value first seen that equals this one. */
  @SuppressWarnings("unchecked")
  <T> T one(T value) {
    if (values.size() >= MOST) {
      return (T) values.getOrDefault(value, value);
    }
    Object first = values.putIfAbsent(value, value);
    return first == null ? value : (T) first;
  }
}
