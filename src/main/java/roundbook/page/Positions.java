package roundbook.page;

import java.util.EnumMap;
import java.util.Map;

/**
 * Where each part of a table stands, by the enum that lists its parts in their order.
 *
 * @param numbers the columns or rows of the parts, counted from one
 * @param <E> the enum
 */
public record Positions<E extends Enum<E>>(Map<E, Integer> numbers) {
  /** Returns the positions of an enum's constants, one after the other. */
  public static <E extends Enum<E>> Positions<E> of(Class<E> parts) {
    Map<E, Integer> numbers = new EnumMap<>(parts);
    for (E part : parts.getEnumConstants()) {
      numbers.put(part, numbers.size() + 1);
    }
    return new Positions<>(numbers);
  }

  /** Returns the column or row of a part, counted from one. */
  public int number(E part) {
    return numbers.get(part);
  }
}
