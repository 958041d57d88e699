package roundbook.report.words;

import roundbook.plan.Quantity;
import roundbook.problem.words.Sentences;

/**
 * Says in a language what a quantity is.
 *
 * @param words the words of the language
 */
public record QuantityWords(Words words) {
  /** Returns what the quantity is of. */
  public String item(Quantity quantity) {
    return words.text(key(quantity), values(quantity));
  }

  /** Returns how it was reckoned or what to do with it, or empty. */
  public String note(Quantity quantity) {
    String key = key(quantity) + ".note";
    return words.has(key) ? words.text(key, values(quantity)) : "";
  }

  private Object[] values(Quantity quantity) {
    Sentences sentences = Sentences.of(words.language());
    return quantity.values().stream().map(value -> value.in(sentences)).toArray();
  }

  /** Returns its unit as it is written on paper. */
  public String unit(Quantity quantity) {
    return quantity.unit().equals("count")
        ? words.text("quantity.count")
        : quantity
            .unit()
            .replace("ft2", "ft²")
            .replace("ft3", "ft³")
            .replaceAll("^m2$", "m²")
            .replaceAll("^m3$", "m³");
  }

  private static String key(Quantity quantity) {
    return "quantity." + quantity.item();
  }
}
