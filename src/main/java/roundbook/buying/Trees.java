package roundbook.buying;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import roundbook.job.BuildRules;
import roundbook.job.Setting;
import roundbook.units.Length;
import roundbook.units.LengthUnit;
import roundbook.wood.StemTaper;

/**
 * How thick trees are at breast height that hold the logs of an order: a help for marking them.
 *
 * @param model the taper model
 * @param certain whether the model is of the job's species; otherwise it stands in for it
 * @param height how tall the trees are
 * @param marks a line for each line of the order
 */
public record Trees(StemTaper model, boolean certain, Length height, List<Mark> marks) {
  /** A stump as high as a foot. */
  private static final double STUMP = 0.3;

  /** Copies the list. */
  public Trees {
    marks = List.copyOf(marks);
  }

  /**
   * The trees of one line.
   *
   * @param line the line
   * @param thin the breast-height diameter for the thin end of its band; empty where no tree of
   *     that height has it
   * @param middle for the middle of its band
   * @param thick for the thick end
   */
  public record Mark(
      Line line, Optional<Length> thin, Optional<Length> middle, Optional<Length> thick) {}

  /** Returns the trees of an order; empty where the job does not say how tall they are. */
  public static Optional<Trees> of(Order order, BuildRules rules) {
    return rules.optionalLength(Setting.TREE_HEIGHT).map(height -> of(order, rules, height));
  }

  private static Trees of(Order order, BuildRules rules, Length height) {
    String typed = rules.text(Setting.SPECIES);
    String known = order.species().standIn() ? "" : order.species().species().name();
    Optional<StemTaper> own = model((typed + " " + known).toLowerCase(Locale.ROOT));
    StemTaper model = own.orElse(StemTaper.NORWAY_SPRUCE);
    List<Mark> marks =
        order.lines().stream()
            .map(
                line -> {
                  double at = metres(midAbove(line, rules));
                  return new Mark(
                      line,
                      breast(model, line.band().from(), at, height),
                      breast(model, line.band().middle(), at, height),
                      breast(model, line.band().to(), at, height));
                })
            .toList();
    return new Trees(model, own.isPresent(), height, marks);
  }

  private static Optional<StemTaper> model(String species) {
    for (StemTaper model : StemTaper.values()) {
      if (species.contains(model.title().toLowerCase(Locale.ROOT))) {
        return Optional.of(model);
      }
    }
    return Optional.empty();
  }

  /**
   * Returns how high above the stump the middle of a line's trimmed logs grew: on a second log over
   * the butt log of the same wall.
   */
  static Length midAbove(Line line, BuildRules rules) {
    Length below =
        line.from() == Line.From.SECOND
            ? LogLengths.of(rules, line.lengths().trimmed(), true).least()
            : Length.ZERO;
    return below.plus(line.lengths().midAt());
  }

  private static double metres(Length above) {
    return STUMP + above.in(LengthUnit.METRE);
  }

  /** Returns the breast-height diameter for a middle without bark so many metres up. */
  static Optional<Length> breast(StemTaper model, Length mid, double at, Length height) {
    double top = height.in(LengthUnit.METRE);
    double centimetres = model.breastFor(mid.in(LengthUnit.CENTIMETRE), at, top);
    return Double.isNaN(centimetres)
        ? Optional.empty()
        : Optional.of(Length.of(centimetres, LengthUnit.CENTIMETRE));
  }
}
