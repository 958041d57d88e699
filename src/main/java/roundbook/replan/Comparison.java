package roundbook.replan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import roundbook.job.BuildRules;
import roundbook.job.Piece;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.plan.OrderLine;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.plan.Quantity;
import roundbook.replan.Difference.DifferenceKind;
import roundbook.stack.Joint;
import roundbook.takeoff.OpeningCut;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/** Holds two plans of one building against each other, as they are printed. */
public final class Comparison {
  private final Plan was;
  private final Plan now;
  private final LengthFormat formats;
  private final List<Difference> found = new ArrayList<>();

  private Comparison(Plan was, Plan now) {
    this.was = was;
    this.now = now;
    BuildRules rules = now.job().rules();
    this.formats = LengthFormat.forJob(rules.unit(), rules.printStep());
  }

  /** Returns everything that is printed otherwise in the second plan, round by round. */
  public static List<Difference> of(Plan was, Plan now) {
    Comparison comparison = new Comparison(was, now);
    comparison.rounds();
    comparison.headers();
    comparison.order();
    comparison.quantities();
    return List.copyOf(comparison.found);
  }

  private void rounds() {
    for (int round = 1; round <= Math.max(was.rounds(), now.rounds()); round++) {
      if (round > was.rounds() || round > now.rounds()) {
        boolean gone = round > now.rounds();
        found.add(
            new Difference(DifferenceKind.ROUND, round, "", gone ? "+" : "", gone ? "" : "+"));
        continue;
      }
      boolean cut = now.job().built().cutSize(round).isPresent();
      if (!cut) {
        add(DifferenceKind.MARKS, round, "", marks(was, round), marks(now, round));
      }
      for (Wall wall : now.job().building().walls()) {
        place(round, wall);
      }
      for (String corner : cut ? List.<String>of() : now.job().building().corners()) {
        add(
            DifferenceKind.CORNER,
            round,
            corner,
            lowers(was, round, corner),
            lowers(now, round, corner));
      }
      add(
          DifferenceKind.HEIGHT,
          round,
          "",
          formats.feetInches(was.stack().levelHeight(round)),
          formats.feetInches(now.stack().levelHeight(round)));
    }
  }

  private void place(int round, Wall wall) {
    Optional<PiecePlan> before = piece(was, round, wall);
    Optional<PiecePlan> after = piece(now, round, wall);
    String name = wall.name();
    add(DifferenceKind.LOG, round, name, tag(before), tag(after));
    add(DifferenceKind.CUT, round, name, cut(before), cut(after));
    add(DifferenceKind.GAP, round, name, gaps(was, round, wall), gaps(now, round, wall));
  }

  private static Optional<PiecePlan> piece(Plan plan, int round, Wall wall) {
    return plan.round(round).stream()
        .filter(piece -> piece.placed().wall().name().equals(wall.name()))
        .findFirst();
  }

  private static String tag(Optional<PiecePlan> piece) {
    return piece.map(each -> each.placed().tags()).orElse("");
  }

  /** Returns what is cut off the butt, the trimmed length and what falls off the tip. */
  private String cut(Optional<PiecePlan> piece) {
    return piece.stream()
        .flatMap(each -> each.logs().stream())
        .map(log -> cut(log.piece()))
        .collect(Collectors.joining("; "));
  }

  private String cut(Piece piece) {
    return formats.mark(piece.cutOffButt())
        + " | "
        + formats.feetInches(piece.trimmed())
        + " | "
        + formats.mark(piece.fallsOff());
  }

  /** Returns size, upper and lower mark. */
  private String marks(Plan plan, int round) {
    Notch notch = plan.choice().courses().get(round - 1).notch();
    return "D "
        + formats.mark(notch.size())
        + ", U "
        + formats.mark(notch.upper())
        + ", L "
        + formats.mark(notch.lower());
  }

  /** Returns the lower marks of both logs at a corner; empty where both are the chart's. */
  private String lowers(Plan plan, int round, String corner) {
    Length chart = plan.choice().courses().get(round - 1).notch().lower();
    Length first = plan.stack().corners().change(round, true, corner);
    Length second = plan.stack().corners().change(round, false, corner);
    if (second.isZero()) {
      return first.isZero() ? "" : formats.mark(chart.plus(first));
    }
    return formats.mark(chart.plus(first)) + " | " + formats.mark(chart.plus(second));
  }

  /** Returns the gaps under a log at its left end, its middle and its right end. */
  private String gaps(Plan plan, int round, Wall wall) {
    List<Joint> joints = plan.stack().joints(plan.job().building().wall(wall.name()).orElse(wall));
    if (round == 1 || joints.size() < round - 1) {
      return "";
    }
    Joint joint = joints.get(round - 2);
    String flag = joint.flag(plan.job().rules()).symbol();
    return String.join(
            " | ",
            formats.mark(joint.left()),
            formats.mark(joint.middle()),
            formats.mark(joint.right()))
        + (flag.isEmpty() ? "" : " " + flag);
  }

  private void headers() {
    both(DifferenceKind.HEADER, headers(was), headers(now));
  }

  /** Returns the log over each opening. */
  private static Map<String, String> headers(Plan plan) {
    Map<String, String> headers = new LinkedHashMap<>();
    for (OpeningCut cut : plan.takeoff().openings()) {
      cut.header().ifPresent(log -> headers.put(cut.opening().name(), log.tags()));
    }
    return headers;
  }

  private void order() {
    both(DifferenceKind.ORDER, order(was), order(now));
  }

  private Map<String, String> order(Plan plan) {
    Map<String, String> lines = new LinkedHashMap<>();
    for (OrderLine line : plan.order()) {
      String key = line.walls() + " " + formats.feetInches(line.least());
      lines.merge(key, String.valueOf(line.count()), (one, other) -> one + " + " + other);
    }
    return lines;
  }

  /**
   * Compares quantities by their items; where several are of one item, by their first values too.
   */
  private void quantities() {
    Map<String, Quantity> before = byKey(was);
    Map<String, Quantity> after = byKey(now);
    Set<String> keys = new LinkedHashSet<>(after.keySet());
    keys.addAll(before.keySet());
    for (String key : keys) {
      Quantity shown = after.getOrDefault(key, before.get(key));
      String place = shown.phrase().toString();
      add(DifferenceKind.QUANTITY, 0, place, amount(before.get(key)), amount(after.get(key)));
    }
  }

  private static Map<String, Quantity> byKey(Plan plan) {
    Map<String, Long> items =
        plan.quantities().stream()
            .collect(Collectors.groupingBy(Quantity::item, Collectors.counting()));
    Map<String, Quantity> byKey = new LinkedHashMap<>();
    for (Quantity each : plan.quantities()) {
      boolean alone = items.get(each.item()) == 1;
      byKey.put(alone ? each.item() : each.item() + each.values().get(0), each);
    }
    return byKey;
  }

  private static String amount(Quantity quantity) {
    return quantity == null
        ? ""
        : String.format(Locale.ROOT, "%.1f %s", quantity.amount(), quantity.unit());
  }

  private void both(DifferenceKind kind, Map<String, String> before, Map<String, String> after) {
    Map<String, String> keys = new TreeMap<>(before);
    keys.putAll(after);
    keys.keySet()
        .forEach(
            key -> add(kind, 0, key, before.getOrDefault(key, ""), after.getOrDefault(key, "")));
  }

  private void add(DifferenceKind kind, int round, String place, String before, String after) {
    if (!before.equals(after)) {
      found.add(new Difference(kind, round, place, before, after));
    }
  }
}
