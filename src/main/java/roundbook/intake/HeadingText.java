package roundbook.intake;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/** A heading cut into words: what they mean, and the units among them. */
final class HeadingText {
  private static final Pattern INITIALS =
      Pattern.compile("(?<![\\p{L}])(\\p{L})\\.\\s?(\\p{L})\\.(?:\\s?(\\p{L})\\.)?");
  private static final Pattern HUMP = Pattern.compile("(?<=\\p{Ll})(?=\\p{Lu})");
  private static final Pattern COMPOUND =
      Pattern.compile(
          "(\\p{L}{2,}?)(durchmesser|diameter|diam|dia|lapimitta|umfang|omkrets|girth|lange|langd"
              + "|pituus|length|nummer|nr|no|id)");

  private final Set<HeadingWord> meanings = EnumSet.noneOf(HeadingWord.class);
  private final List<LengthUnit> units = new ArrayList<>();
  private int unknown;

  private HeadingText() {}

  static HeadingText of(String text) {
    HeadingText result = new HeadingText();
    String plain = plain(text);
    for (String word : plain.split("[^\\p{L}\\p{N}\"'#]+")) {
      result.add(word);
    }
    return result;
  }

  private static String plain(String text) {
    String german =
        text.replaceAll("(?i)m\\.\\s?R\\.", " ob ").replaceAll("(?i)o\\.\\s?R\\.", " ub ");
    String split = HUMP.matcher(german.replaceAll("[øØ⌀∅φ]", " dia ")).replaceAll(" ");
    String joined =
        INITIALS.matcher(split).replaceAll(found -> Matcher.quoteReplacement(letters(found) + " "));
    return Normalizer.normalize(joined, Normalizer.Form.NFKD)
        .replaceAll("\\p{M}+", "")
        .toLowerCase(Locale.ROOT)
        .replace("ß", "ss")
        .replaceAll("[″”“]|''", "\"")
        .replaceAll("[′’]", "'")
        .replaceAll("([\"'])", " $1 ");
  }

  private static String letters(java.util.regex.MatchResult found) {
    return found.group(1) + found.group(2) + (found.group(3) == null ? "" : found.group(3));
  }

  private void add(String word) {
    HeadingWord meaning = HeadingWord.of(word);
    Optional<LengthUnit> unit = LengthReader.unitOf(word);
    if (meaning != null) {
      meanings.add(meaning);
    }
    unit.ifPresent(units::add);
    if (unit.filter(each -> each == LengthUnit.DECIMETRE).isPresent()) {
      meanings.add(HeadingWord.DIAMETER);
    }
    if (meaning == null && unit.isEmpty() && !word.isEmpty()) {
      addCompound(word);
    }
  }

  /** Cuts such words as Zopfdurchmesser, rotdiameter and Stammnummer in two. */
  private void addCompound(String word) {
    Matcher matcher = COMPOUND.matcher(word);
    HeadingWord first = matcher.matches() ? HeadingWord.of(matcher.group(1)) : null;
    HeadingWord single = word.equals("l") ? HeadingWord.LENGTH : null;
    if (first != null) {
      meanings.add(first);
      meanings.add(HeadingWord.of(matcher.group(2)));
    } else if (single != null) {
      meanings.add(single);
    } else {
      unknown++;
    }
  }

  boolean has(HeadingWord... any) {
    for (HeadingWord word : any) {
      if (meanings.contains(word)) {
        return true;
      }
    }
    return false;
  }

  /** Returns how many words mean nothing here. */
  int unknown() {
    return unknown;
  }

  /**
   * Returns the unit that the heading states: the last one, but feet where feet and inches stand
   * together, and not the word {@code in} before another unit. Lengths are written in decimetres;
   * elsewhere {@code Dm} stands for a diameter.
   */
  Optional<LengthUnit> unit() {
    boolean feetEnd = has(HeadingWord.FOOT_END) && !has(HeadingWord.LENGTH);
    boolean length = has(HeadingWord.LENGTH);
    List<LengthUnit> stated =
        units.stream()
            .filter(unit -> !(feetEnd && unit == LengthUnit.FOOT))
            .filter(unit -> length || unit != LengthUnit.DECIMETRE)
            .toList();
    if (stated.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(isFeetAndInches() ? LengthUnit.FOOT : stated.get(stated.size() - 1));
  }

  /** Returns whether the heading of a length states feet and inches together. */
  boolean isFeetAndInches() {
    boolean feetEnd = has(HeadingWord.FOOT_END) && !has(HeadingWord.LENGTH);
    return !feetEnd && units.contains(LengthUnit.FOOT) && units.contains(LengthUnit.INCH);
  }
}
