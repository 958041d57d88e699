package roundbook.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import roundbook.heading.Term;
import roundbook.job.Log.Bark;
import roundbook.problem.CellRef;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Value;
import roundbook.table.Table;

/**
 * Says how the columns of a tally were read wherever that is not certain, and which were not read.
 *
 * <p>A column that might be missed in the walls, for it could be a length or diameter, is a warning
 * of its own; all others are listed once, each with its reason.
 */
final class HeadingDoubts {
  private final Table table;
  private final Header header;
  private final Problems problems;

  HeadingDoubts(Table table, Header header, Problems problems) {
    this.table = table;
    this.header = header;
    this.problems = problems;
  }

  /** Says all. */
  void say() {
    header.blocks().forEach(this::sayBlock);
    sayBark();
    List<Phrase> listed = new ArrayList<>();
    for (Heading heading : header.others()) {
      Phrase why = heading.unread().phrase();
      if (isMissed(heading)) {
        problems.add(
            Problem.of(ProblemCode.DUPLICATE_COLUMN, "unread", at(heading))
                .found(heading.text())
                .with("heading", heading.text())
                .with("why", why));
      } else {
        listed.add(Phrase.of("unread").with("heading", heading.text()).with("why", why));
      }
    }
    if (!listed.isEmpty()) {
      problems.add(
          Problem.of(ProblemCode.COLUMN_NOT_READ, table.at(header.row()))
              .with("columns", Value.list("list.comma", listed)));
    }
  }

  /** A column that measures the bark hints at diameters over it where no heading says so. */
  private void sayBark() {
    boolean told =
        header.blocks().stream()
            .anyMatch(
                block ->
                    block.containsKey(Field.BARK)
                        || block.values().stream()
                            .anyMatch(heading -> heading.bark() != Bark.UNSTATED));
    header.others().stream()
        .filter(heading -> !told && heading.wording().has(Term.BARK))
        .filter(heading -> heading.unread() == Unread.OTHER)
        .findFirst()
        .ifPresent(
            heading ->
                problems.add(
                    Problem.of(ProblemCode.BARK_UNCERTAIN, "measured", at(heading))
                        .found(heading.text())
                        .with("heading", heading.text())));
  }

  private void sayBlock(Map<Field, Heading> block) {
    block.forEach(
        (field, heading) -> {
          if (heading.doubtful()) {
            problems.add(
                Problem.of(ProblemCode.HEADING_DOUBTFUL, at(heading))
                    .found(heading.text())
                    .with("heading", heading.text())
                    .with("field", field.phrase())
                    .with("word", heading.doubtfulWord())
                    .remedy(Phrase.of("remedy.its-column").with("name", field.label())));
          }
        });
    for (Field end : List.of(Field.BUTT, Field.MID, Field.TIP)) {
      Heading across = block.get(end.across());
      if (across != null) {
        problems.add(
            Problem.of(ProblemCode.DUPLICATE_COLUMN, "across", at(across))
                .found(across.text())
                .with("one", block.get(end).text())
                .with("other", across.text())
                .with("field", end.phrase())
                .remedyOf("across"));
      }
    }
  }

  /** Returns whether some block lacks a diameter that a column with a strange word may hold. */
  private boolean lacksEnd() {
    return header.blocks().stream()
        .anyMatch(
            block ->
                List.of(Field.BUTT, Field.MID, Field.TIP).stream()
                    .anyMatch(end -> !block.containsKey(end)));
  }

  private CellRef at(Heading heading) {
    return table.at(header.row(), heading.column());
  }

  private boolean isMissed(Heading heading) {
    boolean measure =
        heading.wording().has(Term.LENGTH, Term.BUTT, Term.MID, Term.TIP, Term.GIRTH)
            || heading.wording().isUnitAlone();
    return switch (heading.unread()) {
      case NOWHERE, NO_FIT -> true;
      case SAME, UNKNOWN, RADIUS, QUARTER, EIGHTHS, NOMINAL -> measure;
      case OTHER -> heading.wording().has(Term.DIAMETER) && lacksEnd();
      default -> false;
    };
  }
}
