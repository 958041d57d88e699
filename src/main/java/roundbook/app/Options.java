package roundbook.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import roundbook.balance.Effort;
import roundbook.intake.Asked;
import roundbook.job.Setting;
import roundbook.units.LengthUnit;

/** The options that check and plan share; picocli fills them in. */
final class Options {
  @Parameters(paramLabel = "FILE", arity = "1..*", description = "Job workbooks or tallies.")
  private List<Path> files = new ArrayList<>();

  @Option(
      names = "--walls",
      paramLabel = "LxW",
      description = "Outside lengths of the N/S and E/W walls: 24x18 (feet), 7.3mx5.5m.")
  private String walls;

  @Option(names = "--thickness", paramLabel = "LENGTH", description = "Thickness of the logs.")
  private String thickness;

  @Option(names = "--gap", paramLabel = "LENGTH", description = "Gap wanted at the crown.")
  private String gap;

  @Option(names = "--overhang", paramLabel = "LENGTH", description = "Log end past the corner.")
  private String overhang;

  @Option(names = "--slope", paramLabel = "1:RUN", description = "Slope of the necks, such as 1:3.")
  private String slope;

  @Option(names = "--rounds", paramLabel = "N", description = "Rounds wanted.")
  private String rounds;

  @Option(names = "--height", paramLabel = "LENGTH", description = "Wall height wanted.")
  private String height;

  @Option(names = "--units", paramLabel = "UNIT", description = "Unit of the job: in, mm or cm.")
  private String units;

  @Option(names = "--paper", paramLabel = "SIZE", description = "Paper: letter or a4.")
  private String paper;

  @Option(
      names = "--language",
      paramLabel = "LANG",
      description = "Language of the crew workbook: en or de.")
  private String language;

  @Option(names = "--seed", paramLabel = "N", description = "Seed of the search.")
  private String seed;

  @Option(
      names = "--set",
      paramLabel = "Name=value",
      description = "Any value of the Job sheet; may be given again.")
  private Map<String, String> settings = new LinkedHashMap<>();

  @Option(names = "--logs", paramLabel = "FILE", description = "Pool another tally with the job's.")
  private List<Path> logs = new ArrayList<>();

  @Option(
      names = "--yard",
      paramLabel = "FILE",
      description =
          "A tally that all files share: the first named takes first, no log is used twice.")
  private List<Path> yard = new ArrayList<>();

  @Option(names = "--sheet", paramLabel = "NAME", description = "The one sheet to read as a tally.")
  private String sheet;

  @Option(
      names = "--length-unit",
      paramLabel = "UNIT",
      description = "Unit of bare lengths: ft, in, m, cm or mm.")
  private String lengthUnit;

  @Option(
      names = "--diameter-unit",
      paramLabel = "UNIT",
      description = "Unit of bare diameters: in, cm or mm.")
  private String diameterUnit;

  @Option(
      names = {"-o", "--out"},
      paramLabel = "FILE|DIR",
      description = "The crew workbook (.xlsx) or its folder; beside the input if not given.")
  private Path out;

  @Option(names = "--tables", paramLabel = "DIR", description = "Also write plain tables (CSV).")
  private Path tables;

  @Option(names = "--template", paramLabel = "FILE", description = "Style template of the sheets.")
  private Path template;

  @Option(names = "--no-pictures", description = "Leave the drawings out.")
  private boolean noPictures;

  @Option(names = "--recursive", description = "Look into the folders of a folder too.")
  private boolean recursive;

  @Option(
      names = {"-j", "--jobs"},
      paramLabel = "N",
      defaultValue = "1",
      description = "How many files to run at once.")
  private int jobs = 1;

  @Option(
      names = "--resume",
      description = "Go on with a batch: pass over files whose workbook was made from the same.")
  private boolean resume;

  @Option(names = "--report", paramLabel = "FILE", description = "Write what became of each file.")
  private Path report;

  private boolean batch;
  private Map<Path, Path> namesakes = Map.of();
  private Set<Path> besides = Set.of();
  private Stop stop = new Stop();
  private long moves;

  @Option(names = "--strict", description = "Treat warnings as errors in the exit code.")
  private boolean strict;

  @Option(names = "--force", description = "Replace an existing output; never an input.")
  private boolean force;

  @Option(
      names = {"-q", "--quiet"},
      description = "Say nothing but errors.")
  private boolean quiet;

