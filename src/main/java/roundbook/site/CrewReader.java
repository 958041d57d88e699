package roundbook.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import roundbook.intake.Asked;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.page.CellNames;
import roundbook.page.LogColumn;
import roundbook.page.TypedBox;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.table.NamedBook;
import roundbook.table.Table;

/**
 * Reads a crew workbook back: the job it was planned for, its plan, and what was typed into it.
 *
 * <p>Every cell is found by its name, so hidden, added or moved columns, renamed sheets and another
 * language change nothing. What cannot be true is said, with the cell, and then nothing is read.
 */
public final class CrewReader {
  private final NamedBook book;
  private final List<Table> tallies;
  private final Problems problems = new Problems();

  private CrewReader(NamedBook book, List<Table> tallies) {
    this.book = book;
    this.tallies = tallies;
  }

  /**
   * Reads a workbook.
   *
   * @param book the workbook with its names
   * @param tallies the sheets of further tallies whose logs come to those of the workbook
   * @param asked settings given on the command line, which come before those typed
   * @return the report, unless something in it is an error; and every problem
   */
  public static Read<SiteReport> read(NamedBook book, List<Table> tallies, Asked asked) {
    CrewReader reader = new CrewReader(book, tallies);
    Optional<SiteReport> report = reader.report(asked);
    List<Problem> all = reader.problems.sorted();
    boolean failed = all.stream().anyMatch(reader::isFatal);
    return report.isEmpty() || failed ? Read.failed(all) : new Read<>(report, all);
  }

  /** An error in the workbook is fatal; one in a further tally leaves out its row alone. */
  private boolean isFatal(Problem problem) {
    return problem.severity() == Severity.ERROR && problem.where().file().equals(book.file());
  }

  private Optional<SiteReport> report(Asked asked) {
    if (!isOurs()) {
      return Optional.empty();
    }
    new DeletedCells(book, problems).say();
    RulesFields settings = new RulesFields(book, problems);
    BuildRules now = settings.now(asked);
    BuildRules printed = settings.printed();
    Fields fields = new Fields(book, printed.unit(), problems);
    Optional<Building> building = settings.building(fields);
    LogRows rows = new LogRows(book, fields, printed, problems);
    boolean listed = rows.read();
    if (building.isEmpty()) {
      problems.add(Problem.of(ProblemCode.CELL_LOST, "walls", CellRef.ofFile(book.file())));
    }
    if (building.isEmpty() || !listed) {
      return Optional.empty();
    }
    MoreLogs more =
        MoreLogs.read(tallies, now, building.get(), asked, problems).checked(rows.logs(), problems);
    List<Log> logs = new ArrayList<>(rows.logs());
    logs.addAll(more.logs());
    Job job =
        new Job(now, building.get(), logs, settings.openings(fields), settings.pins(fields))
            .withPrices(settings.prices(fields));
    return more.failed() ? Optional.empty() : report(job, printed, rows, fields, more.tags());
  }

  private Optional<SiteReport> report(
      Job job, BuildRules printed, LogRows rows, Fields fields, Set<String> bought) {
    TypedFields typed = new TypedFields(book, fields, job.building(), rows.plan(), layout(fields));
    Map<Integer, String> missing = typed.missing();
    missing.forEach(
        (round, name) ->
            problems.add(
                Problem.of(ProblemCode.CELL_LOST, "box", CellRef.ofFile(book.file()))
                    .with("round", round)
                    .with("name", name)));
    AsBuilt recorded = typed.recorded();
    Checks checks = new Checks(job, rows, recorded, fields);
    SiteReport report =
        new SiteReport(
            book,
            issue(fields),
            job,
            printed,
            rows.plan(),
            recorded,
            new SiteReport.Typed(
                typed.ticks(recorded),
                typed.measures(),
                tags(typed.used(), job, fields),
                typed.readings(TypedBox.READING),
                typed.readings(TypedBox.FIRST_READING),
                rows.lost().keySet()),
            new SiteReport.Tallied(new ProblemRows(book).all(), bought));
    checks.check(report);
    return missing.isEmpty() ? Optional.of(report) : Optional.empty();
  }

  private SiteReport.Issue issue(Fields fields) {
    String wanted = fields.text(CellNames.WANTED);
    String revision = fields.text(CellNames.REVISION);
    return new SiteReport.Issue(
        revision.matches("\\d{1,6}") ? Integer.parseInt(revision) : 1,
        fields.text(CellNames.FROM),
        wanted.matches("\\d{1,4}")
            ? OptionalInt.of(Integer.parseInt(wanted))
            : OptionalInt.empty());
  }

  /** Returns the tags of logs used instead as the log list spells them; says those not listed. */
  private Map<Place, String> tags(Map<Place, String> used, Job job, Fields fields) {
    Map<Place, String> tags = new TreeMap<>();
    used.forEach(
        (place, text) -> {
          Optional<String> tag =
              job.logs().stream()
                  .map(Log::tag)
                  .filter(each -> each.equalsIgnoreCase(text))
                  .findFirst();
          tag.ifPresent(each -> tags.put(place, each));
          if (tag.isEmpty()) {
            fields.say(
                fields
                    .contradiction("no-log", TypedBox.USED.named(place.round(), place.named()))
                    .with("log", Fields.shortened(text))
                    .about(text)
                    .remedyOf("type-tag"));
          }
        });
    return tags;
  }

  /** Returns the layout of the cells' names; 0 where there is none. */
  private static int layout(Fields fields) {
    String layout = fields.text(CellNames.LAYOUT);
    return layout.matches("\\d{1,4}") ? Integer.parseInt(layout) : 0;
  }

  private boolean isOurs() {
    CellRef file = CellRef.ofFile(book.file());
    boolean crew = book.has(CellNames.VERSION) && book.has(LogColumn.TAGS.named());
    if (!crew) {
      problems.add(Problem.of(ProblemCode.NOT_A_CREW_WORKBOOK, file));
      return false;
    }
    Fields fields = new Fields(book, roundbook.units.LengthUnit.INCH, problems);
    int layout = layout(fields);
    if (fields.text(CellNames.VERSION).isEmpty()) {
      problems.add(Problem.of(ProblemCode.UNREADABLE, "settings-gone", file));
      return false;
    }
    if (layout < CellNames.LAYOUT_LEAST || layout > CellNames.LAYOUT_NOW) {
      problems.add(
          fields
              .problem(ProblemCode.OTHER_VERSION, "", CellNames.VERSION)
              .with("version", fields.text(CellNames.VERSION)));
      return false;
    }
    return true;
  }
}
