package roundbook.intake;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundbook.intake.house.HouseTold;
import roundbook.units.LengthUnit;

/**
 * What the command line asked of the reading.
 *
 * @param settings values of the Job sheet given by {@code --set} and its short forms, by label
 * @param typed the short forms that were typed, such as {@code --rounds}, by the label of what they
 *     set
 * @param walls the walls as options tell them; empty when not given
 * @param sheet the one sheet to read as a tally; empty for all
 * @param lengthUnit the unit of bare lengths; empty when not told
 * @param diameterUnit the unit of bare diameters; empty when not told
 * @param words lines {@code word = meaning} of a language of the user's own
 */
public record Asked(
    Map<String, String> settings,
    Map<String, String> typed,
    Optional<HouseTold> walls,
    Optional<String> sheet,
    Optional<LengthUnit> lengthUnit,
    Optional<LengthUnit> diameterUnit,
    List<String> words) {
  /** Nothing asked. */
  public static final Asked NOTHING =
      new Asked(
          Map.of(),
          Map.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of());

  /** Copies the maps and keeps their order, so that the same is written the same in every run. */
  public Asked {
    settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
    typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
    words = List.copyOf(words);
  }

  /** What is asked without a short form. */
  public Asked(
      Map<String, String> settings,
      Optional<HouseTold> walls,
      Optional<String> sheet,
      Optional<LengthUnit> lengthUnit,
      Optional<LengthUnit> diameterUnit) {
    this(settings, Map.of(), walls, sheet, lengthUnit, diameterUnit, List.of());
  }

  /** Returns the same with the lines of a language of the user's own. */
  public Asked with(List<String> lines) {
    return new Asked(settings, typed, walls, sheet, lengthUnit, diameterUnit, lines);
  }

  /** Returns the option that set a label, as it was typed. */
  String option(String label) {
    return typed.getOrDefault(label, "--set " + label);
  }
}
