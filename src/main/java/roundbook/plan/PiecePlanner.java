package roundbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.NeckFit;
import roundbook.plan.PiecePlan.Half;
import roundbook.plan.PiecePlan.Note;
import roundbook.plan.PiecePlan.Weight;
import roundbook.stack.Course;
import roundbook.stack.EndFit;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.takeoff.LogCut;
import roundbook.takeoff.LogCut.CutExtent;
import roundbook.takeoff.OpeningCut;
import roundbook.takeoff.PieceWood;
import roundbook.takeoff.Takeoff;
import roundbook.units.Length;

/** Works out distances, fits, weight and notes of each placed log. */
final class PiecePlanner {
  private final Job job;
  private final Stack stack;
  private final Map<PlacedLog, PieceWood> wood;
  private final Set<FilledPlace> headers;
  private final Set<FilledPlace> cut;
  private final Map<FilledPlace, String> through = new HashMap<>();

  PiecePlanner(Job job, Stack stack, Takeoff takeoff) {
    this.job = job;
    this.stack = stack;
    this.wood =
        takeoff.wood().stream().collect(Collectors.toMap(PieceWood::log, Function.identity()));
    this.headers =
        takeoff.openings().stream()
            .flatMap(each -> each.header().stream())
            .collect(Collectors.toSet());
    this.cut =
        takeoff.openings().stream()
            .flatMap(each -> each.cut().stream())
            .map(LogCut::log)
            .collect(Collectors.toSet());
    for (OpeningCut opening : takeoff.openings()) {
      opening
          .of(CutExtent.THROUGH)
          .forEach(each -> through.put(each.log(), opening.opening().name()));
    }
  }

  List<PiecePlan> pieces() {
    List<PiecePlan> pieces = new ArrayList<>();
    for (Course course : stack.courses()) {
      for (FilledPlace placed : course.places()) {
        pieces.add(piece(course, placed));
      }
    }
    return pieces;
  }

  private PiecePlan piece(Course course, FilledPlace placed) {
    Length overhang = job.rules().overhang();
    Length near = placed.nearShoulder(job.building(), overhang);
    Length far = placed.farShoulder(job.building(), overhang);
    EndFit fit = new EndFit(job.rules(), job.building(), stack.courses().size());
    NeckFit butt = fit.butt(course, placed);
    NeckFit tip = fit.tip(course, placed);
    return new PiecePlan(
        placed,
        placed.buttCorner(job.building()),
        near,
        far,
        stack.centre(placed),
        weight(placed),
        butt,
        tip,
        notes(placed, butt, tip),
        halves(placed, placed.buttAtStart() ? tip : butt, placed.buttAtStart() ? butt : tip));
  }

  /** Returns what the log of a place weighs; of a pair the heavier of the two. */
  private Weight weight(FilledPlace placed) {
    return placed.logs().stream()
        .map(log -> weight(wood.get(log)))
        .max(Comparator.comparingDouble(Weight::pounds))
        .orElseThrow();
  }

  private static Weight weight(PieceWood piece) {
    return new Weight(
        piece.weights().green(), piece.weights().most(), piece.standsIn(), piece.balance());
  }

  private List<Half> halves(FilledPlace placed, NeckFit left, NeckFit right) {
    return placed.isShared()
        ? placed.logs().stream().map(log -> half(placed, log, log.isLeft() ? left : right)).toList()
        : List.of();
  }

  private Half half(FilledPlace placed, PlacedLog log, NeckFit fit) {
    boolean left = log.isLeft();
    Building building = job.building();
    Wall crossing = left ? building.after(log.wall()) : building.before(log.wall());
    Length neck = crossing.thickness().plus(job.rules().overhang());
    return new Half(
        log,
        through.getOrDefault(placed, ""),
        left ? building.endCorner(log.wall()) : building.startCorner(log.wall()),
        log.buttOut() ? neck : log.piece().trimmed().minus(neck),
        weight(wood.get(log)),
        fit);
  }

  private List<Note> notes(FilledPlace placed, NeckFit butt, NeckFit tip) {
    List<Note> notes = new ArrayList<>();
    if (placed.round() == 1) {
      firstRound(placed, notes);
    }
    if (placed.round() == stack.courses().size() && !placed.wall().laidFirst()) {
      notes.add(Note.ANCHOR_PUSHED);
    }
    addIf(notes, headers.contains(placed), Note.HEADER);
    addIf(notes, cut.contains(placed) && !headers.contains(placed), Note.CUT_AT_OPENING);
    estimates(placed, notes);
    addIf(notes, butt.isFlagged(), Note.BUTT_THIN);
    addIf(notes, tip.isFlagged(), Note.TIP_THIN);
    return notes;
  }

  private void firstRound(FilledPlace placed, List<Note> notes) {
    String bed = job.rules().text(Setting.FIRST_BED);
    if (bed.equals("starter")) {
      notes.add(Note.ON_STARTER);
    } else if (placed.wall().laidFirst()) {
      notes.addAll(List.of(Note.BED_FLAT, Note.ANCHOR_SLIDING));
    } else {
      notes.add(bed.equals("level") ? Note.FILL_UNDER : Note.ON_STEP);
    }
  }

  private static void estimates(FilledPlace placed, List<Note> notes) {
    addIf(notes, isAny(placed, Log.Sources::mid), Note.MID_ESTIMATED);
    boolean end = isAny(placed, Log.Sources::butt) || isAny(placed, Log.Sources::tip);
    addIf(notes, end, Note.END_ESTIMATED);
  }

  private static boolean isAny(FilledPlace placed, Function<Log.Sources, Log.Source> which) {
    return placed.logs().stream()
        .map(log -> which.apply(log.piece().log().sources()))
        .anyMatch(Log.Source.ESTIMATED::equals);
  }

  private static void addIf(List<Note> notes, boolean holds, Note note) {
    if (holds) {
      notes.add(note);
    }
  }
}
