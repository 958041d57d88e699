package roundbook.report.frame;

import java.util.Optional;
import java.util.stream.Collectors;
import roundbook.job.Building;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/**
 * What is said of plates over pens in a row and their passages: how long one is that lies over all,
 * and how much of it lies free. How thick it must be and whether it may be joined is for whoever
 * designs the roof, so nothing of it is worked out here.
 */
public final class PassagePlates {
  private PassagePlates() {}

  /** Returns it in words; empty where there is no passage. */
  public static Optional<String> words(CrewContext context) {
    Building building = context.plan().job().building();
    Length tail = context.rules().overhang().times(2);
    LengthFormat formats = context.formats();
    String free =
        building.pens().stream()
            .flatMap(pen -> building.passage(pen).stream())
            .map(wide -> formats.feetInches(wide.minus(tail)))
            .distinct()
            .collect(Collectors.joining(", "));
    return building
        .row()
        .map(row -> context.text("plates.over", formats.feetInches(row.plus(tail)), free));
  }
}
