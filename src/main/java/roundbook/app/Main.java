package roundbook.app;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command line: new, order, check, plan, replan, compare. */
@Command(
    name = "roundbook",
    description = "From a log tally to a crew workbook for hewn, chinked log walls.",
    addMethodSubcommands = false,
    versionProvider = Main.VersionLine.class,
    footer = "A file alone is planned: roundbook FILE... is roundbook plan FILE...")
public final class Main implements Runnable {
  private static final Set<String> OWN_OPTIONS = Set.of("-h", "--help", "-V", "--version");

  /** The commands by name, in the order in which help shows them. */
  private static final Map<String, Function<Main, Callable<Integer>>> COMMANDS =
      new LinkedHashMap<>();

  static {
    COMMANDS.put("new", NewCommand::new);
    COMMANDS.put("order", OrderCommand::new);
    COMMANDS.put("check", CheckCommand::new);
    COMMANDS.put("plan", PlanCommand::new);
    COMMANDS.put("replan", ReplanCommand::new);
    COMMANDS.put("compare", CompareCommand::new);
  }

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Show the version.")
  private boolean version;

  @Spec private CommandSpec spec;

  private final PrintWriter out;
  private final PrintWriter err;
  private Stop stop = new Stop();
  private long moves;

  private Main(PrintWriter out, PrintWriter err) {
    this.out = out;
    this.err = err;
  }

  /** Runs the program and ends the process with its exit code. */
  public static void main(String[] args) {
    LogSetup.choose(args);
    Stop stop = new Stop();
    stop.listen();
    int code = Exit.FAULT.code();
    try {
      code = run(args, System.out, System.err, stop, 0);
    } finally {
      stop.finish();
    }
    System.exit(code);
  }

  /**
   * Runs the program.
   *
   * @param args the command line
   * @param out where results go
   * @param err where messages go
   * @return the exit code: 0 done, 1 program fault, 2 usage, 3 input has errors and nothing was
   *     planned, 4 not enough logs, 5 cannot read or write, 130 stopped by an interrupt
   */
  public static int run(String[] args, PrintStream out, PrintStream err) {
    return run(args, out, err, 0);
  }

  /** Runs the program with searches of at most so many moves; zero is their usual number. */
  static int run(String[] args, PrintStream out, PrintStream err, long moves) {
    return run(args, out, err, new Stop(), moves);
  }

  private static int run(String[] args, PrintStream out, PrintStream err, Stop stop, long moves) {
    String first = args.length == 0 ? "" : args[0];
    boolean whole = first.isEmpty() || OWN_OPTIONS.contains(first);
    String[] timed = ProofOption.timed(args);
    String[] all = whole || COMMANDS.containsKey(first) ? timed : planOf(timed);
    CommandLine line = line(out, err, whole ? COMMANDS.keySet() : Set.of(all[0]));
    Main main = line.getCommand();
    main.stop = stop;
    main.moves = moves;
    line.setExecutionExceptionHandler((fault, failed, parsed) -> main.fault(fault, args));
    return line.execute(all);
  }

  /** Returns all commands, ready to run. */
  static CommandLine line(PrintStream out, PrintStream err) {
    return line(out, err, COMMANDS.keySet());
  }

  /** Returns the commands named, ready to run: describing one takes a while, so only those. */
  private static CommandLine line(PrintStream out, PrintStream err, Set<String> names) {
    PrintWriter results = new PrintWriter(out, true, StandardCharsets.UTF_8);
    PrintWriter messages = new PrintWriter(err, true, StandardCharsets.UTF_8);
    Main main = new Main(results, messages);
    CommandLine line = new CommandLine(main);
    names.forEach(name -> line.addSubcommand(COMMANDS.get(name).apply(main)));
    CommandLine.IParameterExceptionHandler usual = line.getParameterExceptionHandler();
    return line.setOut(results)
        .setErr(messages)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler(
            (wrong, args) ->
                main.foreign(wrong) ? Exit.USAGE.code() : usual.handleParseException(wrong, args));
  }

