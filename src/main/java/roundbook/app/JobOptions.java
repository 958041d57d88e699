package roundbook.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What commands take that read a job or a tally, and not a crew workbook that has both. */
final class JobOptions {
  @Option(
      names = "--walls",
      paramLabel = "LxW",
      description = "Outside lengths of the N/S and E/W walls: 24x18 (feet), 7.3mx5.5m.")
  private String walls;

  @Option(names = "--units", paramLabel = "UNIT", description = "Unit of the job: in, mm or cm.")
  private String units;

  @Option(
      names = "--yard",
      paramLabel = "FILE",
      description =
          "A tally that all files share: the first named takes first, no log is used twice.")
  private List<Path> yard = new ArrayList<>();

  @Option(names = "--recursive", description = "Look into the folders of a folder too.")
  private boolean recursive;

  Optional<String> walls() {
    return Optional.ofNullable(walls);
  }

  Optional<String> units() {
    return Optional.ofNullable(units);
  }

  List<Path> yard() {
    return yard;
  }

  boolean recursive() {
    return recursive;
  }
}
