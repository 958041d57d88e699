package roundbook.intake.felled;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import roundbook.intake.felled.StemColumns.At;
import roundbook.intake.felled.StemColumns.Meaning;
import roundbook.job.BuildRules;
import roundbook.job.Stem;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * Reads a table of felled stems.
 *
 * <p>A stem a row: {@code stem}, {@code length}, a column of diameters for each distance from the
 * butt ({@code 0}, {@code 1 ft}, {@code 2 ft}, {@code 4 ft} …); also {@code species}, {@code bark},
 * {@code clear from}, {@code clear to}, any number of pairs {@code bad from}, {@code bad to},
 * {@code sweep}, {@code keep for}, {@code skip}, {@code remarks}.
 *
 * <pre>
 * stem  length  0   1 ft    2 ft    4 ft    8 ft    12 ft  bad from  bad to
 * 7     14' 6"  16  14 1/2  13 3/4  13 1/4  12 3/4  12     5 ft      6' 2"
 * </pre>
 */
public final class StemsReader {
  private final BuildRules rules;
  private final Units units;
  private final Predicate<String> taken;
  private final Problems problems;
  private final List<Stem> stems = new ArrayList<>();

  /**
   * The units of bare numbers.
   *
   * @param length of lengths; empty where none is told
   * @param diameter of diameters; empty where none is told
   */
  public record Units(Optional<LengthUnit> length, Optional<LengthUnit> diameter) {}

  /**
   * Reads stems of a job.
   *
   * @param rules the job's settings
   * @param units the units that are asked for
   * @param taken whether a tag is that of a log
   * @param problems where problems go
   */
  public StemsReader(BuildRules rules, Units units, Predicate<String> taken, Problems problems) {
    this.rules = rules;
    this.units = units;
    this.taken = taken;
    this.problems = problems;
  }

  /** Returns whether a table is one of stems. */
  public static boolean isOfStems(Table table) {
    return StemColumns.of(table).isPresent();
  }

  /** Reads every stem of a table that is one of stems. */
  public void read(Table table) {
    StemColumns columns = StemColumns.of(table).orElseThrow();
    List<At> sound = headings(table, columns);
    Units own =
        new Units(
            columns.lengthUnit().or(units::length), columns.diameterUnit().or(units::diameter));
    table.forEach(
        row -> {
          if (row.number() > columns.head().number()) {
            new StemRow(table, columns, row, rules, own, problems)
                .stem(sound)
                .filter(stem -> isNew(table, columns, row, stem))
                .ifPresent(stems::add);
          }
        });
  }

  /** Returns the stems that were read. */
  public List<Stem> stems() {
    return List.copyOf(stems);
  }

  /** Returns the columns of diameters whose distances are known and rise from left to right. */
  private List<At> headings(Table table, StemColumns columns) {
    List<At> sound = new ArrayList<>();
    for (At at : columns.stations()) {
      CellRef where = table.at(columns.head(), at.column());
      String text = columns.head().cell(at.column()).text();
      if (at.fromButt().isEmpty()) {
        problems.add(
            Problem.of(ProblemCode.BAD_STEM, "unit", where)
                .with("text", text)
                .found(text)
                .remedyOf("stem-unit"));
      } else if (!sound.isEmpty() && !at.fromButt().get().isMoreThan(last(sound))) {
        problems.add(
            Problem.of(ProblemCode.BAD_STEM, "order", where).with("text", text).found(text));
      } else {
        sound.add(at);
      }
    }
    return sound;
  }

  private static Length last(List<At> sound) {
    return sound.get(sound.size() - 1).fromButt().orElseThrow();
  }

  private boolean isNew(Table table, StemColumns columns, Row row, Stem stem) {
    boolean known =
        taken.test(stem.tag()) || stems.stream().anyMatch(each -> each.tag().equals(stem.tag()));
    if (known) {
      problems.add(
          Problem.of(ProblemCode.BAD_STEM, "tag", table.at(row, columns.column(Meaning.TAG)))
              .with("stem", stem.tag())
              .found(stem.tag())
              .about(stem.tag()));
    }
    return !known;
  }
}
