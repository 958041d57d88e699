package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static roundbook.rounds.TwoRounds.LONG;
import static roundbook.rounds.TwoRounds.choice;
import static roundbook.rounds.TwoRounds.faults;
import static roundbook.rounds.TwoRounds.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.CutSize;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.job.Measures;
import roundbook.job.Piece;
import roundbook.job.Pin;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.plan.Jobs;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.rounds.Verifier.Subject;
import roundbook.rounds.Verifier.Verdict;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** Every fault that the check of a finished plan can find is planted once, and named. */
class VerifierTest {
  private static final Job JOB = job(10, log -> log);

  @Test
  void aSoundPlanHasNone() {
    assertEquals(List.of(), faults(JOB, choice(JOB)));
    Job starter = JOB.with(JOB.rules().with(Setting.FIRST_BED, "starter", Origin.OPTION));
    assertEquals(List.of(), faults(starter, choice(starter)));
  }

  /**
   * Counted by hand for ten logs, eight of them in two rounds of four walls: of each log that lies,
   * that it lies once, is not skipped, is of the tally, and is no spare, sill or plate elsewhere;
   * of each that does not lie, that it does not; that none is missing.
   */
  @Test
  void everyCheckIsCounted() {
    Choice choice = choice(JOB);
    Verdict verdict = Verifier.verify(JOB, choice, TwoRounds.stack(JOB, choice));
    Map<Subject, Integer> wanted = new TreeMap<>();
    wanted.put(Subject.LOGS, 8 * 6 + 2 + 1);
    wanted.put(Subject.PLACES, 2 * 2);
    wanted.put(Subject.BUTTS, 2 * 4);
    wanted.put(Subject.LENGTHS, 8 * 2);
    wanted.put(Subject.MARKS, 2 * 3);
    wanted.put(Subject.HEIGHTS, 2 * 2);
    wanted.put(Subject.GAPS, 4 * (3 + 1));
    wanted.put(Subject.WISHES, 8 * 2);
    assertEquals(wanted, verdict.counts());
    assertEquals(51 + 4 + 8 + 16 + 6 + 4 + 16 + 16, verdict.checks());
  }

  @Test
  void logsInTwoPlacesOrNone() {
    Choice choice = choice(JOB);
    Piece third = choice.courses().get(0).places().get(2).first().piece();
    assertFault("log L3 stands in two places", JOB, laid(choice, 0, place -> place.with(third)));
    assertFault("some logs are neither", JOB, unused(choice, List.of()));
    List<Log> more = new ArrayList<>(choice.unused());
    more.add(JOB.logs().get(0));
    assertFault("log L1 is both placed and unused", JOB, unused(choice, more));
    Piece foreign = piece(Jobs.log("X99", LONG, "14", "13", "12"), JOB.building().walls().get(0));
    assertFault("log X99 is not of this tally", JOB, laid(choice, 0, place -> place.with(foreign)));
  }

  @Test
  void logsThatAreKeptForSomethingElse() {
    assertFault("log L1 was to be skipped", keeping(0, Log.Keep.ANY, true));
    assertFault("spare L1 is placed", keeping(0, Log.Keep.SPARE, false));
    assertFault("plate L1 lies in round 1", keeping(0, Log.Keep.PLATE, false));
    assertFault("sill L5 lies in round 2", keeping(4, Log.Keep.SILL, false));
    assertSound(keeping(0, Log.Keep.SILL, false));
    assertSound(keeping(4, Log.Keep.PLATE, false));
  }

  @Test
  void roundsThatAreNoRing() {
    Choice choice = choice(JOB);
    Course first = choice.courses().get(0);
    List<FilledPlace> crossed = new ArrayList<>(first.places());
    Collections.swap(crossed, 0, 1);
    Choice mixed = course(choice, course(first, 1, crossed));
    assertFault("round 1 has not one log on every wall", JOB, mixed);
    assertFault(
        "round 1 holds a log of another round",
        JOB,
        laid(
            choice,
            0,
            log -> FilledPlace.of(log.first().piece(), log.wall(), 2, log.buttAtStart())));
    assertFault(
        "round 1 has a butt at the wrong end",
        JOB,
        laid(
            choice,
            0,
            log -> FilledPlace.of(log.first().piece(), log.wall(), 1, !log.buttAtStart())));
  }

  @Test
  void logsThatAreCutTooShort() {
    Choice choice = choice(JOB);
    Length trimmed = choice.courses().get(0).places().get(0).trimmed();
    Log log = JOB.logs().get(0);
    Length rest = LONG.minus(trimmed);
    String lacks = "log L1 lacks the squaring allowance on wall N";
    assertFault(lacks, JOB, cut(choice, new Piece(log, Length.ZERO, trimmed)));
    assertFault(lacks, JOB, cut(choice, new Piece(log, rest, trimmed)));
    assertFault(
        "log L1 is trimmed to another length",
        JOB,
        cut(choice, new Piece(log, Length.ofInches(2), trimmed.minus(Length.ofInches(1)))));
  }

