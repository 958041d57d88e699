package roundbook.problem;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;

/**
 * Reads a phrase as it was written into a workbook.
 *
 * <pre>
 * phrase  = key [ "(" name "=" value { " " name "=" value } ")" ]
 * value   = phrase | '"' text '"' | number [ unit ] | "&lt;" form nanometres step unit "&gt;"
 *         | "[" key { " " value } "]"
 * </pre>
 */
final class PhraseReader {
  private static final String KEY = "abcdefghijklmnopqrstuvwxyz0123456789._-";
  private static final String DIGITS = "0123456789.";
  private static final int DEEPEST = 12;

  private final String text;
  private int at;
  private int depth;

  PhraseReader(String text) {
    this.text = text;
  }

  /** Returns the phrase; empty where the text is none, for somebody may have typed over it. */
  Optional<Phrase> phrase() {
    try {
      Phrase phrase = readPhrase();
      return at == text.length() ? Optional.of(phrase) : Optional.empty();
    } catch (IllegalArgumentException | IndexOutOfBoundsException | ArithmeticException wrong) {
      return Optional.empty();
    }
  }

  private Phrase readPhrase() {
    Phrase phrase = Phrase.of(run(KEY));
    if (!takes('(')) {
      return phrase;
    }
    do {
      String name = run(KEY);
      need('=');
      phrase = phrase.with(name, value());
    } while (takes(' '));
    need(')');
    return phrase;
  }

  private Value value() {
    if (++depth > DEEPEST) {
      throw new IllegalArgumentException("too deep");
    }
    char first = text.charAt(at);
    Value value =
        first == '"'
            ? quoted()
            : first == '<'
                ? measure()
                : first == '['
                    ? series()
                    : first == '-' || Character.isDigit(first) ? number() : readPhrase();
    depth--;
    return value;
  }

  private Value quoted() {
    StringBuilder quoted = new StringBuilder();
    for (at++; text.charAt(at) != '"'; at++) {
      at += text.charAt(at) == '\\' ? 1 : 0;
      quoted.append(text.charAt(at));
    }
    at++;
    return Value.text(quoted.toString());
  }

  private Value number() {
    String sign = takes('-') ? "-" : "";
    BigDecimal number = new BigDecimal(sign + run(DIGITS));
    int from = at;
    while (at < text.length() && Character.isLetter(text.charAt(at))) {
      at++;
    }
    return new Value.Number(number, text.substring(from, at));
  }

  private Value measure() {
    int end = text.indexOf('>', at);
    String[] parts = text.substring(at + 1, end).split(" ");
    at = end + 1;
    LengthUnit unit = LengthUnit.ofSymbol(parts[3]).orElseThrow(IllegalArgumentException::new);
    return new Value.Measure(
        Length.ofNanometres(Long.parseLong(parts[1])),
        LengthFormat.forJob(unit, Length.ofNanometres(Long.parseLong(parts[2]))),
        Value.Form.valueOf(parts[0]));
  }

  private Value series() {
    at++;
    String between = run(KEY);
    List<Value> values = new ArrayList<>();
    while (takes(' ') && text.charAt(at) != ']') {
      values.add(value());
    }
    need(']');
    return Value.list(between, values);
  }

  private String run(String letters) {
    int from = at;
    while (at < text.length() && letters.indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    if (from == at) {
      throw new IllegalArgumentException("nothing at " + at);
    }
    return text.substring(from, at);
  }

  private boolean takes(char letter) {
    boolean there = at < text.length() && text.charAt(at) == letter;
    at += there ? 1 : 0;
    return there;
  }

  private void need(char letter) {
    if (!takes(letter)) {
      throw new IllegalArgumentException("no " + letter + " at " + at);
    }
  }
}
