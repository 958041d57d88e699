package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.BuildRules.Origin;
import roundbook.job.DiameterProfile;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Job;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.plan.Jobs;
import roundbook.problem.words.Sentences;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/**
 * What a log serves for, by hand: walls of 240 and 168 in, so with an overhang of 3 in and 2 in to
 * square off at each end a log wants 250 or 178 in; the walls are 6 in thick.
 */
class FitTest {
  private static final Job JOB = Jobs.random(1, 1);
  private static final Fit FIT = new Fit(JOB);
  private static final Wall NORTH = JOB.building().walls().get(0);
  private static final Wall EAST = JOB.building().walls().get(1);

  @Test
  void aLogMustHoldTheTrimmedLengthAndWoodToSquare() {
    assertEquals(Length.ofInches(246), FIT.trimmed(NORTH));
    assertEquals(Length.ofInches(178), FIT.least(EAST));
    assertTrue(FIT.serves(log("250", "12", "12", "12"), NORTH));
    assertFalse(FIT.serves(log("249.99", "12", "12", "12"), NORTH));
    assertTrue(FIT.serves(log("249.99", "12", "12", "12"), EAST));
  }

  @ParameterizedTest(name = "{0} in long, {1} {2} {3} in thick: {4}")
  @CsvSource({
    "178, 12, 12, 12, ''",
    "177.99, 12, 12, 12, too short for every wall",
    "177.99, 6, 6, 6, too short for every wall",
    "178, 6, 6, 6, too thin to show two faces",
    "178, 6.01, 6.01, 6.01, ''",
    "178, 5, 12, 12, too thin to show two faces",
    "178, 12, 5, 12, too thin to show two faces",
    "249, 12, 12, 5, ''",
    "250, 12, 12, 5, ''"
  })
  void whyALogServesNoWall(String length, String butt, String mid, String tip, String why) {
    assertEquals(why, words(FIT, log(length, butt, mid, tip)));
  }

  @Test
  void whatTheTallyLeavesOutOrCallsCrookedServesNoWall() {
    Log log = log("250", "12", "12", "12");
    assertEquals("marked skip", words(FIT, log.skipped()));
    Length inch = Length.ofInches(1);
    Log bowed = Kept.log(log, Log.Keep.ANY, inch.plus(Length.ofNanometres(1)));
    assertEquals("", words(FIT, bowed), "no limit is set");
    Fit strict = new Fit(JOB.with(JOB.rules().with(Setting.SWEEP_MOST, inch, Origin.OPTION)));
    assertEquals("more sweep than allowed", words(strict, bowed));
    assertEquals("", words(strict, Kept.log(log, Log.Keep.ANY, inch)));
  }

  /** 10 in too long: nothing, all or half of it off the butt, beyond the 2 in to square. */
  @Test
  void theExcessComesOffEitherEndOrTheTipOnly() {
    Log log = log("260", "14", "13", "12");
    assertEquals(List.of(2.0, 7.0, 12.0), offButts(FIT, log));
    Fit tip = new Fit(JOB.with(JOB.rules().with(Setting.CUT_EXCESS, "tip", Origin.OPTION)));
    assertEquals(List.of(2.0), offButts(tip, log));
    assertEquals(List.of(2.0), offButts(FIT, log("250", "14", "13", "12")));
    assertEquals(
        List.of(2.0, 2.0625, 2.125),
        offButts(FIT, log("250.125", "14", "13", "12")),
        "half of it to the print step");
  }

  /** Each cut is looked at alone: off the butt the thin tip stays, off the tip it goes. */
  @Test
  void onlyCutsThatShowTwoFacesAreLeft() {
    Length length = Length.ofInches(260);
    DiameterProfile thinEnd =
        new DiameterProfile(
            List.of(station(0, 14), station(130, 12), station(252, 7), station(258, 5)));
    Log log = Jobs.log("L1", length, thinEnd);
    assertEquals(List.of(2.0, 7.0), offButts(FIT, log));
  }

  /** Beside an opening a log lies with its butt at the corner or at the opening, either side. */
  @Test
  void aShortLogLiesEitherWayRoundBesideAnOpening() {
    Length trimmed = Length.ofInches(107);
    Log log = log("111", "12", "12", "12");
    Piece piece = new Piece(log, Length.ofInches(2), trimmed);
    Length from = Length.ofInches(246 - 107);
    PlacedLog out = new PlacedLog(piece, NORTH, 2, true, from);
    PlacedLog in = new PlacedLog(piece, NORTH, 2, false, from);
    assertEquals(List.of(out, in), FIT.beside(log, NORTH, 2, false, trimmed));
    assertTrue(out.buttOut() && !in.buttOut());
    List<PlacedLog> left = FIT.beside(log, NORTH, 2, true, trimmed);
    assertEquals(List.of(false, true), left.stream().map(PlacedLog::buttAtStart).toList());
    assertTrue(left.get(0).buttOut() && left.get(0).isLeft());
    assertEquals(List.of(out, in), FIT.insteadOf(in, log));
    assertEquals(List.of(), FIT.beside(log("110", "12", "12", "12"), NORTH, 2, true, trimmed));
  }

  private static Station station(int at, int diameter) {
    return new Station(Length.ofInches(at), Length.ofInches(diameter));
  }

  private static Log log(String length, String butt, String mid, String tip) {
    return Jobs.log("L1", Jobs.inches(length), butt, mid, tip);
  }

  private static String words(Fit fit, Log log) {
    Optional<Fit.Reason> reason = fit.refused(log);
    return reason.map(each -> each.phrase().in(Sentences.english())).orElse("");
  }

  private static List<Double> offButts(Fit fit, Log log) {
    return fit.pieces(log, NORTH).stream().map(piece -> piece.cutOffButt().inches()).toList();
  }
}