  @Test
  void thinTipsThatAreRefused() {
    Job thin = job(10, log -> log.tag().equals("L2") ? of(log, "14", "10", "6") : log);
    assertSound(thin);
    Job refusing = thin.with(thin.rules().with(Setting.TIP_RULE, "refuse", Origin.OPTION));
    assertFault("log L2 has a thin tip", refusing);
    Job thick = job(10, log -> of(log, "15", "14", "13.5"));
    assertSound(thick.with(thick.rules().with(Setting.TIP_RULE, "refuse", Origin.OPTION)));
  }

  @Test
  void wishesAndPinsThatAreNotKept() {
    assertFault("stands on another wall", wishing(new Log.Wish("E", OptionalInt.empty())));
    assertFault("stands in another round", wishing(new Log.Wish("", OptionalInt.of(2))));
    assertSound(wishing(new Log.Wish("n", OptionalInt.of(1))));
    assertFault("the pin of log L9 is not kept", pinned("N", 1, "L9"));
    assertFault("the pin of log L1 is not kept", pinned("E", 1, "L1"));
    assertFault("the pin of log L9 is not kept", pinned("N", 2, "L9"));
    assertSound(pinned("n", 1, "L1"));
    assertSound(pinned("N", 7, "L9"));
    assertSound(pinned("N", 1, ""));
    assertSound(pinned("", 1, "L9"));
  }

  /** A pin that was said to be no good, or that came after its place was settled, binds nothing. */
  @Test
  void pinsThatBindNoLonger() {
    Job job = pinned("N", 1, "L9");
    Choice plain = choice(job);
    Problem said = Problem.of(ProblemCode.BAD_PIN, "no-log", job.pins().get(0).origin());
    assertSound(job, said(plain, said));
    CellRef other = new CellRef("made-up.xlsx", "Pins", 3, 0);
    assertFault(
        "the pin of log L9 is not kept",
        job,
        said(plain, Problem.of(ProblemCode.BAD_PIN, "no-log", other)));
    assertSound(job.withBuilt(built(new Place(1, "N"), new Held("L1", Length.ofInches(2)))));
  }

  @Test
  void whatIsBuiltMustStay() {
    Length two = Length.ofInches(2);
    assertSound(JOB.withBuilt(built(new Place(1, "N"), new Held("L1", two))));
    String moved = "was moved";
    assertFault(moved, JOB.withBuilt(built(new Place(1, "N"), new Held("L9", two))));
    assertFault(moved, JOB.withBuilt(built(new Place(2, "N"), new Held("L1", two))));
    Held otherwise = new Held("L1", Length.ofInches(3));
    assertFault(moved, JOB.withBuilt(built(new Place(1, "N"), otherwise)));
  }

  /** Logs that are only measured may change walls within their round. */
  @Test
  void whatIsOnlyMeasuredMayChangeWalls() {
    Place south = new Place(1, "S");
    Optional<Length> none = Optional.empty();
    Measures hewn = new Measures(none, Optional.of(Length.ofInches(13)), none, none, none);
    AsBuilt measured =
        AsBuilt.NOTHING.withPlaces(
            Map.of(south, new Held("L1", Length.ofInches(2))), Map.of(south, hewn));
    assertSound(JOB.withBuilt(measured));
    Place above = new Place(2, "S");
    AsBuilt other = AsBuilt.NOTHING.withPlaces(Map.of(above, held("L1")), Map.of(above, hewn));
    assertFault("was moved", JOB.withBuilt(other));
  }

  /** A settled log need only be there in full: its ends were squared by who cut it. */
  @Test
  void aSettledLogMayBeCutToItsVeryEnd() {
    Length trimmed = choice(JOB).courses().get(0).places().get(0).trimmed();
    Length rest = LONG.minus(trimmed);
    Log log = JOB.logs().get(0);
    for (Length off : List.of(Length.ZERO, rest)) {
      AsBuilt built = built(new Place(1, "N"), new Held("L1", off));
      assertSound(JOB.withBuilt(built), cut(choice(JOB), new Piece(log, off, trimmed)));
    }
    Length past = rest.plus(Length.ofInchFraction(1, 64));
    AsBuilt built = built(new Place(1, "N"), new Held("L1", past));
    assertFault(
        "log L1 is cut longer than it is",
        JOB.withBuilt(built),
        cut(choice(JOB), new Piece(log, past, trimmed)));
  }

