package roundbook.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import roundbook.intake.Asked;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Stems;
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
import roundbook.units.LengthReader;

/**
 * Reads a crew workbook back: the job it was planned for, its plan, and what was typed into it.
 *
 * <p>Every cell is found by its name, so hidden, added or moved columns, renamed sheets and another
 * language change nothing. What cannot be true is said, with the cell, and then nothing is read.
 */
public final class CrewReader {
  private final NamedBook book;
  private final Optional<NamedBook> copy;
  private final List<Table> tallies;
  private final Problems problems = new Problems();

  private CrewReader(NamedBook book, Optional<NamedBook> copy, List<Table> tallies) {
    this.book = book;
    this.copy = copy;
    this.tallies = tallies;
  }

  /**
   * Reads a workbook.
   *
   * @param book the workbook with its names
   * @param copy a copy of its revision that somebody else typed into: what only one of them has is
   *     taken, and every cell in which they differ is an error
   * @param tallies the sheets of further tallies whose logs come to those of the workbook
   * @param asked settings given on the command line, which come before those typed
   * @return the report, unless something in it is an error; and every problem
   */
  public static Read<SiteReport> read(
      NamedBook book, Optional<NamedBook> copy, List<Table> tallies, Asked asked) {
    CrewReader reader = new CrewReader(book, copy, tallies);
    Optional<SiteReport> report = reader.report(asked);
    List<Problem> all = reader.problems.sorted();
    boolean failed = all.stream().anyMatch(reader::isFatal);
    return report.isEmpty() || failed ? Read.failed(all) : new Read<>(report, all);
  }

  /** An error in the workbook is fatal; one in a further tally leaves out its row alone. */
  private boolean isFatal(Problem problem) {
    String file = problem.where().file();
    boolean typed =
        file.equals(book.file()) || copy.filter(it -> it.file().equals(file)).isPresent();
    return problem.severity() == Severity.ERROR && typed;
  }

  private Optional<SiteReport> report(Asked asked) {
    if (!isOurs(book) || copy.isPresent() && !isCopy(copy.get())) {
      return Optional.empty();
    }
    new DeletedCells(book, problems).say();
    RulesFields settings = new RulesFields(book, problems);
    BuildRules printed = settings.printed();
    settings.sayNewer();
    BuildRules now = both(settings.now(asked), printed, asked);
    Fields fields = new Fields(book, printed.unit(), problems);
    Optional<Building> building = settings.building(fields, printed);
    LogRows rows = new LogRows(book, fields, printed, problems);
    boolean listed = rows.read() && sameLogs(rows, fields, printed);
    if (building.isEmpty()) {
      problems.add(Problem.of(ProblemCode.CELL_LOST, "walls", CellRef.ofFile(book.file())));
    }
    if (building.isEmpty() || !listed) {
      return Optional.empty();
    }
    Stems stems =
        new StemRows(
                book,
                copy.map(fields::with).orElse(fields),
                new LengthReader(printed.unit(), false),
                problems)
            .read()
            .stems();
    Set<String> tags = rows.logs().stream().map(Log::tag).collect(Collectors.toSet());
    stems.all().forEach(stem -> tags.add(stem.tag()));
    MoreLogs more =
        MoreLogs.read(tallies, now, building.get(), asked, problems).checked(tags, problems);
    List<Log> logs = new ArrayList<>(rows.logs());
    logs.addAll(more.logs());
    Job job =
        new Job(
                now,
                building.get(),
                logs,
                settings.openings(fields, building.get()),
                settings.pins(fields))
            .withPrices(settings.prices(fields))
            .withOthers(settings.others(fields))
            .withStems(stems.plus(more.stems()));
    return more.failed() ? Optional.empty() : report(job, printed, rows, fields, more.tags());
  }

  private Optional<SiteReport> report(
      Job job, BuildRules printed, LogRows rows, Fields fields, Set<String> bought) {
    Fields boxes = copy.map(fields::with).orElse(fields);
    TypedFields typed = new TypedFields(book, boxes, job.building(), rows.plan(), layout(book));
    Map<Integer, String> missing = typed.missing();
    missing.forEach(
        (round, name) ->
            problems.add(
                Problem.of(ProblemCode.CELL_LOST, "box", CellRef.ofFile(book.file()))
                    .with("round", round)
                    .with("name", name)));
    AsBuilt recorded = typed.recorded().withAhead(rows.yardBefore());
    Checks checks = new Checks(job, rows, recorded, boxes);
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
                rows.lost().keySet(),
                typed.gaps(),
                rows.yard()),
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

  /**
   * Returns the settings of both copies: one that was changed in one of them has that value, one
   * that was changed in both must be the same.
   */
  private BuildRules both(BuildRules own, BuildRules printed, Asked asked) {
    if (copy.isEmpty()) {
      return own;
    }
    BuildRules theirs = new RulesFields(copy.get(), problems).now(asked);
    BuildRules both = own;
    for (Setting setting : Setting.values()) {
      Optional<Object> was = value(printed, setting);
      Optional<Object> one = value(own, setting);
      Optional<Object> other = value(theirs, setting);
      if (one.equals(was) && !other.equals(was)) {
        both = both.with(setting, theirs);
      } else if (!one.equals(other) && !other.equals(was)) {
        new Fields(book, own.unit(), problems).with(copy.get()).text(setting.label());
      }
    }
    return both;
  }

  private static Optional<Object> value(BuildRules rules, Setting setting) {
    return rules.value(setting).map(BuildRules.Value::value);
  }

  /** Takes the lost and the measured logs of a copy too; says where it has another plan. */
  private boolean sameLogs(LogRows rows, Fields fields, BuildRules printed) {
    if (copy.isEmpty()) {
      return true;
    }
    LogRows others = new LogRows(copy.get(), fields, printed, problems);
    boolean same = others.read() && others.plan().equals(rows.plan());
    if (!same) {
      problems.add(noCopy(copy.get()));
    }
    others.lost().forEach(rows.lost()::putIfAbsent);
    rows.takeYard(others);
    return same;
  }

  private boolean isCopy(NamedBook other) {
    boolean same =
        isOurs(other)
            && List.of(CellNames.REVISION, CellNames.FROM, CellNames.LAYOUT).stream()
                .allMatch(name -> text(book, name).equals(text(other, name)));
    if (!same) {
      problems.add(noCopy(other));
    }
    return same;
  }

  private Problem noCopy(NamedBook other) {
    return Problem.of(ProblemCode.CONTRADICTION, "no-copy", CellRef.ofFile(other.file()))
        .with("file", book.file())
        .remedyOf("give-copy");
  }

  private static String text(NamedBook book, String name) {
    return book.cell(name).map(NamedBook.Found::text).orElse("");
  }

  /** Returns the layout of the cells' names; 0 where there is none. */
  private static int layout(NamedBook book) {
    String layout = text(book, CellNames.LAYOUT);
    return layout.matches("\\d{1,4}") ? Integer.parseInt(layout) : 0;
  }

  private boolean isOurs(NamedBook book) {
    CellRef file = CellRef.ofFile(book.file());
    boolean crew = book.has(CellNames.VERSION) && book.has(LogColumn.TAGS.named());
    if (!crew) {
      problems.add(Problem.of(ProblemCode.NOT_A_CREW_WORKBOOK, file));
      return false;
    }
    Fields fields = new Fields(book, roundbook.units.LengthUnit.INCH, problems);
    int layout = layout(book);
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
