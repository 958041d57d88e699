package roundbook.job;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What a yard asks for logs, one way of selling.
 *
 * @param basis what the price is for
 * @param price money for one of the basis, in the builder's currency
 * @param lines the lines of the order that it is for, by number; empty: all of them
 * @param delivery money for a load brought; empty where none is asked
 */
public record Price(
    Basis basis, BigDecimal price, Set<Integer> lines, Optional<BigDecimal> delivery) {
  /** Copies the set. */
  public Price {
    lines = Set.copyOf(lines);
  }

  /** Returns whether it is for a line of the order. */
  public boolean covers(int line) {
    return lines.isEmpty() || lines.contains(line);
  }

  /** What logs are sold by. A board foot always names its rule. */
  public enum Basis {
    /** By the piece. */
    EACH("each"),
    /** By the foot of length asked for. */
    FOOT("foot"),
    /** By the metre of length asked for. */
    METRE("metre"),
    /** By the board foot, Doyle. */
    DOYLE("bd ft Doyle"),
    /** By the board foot, Scribner's formula. */
    SCRIBNER("bd ft Scribner"),
    /** By the board foot, Scribner Decimal C. */
    SCRIBNER_DECIMAL_C("bd ft Scribner Decimal C"),
    /** By the board foot, International 1/4-inch. */
    INTERNATIONAL_QUARTER("bd ft International"),
    /** By the cubic foot of round wood. */
    CUBIC_FOOT("ft3"),
    /** By the cubic metre of round wood. */
    CUBIC_METRE("m3"),
    /** By the stacked cord of 128 cubic feet, bark and air included. */
    CORD("cord"),
    /** By the short ton of 2000 lb, green. */
    TON("ton"),
    /** By the tonne of 1000 kg, green. */
    TONNE("tonne");

    private final String words;

    Basis(String words) {
      this.words = words;
    }

    /** Returns the words that the sheet Prices has for it. */
    public String words() {
      return words;
    }

    /** Returns whether it is a board foot. */
    public boolean isBoardFoot() {
      return words.startsWith("bd ft");
    }

    /** Finds the basis of a word, whatever its case and the signs between; empty where none is. */
    public static Optional<Basis> of(String text) {
      String wanted = plain(text);
      for (Basis basis : values()) {
        if (plain(basis.words).equals(wanted)) {
          return Optional.of(basis);
        }
      }
      return Optional.empty();
    }

    private static String plain(String text) {
      return text.toLowerCase(Locale.ROOT)
          .replace("board feet", "bd ft")
          .replace("board foot", "bd ft")
          .replace("²", "2")
          .replace("³", "3")
          .replaceAll("\\bper\\b|1/4.?inch|[^a-z0-9]", "");
    }
  }
}