  /** Says so where an option is one that other commands take. */
  private boolean foreign(CommandLine.ParameterException wrong) {
    if (!(wrong instanceof CommandLine.UnmatchedArgumentException unknown)) {
      return false;
    }
    String own = wrong.getCommandLine().getCommandName();
    for (String typed : unknown.getUnmatched()) {
      String option = typed.split("=")[0];
      List<String> takers = COMMANDS.keySet().stream().filter(name -> takes(name, option)).toList();
      if (!takers.isEmpty()) {
        String others = String.join(" and ", takers);
        err.println("error: " + own + " takes no " + option + "; it is an option of " + others);
        return true;
      }
    }
    return false;
  }

  private boolean takes(String command, String option) {
    return new CommandLine(COMMANDS.get(command).apply(this)).getCommandSpec().findOption(option)
        != null;
  }

  private static String[] planOf(String[] args) {
    return Stream.concat(Stream.of("plan"), Stream.of(args)).toArray(String[]::new);
  }

  private Batch batch(Options options) {
    return new Batch(options, new Console(out, err, options.run().quiet()), stop, moves);
  }

  private int fault(Exception fault, String[] args) {
    if (fault instanceof IOException broken) {
      err.println(FileFailure.line(broken));
      return Exit.NO_ACCESS.code();
    }
    err.println("roundbook is at fault: " + fault);
    if (List.of(args).contains("--debug")) {
      fault.printStackTrace(err);
    } else {
      err.println("Run again with --debug and send what it prints to the makers.");
    }
    return Exit.FAULT.code();
  }

  @Override
  public void run() {
    spec.commandLine().usage(err);
  }

