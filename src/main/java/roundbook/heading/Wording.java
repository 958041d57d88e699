package roundbook.heading;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import roundbook.units.LengthUnit;

/** A heading understood by its words: what they mean, the units among them, and the strangers. */
public final class Wording {
  private static final Set<Term> LAST_OF_COMPOUND =
      EnumSet.of(
          Term.DIAMETER,
          Term.LENGTH,
          Term.GIRTH,
          Term.NUMBER,
          Term.TAG,
          Term.SPECIES,
          Term.OTHER,
          Term.RADIUS);
  private static final Pattern GLUED = Pattern.compile("(\\p{L}+)(\\d+)");
  private static final Pattern JOINT = Pattern.compile("(?:en|[esn])$");
  private static final Pattern FEET_DOT_INCHES =
      Pattern.compile("(?iu).*(?<!\\p{L})(?:ft|feet)\\.(?:in|ins|inch|inches)(?!\\p{L}).*");

  private final Set<Term> terms = EnumSet.noneOf(Term.class);
  private final List<LengthUnit> units;
  private final List<String> strangers = new ArrayList<>();
  private final List<String> unsure = new ArrayList<>();
  private final Vocabulary vocabulary;
  private final Vocabulary.Languages languages;
  private final boolean choice;
  private final boolean dotInches;
  private final boolean decimetre;

  private Wording(String text, Vocabulary vocabulary, Vocabulary.Languages languages) {
    this.vocabulary = vocabulary;
    this.languages = languages;
    List<Tokens.Token> tokens = Tokens.of(text);
    UnitMarks marks = new UnitMarks(tokens, vocabulary, languages);
    for (int i = 0; i < tokens.size(); i++) {
      add(tokens.get(i).word(), marks.unit(i));
    }
    this.units = new ArrayList<>(marks.stated());
    this.choice = marks.leavesChoice();
    this.decimetre = tokens.size() == 1 && tokens.get(0).word().equals("dm");
    this.dotInches = text.indexOf('.') >= 0 && FEET_DOT_INCHES.matcher(text).matches();
    settle(isInBark(tokens));
  }

  /** Says whether "in" stands before the bark: in bark, in Rinde, with the bark on. */
  private boolean isInBark(List<Tokens.Token> tokens) {
    return IntStream.range(1, tokens.size())
        .filter(i -> tokens.get(i - 1).word().equals("in"))
        .mapToObj(i -> vocabulary.heading(tokens.get(i).word(), languages))
        .anyMatch(meaning -> meaning != null && meaning.terms().contains(Term.BARK));
  }

  /** Understands the headings of a row together. */
  public static List<Wording> ofRow(List<String> headings, Vocabulary vocabulary) {
    Vocabulary.Languages languages = vocabulary.ranked(Tokens.words(headings));
    return headings.stream().map(text -> new Wording(text, vocabulary, languages)).toList();
  }

  private void add(String word, Optional<LengthUnit> unit) {
    Vocabulary.Meaning meaning = vocabulary.heading(word, languages);
    if (meaning != null) {
      terms.addAll(meaning.terms());
      if (meaning.unsure()) {
        unsure.add(word);
      }
    }
    if (unit.filter(each -> each == LengthUnit.DECIMETRE).isPresent()) {
      terms.add(Term.DIAMETER);
    }
    if (meaning == null && unit.isEmpty() && !addMark(word) && !addSplit(word)) {
      strangers.add(word);
    }
  }

  private boolean addMark(String word) {
    Term term =
        switch (word) {
          case "#", "\u2116" -> Term.NUMBER;
          case "1.3", "1,3", "4.5" -> terms.contains(Term.DIAMETER) ? Term.BREAST : null;
          case "in" -> Term.FILLER;
          default -> null;
        };
    if (term != null) {
      terms.add(term);
    }
    return term != null;
  }

  /** Cuts such words as Zopfdurchmesser, rotdiameter, butt1 and lengths in two. */
  private boolean addSplit(String word) {
    var glued = GLUED.matcher(word);
    if (glued.matches()) {
      return addBoth(glued.group(1), glued.group(2), EnumSet.of(Term.READING));
    }
    for (int cut = word.length() - 2; cut >= 2; cut--) {
      String first = word.substring(0, cut);
      String last = word.substring(cut);
      if (addBoth(first, last, LAST_OF_COMPOUND)
          || addBoth(JOINT.matcher(first).replaceFirst(""), last, LAST_OF_COMPOUND)) {
        return true;
      }
    }
    Vocabulary.Meaning single =
        word.length() > 3 && word.endsWith("s")
            ? vocabulary.heading(word.substring(0, word.length() - 1), languages)
            : null;
    if (single != null) {
      terms.addAll(single.terms());
    }
    return single != null;
  }

  private boolean addBoth(String first, String last, Set<Term> wanted) {
    Set<Term> both = vocabulary.compound(first, last, wanted, languages);
    terms.addAll(both);
    return !both.isEmpty();
  }

  /** Settles what a word means only beside another: a preposition before the bark, a foot. */
  private void settle(boolean inBark) {
    boolean bark = terms.contains(Term.BARK);
    if (inBark || bark && (terms.contains(Term.WITH) || terms.contains(Term.ON))) {
      terms.add(Term.OVER);
    }
    if (bark && terms.contains(Term.WITHOUT)) {
      terms.add(Term.UNDER);
    }
    boolean foot = has(Term.BUTT) && units.contains(LengthUnit.FOOT) && !has(Term.LENGTH);
    if (foot && units.size() > 1) {
      units.removeIf(unit -> unit == LengthUnit.FOOT);
    }
    if (!has(Term.LENGTH)) {
      units.removeIf(unit -> unit == LengthUnit.DECIMETRE);
    }
  }

  /** Returns whether any of the words is there. */
  public boolean has(Term... any) {
    for (Term term : any) {
      if (terms.contains(term)) {
        return true;
      }
    }
    return false;
  }

  /** Returns the words that mean nothing here. */
  public List<String> strangers() {
    return List.copyOf(strangers);
  }

  /** Returns the words that mean different things in languages that the row may be in. */
  public List<String> unsure() {
    return List.copyOf(unsure);
  }

  /** Returns whether there is nothing but units in it. */
  public boolean isUnitAlone() {
    boolean unit = !units.isEmpty() && EnumSet.of(Term.FILLER).containsAll(terms);
    return decimetre || unit && strangers.isEmpty();
  }

  /** Returns the unit that it states, feet for feet and inches; empty when none or several. */
  public Optional<LengthUnit> unit() {
    if (isFeetAndInches()) {
      return Optional.of(LengthUnit.FOOT);
    }
    return units.isEmpty() || hasTwoUnits() ? Optional.empty() : Optional.of(units.get(0));
  }

  /** Returns whether it states feet and inches together. */
  public boolean isFeetAndInches() {
    return !choice
        && units.contains(LengthUnit.FOOT)
        && units.contains(LengthUnit.INCH)
        && units.stream().noneMatch(LengthUnit::metric);
  }

  /** Returns whether it states feet and inches with a point between, as in {@code ft.in}. */
  public boolean isFeetDotInches() {
    return dotInches;
  }

  /** Returns whether it states several units that do not go together. */
  public boolean hasTwoUnits() {
    return !isFeetAndInches() && units.stream().distinct().count() > 1;
  }

  @Override
  public String toString() {
    return terms + " " + units + " " + strangers;
  }
}
