package roundbook.report.round;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.page.TextHeight;
import roundbook.plan.PiecePlan;
import roundbook.plan.PiecePlan.Note;
import roundbook.report.frame.ExchangeWords;
import roundbook.report.live.LiveContext;
import roundbook.report.mark.RoundLowers;
import roundbook.report.mark.Squareness;
import roundbook.stack.Course;
import roundbook.units.Length;

/** How to lay out, what is special about this round, and the cautions, at the foot of its page. */
final class RoundNotes {
  private final LiveContext live;
  private final int round;
  private final SheetBuilder sheet;
  private final RoundEnds ends;

  RoundNotes(LiveContext live, int round, SheetBuilder sheet) {
    this.live = live;
    this.round = round;
    this.sheet = sheet;
    this.ends = new RoundEnds(live, round, sheet);
  }

  /**
   * A line with its role.
   *
   * @param text what it says as planned
   * @param role its looks
   * @param live whether it is the line of weak ends, which follows what is typed
   */
  record Line(String text, Role role, boolean live) {}

  /** Returns all lines from the top down, with or without why these logs were chosen. */
  List<Line> all(boolean why) {
    return Stream.of(laying(), why ? why() : List.<Line>of(), List.of(caution()))
        .flatMap(List::stream)
        .toList();
  }

  /** Returns what must be known to lay a log out; the live line keeps its row, first. */
  List<Line> laying() {
    List<Line> lines = new ArrayList<>();
    lines.add(new Line(ends.now(), Role.BODY, true));
    String layout = live.text("round.layout", runOf(), overhang()) + squareness() + corners();
    lines.add(new Line(layout, Role.PLAIN_BOLD, false));
    String special = String.join(" ", specials());
    if (!special.isEmpty()) {
      lines.add(new Line(special, Role.CAUTION, false));
    }
    return lines;
  }

  /** Returns why these logs were chosen, and the cautions. */
  List<Line> others() {
    return Stream.concat(why().stream(), Stream.of(caution())).toList();
  }

  /** Returns why these logs were chosen, in a line or none. */
  List<Line> why() {
    ExchangeWords words = new ExchangeWords(live.context());
    String why = (words.why(round) + " " + words.cures(round)).strip();
    return why.isEmpty() ? List.of() : List.of(new Line(why, Role.PLAIN, false));
  }

  /** Returns the caution that stands under all. */
  Line caution() {
    boolean standsIn = live.plan().pieces().stream().anyMatch(piece -> piece.weight().standsIn());
    String key = standsIn ? "round.caution.stand_in" : "round.caution";
    return new Line(live.text(key), Role.PLAIN, false);
  }

  /** Puts lines under the current row, so many columns wide. */
  void put(List<Line> lines, int columns) {
    for (Line line : lines) {
      sheet.nextRow().height(height(line, columns));
      if (line.live()) {
        ends.put(columns);
      } else {
        sheet.addAcross(columns, Cell.text(line.text()).role(line.role()));
      }
    }
  }

  /**
   * Returns the height of a row that holds a line, in points; the live one, white on black when
   * ends are weak, has room for what it may come to say.
   */
  double height(Line line, int columns) {
    double wide = columns * RoundSheets.COLUMN_WIDTH;
    double now = TextHeight.of(line.text(), line.live() ? Role.FLAG : line.role(), wide);
    return line.live() ? Math.max(now, TextHeight.of(ends.likely(), Role.FLAG, wide)) : now;
  }

  /** Returns the run of the template's slope. */
  private String runOf() {
    return live.context().slopeRun();
  }

  /** Returns the overhang with its unit. */
  private String overhang() {
    return live.formats().mark(live.rules().overhang()) + " " + live.unit().symbol();
  }

  /** Returns the diagonals of each pen; empty for another plan. */
  private String squareness() {
    String all =
        Squareness.of(live.map().building()).stream()
            .map(
                square ->
                    (live.pen(square.pen()) + " " + live.formats().feetInches(square.outside()))
                        .strip())
            .collect(Collectors.joining(", "));
    return all.isEmpty() ? "" : " " + live.text("round.square", all);
  }

  /** Returns for what the lower marks at the corners are, and the corner line's. */
  private String corners() {
    return live.text("round.corner_lower", RoundLowers.drops(live));
  }

  /** Returns what is special about the round, one sentence a kind. */
  private List<String> specials() {
    List<String> lines = new ArrayList<>();
    for (Note note : Note.values()) {
      String walls = walls(note);
      String key = "round.note." + note.name().toLowerCase(Locale.ROOT);
      if (!walls.isEmpty() && live.context().words().has(key)) {
        lines.add(live.text(key, walls, valueOf(note)));
      }
    }
    lines.addAll(0, beside());
    lines.addAll(0, pared());
    if (round == live.plan().rounds()) {
      lines.add(0, live.text("round.top", live.names(true), live.names(false)));
    }
    return lines;
  }

  /** Returns which tops of the round below are to be pared first, where some are. */
  private List<String> pared() {
    String tops =
        live.plan().stack().corners().pared(round - 1, live.map().building()).entrySet().stream()
            .map(top -> top.getKey() + " " + live.formats().mark(top.getValue()))
            .collect(Collectors.joining(", "));
    return tops.isEmpty()
        ? List.of()
        : List.of(live.text("round.pare.first", live.names(false), round - 1, tops));
  }

  /** Returns how short logs beside openings are read in the table above, where any lie here. */
  private List<String> beside() {
    boolean any = live.plan().round(round).stream().anyMatch(piece -> !piece.halves().isEmpty());
    return any ? List.of(live.text("beside.legend")) : List.of();
  }

  /** Returns the walls that a kind of note is for. */
  private String walls(Note note) {
    return live.plan().round(round).stream()
        .filter(piece -> piece.notes().contains(note))
        .map(piece -> named(piece, note))
        .collect(Collectors.joining(" "));
  }

  /** Returns the wall of a note, with its log where the log is meant. */
  private static String named(PiecePlan piece, Note note) {
    Wall wall = piece.placed().wall();
    boolean log = note == Note.MID_ESTIMATED || note == Note.END_ESTIMATED;
    return log ? wall.name() + "=" + piece.placed().tags() : wall.name();
  }

  /** Returns the length that a note names. */
  private String valueOf(Note note) {
    Course course = live.course(round);
    Length value =
        switch (note) {
          case ON_STEP -> live.plan().stack().foundationStep();
          case FILL_UNDER -> course.notch().lower().plus(live.rules().gap().dividedBy(2));
          default -> course.notch().lower();
        };
    return live.formats().mark(value) + " " + live.unit().symbol();
  }
}
