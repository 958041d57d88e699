package roundbook.rounds;

import java.util.List;
import roundbook.stack.Course;
import roundbook.units.LengthUnit;

/** Says in words, for each round, why its logs were chosen. */
final class Reasons {
  private Reasons() {}

  static List<String> of(List<Course> courses) {
    return courses.stream().map(Reasons::of).toList();
  }

  private static String of(Course course) {
    return "mids alike within "
        + course.spread().decimal(LengthUnit.INCH, 2).toPlainString()
        + " in of each other, mean "
        + course.size().mean().decimal(LengthUnit.INCH, 2).toPlainString()
        + " in";
  }
}