  @Option(names = "--log", paramLabel = "FILE", description = "Write a log to a file.")
  void log(Path file) {
    LogSetup.toFile(file);
  }

  @Option(names = "--debug", description = "Show a stack trace where the program is at fault.")
  private boolean debug;

  List<Path> files() {
    return files;
  }

  List<Path> yard() {
    return yard;
  }

  List<Path> logs() {
    return logs;
  }

  /** Returns the workbook that is to be written, where one is named. */
  Optional<Path> outFile() {
    return Optional.ofNullable(out).filter(path -> !isFolder(path));
  }

  /**
   * Returns the folder that a file's workbook goes to, which may have to be made; empty: beside the
   * input.
   */
  Optional<Path> outFolder(Path file) {
    return Optional.ofNullable(out).filter(Options::isFolder).map(top -> apart(file, top));
  }

  /** Returns a folder, or the one below it for a file whose name another file of the run has. */
  Path apart(Path file, Path top) {
    return top.resolve(namesakes.getOrDefault(file, Path.of("")));
  }

  /** Returns whether a file of the same name but another ending is run from the same folder. */
  boolean hasNamesakeBeside(Path file) {
    return besides.contains(file);
  }

  /** What is not there yet is a folder too, unless it is named like a workbook. */
  private static boolean isFolder(Path path) {
    boolean book = path.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx");
    return Files.isDirectory(path) || !book && !Files.exists(path);
  }

  Optional<Path> tables() {
    return Optional.ofNullable(tables);
  }

  Optional<Path> template() {
    return Optional.ofNullable(template);
  }

  boolean recursive() {
    return recursive;
  }

  int jobs() {
    return jobs;
  }

  Optional<Path> report() {
    return Optional.ofNullable(report);
  }

  /** Returns whether files whose workbook stands already are passed over. */
  boolean resume() {
    return resume && yard.isEmpty();
  }

  /** Returns whether more than one file is run. */
  boolean batch() {
    return batch;
  }

  /** Returns whether the run is to end early. */
  Stop stop() {
    return stop;
  }

  /** Sets who ends a search early, and how many moves one may try; zero is its usual number. */
  void setSearch(Stop asked, long most) {
    stop = asked;
    moves = most;
  }

  /** Returns how hard to look, with a seed. */
  Effort effort(long seed) {
    return Effort.usual(seed).withMoves(moves).until(stop::asked);
  }

  void setFiles(List<Path> files) {
    batch = files.size() > 1;
    namesakes = Namesakes.folders(files);
    besides = Namesakes.besides(files);
  }

  boolean pictures() {
    return !noPictures;
  }

  boolean strict() {
    return strict;
  }

  boolean force() {
    return force;
  }

  boolean quiet() {
    return quiet;
  }

  boolean debug() {
    return debug;
  }

  /** Returns what the reading is asked; short forms stand for their settings. */
  Asked asked() {
    Map<String, String> all = new LinkedHashMap<>(settings);
    Map<String, String> typed = new LinkedHashMap<>();
    put("--thickness", thickness, Setting.LOG_THICKNESS, all, typed);
    put("--gap", gap, Setting.CHINKING_GAP, all, typed);
    put("--overhang", overhang, Setting.OVERHANG, all, typed);
    put("--slope", slope, Setting.SLOPE_RUN, all, typed);
    put("--rounds", rounds, Setting.ROUNDS, all, typed);
    put("--height", height, Setting.WALL_HEIGHT, all, typed);
    put("--units", units, Setting.UNITS, all, typed);
    put("--paper", paper, Setting.PAPER, all, typed);
    put("--language", language, Setting.LANGUAGE, all, typed);
    put("--seed", seed, Setting.SEED, all, typed);
    return new Asked(
        all,
        typed,
        Optional.ofNullable(walls),
        Optional.ofNullable(sheet),
        Optional.ofNullable(lengthUnit).flatMap(LengthUnit::ofSymbol),
        Optional.ofNullable(diameterUnit).flatMap(LengthUnit::ofSymbol));
  }

  private static void put(
      String option,
      String value,
      Setting setting,
      Map<String, String> all,
      Map<String, String> typed) {
    if (value != null) {
      all.put(setting.label(), value);
      typed.put(setting.label(), option);
    }
  }
}