  /** Says the version. */
  static final class VersionLine implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"roundbook " + Version.NUMBER + " (commit " + Version.COMMIT + ")"};
    }
  }

  /** Writes a blank or an example job workbook. */
  @Command(
      name = "new",
      description = "Write a blank job workbook.",
      addMethodSubcommands = false,
      mixinStandardHelpOptions = true)
  static final class NewCommand implements Callable<Integer> {
    private final Main main;

    @Parameters(arity = "0..1", defaultValue = "job.xlsx", description = "The workbook to write.")
    private Path file;

    @Option(names = "--example", description = "Fill it with an example.")
    private boolean example;

    @Option(names = "--units", defaultValue = "in", description = "Unit: in, mm or cm.")
    private String units;

    NewCommand(Main main) {
      this.main = main;
    }

    @Override
    public Integer call() throws IOException {
      Console console = new Console(main.out, main.err, false);
      return NewJob.write(file, example, units, console).code();
    }
  }

  /** Writes what to order before a log is owned. */
  @Command(
      name = "order",
      description = {
        "Write what to order before a log is owned: lengths, diameters, counts, cost and loads.",
        "FILE is a job workbook; without one, give --walls and --height or --rounds."
      },
      addMethodSubcommands = false,
      mixinStandardHelpOptions = true)
  static final class OrderCommand implements Callable<Integer> {
    private final Main main;

    @Parameters(paramLabel = "FILE", arity = "0..*", description = "Job workbooks.")
    private List<Path> files = new ArrayList<>();

    @Mixin private RunOptions run = new RunOptions();
    @Mixin private SettingOptions setting = new SettingOptions();
    @Mixin private JobOptions job = new JobOptions();
    @Mixin private BookOptions book = new BookOptions();

    OrderCommand(Main main) {
      this.main = main;
    }

    @Override
    public Integer call() throws IOException {
      if (files.isEmpty() && job.walls().isEmpty()) {
        main.err.println("error: name a job workbook, or give --walls such as 24x18");
        return Exit.USAGE.code();
      }
      if (!job.yard().isEmpty()) {
        main.err.println("error: order takes no --yard: it is for a job that owns no log yet");
        return Exit.USAGE.code();
      }
      List<Path> all = files.isEmpty() ? List.of(OrderRun.noFile(job.walls().get())) : files;
      return main.batch(new Options(all, run, setting, job, book))
          .run((file, whole, console) -> new OrderRun(file, whole, console).outcome())
          .code();
    }
  }

  /** Reads and reports. */
  @Command(
      name = "check",
      description = "Read, report every problem, write no workbook.",
      addMethodSubcommands = false,
      mixinStandardHelpOptions = true)
  static final class CheckCommand implements Callable<Integer> {
    private final Main main;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Job workbooks or tallies.")
    private List<Path> files;

    @Mixin private RunOptions run = new RunOptions();
    @Mixin private SettingOptions setting = new SettingOptions();
    @Mixin private JobOptions job = new JobOptions();

    CheckCommand(Main main) {
      this.main = main;
    }

    @Override
    public Integer call() throws IOException {
      return main.batch(new Options(files, run, setting, job, new BookOptions()))
          .run((file, whole, console) -> new CheckRun(file, whole, console).outcome())
          .code();
    }
  }

  /** Plans and writes the crew workbook. */
  @Command(
      name = "plan",
      description = "Plan and write the crew workbook.",
      addMethodSubcommands = false,
      mixinStandardHelpOptions = true)
  static final class PlanCommand implements Callable<Integer> {
    private final Main main;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Job workbooks or tallies.")
    private List<Path> files;

    @Mixin private RunOptions run = new RunOptions();
    @Mixin private SettingOptions setting = new SettingOptions();
    @Mixin private JobOptions job = new JobOptions();
    @Mixin private BookOptions book = new BookOptions();

    @Option(
        names = "--resume",
        description = "Go on with a batch: pass over files whose workbook was made from the same.")
    private boolean resume;

    @Mixin private ProofOption proof = new ProofOption();

    PlanCommand(Main main) {
      this.main = main;
    }

    @Override
    public Integer call() throws IOException {
      return main.batch(new Options(files, run, setting, job, book, resume, proof.time()))
          .plan()
          .code();
    }
  }

  /** Plans the rest anew from what was built. */
  @Command(
      name = "replan",
      description = {
        "Read back what was measured, cut and lost; keep what is cut; write the next revision.",
        "The workbook that is read is never changed. --logs adds the logs of a further tally."
      },
      addMethodSubcommands = false,
      mixinStandardHelpOptions = true)
  static final class ReplanCommand implements Callable<Integer> {
    private final Main main;

    @Parameters(
        paramLabel = "CREW.xlsx",
        arity = "1..*",
        description = "Crew workbooks with what was typed on site, the newest revision of each.")
    private List<Path> files;

    @Option(
        names = "--with",
        paramLabel = "CREW.xlsx",
        description = "Another copy of the one workbook, that somebody else typed into.")
    private Path with;

    @Mixin private RunOptions run = new RunOptions();
    @Mixin private SettingOptions setting = new SettingOptions();
    @Mixin private BookOptions book = new BookOptions();

    ReplanCommand(Main main) {
      this.main = main;
    }

    @Override
    public Integer call() throws IOException {
      if (with != null && files.size() > 1) {
        main.err.println("error: --with is for one crew workbook at a time");
        return Exit.USAGE.code();
      }
      return main.batch(new Options(files, run, setting, new JobOptions(), book))
          .run(
              (file, whole, console) ->
                  new ReplanRun(file, Optional.ofNullable(with), whole, console).outcome())
          .code();
    }
  }

  /** Says what changed between two crew workbooks. */
  @Command(
      name = "compare",
      description = "Say what changed between two crew workbooks, and which pages to print again.",
      addMethodSubcommands = false,
      mixinStandardHelpOptions = true)
  static final class CompareCommand implements Callable<Integer> {
    private final Main main;

    @Parameters(paramLabel = "OLD", description = "The crew workbook of the revision before.")
    private Path old;

    @Parameters(paramLabel = "NEW", description = "The crew workbook of the revision after.")
    private Path now;

    CompareCommand(Main main) {
      this.main = main;
    }

    @Override
    public Integer call() {
      return new CompareRun(new Console(main.out, main.err, false)).run(old, now).code();
    }
  }
}
