package roundbook.report.proof;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Does a sum as it is written, the way a person does: whole numbers, fractions, decimals with a
 * point or a comma, feet and inches; products before sums.
 */
final class Longhand {
  private static final Pattern NUMBER =
      Pattern.compile("(?:(\\d+)' )?(?:(\\d+[.,]\\d+)|(?:(\\d+) )?(\\d+)/(\\d+)|(\\d+))\"?");

  private final String text;
  private int at;

  private Longhand(String text) {
    this.text =
        text.replace(" ÷ ", "÷").replace(" × ", "×").replace(" + ", "+").replace(" − ", "−");
  }

  /** Returns what a sum comes to. */
  static double of(String text) {
    Longhand sum = new Longhand(text);
    double result = sum.sum();
    if (sum.at < sum.text.length()) {
      throw new IllegalArgumentException(text + " from " + sum.at);
    }
    return result;
  }

  private double sum() {
    double result = product();
    while (is('+') || is('−')) {
      result += text.charAt(at++) == '+' ? product() : -product();
    }
    return result;
  }

  private double product() {
    double result = part();
    while (is('×') || is('÷')) {
      result = text.charAt(at++) == '×' ? result * part() : result / part();
    }
    return result;
  }

  private double part() {
    if (is('(')) {
      at++;
      double result = sum();
      at++;
      return result;
    }
    Matcher number = NUMBER.matcher(text).region(at, text.length());
    if (!number.lookingAt()) {
      throw new IllegalArgumentException(text + " from " + at);
    }
    at = number.end();
    double feet = number.group(1) == null ? 0 : 12 * Double.parseDouble(number.group(1));
    return feet + inches(number);
  }

  private static double inches(Matcher number) {
    if (number.group(2) != null) {
      return Double.parseDouble(number.group(2).replace(',', '.'));
    }
    if (number.group(4) != null) {
      double whole = number.group(3) == null ? 0 : Double.parseDouble(number.group(3));
      return whole + Double.parseDouble(number.group(4)) / Double.parseDouble(number.group(5));
    }
    return Double.parseDouble(number.group(6));
  }

  private boolean is(char sign) {
    return at < text.length() && text.charAt(at) == sign;
  }
}
