package roundbook.heading;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/** Finds the units that a heading states, and tells the inch from the preposition. */
final class UnitMarks {
  private static final Set<String> OR = Set.of("or", "oder", "ou", "eller", "tai", "lub", "nebo");

  private final List<Tokens.Token> tokens;
  private final Vocabulary words;
  private final Vocabulary.Languages languages;

  UnitMarks(List<Tokens.Token> tokens, Vocabulary words, Vocabulary.Languages languages) {
    this.tokens = tokens;
    this.words = words;
    this.languages = languages;
  }

  /** Returns the unit of a token; empty where it is none, or a preposition. */
  Optional<LengthUnit> unit(int at) {
    Optional<LengthUnit> unit = LengthReader.unitOf(tokens.get(at).word());
    return tokens.get(at).word().equals("in") && isPreposition(at) ? Optional.empty() : unit;
  }

  private boolean isPreposition(int at) {
    int next = at + 1;
    if (next >= tokens.size() || tokens.get(next).group() != tokens.get(at).group()) {
      return false;
    }
    Vocabulary.Meaning meaning = words.heading(tokens.get(next).word(), languages);
    boolean bark = meaning != null && meaning.terms().stream().anyMatch(UnitMarks::tellsBark);
    return !bark && !OR.contains(tokens.get(next).word());
  }

  private static boolean tellsBark(Term term) {
    return term == Term.OVER || term == Term.UNDER || term == Term.READING;
  }

  /** Returns the units stated: those in brackets of their own where there are any, else all. */
  List<LengthUnit> stated() {
    List<LengthUnit> bracketed = new ArrayList<>();
    List<LengthUnit> all = new ArrayList<>();
    for (int i = 0; i < tokens.size(); i++) {
      Optional<LengthUnit> unit = unit(i);
      unit.ifPresent(all::add);
      if (unit.isPresent() && isOfUnits(tokens.get(i).group())) {
        bracketed.add(unit.get());
      }
    }
    return bracketed.isEmpty() ? all : bracketed;
  }

  private boolean isOfUnits(int group) {
    if (group <= 0) {
      return false;
    }
    for (int i = 0; i < tokens.size(); i++) {
      boolean inside = tokens.get(i).group() == group;
      Vocabulary.Meaning meaning = words.heading(tokens.get(i).word(), languages);
      boolean filler =
          OR.contains(tokens.get(i).word())
              || meaning != null && meaning.terms().equals(EnumSet.of(Term.FILLER));
      if (inside && unit(i).isEmpty() && !filler) {
        return false;
      }
    }
    return true;
  }

  /** Returns whether the heading leaves a choice between units. */
  boolean leavesChoice() {
    return tokens.stream().anyMatch(token -> OR.contains(token.word()));
  }
}
