package roundbook.problem;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A sentence or a word by its key, with the values that it names: what is said, in no language yet.
 *
 * <p>Two phrases are equal when their {@link #toString} is: so Java links nothing to compare them.
 */
public final class Phrase implements Value {
  private final String key;
  private final Map<String, Value> values;

  private Phrase(String key, Map<String, Value> values) {
    this.key = key;
    this.values = values;
  }

  /** Returns a phrase that names nothing. */
  public static Phrase of(String key) {
    return new Phrase(key, Map.of());
  }

  /**
   * Returns a number of things: the phrase of a key that names {@code count}, or of that key and
   * {@code .one}.
   */
  public static Phrase counted(String key, long count) {
    return of(count == 1 ? key + ".one" : key).with("count", count);
  }

  /** Returns a text as it was told once, in whatever language that was. */
  public static Phrase told(String text) {
    return of("told").with("text", text);
  }

  /** Reads what {@link #toString} wrote; empty where a text is none of it. */
  public static Optional<Phrase> parse(String written) {
    return new PhraseReader(written).phrase();
  }

  /** Returns its key. */
  public String key() {
    return key;
  }

  /** Returns the values that it names, in the order in which they were given. */
  public List<Value> values() {
    return List.copyOf(values.values());
  }

  /** Returns the phrase with a value for the hole of a name. */
  public Phrase with(String name, Value value) {
    Map<String, Value> more = new LinkedHashMap<>(values);
    more.put(name, value);
    return new Phrase(key, more);
  }

  /** Returns the phrase with a text for the hole of a name. */
  public Phrase with(String name, String text) {
    return with(name, Value.text(text));
  }

  /** Returns the phrase with a whole number for the hole of a name. */
  public Phrase with(String name, long count) {
    return with(name, Value.count(count));
  }

  /**
   * Tells the phrase, each hole filled with the value of its name.
   *
   * @throws IllegalStateException if a value is missing: a fault of the program
   */
  @Override
  public String in(Language language) {
    String pattern = language.pattern(key);
    StringBuilder text = new StringBuilder(pattern.length() + 32);
    int done = 0;
    for (int at = pattern.indexOf('{'); at >= 0; at = pattern.indexOf('{', done)) {
      int end = pattern.indexOf('}', at);
      Value value = values.get(pattern.substring(at + 1, end));
      if (value == null) {
        throw new IllegalStateException("nothing fills " + pattern.substring(at) + " of " + key);
      }
      text.append(pattern, done, at).append(value.in(language));
      done = end + 1;
    }
    return text.append(pattern, done, pattern.length()).toString();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Phrase phrase
        && key.equals(phrase.key)
        && toString().equals(phrase.toString());
  }

  @Override
  public int hashCode() {
    return toString().hashCode();
  }

  /** Returns key and values as a workbook carries them: {@code key(name=value name=value)}. */
  @Override
  public String toString() {
    if (values.isEmpty()) {
      return key;
    }
    StringBuilder text = new StringBuilder(key);
    char before = '(';
    for (Map.Entry<String, Value> each : values.entrySet()) {
      text.append(before).append(each.getKey()).append('=').append(each.getValue());
      before = ' ';
    }
    return text.append(')').toString();
  }
}
