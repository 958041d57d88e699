package roundbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A package of the program and all that it may use, as one row of the architecture.
 *
 * <p>Each row is an allow-list: what it does not name is refused, be it a package of ours, of the
 * JDK or of a library. A package without a row is refused as a whole.
 *
 * @param name the package's name below the root
 * @param rooms the other packages of ours that it may use
 * @param outside packages of the JDK and of libraries; two dots at the end mean "and all below"
 */
record Room(String name, List<String> rooms, List<String> outside) {
  /** Where all rooms lie. */
  static final String ROOT = "roundbook.";

  private static final String VALUES =
      "java.lang java.lang.annotation java.lang.invoke java.lang.runtime java.math java.text"
          + " java.util java.util.function java.util.regex java.util.stream";
  private static final String STREAMS = " java.io java.nio java.nio.charset";
  private static final String FILES = STREAMS + " java.net java.nio.channels java.nio.file..";

  private static final String POI = " org.apache.poi.. org.apache.xmlbeans.. org.openxmlformats..";

  private static final Map<String, Room> ALL =
      Stream.of(
              core("units", ""),
              core("problem", "units"),
              core("problem.words", "problem"),
              core("table", "units problem"),
              core("page", "units problem"),
              core("job", "units problem"),
              with("heading", "units", STREAMS),
              core("intake.felled", "units problem table job"),
              core("intake.house", "units problem table job"),
              with(
                  "intake",
                  "units problem table job heading intake.felled intake.house",
                  " java.time"),
              core("notch", "units job"),
              core("stack", "units job notch"),
              core("balance", ""),
              core("bucking", "balance"),
              core("rounds", "units problem job notch stack balance bucking takeoff"),
              core("crosscut", "units job notch stack balance bucking rounds"),
              // It reads a table of its own from the archive, never a file.
              with("wood", "units job", STREAMS),
              core("takeoff", "units job notch stack wood"),
              core("buying", "units problem job notch wood"),
              core("exchange", "units job notch stack balance rounds"),
              core(
                  "plan",
                  "units problem job notch stack balance rounds crosscut wood takeoff exchange"
                      + " buying"),
              with("picture.raster", "", STREAMS + " java.util.zip"),
              // It reads the forms of its letters from the archive, never a file.
              with("picture.letter", "picture.raster", STREAMS),
              core("picture.canvas", "picture.raster picture.letter"),
              core("picture.words", "units"),
              core(
                  "picture.face",
                  "units job notch stack picture.raster picture.letter picture.canvas"
                      + " picture.words"),
              core(
                  "picture.wall",
                  "units job notch stack picture.raster picture.letter picture.canvas"
                      + " picture.words picture.face"),
              core(
                  "picture.full",
                  "units job stack picture.raster picture.letter picture.canvas picture.words"),
              core(
                  "picture.ground",
                  "units job stack picture.raster picture.letter picture.canvas picture.words"),
              core(
                  "picture.stem",
                  "units job picture.raster picture.letter picture.canvas picture.words"),
              core(
                  "picture",
                  "units job stack picture.canvas picture.words picture.face picture.wall"
                      + " picture.full picture.ground picture.stem"),
              core("site", "units problem problem.words table page job intake"),
              core(
                  "replan",
                  "units problem page job notch stack balance rounds takeoff plan" + " site"),
              core("report.words", "units problem problem.words job plan"),
              core(
                  "report.frame",
                  "units problem problem.words page job stack exchange plan picture picture.canvas"
                      + " picture.words replan report.words"),
              core(
                  "report.live",
                  "units problem.words page job notch stack rounds plan" + " report.frame"),
              core(
                  "report.mark",
                  "units page job notch stack rounds plan buying picture picture.canvas"
                      + " report.words report.frame report.live"),
              core(
                  "report.round",
                  "units page job notch stack rounds plan picture picture.canvas"
                      + " report.words report.frame report.live report.mark"),
              core(
                  "report.wall",
                  "units problem page job stack takeoff plan picture picture.canvas report.words"
                      + " report.frame report.live report.mark"),
              core(
                  "report.list",
                  "units problem problem.words page job notch stack rounds wood takeoff exchange"
                      + " plan picture picture.canvas picture.stem buying report.words report.frame"
                      + " report.live report.mark"),
              core(
                  "report.proof",
                  "units page job notch stack rounds plan report.frame report.live report.words"),
              core(
                  "report.start",
                  "units problem page job notch stack rounds takeoff plan replan picture"
                      + " picture.canvas"
                      + " report.words report.frame report.live report.mark report.list"
                      + " report.proof"),
              core(
                  "report.table",
                  "units problem problem.words page job notch stack rounds wood takeoff exchange"
                      + " plan buying report.words report.frame"),
              core("report.form", "units problem problem.words page job"),
              core(
                  "report.buy",
                  "units page job wood plan buying report.words report.frame report.mark"
                      + " report.form report.table"),
              core(
                  "report.book",
                  "units page job notch stack plan report.words report.frame report.live"
                      + " report.mark report.round report.wall report.list report.proof"
                      + " report.start"),
              with(
                  "sheet.kind",
                  "problem xml",
                  FILES + " java.util.concurrent.. java.util.zip javax.xml.stream" + POI),
              with(
                  "sheet.read",
                  "units problem table page xml sheet.kind",
                  FILES + " java.time.. java.util.concurrent.. javax.xml.stream" + POI),
              with("sheet.style", "problem page", STREAMS + " javax.xml.namespace" + POI),
              with(
                  "sheet.write",
                  "units problem page sheet.style",
                  STREAMS
                      + " java.time.. java.util.zip javax.xml.stream"
                      + " org.apache.commons.compress.. org.apache.commons.io.."
                      + POI),
              with(
                  "csv",
                  "problem table page",
                  FILES + " org.apache.commons.csv org.apache.commons.io.."),
              with(
                  "xml",
                  "",
                  STREAMS + " javax.xml.stream com.fasterxml.aalto.stax org.apache.commons.io.."),
              with(
                  "markup",
                  "units problem table xml",
                  FILES
                      + " java.time java.time.format java.time.temporal java.util.zip"
                      + " javax.xml.stream"),
              with("harvester", "units problem table xml", FILES + " javax.xml.stream"),
              with(
                  "app",
                  "units problem problem.words table page job intake intake.house stack balance"
                      + " rounds takeoff buying plan site replan sheet.kind sheet.read sheet.style"
                      + " sheet.write csv harvester markup report.words report.frame report.start"
                      + " report.table report.form report.book report.buy",
                  FILES
                      + " java.security java.time.. java.util.concurrent.. java.util.zip picocli.."
                      + " org.apache.commons.io.. org.slf4j.. ch.qos.logback.."))
          .collect(Collectors.toUnmodifiableMap(Room::name, Function.identity()));

