package roundbook.heading;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cuts a heading into plain words and marks, and knows which brackets each stands in. */
final class Tokens {
  private static final String ODD = "._'";
  private static final Pattern TOKEN =
      Pattern.compile("\\d+(?:[./,]\\d+)*|[\\p{L}\\p{M}]+\\d*|[\n\"'#@%(\\[{)\\]}\u2116]");

  /**
   * One word or mark.
   *
   * @param word the word, plain
   * @param group the brackets it stands in, counted from 1; outside of any the line, counted down
   *     from 0
   */
  record Token(String word, int group) {}

  private Tokens() {}

  static List<Token> of(String text) {
    List<Token> tokens = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(plain(text));
    int groups = 0;
    int group = 0;
    int line = 0;
    while (matcher.find()) {
      String word = matcher.group();
      char first = word.charAt(0);
      if (first == '(' || first == '[' || first == '{') {
        group = ++groups;
      } else if (first == ')' || first == ']' || first == '}') {
        group = line;
      } else if (first == '\n') {
        group = --line;
      } else {
        tokens.add(new Token(word, group));
      }
    }
    return tokens;
  }

  /** Returns the words of a whole heading row. */
  static Set<String> words(List<String> headings) {
    Set<String> words = new LinkedHashSet<>();
    headings.forEach(heading -> of(heading).forEach(token -> words.add(token.word())));
    return words;
  }

  private static String plain(String text) {
    return isSimple(text) ? text.toLowerCase(Locale.ROOT) : Spelling.plain(text);
  }

  /** Returns whether there is nothing to spell otherwise: as in most headings. */
  private static boolean isSimple(String text) {
    boolean small = false;
    for (int i = 0; i < text.length(); i++) {
      char letter = text.charAt(i);
      boolean large = letter >= 'A' && letter <= 'Z';
      boolean odd = letter >= 128 || ODD.indexOf(letter) >= 0;
      if (odd || large && small) {
        return false;
      }
      small = letter >= 'a' && letter <= 'z';
    }
    return true;
  }

  /** What other spellings are: initials with points, joined words, curled and doubled marks. */
  private static final class Spelling {
    private static final Pattern INITIALS =
        Pattern.compile("(?<![\\p{L}])(\\p{L})\\.\\s?(\\p{L})\\.(?:\\s?(\\p{L})\\.)?");
    private static final Pattern HUMP = Pattern.compile("(?<=\\p{Ll})(?=\\p{Lu})");
    private static final Pattern LONE_DIAMETER =
        Pattern.compile("(?<!\\p{L})[\u00F8\u00D8](?!\\p{Ll})|[\u2300\u2205\u03C6\u03A6]");

    static String plain(String text) {
      String german =
          text.replaceAll("(?i)(?<!\\p{L})m\\.\\s?R\\.", " ob ")
              .replaceAll("(?i)(?<!\\p{L})o\\.\\s?R\\.", " ub ");
      String marked = LONE_DIAMETER.matcher(german).replaceAll(" dia ");
      String split = HUMP.matcher(marked.replace('_', ' ')).replaceAll(" ");
      String joined =
          INITIALS
              .matcher(split)
              .replaceAll(found -> Matcher.quoteReplacement(letters(found) + " "));
      return Plain.of(joined)
          .replaceAll("[\u2033\u201D\u201C\u201E]|''", "\"")
          .replaceAll("[\u2032\u2019]", "'")
          .replaceAll("(?<=\\p{L})'s(?!\\p{L})", "")
          .replaceAll("(?<=\\p{L})'(?=\\p{L})", " ");
    }

    private static String letters(MatchResult found) {
      return found.group(1) + found.group(2) + (found.group(3) == null ? "" : found.group(3));
    }
  }
}
