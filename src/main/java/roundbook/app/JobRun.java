package roundbook.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import roundbook.csv.CsvText;
import roundbook.intake.JobReader;
import roundbook.intake.JobReader.Findings;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.page.Book;
import roundbook.page.PlainTable;
import roundbook.plan.Plan;
import roundbook.plan.Planner;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.report.CrewBook;
import roundbook.report.CrewContext;
import roundbook.report.CrewContext.Issue;
import roundbook.report.PlainTables;
import roundbook.rounds.Effort;
import roundbook.rounds.SwapChooser;
import roundbook.sheet.BookReader;
import roundbook.sheet.BookWriter;
import roundbook.sheet.StyleTemplate;
import roundbook.table.Table;

/** Reads, plans and writes one job, from its files to its exit. */
final class JobRun {
  private static final Logger LOG = LoggerFactory.getLogger(JobRun.class);

  private final Path file;
  private final Options options;
  private final Console console;
  private final List<Problem> problems = new ArrayList<>();

  JobRun(Path file, Options options, Console console) {
    this.file = file;
    this.options = options;
    this.console = console;
  }

  /** Reads and reports; writes no workbook. */
  Exit check() throws IOException {
    Optional<Findings> findings = read();
    LOG.info("{} checked: {} problems", file, problems.size());
    console.say(problems);
    if (findings.isPresent()) {
      Findings found = findings.get();
      writeTables(
          List.of(
              PlainTables.logs(found.logs(), found.rules().metric()),
              PlainTables.problems(problems)));
      long errors = count(Severity.ERROR);
      console.say(
          file.getFileName()
              + ": "
              + found.logs().size()
              + " logs read, "
              + errors
              + " errors, "
              + count(Severity.WARNING)
              + " warnings");
    }
    return errorExit(findings.isEmpty() || count(Severity.ERROR) > 0);
  }

  /** Reads, plans and writes the crew workbook. */
  Exit plan() throws IOException {
    Optional<Findings> findings = read();
    Optional<Job> job = findings.flatMap(Findings::job);
    if (job.isEmpty() || badSetting()) {
      console.say(problems);
      nothingPlanned(findings);
      return errorExit(true);
    }
    long seed = job.get().rules().number(Setting.SEED).longValue();
    Plan plan = new Planner(new SwapChooser()).plan(job.get(), Effort.usual(seed));
    if (plan.rounds() == 0) {
      problems.addAll(plan.problems());
      console.say(problems);
      nothingPlanned(findings);
      return errorExit(true);
    }
    return write(plan);
  }

  private Exit write(Plan plan) throws IOException {
    Revision revision = Revision.of(file, folder());
    int number = revision.firstFree();
    Issue issue =
        new Issue(number, file.getFileName().toString(), Version.NUMBER, options.pictures());
    CrewContext context = CrewContext.of(plan, List.copyOf(problems), issue);
    console.say(context.problems());
    Path written = writeBook(CrewBook.of(context), target(revision, number));
    writeTables(PlainTables.of(context));
    LOG.info("{} planned: {} rounds, written to {}", file, plan.rounds(), written);
    console.result(written.toString());
    console.say(
        "%s: %d logs used, %d spare, %d left out"
            .formatted(
                file.getFileName(),
                plan.count(Plan.Use.PLACED),
                plan.count(Plan.Use.SPARE),
                plan.count(Plan.Use.LEFT_OUT)));
    boolean shortOfLogs = plan.choice().shortage().isPresent();
    boolean strictFault = options.strict() && context.problems().stream().anyMatch(JobRun::counts);
    return shortOfLogs ? Exit.SHORT_OF_LOGS : strictFault ? Exit.BAD_INPUT : Exit.DONE;
  }

  private static boolean counts(Problem problem) {
    return problem.severity() != Severity.INFO;
  }

  private Path writeBook(Book book, Path target) throws IOException {
    StyleTemplate template = template();
    if (isInput(target)) {
      throw new IOException("the output would replace an input: " + target);
    }
    boolean given = options.out().filter(out -> !Files.isDirectory(out)).isPresent();
    SafeFile.write(
        target,
        options.force() && given,
        out -> BookWriter.write(book, template, out),
        written -> BookReader.verify(written));
    return target;
  }

  private boolean isInput(Path target) throws IOException {
    List<Path> inputs = new ArrayList<>(options.logs());
    inputs.addAll(options.files());
    for (Path input : inputs) {
      if (Files.exists(target) && Files.exists(input) && Files.isSameFile(target, input)) {
        return true;
      }
    }
    return false;
  }

  private StyleTemplate template() throws IOException {
    if (options.template().isEmpty()) {
      return StyleTemplate.standard();
    }
    Path path = options.template().get();
    Read<StyleTemplate> read =
        StyleTemplate.read(Files.readAllBytes(path), path.getFileName().toString());
    console.say(read.problems());
    return read.value().orElseGet(StyleTemplate::standard);
  }

  private Path folder() {
    return options.out().filter(Files::isDirectory).orElse(null);
  }

  private Path target(Revision revision, int number) {
    return options
        .out()
        .filter(out -> !Files.isDirectory(out))
        .orElseGet(() -> revision.path(number));
  }

  private void writeTables(List<PlainTable> tables) throws IOException {
    if (options.tables().isEmpty()) {
      return;
    }
    Path folder = Files.createDirectories(options.tables().get());
    for (PlainTable table : tables) {
      Path target = folder.resolve(table.name() + ".csv");
      SafeFile.write(target, true, out -> out.write(CsvText.bytes(table)), written -> {});
    }
  }

  private Optional<Findings> read() {
    List<Table> tables = new ArrayList<>();
    List<Path> files = new ArrayList<>(List.of(file));
    files.addAll(options.logs());
    boolean opened = true;
    for (Path each : files) {
      Read<List<Table>> read = Sources.read(each);
      problems.addAll(read.problems());
      read.value().ifPresent(tables::addAll);
      opened &= read.value().isPresent();
    }
    if (!opened) {
      return Optional.empty();
    }
    Read<Findings> findings = JobReader.read(tables, options.asked());
    problems.addAll(findings.problems());
    return findings.value();
  }

  private void nothingPlanned(Optional<Findings> findings) {
    boolean logs = findings.filter(found -> !found.logs().isEmpty()).isPresent();
    boolean walls = findings.flatMap(Findings::job).isPresent();
    String why =
        badSetting()
            ? "a setting cannot be used, and its default may not be what was meant"
            : !logs
                ? "there is no usable log"
                : walls
                    ? "the logs do not make one round"
                    : "the walls are not known; give --walls";
    console.fail(
        Problem.of(
                ProblemCode.NOTHING_PLANNED,
                CellRef.ofFile(file.getFileName().toString()),
                "",
                "nothing was planned: " + why)
            .toString());
  }

  private boolean badSetting() {
    return problems.stream().anyMatch(problem -> problem.code() == ProblemCode.BAD_SETTING);
  }

  private Exit errorExit(boolean failed) {
    boolean closed =
        problems.stream().anyMatch(problem -> problem.code() == ProblemCode.UNREADABLE);
    if (closed) {
      return Exit.NO_ACCESS;
    }
    boolean strict = options.strict() && count(Severity.WARNING) > 0;
    return failed || strict ? Exit.BAD_INPUT : Exit.DONE;
  }

  private long count(Severity severity) {
    return problems.stream().filter(problem -> problem.severity() == severity).count();
  }
}