  /** Returns every row. */
  static List<Room> all() {
    return List.copyOf(ALL.values());
  }

  /** Returns the row of a package of ours, given its full name; nothing for a package without. */
  static Optional<Room> of(String packageName) {
    return packageName.startsWith(ROOT)
        ? Optional.ofNullable(ALL.get(packageName.substring(ROOT.length())))
        : Optional.empty();
  }

  /** Returns the package's full name. */
  String packageName() {
    return ROOT + name;
  }

  /** Says whether the row allows a package, given its full name. */
  boolean mayUse(String used) {
    return used.equals(packageName())
        || Room.of(used).filter(room -> rooms.contains(room.name)).isPresent()
        || outside.stream().anyMatch(allowed -> covers(allowed, used));
  }

  /** Returns a line for each room of ours that the row allows and that is not among those used. */
  Stream<String> idle(Set<String> used) {
    return rooms.stream()
        .filter(room -> !used.contains(ROOT + room))
        .map(room -> name + " does not use " + room);
  }

  private static boolean covers(String allowed, String used) {
    if (!allowed.endsWith("..")) {
      return allowed.equals(used);
    }
    String top = allowed.substring(0, allowed.length() - 2);
    return used.equals(top) || used.startsWith(top + ".");
  }

  private static Room core(String name, String rooms) {
    return with(name, rooms, "");
  }

  private static Room with(String name, String rooms, String more) {
    return new Room(name, words(rooms), words(VALUES + more));
  }

  private static List<String> words(String line) {
    return Stream.of(line.split(" ")).filter(word -> !word.isEmpty()).toList();
  }
}
