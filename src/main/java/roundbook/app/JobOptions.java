package roundbook.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import roundbook.intake.house.HouseTold;

/** What commands take that read a job or a tally, and not a crew workbook that has both. */
final class JobOptions {
  @Option(
      names = "--walls",
      paramLabel = "LxW",
      description = "Outside lengths of the N/S and E/W walls: 24x18 (feet), 7.3mx5.5m.")
  private String walls;

  @Option(
      names = "--pens",
      paramLabel = "L,P,LxW",
      description =
          "Two pens and the open passage between, instead of --walls: 16,10,16x18 (feet).")
  private String pens;

  @Option(
      names = "--partition",
      paramLabel = "[WALL:]AT",
      description =
          "A partition of log, from the left outside corner of wall N (or WALL), seen from outside,"
              + " to its near face: 15-9 (feet-inches). Once for each.")
  private List<String> partitions = new ArrayList<>();

  @Option(
      names = "--wing",
      paramLabel = "WALL:AT,LxW",
      description =
          "A wing on a wall, from its left outside corner, seen from outside: S:14,14x12 (feet)."
              + " Needs --set Reentrant=hook or drain.")
  private String wing;

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

  /** Returns the walls as they are told; empty where they are not. */
  Optional<HouseTold> walls() {
    HouseTold told =
        new HouseTold(
            Optional.ofNullable(walls),
            Optional.ofNullable(pens),
            partitions,
            Optional.ofNullable(wing));
    return Optional.of(told).filter(house -> !house.isEmpty());
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