  @Test
  void sizesMarksAndHeightsThatAreWrong() {
    Choice choice = choice(JOB);
    Course first = choice.courses().get(0);
    Notch notch = first.notch();
    Length more = Length.ofInchFraction(1, 2);
    Notch larger =
        new Notch(notch.size().plus(more), notch.gap(), notch.slope(), notch.printStep());
    assertFault("round 1 size", JOB, course(choice, notched(first, larger)));
    Notch wider = new Notch(notch.size(), notch.gap().plus(more), notch.slope(), notch.printStep());
    assertFault("round 1 lower mark", JOB, course(choice, notched(first, wider)));
    assertFault("round 1 upper mark", JOB, course(choice, notched(first, wider)));
    AsBuilt cut = AsBuilt.NOTHING.withCut(List.of(new CutSize(larger.size(), notch.gap())));
    assertFault("round 1 size", JOB.withBuilt(cut), choice);
    assertSound(JOB.withBuilt(cut));
  }

  @Test
  void heightsAndGapsThatAreWrong() {
    Choice choice = choice(JOB);
    Stack stack = Stack.of(JOB.rules(), JOB.building(), choice.courses());
    Length off = Length.ofInchFraction(1, 1000);
    List<Length> firsts = new ArrayList<>(stack.firstHeights());
    firsts.set(0, firsts.get(0).plus(off));
    Stack low =
        new Stack(JOB.rules(), JOB.building(), choice.courses(), firsts, stack.secondHeights());
    assertFault("height of round 1", Verifier.verify(JOB, choice, low).faults());
    List<Length> seconds = new ArrayList<>(stack.secondHeights());
    seconds.set(1, seconds.get(1).plus(off));
    Stack high =
        new Stack(JOB.rules(), JOB.building(), choice.courses(), stack.firstHeights(), seconds);
    assertFault("second height of 2", Verifier.verify(JOB, choice, high).faults());
    Job starter = JOB.with(JOB.rules().with(Setting.FIRST_BED, "starter", Origin.OPTION));
    assertFault("height of round 1", Verifier.verify(starter, choice, stack).faults());
  }

  private static void assertFault(String words, Job job) {
    assertFault(words, job, choice(job));
  }

  private static void assertFault(String words, Job job, Choice choice) {
    assertFault(words, faults(job, choice));
  }

  private static void assertFault(String words, List<String> faults) {
    assertTrue(faults.stream().anyMatch(each -> each.contains(words)), words + ": " + faults);
  }

  private static void assertSound(Job job) {
    assertSound(job, choice(job));
  }

  private static void assertSound(Job job, Choice choice) {
    assertEquals(List.of(), faults(job, choice));
  }

  private static Choice said(Choice choice, Problem problem) {
    return new Choice(
        choice.courses(), choice.unused(), choice.score(), choice.shortage(), List.of(problem));
  }

  private static Held held(String tag) {
    return new Held(tag, Length.ofInches(2));
  }

  private static Log of(Log log, String butt, String mid, String tip) {
    return Jobs.log(log.tag(), log.length(), butt, mid, tip);
  }

  private static Job keeping(int index, Log.Keep keep, boolean skip) {
    Log.Traits traits = new Log.Traits("", Log.Bark.UNSTATED, Length.ZERO, keep, skip, "");
    String tag = "L" + (index + 1);
    return job(10, log -> log.tag().equals(tag) ? Kept.log(log, traits) : log);
  }

  private static Job wishing(Log.Wish wish) {
    return job(10, log -> log.tag().equals("L1") ? log.placed(wish) : log);
  }

  private static Job pinned(String wall, int round, String tag) {
    CellRef origin = new CellRef("made-up.xlsx", "Pins", 2, 0);
    List<Pin> pins = List.of(new Pin(OptionalInt.of(round), wall, tag, "", "", origin));
    return new Job(JOB.rules(), JOB.building(), JOB.logs(), List.of(), pins);
  }

  private static AsBuilt built(Place place, Held held) {
    return AsBuilt.NOTHING.withPlaces(Map.of(place, held), Map.of());
  }

  private static Piece piece(Log log, Wall wall) {
    return new Piece(log, Length.ofInches(2), new Fit(JOB).trimmed(wall));
  }

  private static Choice cut(Choice choice, Piece piece) {
    return laid(choice, 0, place -> place.with(piece));
  }

  private static Choice unused(Choice choice, List<Log> unused) {
    return new Choice(choice.courses(), unused, choice.score(), choice.shortage(), List.of());
  }

  private static Choice laid(Choice choice, int wall, UnaryOperator<FilledPlace> change) {
    Course first = choice.courses().get(0);
    List<FilledPlace> logs = new ArrayList<>(first.places());
    logs.set(wall, change.apply(logs.get(wall)));
    return course(choice, course(first, 1, logs));
  }

  private static Course course(Course like, int round, List<FilledPlace> logs) {
    return new Course(round, logs, like.size(), like.notch(), like.clockwise());
  }

  private static Course notched(Course like, Notch notch) {
    return new Course(like.round(), like.places(), like.size(), notch, like.clockwise());
  }

  private static Choice course(Choice choice, Course first) {
    List<Course> courses = new ArrayList<>(choice.courses());
    courses.set(0, first);
    return new Choice(courses, choice.unused(), choice.score(), choice.shortage(), List.of());
  }
}
